namespace Dryfit.Solids.Measuring;

/// <summary>The smallest distance between two placed solids.</summary>
internal static class Clearance
{
    // Distances of axis planes come out exact; the others are right to a few units of the last place of the coordinates. What
    // is closer than this part of the largest coordinate touches.
    private const double Touching = 1.0 / (1L << 46);

    public static Gap? Measure(Placed a, Placed b, double cap)
    {
        if (SharedVolume.WorldBounds(a).SquaredDistance(SharedVolume.WorldBounds(b)) > cap * cap)
        {
            return null;
        }

        var first = new WorldMesh(a);
        var second = new WorldMesh(b);
        if (first.Count == 0 || second.Count == 0)
        {
            return null;
        }

        // The least distance above the cap that can still be found.
        var best = Math.BitIncrement(cap * cap);
        Gap? gap = null;
        var near = second.Near(first.Bounds, cap);
        foreach (var s in first.Near(second.Bounds, cap))
        {
            foreach (var t in near)
            {
                if (s.Bounds.SquaredDistance(t.Bounds) >= best)
                {
                    continue;
                }

                var squared = Closest.Points(in s, in t, best, out var p, out var q);
                if (squared < best)
                {
                    best = squared;
                    gap = new(Math.Sqrt(squared), p, q);
                    if (best == 0)
                    {
                        return gap;
                    }
                }
            }
        }

        if (
            gap is not null
            && gap.Distance <= Touching * Math.Max(Shaping.Reach.Of(gap.OnA), Shaping.Reach.Of(gap.OnB))
        )
        {
            return gap with { Distance = 0 };
        }

        // No surface meets, but one may be inside the other.
        if (SharedVolume.Common(a, b) is { } common)
        {
            var point = common.Vertices[0];
            return new(0, point, point);
        }

        return gap;
    }
}
