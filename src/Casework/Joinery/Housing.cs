using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// A part let into another over its whole end or edge: dado, groove, rabbet. The entering part is sized to reach in by
/// the depth; the cut takes just the room it wants by its reckoned size, so that a part cut to a wrong number is seen.
/// </summary>
internal static class Housing
{
    /// <summary>Cuts <paramref name="receives"/> to take <paramref name="enters"/> and ties the two.</summary>
    /// <param name="into">The way the entering part goes in.</param>
    /// <param name="play">Room left at the bottom of the cut beyond the entering part.</param>
    /// <param name="roomAt">Directions in which there is as much room beside the entering part.</param>
    /// <param name="through">Directions in which the cut runs on to the end of the receiving part.</param>
    public static Joint Let(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        CutKind kind,
        Direction into,
        Length play = default,
        JointKind? joint = null,
        bool glued = true,
        IReadOnlyList<Direction>? roomAt = null,
        params ReadOnlySpan<Direction> through
    )
    {
        var room =
            Extent.Shared(receives.Reckoned, enters.Reckoned)
            ?? throw new CannotBuildException(
                new InputError(
                    $"The {enters.Name} does not reach into the {receives.Name}.",
                    enters.Source,
                    "sizes, and depths of joints, that leave the one something to go into"
                )
            );
        var depth = room.Size(into.Axis());
        room = room.Grown(into, play);
        foreach (var side in roomAt ?? [])
            room = room.Grown(side, play);
        foreach (var side in through)
            room = room.With(side, receives.Extent.Side(side));
        receives.CutAway(kind, room, piece.NextJointId);
        return piece.Join(joint ?? KindOf(kind), receives, enters, into, depth, play, glued);
    }

    private static JointKind KindOf(CutKind kind) =>
        kind switch
        {
            CutKind.Dado or CutKind.StoppedDado => JointKind.Dado,
            CutKind.Rabbet => JointKind.Rabbet,
            _ => JointKind.Groove,
        };
}
