using System.CommandLine;

namespace Dryfit.Cli;

/// <summary>Writes a command's help, wrapped to the terminal.</summary>
internal sealed class HelpWriter(TextWriter writer, int width, Paint paint)
{
    /// <summary>Where the right column starts at most; longer headings stand on a line of their own.</summary>
    private const int WidestColumn = 26;

    public void Write(Command command, HelpPage page)
    {
        foreach (var line in Wrap.Lines($"{CommandPath(command)}: {command.Description}", width))
            writer.WriteLine(paint.Bold(line));
        writer.WriteLine();
        writer.WriteLine($"{paint.Bold("usage:")} {Usage(command)}");
        writer.WriteLine();
        foreach (var line in Wrap.Lines(page.About, width))
            writer.WriteLine(line);

        Rows(
            "commands:",
            command.Subcommands.Where(c => !c.Hidden).Select(c => (Usage(c, brief: true), c.Description))
        );
        Rows("arguments:", command.Arguments.Select(a => (Shown(a), a.Description)));
        Rows("options:", AllOptions(command).Select(o => (Heading(o), o.Description)));
        Examples(page.Examples);
        foreach (var note in page.Notes)
            Rows(note.Heading, note.Rows.Select(row => (row.Left, (string?)row.Right)));
    }

    /// <summary>The command as it is typed: <c>dryfit build</c>.</summary>
    public static string CommandPath(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } parent
            ? $"{CommandPath(parent)} {command.Name}"
            : DryfitCommand.Name;

    /// <summary>How an argument is shown: <c>RECIPE</c>, or <c>[FILE]</c> where it may be left out.</summary>
    public static string Shown(Argument argument) =>
        (argument.Arity.MinimumNumberOfValues, argument.Arity.MaximumNumberOfValues) switch
        {
            (0, 1) => $"[{argument.Name}]",
            (0, _) => $"[{argument.Name} ...]",
            (_, 1) => argument.Name,
            _ => $"{argument.Name} ...",
        };

    private static string Usage(Command command, bool brief = false)
    {
        var words = new List<string> { brief ? command.Name : CommandPath(command) };
        if (command.Subcommands.Count > 0)
            words.Add("COMMAND");
        words.AddRange(command.Arguments.Select(Shown));
        words.AddRange(command.Options.Where(o => o.Required).Select(o => $"{o.Name} {o.HelpName}"));
        if (!brief)
            words.Add("[options]");
        return string.Join(' ', words);
    }

    private static IEnumerable<Option> AllOptions(Command command) =>
        command
            .Options.Concat(command.Parents.OfType<Command>().SelectMany(p => p.Options.Where(o => o.Recursive)))
            .Where(o => !o.Hidden);

    private static string Heading(Option option)
    {
        // One dash stands before two: "-q, --quiet".
        var names = string.Join(", ", option.Aliases.Append(option.Name).OrderBy(name => name.Length));
        return option.HelpName is null ? names : $"{names} {option.HelpName}";
    }

    private void Rows(string heading, IEnumerable<(string Left, string? Right)> rows)
    {
        var all = rows.ToList();
        if (all.Count == 0)
            return;
        writer.WriteLine();
        writer.WriteLine(paint.Bold(heading));
        var column = Math.Min(WidestColumn, all.Max(row => row.Left.Length) + 4);
        foreach (var (left, right) in all)
        {
            foreach (var line in Wrap.Beside("  " + left, right ?? "", column, width))
                writer.WriteLine(line);
        }
    }

    private void Examples(IReadOnlyList<Example> examples)
    {
        if (examples.Count == 0)
            return;
        writer.WriteLine();
        writer.WriteLine(paint.Bold("examples:"));
        foreach (var example in examples)
        {
            // A line to be typed is never broken: it is copied from here.
            writer.WriteLine("  " + example.Line);
            foreach (var line in Wrap.Lines(example.Does, width - 6))
                writer.WriteLine("      " + line);
        }
    }
}
