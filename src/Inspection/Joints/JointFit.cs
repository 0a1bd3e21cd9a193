using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>How the two parts of a joint meet, measured on their solids along the way the one goes into the other.</summary>
/// <param name="Overlap">What the two share; null where they do not.</param>
/// <param name="Gap">How far the entering part can still go before it meets the other; null where they overlap, or
/// where it never meets it.</param>
/// <param name="Mouth">Where the receiving part begins, along the way in, grid units.</param>
/// <param name="Reach">How far the entering part reaches, along the same way.</param>
internal sealed record JointFit(
    Joint Joint,
    Shape Receives,
    Shape Enters,
    Overlap? Overlap,
    Gap? Gap,
    double? Mouth,
    double Reach
)
{
    /// <summary>How far an entering part is followed: much farther than any slip leaves a joint open.</summary>
    private const double FollowedMm = 300;

    /// <summary>How far beside the entering part the lips of a groove are looked for.</summary>
    private const double LipMm = 10;

    /// <summary>How deep the entering part is in; below zero where it stays outside; null where nothing is before it.</summary>
    public double? Engagement => Reach - Mouth;

    /// <summary>Room left in the direction of entry: below zero where the two overlap; null where they never meet.</summary>
    public double? Room => Overlap is { } shared ? -Deep(shared) : Gap?.Distance;

    /// <summary>Whether the overlap begins where the receiving part begins, and not at the bottom of a groove.</summary>
    public bool OverlapsFromTheMouth(double within) =>
        Overlap is { } shared && Mouth is { } mouth && shared.Bounds.Reach(Joint.Into.Opposite()) >= -mouth - within;

    /// <summary>Whether the overlap goes on to the very end of the entering part.</summary>
    public bool OverlapsToTheEnd(double within) =>
        Overlap is { } shared && shared.Bounds.Reach(Joint.Into) >= Reach - within;

    /// <summary>Whether the two hold each other: they touch, or stand no farther apart than they may.</summary>
    public bool Ties(double play, double within) =>
        Overlap is not null
        || (Gap is { } gap && gap.Distance <= play + within)
        || (Joint.Kind == JointKind.Loose && Joint.Engagement.Sign > 0 && Engagement > within);

    /// <summary>The size of what is shared, along the way in.</summary>
    public double Deep(Overlap shared) => shared.Bounds.Size(Joint.Into.Axis());

    /// <summary>Whether less than half of the entering part's thickness stands in the other: it is then too thick for its
    /// groove; what stands in with more has missed it.</summary>
    public bool IsThickByLessThanHalf => Overlap is { } shared && Thin(shared) * 2 < Thin(Enters.Box);

    /// <summary>The thinnest side of what is shared: how much too thick a part is for its groove.</summary>
    public static double Thin(Overlap shared) => Thin(shared.Bounds);

    private static double Thin(Box box) => Math.Min(box.Size(Axis.X), Math.Min(box.Size(Axis.Y), box.Size(Axis.Z)));

    public static JointFit Measure(InspectedPiece piece, Joint joint)
    {
        var receives = piece.Shape(joint.Receives);
        var enters = piece.Shape(joint.Enters);
        var overlap = piece.Overlap(receives, enters);
        var reach = FindReach(receives, enters, joint.Into);
        // What a shaving takes off is no overlap: the two touch. At an angle, faces meet to within the rounding of roots.
        var shaving = piece.ToUnits(Tolerance.Fitting);
        Gap? gap = null;
        if (overlap is null)
            gap = Pair.GapAlong(enters.Placed, receives.Placed, joint.Into.Unit(), FollowedMm * piece.Grid.UnitsPerMm);
        else if (joint.Kind != JointKind.Loose && IsClear(receives, Moved(enters, joint.Into, -shaving)))
            (gap, overlap) = (new Gap(0, overlap.Bounds.Centre(), overlap.Bounds.Centre()), null);
        else if (ThinAcross(overlap, joint.Into) <= shaving)
            (gap, overlap) = (PastAShaving(receives, enters, joint.Into, reach, shaving), null);
        var mouth = FindMouth(receives, enters, joint.Into, LipMm * piece.Grid.UnitsPerMm);
        return new(joint, receives, enters, overlap, gap, mouth, reach);
    }

    /// <summary>How much too thick a part is for its groove, the way in left aside.</summary>
    private static double ThinAcross(Overlap shared, Direction into) =>
        Enum.GetValues<Axis>().Where(axis => axis != into.Axis()).Min(axis => shared.Bounds.Size(axis));

    private static bool IsClear(Shape receives, Placed enters) => Pair.Overlap(receives.Placed, enters) is null;

    private static Placed Moved(Shape shape, Direction way, double by) =>
        new(shape.Placed.Solid, shape.Placed.Frame with { Origin = shape.Placed.Frame.Origin + (way.Unit() * by) });

    /// <summary>How far a part whose cheeks want a shaving more can go: to the next face that is more than an edge of its
    /// own before it.</summary>
    private static Gap? PastAShaving(Shape receives, Shape enters, Direction into, double reach, double shaving)
    {
        double? next = null;
        foreach (var triangle in receives.Facing(into.Opposite(), Shape.AtAnySlant))
        {
            var at = -Far(triangle, into.Opposite());
            if (
                at >= reach - shaving - Skin
                && at < (next ?? double.MaxValue)
                && Beside(triangle, enters.Box, into.Axis(), -2 * shaving)
            )
                next = at;
        }
        var end = enters.Box.Centre().With(into, reach);
        return next is { } bottom ? new(Math.Max(0, bottom - reach), end, end.With(into, bottom)) : null;
    }

    private static double FindReach(Shape receives, Shape enters, Direction into)
    {
        var reach = double.MinValue;
        foreach (var triangle in enters.Facing(into, Shape.AtAnySlant))
        {
            if (Beside(triangle, receives.Box, into.Axis(), 0))
                reach = Math.Max(reach, Far(triangle, into));
        }
        return reach == double.MinValue ? enters.Box.Reach(into) : reach;
    }

    private static double? FindMouth(Shape receives, Shape enters, Direction into, double lip)
    {
        var rear = -enters.Box.Reach(into.Opposite());

        // A hollow body has walls behind the entering part too: whatever ends behind it does not receive it.
        var behind = double.MinValue;
        foreach (var triangle in receives.Facing(into, Shape.AtAnySlant))
        {
            if (Far(triangle, into) <= rear + Skin && Beside(triangle, enters.Box, into.Axis(), 0))
                behind = Math.Max(behind, Far(triangle, into));
        }

        double? mouth = null;
        foreach (var triangle in receives.Facing(into.Opposite(), Shape.AtAnySlant))
        {
            var at = -Far(triangle, into.Opposite());
            if (at >= behind && at < (mouth ?? double.MaxValue) && Beside(triangle, enters.Box, into.Axis(), lip))
                mouth = at;
        }
        return mouth;
    }

    /// <summary>Far below a grid unit and far above rounding.</summary>
    private const double Skin = 1e-3;

    private static double Far(Triangle t, Direction way) =>
        Math.Max(t.A.Along(way), Math.Max(t.B.Along(way), t.C.Along(way)));

    /// <summary>Whether a triangle and a box meet when looked at along an axis, the box grown by a margin.</summary>
    private static bool Beside(Triangle t, Box box, Axis axis, double margin)
    {
        var around = Boxes.Of([t.A, t.B, t.C]);
        for (var other = Axis.X; other <= Axis.Z; other++)
        {
            if (other == axis)
                continue;
            var on = other.Measured();
            if (around.Min.On(on) > box.Max.On(on) + margin || around.Max.On(on) < box.Min.On(on) - margin)
                return false;
        }
        return true;
    }
}
