using Dryfit.Casework.Building;
using Dryfit.Casework.Words;

namespace Dryfit.Casework.Carcases;

/// <summary>Ties bodies that stand on each other or side by side.</summary>
internal static class Neighbours
{
    public static void Tie(PieceBuilder piece, IReadOnlyList<(Body Body, GroupDraft Group)> bodies)
    {
        foreach (var (lower, lowerGroup) in bodies)
        {
            foreach (var (other, otherGroup) in bodies)
            {
                if (lower == other)
                    continue;
                if (lower.Turn != other.Turn)
                {
                    if (other.Envelope.Min.Z == lower.Envelope.Max.Z)
                        OnAtAnAngle(lower, lowerGroup, other, otherGroup);
                    continue;
                }
                if (other.Envelope.Min.Z == lower.Envelope.Max.Z)
                    Resting.On(
                        piece,
                        PartsOf(lowerGroup).Where(p => p.Reckoned.Max.Z == lower.Envelope.Max.Z),
                        [.. PartsOf(otherGroup).Where(p => p.Reckoned.Min.Z == other.Envelope.Min.Z)],
                        JointKind.Resting
                    );
                if (other.Envelope.Min.X == lower.Envelope.Max.X)
                    SideBySide(lowerGroup, otherGroup);
            }
        }

        IEnumerable<PartDraft> PartsOf(GroupDraft group) =>
            piece.Parts.Where(p => p.Group == group || p.Group.Parent == group);

        void OnAtAnAngle(Body lower, GroupDraft lowerGroup, Body upper, GroupDraft upperGroup)
        {
            foreach (var below in PartsOf(lowerGroup).Where(p => p.Reckoned.Max.Z == lower.Envelope.Max.Z).ToList())
            {
                foreach (var above in PartsOf(upperGroup).Where(p => p.Reckoned.Min.Z == upper.Envelope.Min.Z).ToList())
                {
                    if (Footprint.Of(below).Meets(Footprint.Of(above)))
                        piece.Join(JointKind.Resting, below, above, Direction.Down, glued: false);
                }
            }
        }

        void SideBySide(GroupDraft left, GroupDraft right)
        {
            foreach (var a in PartsOf(left).Where(p => p.Role == Role.Side).ToList())
            {
                foreach (var b in PartsOf(right).Where(p => p.Role == Role.Side).ToList())
                    Resting.Beside(piece, a, b);
            }
        }
    }
}
