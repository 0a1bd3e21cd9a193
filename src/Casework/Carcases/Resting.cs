using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;

namespace Dryfit.Casework.Carcases;

/// <summary>Ties bodies that stand on each other or side by side, wherever their parts really share a face.</summary>
internal static class Resting
{
    /// <summary>Ties parts of an upper body to what they stand on.</summary>
    public static void On(
        PieceBuilder piece,
        IEnumerable<PartDraft> lower,
        IReadOnlyList<PartDraft> upper,
        JointKind kind
    )
    {
        foreach (var below in lower)
        {
            foreach (var above in upper)
            {
                if (!ShareFace(below, above, Direction.Up))
                    continue;
                if (kind == JointKind.Screwed)
                    Screws.Between(piece, below, above, Direction.Down, 2);
                else
                    piece.Join(kind, below, above, Direction.Down, glued: false);
            }
        }
    }

    /// <summary>Screws two carcases together where a side of one lies against a side of the other.</summary>
    public static void Beside(PieceBuilder piece, PartDraft left, PartDraft right)
    {
        if (ShareFace(left, right, Direction.Right))
            Screws.Between(piece, left, right, Direction.Left, 4);
    }

    /// <summary>Whether a part lies against the given side of another, with some area: no end without a face of its own, no part that leans.</summary>
    public static bool ShareFace(PartDraft a, PartDraft b, Direction side) =>
        a.Turn == b.Turn
        && !a.HasNoFace(side)
        && !b.HasNoFace(side.Opposite())
        && ShareFace(a.Reckoned, b.Reckoned, side);

    /// <summary>Whether <paramref name="b"/> lies against <paramref name="a"/> on the given side of it, with some area.</summary>
    public static bool ShareFace(Extent a, Extent b, Direction side)
    {
        if (a.Side(side) != b.Side(side.Opposite()))
            return false;
        foreach (var axis in (ReadOnlySpan<Axis>)[Axis.X, Axis.Y, Axis.Z])
        {
            if (axis == side.Axis())
                continue;
            if (Length.Min(a.Max[axis], b.Max[axis]) <= Length.Max(a.Min[axis], b.Min[axis]))
                return false;
        }
        return true;
    }
}
