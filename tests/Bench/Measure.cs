using System.Diagnostics;

namespace Dryfit.Bench;

/// <summary>Runs and times the work.</summary>
internal static class Measure
{
    /// <summary>Long enough for the compiler to have done its best.</summary>
    public static void Warm(Work work)
    {
        var start = Stopwatch.GetTimestamp();
        do
        {
            work.BuildAll();
            work.BuildAllOnAllCores();
            work.ChangeOneCarcass();
            work.MeasurePairs();
        } while (Stopwatch.GetElapsedTime(start).TotalSeconds < 3);
    }

    public static void Round(Work work, Times times)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        Time(times, "build", work.BuildAll);
        times.BytesPerPart = (GC.GetAllocatedBytesForCurrentThread() - before) / work.Solids.Length;
        for (var i = 0; i < 4; i++)
        {
            Time(times, "build", work.BuildAll);
        }

        for (var i = 0; i < 5; i++)
        {
            Time(times, "build on all cores", work.BuildAllOnAllCores);
        }

        for (var i = 0; i < 5; i++)
        {
            Time(times, "one carcass changed", () => work.ChangeOneCarcass());
        }

        if (work.HasPairs)
        {
            Time(times, "pairs", work.MeasurePairs);
        }
    }

    private static void Time(Times times, string what, Action work)
    {
        var start = Stopwatch.GetTimestamp();
        work();
        times.Add(what, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }
}
