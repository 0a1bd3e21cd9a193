using Dryfit.Casework.Building;

namespace Dryfit.Casework.Joinery;

/// <summary>Two parts cut to half of their thickness where the one lies over the other: the front half of the receiving
/// part stays, the back half of the entering one.</summary>
internal static class HalfLap
{
    /// <summary>Cuts both parts where they share their place, and ties them.</summary>
    /// <param name="into">The way the entering part goes over the other.</param>
    /// <param name="over">The axis of the thickness.</param>
    public static Joint Between(PieceBuilder piece, PartDraft receives, PartDraft enters, Direction into, Axis over)
    {
        if (Extent.Shared(receives.Reckoned, enters.Reckoned) is not { } room)
            return Meeting.Missed(piece, JointKind.Lap, receives, enters, into);
        var joint = piece.NextJointId;
        var half = (room.Min[over] + room.Max[over]) / 2;
        enters.CutAway(CutKind.Lap, room.With(Directions.Along(over, 1), half), joint);
        receives.CutAway(CutKind.Lap, room.With(Directions.Along(over, -1), half), joint);
        return piece.Join(JointKind.Lap, receives, enters, into, room.Size(into.Axis()));
    }
}
