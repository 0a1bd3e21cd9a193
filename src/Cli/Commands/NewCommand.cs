using System.CommandLine;
using System.Text;
using Dryfit.Findings;
using Dryfit.Outputs;

namespace Dryfit.Cli;

/// <summary><c>dryfit new STARTER FILE</c>: a starter recipe to edit; alone it lists the starters.</summary>
internal static class NewCommand
{
    private static readonly HelpPage Page = new(
        "Writes a starter recipe or shop file to FILE, for you to change, with the schema that lets editors complete and "
            + "check it beside it. Without FILE it prints the starter; alone it lists the starters.",
        [
            new("dryfit new", "The starters there are."),
            new("dryfit new studio-cupboard", "Look at one."),
            new("dryfit new studio-cupboard mine.dryfit.yaml", "A copy to change."),
            new("dryfit new shop-inches shed.dryfit-shop.yaml", "Your shop's rules, to use with --shop."),
        ],
        []
    );

    public static (Command Command, HelpPage Page) Make(Surroundings surroundings)
    {
        var command = new Command("new", "a starter recipe to edit");
        var name = new Argument<string?>("STARTER")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "the starter's name, as 'dryfit new' lists it",
        };
        var file = new Argument<string?>("FILE")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = $"the file to write; a recipe's name ends in {InputFile.RecipeEnding}",
        };
        var force = new Option<bool>("--force", "-f") { Description = "overwrite FILE, and the schema beside it" };
        command.Arguments.Add(name);
        command.Arguments.Add(file);
        command.Options.Add(force);
        command.SetAction(parsed =>
            Run(parsed.GetValue(name), parsed.GetValue(file), parsed.GetValue(force), surroundings)
        );
        return (command, Page);
    }

    private static int Run(string? name, string? file, bool force, Surroundings surroundings)
    {
        if (name is null)
            return List(surroundings.Out, surroundings.Width);
        if (Starter.All.FirstOrDefault(s => s.Name == name) is not { } starter)
        {
            var near = NearestWord.To(name, Starter.All.Select(s => s.Name));
            var meant = near is null ? "'dryfit new' lists them." : $"Did you mean '{near}'?";
            surroundings.Error.WriteLine($"{DryfitCommand.Name}: There is no starter {Excerpt.Quote(name)}. {meant}");
            return ExitCode.Usage;
        }
        if (file is null)
            surroundings.Out.Write(starter.Text);
        else
            Write(starter, file, force, surroundings);
        return ExitCode.Fine;
    }

    private static int List(TextWriter writer, int width)
    {
        var column = Starter.All.Max(s => s.Name.Length) + 3;
        foreach (var line in Starter.All.SelectMany(s => Wrap.Beside(s.Name, s.Description, column, width)))
            writer.WriteLine(line);
        return ExitCode.Fine;
    }

    private static void Write(Starter starter, string file, bool force, Surroundings surroundings)
    {
        var path = surroundings.FullPath(file);
        if (Directory.Exists(path))
            throw new FileTroubleException(
                $"'{file}' is a folder; name the file, such as '{Path.Combine(file, starter.Name + starter.Kind.Ending)}'."
            );
        if (!force && File.Exists(path))
            throw new FileTroubleException($"'{file}' is there already; --force overwrites it.");

        var folder = Path.GetDirectoryName(file) is { Length: > 0 } named ? named : ".";
        var schema = starter.Kind.SchemaFile;
        var files = new List<OutputFile>
        {
            new(Path.GetFileName(file), Encoding.UTF8.GetBytes(starter.TextBesideSchema)),
        };
        if (force || !File.Exists(Path.Combine(surroundings.FullPath(folder), schema)))
            files.Add(new(schema, starter.Kind.Schema));
        OutputFolder.Write(folder, files, surroundings);

        surroundings.Out.WriteLine(file);
        if (files.Count > 1)
            surroundings.Error.WriteLine($"Beside it lies {schema}: editors complete and check it by that.");
        var next = starter.Kind == StarterKind.Shop ? "check RECIPE --shop" : "check";
        surroundings.Error.WriteLine($"Next: {DryfitCommand.Name} {next} {Quoted(file)}");
    }

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;
}
