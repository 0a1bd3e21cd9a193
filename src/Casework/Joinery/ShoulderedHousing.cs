using Dryfit.Casework.Building;
using Dryfit.Findings;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// A housing for half of the entering part's thickness: a shoulder on its upper side hides the edge of the cut, and a panel
/// that measures more or less than it is called still fits.
/// </summary>
internal static class ShoulderedHousing
{
    /// <summary>Cuts both parts and ties them; the entering part reaches in by the depth of the housing.</summary>
    /// <param name="into">The way the entering part goes in.</param>
    /// <param name="thick">The axis of its thickness.</param>
    public static Joint Let(PieceBuilder piece, PartDraft receives, PartDraft enters, Direction into, Axis thick)
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
        var joint = piece.NextJointId;
        var depth = room.Size(into.Axis());
        var up = Directions.Along(thick, 1);
        var tongue = (room.Size(thick) / 2).RoundTo(MarkingOut.StepOf(piece));
        enters.CutAway(
            CutKind.Shoulder,
            enters
                .Extent.With(into.Opposite(), enters.Extent.Side(into) - (depth * into.Sign()))
                .With(up.Opposite(), room.Min[thick] + tongue),
            joint
        );
        var housing = room.With(up, room.Min[thick] + tongue);
        receives.CutAway(CutKind.Dado, housing, joint);
        return piece.Join(JointKind.Dado, receives, enters, into, depth);
    }
}
