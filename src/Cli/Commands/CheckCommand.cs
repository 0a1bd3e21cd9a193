using System.CommandLine;
using System.Text;

namespace Dryfit.Cli;

/// <summary><c>dryfit check RECIPE</c>: findings only; the exit code says whether anything must stop the saw.</summary>
internal static class CheckCommand
{
    private static readonly HelpPage Page = new(
        "Builds the piece in memory, measures it, and prints what it finds, the gravest first. Nothing is written. Exit "
            + "code 1 says that something must stop the saw.",
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
            new("dryfit check cupboard.dryfit.yaml --json > findings.json", "For another program."),
        ],
        []
    );

    public static (Command Command, HelpPage Page) Make(Surroundings surroundings)
    {
        var command = new Command("check", "findings only");
        var shared = new SharedOptions();
        shared.AddTo(command);
        command.SetAction(parsed =>
            Run(shared.Read(parsed), shared.IsJson(parsed), shared.IsQuiet(parsed), surroundings)
        );
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
            ReportText.Write(proved, quiet, surroundings);
        return proved.Report.StopsTheSaw ? ExitCode.Stop : ExitCode.Fine;
    }
}
