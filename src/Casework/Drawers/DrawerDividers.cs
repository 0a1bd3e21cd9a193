using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>Dividers of a drawer: they share it evenly, stand on its bottom and are let into two of its walls.</summary>
internal static class DrawerDividers
{
    public static IReadOnlyList<PartDraft> Make(
        PieceBuilder piece,
        GroupDraft group,
        DividersPlan plan,
        DrawerBox box,
        DrawerWalls walls
    )
    {
        var depth = piece.Shop.Length(DrawerRules.DividerDepth, "divider depth");
        var ways = plan.FromSideToSide ? (Direction.Left, Direction.Right) : (Direction.Front, Direction.Back);
        var (first, second) = plan.FromSideToSide ? (box.Left, box.Right) : (box.Front, box.Back);
        var spread = plan.FromSideToSide ? Axis.Y : Axis.X;
        var run = plan.FromSideToSide ? Axis.X : Axis.Y;
        var inside = new Extent(
            new(box.Left.Extent.Max.X, box.Front.Extent.Max.Y, box.Bottom.Extent.Max.Z),
            new(box.Right.Extent.Min.X, box.Back.Extent.Min.Y, walls.Z + walls.Height.Length)
        );
        var (clear, full) = (Between("between the walls", inside.Size(run)), Between("inside height", inside.Height));
        var height = plan.Height is null ? full : Figure.Min(plan.Height, full);
        var bay = (inside.Size(spread) - (plan.Material.Thickness.Length * plan.Count)) / (plan.Count + 1);
        if (bay <= Length.Zero || height.Length <= Length.Zero)
            throw NoRoom.Of(
                $"{plan.Count} dividers of {NoRoom.Show(plan.Material.Thickness.Length)} have no room in the {group.Name}, which is {NoRoom.Show(inside.Size(spread))} inside.",
                plan.Place,
                "fewer or thinner dividers"
            );
        if (depth.Length * 2 > Length.Min(first.Extent.Size(run), second.Extent.Size(run)))
            throw NoRoom.Of(
                $"The walls of the {group.Name} are too thin for dados {NoRoom.Show(depth.Length)} deep.",
                plan.Place,
                "thicker walls, or a lesser `divider depth` for drawers in the shop file"
            );
        var dividers = new List<PartDraft>();
        var step = MarkingOut.StepOf(piece);
        for (var n = 0; n < plan.Count; n++)
        {
            var offset = ((bay * (n + 1)) + (plan.Material.Thickness.Length * n)).RoundTo(step);
            var at = inside.Min.With(spread, inside.Min[spread] + offset).With(run, inside.Min[run] - depth.Length);
            var divider = piece.Board(
                group,
                plan.Count == 1 ? "divider" : $"divider {n + 1}",
                Role.Divider,
                plan.Material,
                Lie.Of(Directions.Along(run, 1), Directions.Along(spread, 1)),
                (clear + depth + depth).As("divider length"),
                height.As("divider height"),
                at,
                plan.Place
            );
            Let(first, divider, ways.Item1);
            Let(second, divider, ways.Item2);
            piece.Join(JointKind.Resting, box.Bottom, divider, Direction.Down, glued: false);
            dividers.Add(divider);
        }
        return dividers;

        void Let(PartDraft wall, PartDraft divider, Direction into)
        {
            if (Extent.Shared(wall.Extent, divider.Reckoned) is not { } room)
                return;
            wall.CutAway(CutKind.StoppedDado, room.With(Direction.Up, inside.Max.Z), piece.NextJointId);
            piece.Join(JointKind.Dado, wall, divider, into, depth.Length);
        }
    }

    private static Figure Between(string name, Length length) =>
        Figure.Given(name, length, new TradeOrigin("between parts that stand already"));
}
