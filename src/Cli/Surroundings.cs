using System.Text;

namespace Dryfit.Cli;

/// <summary>What the program sees of the world besides files: its console, its folder, its environment.</summary>
internal sealed record Surroundings
{
    /// <summary>Results.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>Messages.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>True where results go to a person's terminal that shows colours.</summary>
    public bool OutHasColour { get; init; }

    /// <summary>True where messages go to a person's terminal that shows colours.</summary>
    public bool ErrorHasColour { get; init; }

    /// <summary>Characters in a line of help and messages.</summary>
    public int Width { get; init; } = 80;

    /// <summary>The folder that relative paths start from.</summary>
    public required string Folder { get; init; }

    /// <summary>The value of an environment variable; null where it is not set.</summary>
    public required Func<string, string?> Variable { get; init; }

    /// <summary>The surroundings of the running program. Text is UTF-8 whatever the terminal's locale says.</summary>
    public static Surroundings OfThisProcess()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        if (OperatingSystem.IsWindows() && !Console.IsOutputRedirected)
            Console.OutputEncoding = utf8;
        var coloured = WantsColour(Environment.GetEnvironmentVariable);
        return new Surroundings
        {
            Out = new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = false, NewLine = "\n" },
            Error = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true, NewLine = "\n" },
            OutHasColour = coloured && !Console.IsOutputRedirected,
            ErrorHasColour = coloured && !Console.IsErrorRedirected,
            Width = TerminalWidth(),
            Folder = Directory.GetCurrentDirectory(),
            Variable = Environment.GetEnvironmentVariable,
        };
    }

    /// <summary>A path of the command line made whole: relative ones start from <see cref="Folder"/>.</summary>
    public string FullPath(string path) => Path.GetFullPath(path, Folder);

    // https://no-color.org: set and not empty means no colour, whatever it holds.
    private static bool WantsColour(Func<string, string?> variable) =>
        string.IsNullOrEmpty(variable("NO_COLOR")) && variable("TERM") is { Length: > 0 } terminal && terminal != "dumb"
        || (OperatingSystem.IsWindows() && string.IsNullOrEmpty(variable("NO_COLOR")));

    private static int TerminalWidth()
    {
        try
        {
            // Past a hundred characters lines of prose are hard to follow.
            return Console.IsOutputRedirected ? 80 : Math.Clamp(Console.WindowWidth, 40, 100);
        }
        catch (IOException)
        {
            return 80;
        }
    }
}
