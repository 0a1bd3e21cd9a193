using System.Runtime.ExceptionServices;

namespace Dryfit.Solids.Shaping;

/// <summary>Builds many boards on all cores: each takes the next few from one list until none are left, the boards with most to do
/// first, so that all are done at about the same time.</summary>
internal static class Crew
{
    // Taking some is an atomic step on memory that all cores share; so is writing solids next to each other.
    private const int Few = 4;

    // Below this many boards a core, waking it takes longer than it saves.
    private const int LeastForACore = 8;

    public static Solid[] Build(IReadOnlyList<(Vec3 Size, IReadOnlyList<Cut> Cuts)> boards)
    {
        var solids = new Solid[boards.Count];
        var workers = Math.Min(Environment.ProcessorCount, boards.Count / LeastForACore);
        if (workers < 2)
        {
            for (var i = 0; i < solids.Length; i++)
            {
                solids[i] = SolidBuilder.Build(boards[i].Size, boards[i].Cuts);
            }

            return solids;
        }

        var order = MostFirst(boards);
        var taken = 0;
        var faults = new Exception?[solids.Length];
        Parallel.For(
            0,
            workers,
            _ =>
            {
                for (int from; (from = Interlocked.Add(ref taken, Few) - Few) < order.Length; )
                {
                    foreach (var i in order.AsSpan(from, Math.Min(Few, order.Length - from)))
                    {
                        try
                        {
                            solids[i] = SolidBuilder.Build(boards[i].Size, boards[i].Cuts);
                        }
                        catch (Exception fault) when (fault is ArgumentException or NotSupportedException)
                        {
                            faults[i] = fault;
                        }
                    }
                }
            }
        );
        if (Array.Find(faults, fault => fault is not null) is { } first)
        {
            ExceptionDispatchInfo.Throw(first);
        }

        return solids;
    }

    private static int[] MostFirst(IReadOnlyList<(Vec3 Size, IReadOnlyList<Cut> Cuts)> boards)
    {
        var order = new int[boards.Count];
        var work = new int[boards.Count];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
            for (var c = 0; c < boards[i].Cuts.Count; c++)
            {
                // As many corners as there are to be written, about; those with most get the lowest keys.
                work[i] -= boards[i].Cuts[c] switch
                {
                    BoreCut bore => bore.Segments,
                    PrismCut prism => 4 * prism.Outline.Count,
                    _ => 8,
                };
            }
        }

        Array.Sort(work, order);
        return order;
    }
}
