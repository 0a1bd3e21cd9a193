using System.Diagnostics;
using System.Globalization;
using Dryfit.Slips;

namespace Dryfit.Bench;

/// <summary>Makes the slips of the slip bench and prints its tables.</summary>
internal static class Slipping
{
    private const int Draws = 5;

    public static void Measure()
    {
        var start = Stopwatch.GetTimestamp();
        var bench = new SlipBench();
        Console.Write(SlipTable.Write([.. bench.Run()]));
        var (built, raised) = FalseAlarms.Count(bench, Draws);
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"\nFalse alarms: {raised.Count} on {built} sound pieces under random parameters. In all {Stopwatch.GetElapsedTime(start).TotalSeconds:F0} s."
            )
        );
        Console.WriteLine("Not wholly found yet:");
        foreach (var (kind, why) in NotYetFound.Kinds)
            Console.WriteLine($"- {kind}: {why}");
    }
}
