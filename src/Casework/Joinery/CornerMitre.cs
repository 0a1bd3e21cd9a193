using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// Two boards that go round an outside corner and meet in a mitre: the seam runs from the inner to the outer corner, at 45
/// degrees where both are equally thick.
/// </summary>
internal static class CornerMitre
{
    /// <summary>Cuts both ends and ties them. Both boards reach to the outer corner.</summary>
    /// <param name="end">The end of <paramref name="receives"/> at the corner, as a direction of the piece.</param>
    /// <param name="otherEnd">The end of <paramref name="enters"/> at the corner.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        Direction end,
        PartDraft enters,
        Direction otherEnd
    )
    {
        var joint = piece.NextJointId;
        EndMitre.Cut(receives, end, otherEnd, enters.Reckoned.Size(end.Axis()), joint);
        EndMitre.Cut(enters, otherEnd, end, receives.Reckoned.Size(otherEnd.Axis()), joint);
        return piece.Join(JointKind.Mitre, receives, enters, otherEnd);
    }
}
