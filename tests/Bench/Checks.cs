using System.Diagnostics;
using System.Globalization;
using System.Text;
using Dryfit.Casework;
using Dryfit.Inspection;
using Dryfit.Recipe;

namespace Dryfit.Bench;

/// <summary>Times all checks on finished pieces: the starters, and rows of carcases, to see that the cost grows with the parts.</summary>
internal static class Checks
{
    private static readonly int[] Rows = [8, 80, 340];

    public static void Measure(IEnumerable<string> files)
    {
        foreach (var file in files)
            Tell(Path.GetFileName(file), Build(file, File.ReadAllBytes(file)), runs: 15);
        foreach (var carcases in Rows)
            Tell($"row of {carcases}", Build("row.dryfit.yaml", Row(carcases)), runs: carcases > 100 ? 3 : 7);
    }

    private static void Tell(string name, Piece piece, int runs)
    {
        var times = new double[runs];
        for (var run = 0; run < runs; run++)
        {
            var start = Stopwatch.GetTimestamp();
            Inspector.Inspect(piece);
            times[run] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }
        var first = times[0];
        Array.Sort(times);
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{name}: {piece.Parts.Count} parts, median {times[runs / 2]:F1} ms, least {times[0]:F1} ms, first {first:F0} ms; {times[runs / 2] / piece.Parts.Count * 1000:F0} us a part"
            )
        );
    }

    /// <summary>Cupboards side by side, each with doors, a drawer and shelves.</summary>
    private static byte[] Row(int carcases)
    {
        var text = new StringBuilder(
            """
            piece: A row of cupboards
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5, boxes: { sheet: birch plywood, called: 12, actual: 12 }, bottoms: { sheet: birch plywood, called: 6.5, actual: 6.5 } }
            carcases:

            """
        );
        for (var n = 1; n <= carcases; n++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  case {n}:\n");
            if (n > 1)
                text.Append(CultureInfo.InvariantCulture, $"    right of: case {n - 1}\n");
            text.Append("    size: [600, 900, 500]\n    shelves: { adjustable: 1 }\n");
            text.Append("    front: { rows: [ { height: 160, drawer }, { doors: slab pair } ] }\n");
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static Piece Build(string file, byte[] text)
    {
        var piece = Design.Build(RecipeReader.Read(file, text).Value!, null, DesignOptions.Plain);
        return piece.Value ?? throw new InvalidOperationException(piece.Errors[0].Message);
    }
}
