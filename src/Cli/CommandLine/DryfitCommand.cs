using System.CommandLine;
using System.Reflection;

namespace Dryfit.Cli;

/// <summary>The program: reads the command line, runs the command it names, and turns what happens into an exit code.</summary>
internal static class DryfitCommand
{
    public const string Name = "dryfit";

    /// <summary>Set to anything, it shows the stack of an internal error.</summary>
    public const string TraceVariable = "DRYFIT_TRACE";

    public static int Run(IReadOnlyList<string> arguments, Surroundings surroundings)
    {
        try
        {
            var code = RunCommand(arguments, surroundings);
            surroundings.Out.Flush();
            return code;
        }
        catch (FileTroubleException trouble)
        {
            surroundings.Error.WriteLine($"{Name}: {trouble.Message}");
            return ExitCode.FileTrouble;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Files named by the user are met elsewhere: this is standard output, on a full disk or closed.
            surroundings.Error.WriteLine(
                $"{Name}: The results cannot be written: {FileTroubleException.Reason(fault)}."
            );
            return ExitCode.FileTrouble;
        }
        catch (Exception fault)
        {
            return ReportOwnFault(fault, surroundings);
        }
    }

    private static int RunCommand(IReadOnlyList<string> arguments, Surroundings surroundings)
    {
        var menu = new CommandMenu(surroundings);
        var parsed = menu.Root.Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (menu.AskedForReference(parsed) is { } page)
        {
            surroundings.Out.Write(page);
            return ExitCode.Fine;
        }
        if (menu.AskedForHelp(parsed) is { } command)
        {
            var writer = new HelpWriter(surroundings.Out, surroundings.Width, new Paint(surroundings.OutHasColour));
            writer.Write(command, menu.PageOf(command));
            return ExitCode.Fine;
        }
        if (menu.AskedForVersion(parsed))
        {
            surroundings.Out.WriteLine($"{Name} {Version}");
            return ExitCode.Fine;
        }
        if (parsed.Errors.Count > 0)
        {
            foreach (var message in UsageText.Explain(parsed))
                surroundings.Error.WriteLine($"{Name}: {message}");
            surroundings.Error.WriteLine($"See '{HelpWriter.CommandPath(parsed.CommandResult.Command)} --help'.");
            return ExitCode.Usage;
        }
        return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    }

    private static int ReportOwnFault(Exception fault, Surroundings surroundings)
    {
        surroundings.Error.WriteLine($"{Name}: internal error: {fault.GetType().Name}: {fault.Message}");
        surroundings.Error.WriteLine("This is a fault of Dryfit, not of your recipe. Files written before are whole.");
        if (surroundings.Variable(TraceVariable) is { Length: > 0 })
            surroundings.Error.WriteLine(fault.ToString());
        else
            surroundings.Error.WriteLine(
                $"Please report it: run the same command again with {TraceVariable}=1 set, and send what it prints "
                    + $"together with the recipe ({Name} {Version})."
            );
        return ExitCode.Internal;
    }

    private static string Version =>
        typeof(DryfitCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
        ?? "unknown";
}
