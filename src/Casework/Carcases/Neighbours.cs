using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
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
                    if (other.Spot.Neighbour == lower.Name)
                        AgainstBlindEnd(lowerGroup, other, otherGroup);
                    if (other.Envelope.Min.Z == lower.Envelope.Max.Z)
                        OnAtAnAngle(lower, lowerGroup, other, otherGroup);
                    continue;
                }
                if (other.Envelope.Min.Z == lower.Envelope.Max.Z && IsBoltedTo(other, lower))
                    Bolting.On(piece, lower, [.. PartsOf(lowerGroup)], other, [.. PartsOf(otherGroup)], otherGroup);
                else if (other.Envelope.Min.Z == lower.Envelope.Max.Z)
                    Resting.On(
                        piece,
                        PartsOf(lowerGroup).Where(p => p.Reckoned.Max.Z == lower.Envelope.Max.Z),
                        [.. PartsOf(otherGroup).Where(p => p.Reckoned.Min.Z == other.Envelope.Min.Z)],
                        JointKind.Resting
                    );
                if (other.Envelope.Min.X == lower.Envelope.Max.X || ClosesTheGap(lower, lowerGroup, other, otherGroup))
                    SideBySide(lowerGroup, otherGroup, isBolted: IsBoltedTo(lower, other) || IsBoltedTo(other, lower));
            }
        }

        IEnumerable<PartDraft> PartsOf(GroupDraft group) =>
            piece.Parts.Where(p => p.Group == group || p.Group.Parent == group);

        bool ClosesTheGap(Body left, GroupDraft leftGroup, Body right, GroupDraft rightGroup) =>
            (right.Spot.Neighbour == left.Name && PartsOf(rightGroup).Any(p => p.Role == Role.Filler))
            || (left.Spot.Neighbour == right.Name && PartsOf(leftGroup).Any(p => p.Role == Role.Filler));

        void AgainstBlindEnd(GroupDraft corner, Body body, GroupDraft group)
        {
            var blind = PartsOf(corner).FirstOrDefault(p => p.Role == Role.BlindPanel);
            var filler = PartsOf(group).FirstOrDefault(p => p.Role == Role.Filler);
            if (body.Spot.Touches && blind is null)
                AgainstDiagonalEnd(corner, body, group);
            if (blind is null || filler is null)
                return;
            // What closes the gap of a return ends on the panel behind it.
            piece.Join(JointKind.Resting, blind, filler, body.Spot.Towards!.Value, glued: false);
        }

        void AgainstDiagonalEnd(GroupDraft corner, Body body, GroupDraft group)
        {
            var towards = body.Spot.Towards!.Value;
            var end = PartsOf(corner)
                .FirstOrDefault(p => p.Role is Role.Side or Role.SideStile && p.Place.Lie.Shows == Direction.Front);
            var side = PartsOf(group)
                .FirstOrDefault(p => p.Role is Role.Side or Role.SideStile && p.Place.Lie.Shows == towards);
            if (end is not null && side is not null)
                Screws.Between(piece, end, side, towards, 4);
        }

        void OnAtAnAngle(Body lower, GroupDraft lowerGroup, Body upper, GroupDraft upperGroup)
        {
            foreach (var below in PartsOf(lowerGroup).Where(p => Reaches(p, Direction.Up, lower)).ToList())
            {
                foreach (var above in PartsOf(upperGroup).Where(p => Reaches(p, Direction.Down, upper)).ToList())
                {
                    if (Footprint.Of(below).Meets(Footprint.Of(above)))
                        piece.Join(JointKind.Resting, below, above, Direction.Down, glued: false);
                }
            }
        }

        void SideBySide(GroupDraft left, GroupDraft right, bool isBolted)
        {
            foreach (var a in PartsOf(left).Where(IsAnEnd).ToList())
            {
                foreach (var b in PartsOf(right).Where(IsAnEnd).ToList())
                {
                    if (isBolted)
                        Bolting.Beside(piece, a, b);
                    else
                        Resting.Beside(piece, a, b);
                }
            }
        }
    }

    /// <summary>Whether a part ends where its body does, with a face.</summary>
    private static bool Reaches(PartDraft part, Direction side, Body body) =>
        part.Reckoned.Side(side) == body.Envelope.Side(side) && !part.HasNoFace(side) && part.Lean is null;

    private static bool IsAnEnd(PartDraft part) =>
        part.Role is Role.Side or Role.SideStile or Role.SideRail or Role.Filler;

    private static bool IsBoltedTo(Body body, Body other) => body.IsBolted && body.Spot.Neighbour == other.Name;
}
