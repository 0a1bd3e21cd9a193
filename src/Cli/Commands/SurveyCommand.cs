using System.CommandLine;
using Dryfit.Measure;
using Dryfit.Outputs;
using Dryfit.Outputs.Survey;

namespace Dryfit.Cli;

/// <summary><c>dryfit survey FILE</c>: a sheet to fill in where a piece goes between walls.</summary>
internal static class SurveyCommand
{
    private const string Ending = ".html";

    private static readonly HelpPage Page = new(
        "Writes a sheet to print and take along: what to measure of a space between two walls, and the lines of the recipe "
            + "that the readings go into. The recipe's word for such a space is told by 'dryfit help recipe'.",
        [
            new("dryfit survey alcove.html", "A sheet in millimetres."),
            new("dryfit survey alcove.html --units in", "A sheet for a tape in inches."),
        ],
        []
    );

    public static (Command Command, HelpPage Page) Make(Surroundings surroundings)
    {
        var command = new Command("survey", "a sheet to measure a space between walls by");
        var file = new Argument<string>("FILE") { Description = $"the file to write; its name ends in {Ending}" };
        var units = new Option<string>("--units") { Description = "in or mm", DefaultValueFactory = _ => "mm" };
        units.AcceptOnlyFromAmong("in", "mm");
        var force = new Option<bool>("--force", "-f") { Description = "overwrite FILE" };
        command.Arguments.Add(file);
        command.Options.Add(units);
        command.Options.Add(force);
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(file)!,
                parsed.GetValue(units) == "in" ? LengthUnit.Inch : LengthUnit.Millimetre,
                parsed.GetValue(force),
                surroundings
            )
        );
        return (command, Page);
    }

    private static int Run(string file, LengthUnit unit, bool force, Surroundings surroundings)
    {
        var path = surroundings.FullPath(file);
        if (Directory.Exists(path))
            throw new FileTroubleException(
                $"'{file}' is a folder; name the file, such as '{Path.Combine(file, "survey" + Ending)}'."
            );
        if (!force && File.Exists(path))
            throw new FileTroubleException($"'{file}' is there already; --force overwrites it.");
        var sheet = SurveyHtml.Write(unit).Value!;
        var folder = Path.GetDirectoryName(file) is { Length: > 0 } named ? named : ".";
        OutputFolder.Write(folder, [new OutputFile(Path.GetFileName(file), sheet.Bytes)], surroundings);
        surroundings.Out.WriteLine(file);
        return ExitCode.Fine;
    }
}
