using Dryfit.Solids.Measuring;

namespace Dryfit.Solids;

/// <summary>Measures how two placed solids stand to each other. World coordinates, grid units.</summary>
public static class Pair
{
    /// <summary>What the two share: volume, how deep they stand in each other, and the box around it; null where they do not
    /// overlap (touching is not overlapping).</summary>
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

/// <summary>What two solids a and b share.</summary>
/// <param name="Volume">Cubic grid units; rounding of sums where cuts are square, else that of corners rounded once.</param>
/// <param name="Depth">
/// How far a has to be moved along <paramref name="Way"/> until the two share nothing; grid units. It is the least such distance
/// over the axes of either board, there and back: exactly so for boards along the axes with square cuts; for others it cannot
/// be shortened (a moved any less along that way still overlaps), but a nearer gap that a might slip into may be passed over.
/// For two plain boards along each other no way at a slant is shorter; for others one may be.
/// </param>
/// <param name="Way">The unit direction of that way, world coordinates.</param>
/// <param name="Bounds">The box around what they share, world coordinates.</param>
public sealed record Overlap(double Volume, double Depth, Vec3 Way, Box Bounds);

/// <summary>A distance with its two ends.</summary>
public sealed record Gap(double Distance, Vec3 OnA, Vec3 OnB);
