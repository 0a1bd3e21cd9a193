using System.CommandLine;

namespace Dryfit.Cli;

/// <summary><c>dryfit build RECIPE --out DIR</c>: everything that is made from a recipe, into one folder.</summary>
internal static class BuildCommand
{
    private const string CutListTemplate = "cutlist.html";

    private static readonly HelpPage Page = new(
        "Builds the piece in solid parts, measures how they meet, and writes the 3D file, the parts list, the cut list, "
            + "the front view and the findings into the folder DIR. The files come all together or, where something "
            + "fails, not at all: what was there before stays whole.",
        [
            new("dryfit build cupboard.dryfit.yaml --out cupboard", "Everything, into the folder 'cupboard'."),
            new("dryfit build cupboard.dryfit.yaml --out narrow --set width=42", "The same piece, 42 wide."),
            new("dryfit build cupboard.dryfit.yaml --out cupboard --units mm", "Sizes written in millimetres."),
        ],
        [
            new(
                "files:",
                [
                    ("piece.glb", "the piece in 3D; any glTF viewer opens it, doors turn and drawers slide"),
                    ("parts.csv, .json", "every part with its sizes, cuts, joints, volume and mass"),
                    ("cutlist.html", "one page to print and carry to the saw"),
                    ("front.svg", "the front to scale, with the gaps as they really are"),
                    ("findings.json", "what the checks found"),
                ]
            ),
        ]
    );

    public static (Command Command, HelpPage Page) Make(Surroundings surroundings)
    {
        var command = new Command("build", "3D file, parts list, cut list, front view, findings");
        var shared = new SharedOptions();
        shared.AddTo(command);
        var folder = new Option<string>("--out", "-o")
        {
            HelpName = "DIR",
            Description = "the folder to write into; it is made where it is not there",
            Required = true,
        };
        var templates = new Option<string?>("--templates")
        {
            HelpName = "DIR",
            Description = "a folder with page templates of your own, such as cutlist.html",
        };
        command.Options.Insert(0, folder);
        command.Options.Insert(1, templates);
        var numbers = new Option<string?>("--numbers")
        {
            HelpName = "FILE",
            Description =
                "a cut list written by hand (CSV); its numbers are put in place, so that drawing and 3D show them",
        };
        command.Options.Insert(2, numbers);
        command.SetAction(parsed =>
        {
            var wish = new Wish(
                parsed.GetRequiredValue(folder),
                parsed.GetValue(templates),
                shared.IsJson(parsed),
                shared.IsQuiet(parsed)
            );
            var request = shared.Read(parsed);
            if (parsed.GetValue(numbers) is not { } list)
                return Run(request, wish, surroundings);
            var held = new NumbersAction(surroundings).Hold(request, list, wish.Json, out _, out var code);
            return held is null ? code : Run(request with { AsListed = held.Numbers }, wish, surroundings);
        });
        return (command, Page);
    }

    private static int Run(Request request, Wish wish, Surroundings surroundings)
    {
        var proof = new Proof(surroundings);
        var proved = proof.Of(request, wish.Json, out var code);
        if (proved is null)
            return code;
        var template = wish.Templates is null
            ? null
            : InputFile.ReadIfThere(wish.Templates, CutListTemplate, surroundings);
        var outputs = Pipeline.Outputs(proved, template);
        if (outputs.Value is null)
        {
            proof.Say(outputs.Errors, template is null ? [] : [template], wish.Json);
            return ExitCode.InvalidInput;
        }
        var written = OutputFolder.Write(wish.Folder, outputs.Value, surroundings);
        if (wish.Json)
            WriteJson(proved, written, surroundings.Out);
        else
        {
            ReportText.Write(proved, wish.Quiet, surroundings);
            if (!wish.Quiet)
                WriteNames(written, surroundings.Out);
        }
        return proved.Report.StopsTheSaw ? ExitCode.Stop : ExitCode.Fine;
    }

    /// <summary>What is asked of a build besides the piece.</summary>
    private sealed record Wish(string Folder, string? Templates, bool Json, bool Quiet);

    private static void WriteNames(IReadOnlyList<string> written, TextWriter writer)
    {
        writer.WriteLine("Written:");
        foreach (var path in written)
            writer.WriteLine("  " + path);
    }

    private static void WriteJson(ProvedPiece proved, IReadOnlyList<string> written, TextWriter writer) =>
        writer.WriteLine(
            JsonText.Of(json =>
            {
                json.WriteStartObject();
                json.WriteStartArray("files");
                foreach (var path in written)
                    json.WriteStringValue(path);
                json.WriteEndArray();
                json.WritePropertyName("report");
                json.WriteRawValue(Pipeline.FindingsJson(proved).Bytes.Span);
                json.WriteEndObject();
            })
        );
}
