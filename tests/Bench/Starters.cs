using System.Diagnostics;
using System.Globalization;
using Dryfit.Casework;
using Dryfit.Inspection;
using Dryfit.Outputs.CutList;
using Dryfit.Outputs.Findings;
using Dryfit.Outputs.FrontView;
using Dryfit.Outputs.Glb;
using Dryfit.Outputs.PartsList;
using Dryfit.Recipe;

namespace Dryfit.Bench;

/// <summary>Times the whole way from the text of a recipe to the bytes of all its files, in one process.</summary>
internal static class Starters
{
    private const int Runs = 25;

    public static void Measure(IEnumerable<string> files)
    {
        foreach (var file in files)
        {
            var text = File.ReadAllBytes(file);
            var times = new double[Runs];
            for (var run = 0; run < Runs; run++)
            {
                var start = Stopwatch.GetTimestamp();
                Build(file, text);
                times[run] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            }
            var first = times[0];
            Array.Sort(times);
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Path.GetFileName(file)}: median {times[Runs / 2]:F0} ms, least {times[0]:F0} ms, first {first:F0} ms"
                )
            );
        }
    }

    private static void Build(string file, byte[] text)
    {
        var piece = Design.Build(RecipeReader.Read(file, text).Value!, null, DesignOptions.Plain).Value!;
        var report = Inspector.Inspect(piece);
        GlbWriter.Write(piece);
        PartsCsv.Write(piece);
        PartsJson.Write(piece);
        CutListHtml.Write(piece, report, null);
        FrontSvg.Write(piece, report);
        FindingsJson.Write(piece, report);
    }
}
