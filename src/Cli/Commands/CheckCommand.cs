using System.CommandLine;
using System.Text;
using Dryfit.Findings;

namespace Dryfit.Cli;

/// <summary><c>dryfit check RECIPE</c>: findings only; the exit code says whether anything must stop the saw.</summary>
internal static class CheckCommand
{
    private static readonly HelpPage Page = new(
        "Builds the piece in memory, measures it, and prints what it finds, the gravest first. Nothing is written. Exit "
            + "code 1 says that something must stop the saw. With --mend it also works out, by building the piece again, "
            + "which number of the recipe to change to what, and shows that as a diff; --apply then makes the edits and "
            + "touches no other character of the file.",
        [
            new("dryfit check cupboard.dryfit.yaml", "All findings, and what was checked."),
            new(
                "dryfit check cupboard.dryfit.yaml --set width=48 --set base_height=32",
                "The same piece at other sizes."
            ),
            new(
                "dryfit check cupboard.dryfit.yaml --shop shed.yaml --quiet",
                "Your own shop's rules; only what is wrong."
            ),
            new("dryfit check cupboard.dryfit.yaml --mend", "Also which numbers would mend it, as a diff."),
            new("dryfit check cupboard.dryfit.yaml --mend --apply", "The same, and the recipe changed so."),
            new("dryfit check cupboard.dryfit.yaml --numbers list.csv", "Your own cut list against the model."),
            new("dryfit check cupboard.dryfit.yaml --json > findings.json", "For another program."),
        ],
        [
            new(
                "a list for --numbers:",
                [
                    (
                        "first line",
                        "part, length, width, thickness, quantity: in any order, comma or semicolon between"
                    ),
                    (
                        "each line",
                        "left door rails, 8 1/8, 2 1/4, 3/4, 2: parts as the parts list or 'as cut' calls them"
                    ),
                    ("to start", "the parts.csv of 'dryfit build' is such a list; other columns are not looked at"),
                ]
            ),
        ]
    );

    public static (Command Command, HelpPage Page) Make(Surroundings surroundings)
    {
        var command = new Command("check", "findings only");
        var shared = new SharedOptions();
        shared.AddTo(command);
        var mend = new Option<bool>("--mend")
        {
            Description = "work out which numbers of the recipe mend what is found, and show them as a diff",
        };
        var apply = new Option<bool>("--apply") { Description = "with --mend: make those edits in the file" };
        command.Options.Insert(0, mend);
        command.Options.Insert(1, apply);
        var numbers = new Option<string?>("--numbers")
        {
            HelpName = "FILE",
            Description = "a cut list written by hand (CSV), held against the model",
        };
        command.Options.Insert(2, numbers);
        command.Validators.Add(result =>
        {
            if (result.GetValue(apply) && !result.GetValue(mend))
                result.AddError("--apply makes the edits that --mend works out: write --mend --apply.");
            if (result.GetValue(numbers) is not null && result.GetValue(mend))
                result.AddError("--numbers holds a list against the model; --mend is for the recipe: use one of them.");
        });
        command.SetAction(parsed =>
        {
            var (request, json, quiet) = (shared.Read(parsed), shared.IsJson(parsed), shared.IsQuiet(parsed));
            if (parsed.GetValue(numbers) is { } list)
                return new NumbersAction(surroundings).Run(request, list, json);
            return parsed.GetValue(mend)
                ? new MendAction(surroundings).Run(request, json, quiet, parsed.GetValue(apply))
                : Run(request, json, quiet, surroundings);
        });
        return (command, Page);
    }

    private static int Run(Request request, bool json, bool quiet, Surroundings surroundings)
    {
        var proved = new Proof(surroundings).Of(request, json, out var code);
        if (proved is null)
            return code;
        if (json)
            surroundings.Out.Write(Encoding.UTF8.GetString(Pipeline.FindingsJson(proved).Bytes.Span));
        else
        {
            ReportText.Write(proved, quiet, surroundings);
            if (!quiet && proved.Report.Count(Severity.Stop) + proved.Report.Count(Severity.Warn) > 0)
                surroundings.Out.WriteLine("--mend works out which number to change, and to what.");
        }
        return proved.Report.StopsTheSaw ? ExitCode.Stop : ExitCode.Fine;
    }
}
