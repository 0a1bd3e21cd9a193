using Dryfit.Solids.Measuring;

namespace Dryfit.Solids;

/// <summary>Measures a part on its way past others. World coordinates, grid units; shares run from 0 at the start of the
/// motion to 1 at its end.</summary>
public static class Sweep
{
    /// <summary>
    /// The smallest gap between a moving part and one that stands, over the whole motion: found to within
    /// <paramref name="within"/> of the true least one, and never less than that. 0 where they touch or overlap on the way;
    /// null where they never come nearer than <paramref name="cap"/>.
    /// </summary>
    /// <remarks>A part of the way on which no point moves further than what is to spare needs no closer look; the rest is
    /// halved until it does (branch and bound).</remarks>
    public static SweptGap? LeastGap(Placed moving, Motion motion, Placed standing, double cap, double within) =>
        new GapOverWay(moving, motion, standing, cap, within).Least();

    /// <summary>
    /// The largest gap that there is at any one time of the motion: found to within <paramref name="within"/> of the true one,
    /// and never more than that; null where at some time they are further apart than <paramref name="cap"/>.
    /// </summary>
    public static SweptGap? GreatestGap(Placed moving, Motion motion, Placed standing, double cap, double within) =>
        new GapOverWay(moving, motion, standing, cap, within).Greatest();

    /// <summary>
    /// Where a part on its way first runs into one of others; null where it never does. A slide is exact, and what it only
    /// slides along is not met. A turn has met another when it stands in it by more than <paramref name="within"/>, and is told
    /// at the latest when any point of it has moved by half of that since; one that starts so is met at 0.
    /// </summary>
    /// <param name="within">Above 0; the smaller, the longer a turn takes that stays near something.</param>
    public static Meeting? FirstMeeting(Placed moving, Motion motion, IReadOnlyList<Placed> others, double within)
    {
        ArgumentNullException.ThrowIfNull(moving);
        ArgumentNullException.ThrowIfNull(motion);
        ArgumentNullException.ThrowIfNull(others);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(within);
        return MeetingFinder.First(moving, motion, others, within);
    }

    /// <summary>The box around all places that a moving part comes through: exact for the corners of the solid, to rounding.
    /// </summary>
    public static Box Room(Placed moving, Motion motion)
    {
        ArgumentNullException.ThrowIfNull(moving);
        ArgumentNullException.ThrowIfNull(motion);
        var corners = moving.Solid.Vertices.Select(moving.Frame.ToWorld).Select(motion.Around).ToList();
        return corners.Count == 0
            ? default
            : corners.Aggregate((a, b) => new(Vec3Order.Least(a.Min, b.Min), Vec3Order.Most(a.Max, b.Max)));
    }
}

/// <summary>A gap at one time of a motion: how far, after what share (0 to 1) of the way, and between which points.</summary>
public sealed record SweptGap(double Distance, double Share, Vec3 OnMoving, Vec3 OnStanding);

/// <summary>Where a moving part runs into another: which one, after what share (0 to 1) of the way, and at which point.</summary>
public sealed record Meeting(int Other, double Share, Vec3 At);
