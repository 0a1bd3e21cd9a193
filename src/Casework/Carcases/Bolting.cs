using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Words;
using Dryfit.Findings;

namespace Dryfit.Casework.Carcases;

/// <summary>Bolts carcases together that come apart again: a tall piece in sections, a run carried in one by one.</summary>
internal static class Bolting
{
    /// <summary>Bolts the bottom of an upper carcase to what closes the lower one; the rest lies on it.</summary>
    public static void On(
        PieceBuilder piece,
        Body lower,
        IReadOnlyList<PartDraft> lowerParts,
        Body upper,
        IReadOnlyList<PartDraft> upperParts,
        GroupDraft upperGroup
    )
    {
        var isBolted = false;
        foreach (var below in lowerParts.Where(p => p.Reckoned.Max.Z == lower.Envelope.Max.Z))
        {
            foreach (var above in upperParts.Where(p => p.Reckoned.Min.Z == upper.Envelope.Min.Z))
            {
                if (!Resting.ShareFace(below, above, Direction.Up))
                    continue;
                if (above.Role == Role.Bottom && below.Role is Role.Top or Role.Stretcher)
                {
                    Bolts.Between(piece, below, above, Direction.Down);
                    isBolted = true;
                }
                else
                {
                    piece.Join(JointKind.Resting, below, above, Direction.Down, glued: false);
                }
            }
        }
        if (!isBolted)
            throw new CannotBuildException(
                new InputError(
                    $"The {upper.Name} has no bottom that lies on what closes the {lower.Name}: there is nothing to bolt.",
                    upperGroup.Source,
                    "an upper section that stands on its own bottom, without face frame or stand under it"
                )
            );
    }

    /// <summary>Bolts two sides that lie against each other.</summary>
    public static void Beside(PieceBuilder piece, PartDraft left, PartDraft right)
    {
        if (Resting.ShareFace(left, right, Direction.Right))
            Bolts.Between(piece, left, right, Direction.Left);
    }
}
