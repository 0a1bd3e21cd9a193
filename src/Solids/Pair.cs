using Dryfit.Solids.Measuring;

namespace Dryfit.Solids;

/// <summary>Measures how two placed solids stand to each other. World coordinates, grid units.</summary>
public static class Pair
{
    /// <summary>What the two share: volume, how deep (the shortest way to pull them apart along an axis of either), and
    /// the box around it; null where they do not overlap (touching is not overlapping).</summary>
    public static Overlap? Overlap(Placed a, Placed b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return SharedVolume.Measure(a, b);
    }

    /// <summary>The smallest distance between them with the two points; 0 where they touch or overlap; null where it is
    /// more than <paramref name="cap"/>.</summary>
    public static Gap? Gap(Placed a, Placed b, double cap)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return Clearance.Measure(a, b, cap);
    }

    /// <summary>How far <paramref name="a"/> can move along the unit <paramref name="direction"/> until it first meets
    /// <paramref name="b"/>, with the two points that meet; 0 where they touch on that side, negative never (an overlap is
    /// 0); null where it never meets it or later than <paramref name="cap"/>.</summary>
    public static Gap? GapAlong(Placed a, Placed b, Vec3 direction, double cap)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return WayAlong.Measure(a, b, direction, cap);
    }
}

/// <summary>What two solids share.</summary>
public sealed record Overlap(double Volume, double Depth, Box Bounds);

/// <summary>A distance with its two ends.</summary>
public sealed record Gap(double Distance, Vec3 OnA, Vec3 OnB);
