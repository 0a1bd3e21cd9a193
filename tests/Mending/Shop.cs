using System.Text;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Inspection;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Mending.Tests;

/// <summary>A recipe, words beside it, and what mending them gives.</summary>
internal static class Shop
{
    public const string File = "hall.dryfit.yaml";

    /// <summary>A frameless cupboard whose doors are (764 + 16.5 - 3 + 16.5) / 2 = 397 wide.</summary>
    public const string Cupboard = """
        piece: Hall cupboard
        units: mm
        parameters:
          width: { default: 800, from: 600, to: 1000, note: outside }
        materials: { body: birch plywood 18, backs: birch plywood 6.5 }
        carcases:
          cupboard:
            size: [width, 900, 350]
            front: { doors: slab pair }

        """;

    /// <summary>A frameless cupboard with a drawer of 160 over another; side slides want 12 under the box and 12 over it.</summary>
    public static string Drawers(string parameters, string boxHeight) =>
        $$"""
            piece: Drawers
            units: mm
            parameters:
              w: { default: 600 }
              {{parameters}}
            materials: { body: birch plywood 18, backs: birch plywood 6.5, boxes: birch plywood 12 }
            carcases:
              low:
                size: [w, 900, 500]
                front:
                  rows:
                    - { height: 160, drawer: { box height: {{boxHeight}} } }
                    - { doors: slab pair }

            """;

    /// <summary>The report with what would mend it.</summary>
    public static Report Mend(string recipe, params (string Name, string Text)[] words) => Mend(recipe, 200, words);

    public static Report Mend(string recipe, int mostBuilds, params (string Name, string Text)[] words)
    {
        SourceText[] texts = [Text(File, recipe), .. words.Select(word => Text(word.Name, word.Text))];
        var now = Build(new Attempt(texts, AsReckoned: false), out var understood);
        return Mender.Mend(
            new Job
            {
                Texts = texts,
                Understood = understood,
                Now = now ?? throw new InvalidOperationException("The recipe cannot be built."),
                Build = attempt => Build(attempt, out _),
                MostBuilds = mostBuilds,
            }
        );
    }

    /// <summary>The edits of a report as the diff would show them: <c>12: 390 -> 397</c>.</summary>
    public static IEnumerable<string> Said(this Report report) =>
        report.Mended!.Edits.Select(edit => $"{edit.Place.Line}: {edit.OldText} -> {edit.NewText}");

    public static SourceText Text(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    private static Tried? Build(Attempt attempt, out IReadOnlyList<Understood> understood)
    {
        understood = [];
        var tree = RecipeReader.Read(attempt.Texts[0].Name, attempt.Texts[0].Bytes);
        if (tree.Value is null)
            return null;
        var options = DesignOptions.Plain with { Files = new Beside(attempt.Texts), AsReckoned = attempt.AsReckoned };
        var piece = Design.Build(tree.Value, null, options, out var scope);
        understood = Understood.List(scope);
        return piece.Ok ? new Tried(piece.Value!, Inspector.Inspect(piece.Value!)) : null;
    }

    private sealed class Beside(IReadOnlyList<SourceText> texts) : INeighbourFiles
    {
        public NeighbourFile Read(string path) =>
            texts.FirstOrDefault(text => text.Name == path) is { } text
                ? new(text.Name, text.Bytes)
                : new(path, ReadOnlyMemory<byte>.Empty, "It is not there.");
    }
}
