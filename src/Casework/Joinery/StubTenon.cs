using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// A stub tenon at the end of a member, as thick as the groove that runs along the other: the joint of framed doors.
/// The groove itself is cut by whoever grooves the member; here the end gets its shoulders.
/// </summary>
internal static class StubTenon
{
    /// <summary>Leaves a tenon at one end of <paramref name="enters"/> and ties it into the groove.</summary>
    /// <param name="into">Which way the tenon points.</param>
    /// <param name="length">Length of the tenon.</param>
    /// <param name="through">The axis of the thickness.</param>
    /// <param name="from">Where the tenon begins on that axis, in the piece.</param>
    /// <param name="to">Where it ends.</param>
    public static Joint At(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Length length,
        Axis through,
        Length from,
        Length to
    )
    {
        var joint = piece.NextJointId;
        var end = enters.Extent.With(into.Opposite(), enters.Extent.Side(into) - (length * into.Sign()));
        var before = Directions.Along(through, 1);
        if (from > end.Min[through])
            enters.CutAway(CutKind.Shoulder, end.With(before, from), joint);
        if (to < end.Max[through])
            enters.CutAway(CutKind.Shoulder, end.With(before.Opposite(), to), joint);
        return piece.Join(JointKind.StubTenon, receives, enters, into, length);
    }
}
