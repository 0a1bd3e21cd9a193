using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// The box of a drawer: sides over the whole length with rabbets that take the box front and the back, a bottom loose in a
/// groove all around. It is put together from the members as they were cut: the longer of box front and back sets the
/// width, and the shorter leaves its joint open on the right.
/// </summary>
internal sealed record DrawerBox
{
    public required PartDraft Left { get; init; }

    public required PartDraft Right { get; init; }

    public required PartDraft Front { get; init; }

    public required PartDraft Back { get; init; }

    public required PartDraft Bottom { get; init; }

    public IEnumerable<PartDraft> Parts => [Left, Right, Front, Back, Bottom];

    public static DrawerBox Make(PieceBuilder piece, GroupDraft group, DrawerPlan plan, DrawerSizes sizes)
    {
        var thickness = plan.Box.Thickness;
        var side = thickness.As("side thickness");
        var joint = piece.Shop.Length(DrawerRules.DrawerJointDepth, "joint depth");
        var across = (sizes.Width - side - side + joint + joint).As("box front length");
        Refuse(group, plan, sizes, across, joint);

        var left = SizesOf("left side", Role.DrawerSide, sizes.Length);
        var right = SizesOf("right side", Role.DrawerSide, sizes.Length);
        var front = SizesOf("box front", Role.DrawerBoxFront, across);
        var back = SizesOf("back", Role.DrawerBack, across);
        var between = Length.Max(front.Length.Length, back.Length.Length) - (joint.Length * 2);
        var outside = left.Thickness.Length + between + right.Thickness.Length;
        var x = sizes.MiddleX - (outside / 2);
        var innerLeft = x + left.Thickness.Length;
        var (y, z) = (sizes.FrontY, sizes.BottomZ);

        var leftSide = Board("left side", Role.DrawerSide, Direction.Back, Direction.Left, sizes.Length, new(x, y, z));
        var rightSide = Board(
            "right side",
            Role.DrawerSide,
            Direction.Back,
            Direction.Right,
            sizes.Length,
            new(innerLeft + between, y, z)
        );
        var acrossX = innerLeft - joint.Length;
        var boxFront = Board(
            "box front",
            Role.DrawerBoxFront,
            Direction.Right,
            Direction.Front,
            across,
            new(acrossX, y, z)
        );
        var backY = leftSide.Extent.Max.Y - back.Thickness.Length;
        var boxBack = Board("back", Role.DrawerBack, Direction.Right, Direction.Back, across, new(acrossX, backY, z));

        foreach (var (upright, into) in new[] { (leftSide, Direction.Left), (rightSide, Direction.Right) })
        {
            Rabbet(upright, boxFront, into, Direction.Front);
            Rabbet(upright, boxBack, into, Direction.Back);
        }
        return new DrawerBox
        {
            Left = leftSide,
            Right = rightSide,
            Front = boxFront,
            Back = boxBack,
            Bottom = DrawerBottom.Make(piece, group, plan, sizes, (leftSide, rightSide, boxFront, boxBack)),
        };

        CutSizes SizesOf(string name, Role role, Figure length) =>
            piece.SizesAsCut(group, name, role, length, sizes.Height, thickness);

        PartDraft Board(string name, Role role, Direction along, Direction shows, Figure length, Point at) =>
            piece.Board(group, name, role, plan.Box, Lie.Of(along, shows), length, sizes.Height, at, sizes.Source);

        // By the thickness as reckoned: the saw was set before anyone measured the other board.
        void Rabbet(PartDraft upright, PartDraft end, Direction into, Direction at)
        {
            var inner = upright.Extent.Side(into.Opposite());
            var room = upright
                .Extent.With(into, inner + (joint.Length * into.Sign()))
                .With(at.Opposite(), upright.Extent.Side(at) - (thickness.Length * at.Sign()));
            upright.CutAway(CutKind.Rabbet, room, piece.NextJointId);
            piece.Join(JointKind.Rabbet, upright, end, into, joint.Length);
        }
    }

    private static void Refuse(GroupDraft group, DrawerPlan plan, DrawerSizes sizes, Figure across, Figure joint)
    {
        if (across.Length <= joint.Length * 2)
            throw NoRoom.Of(
                $"The box of the {group.Name} is {NoRoom.Show(sizes.Width.Length)} wide: its sides leave nothing between them.",
                sizes.Source,
                "a wider opening, or a thinner material for the box"
            );
        if (joint.Length >= plan.Box.Thickness.Length)
            throw NoRoom.Of(
                $"The sides of the {group.Name} are {NoRoom.Show(plan.Box.Thickness.Length)} thick: rabbets {NoRoom.Show(joint.Length)} deep would cut through.",
                sizes.Source,
                "a thicker material for the box, or a lesser `joint depth` in the shop file"
            );
        var up = sizes.Run.BottomUp.Length;
        if (sizes.Height.Length <= up + plan.Bottom.Thickness.Length)
            throw NoRoom.Of(
                $"The box of the {group.Name} would be {NoRoom.Show(sizes.Height.Length)} high: that leaves no room over its bottom.",
                sizes.Source,
                "a higher opening, or `box height:`"
            );
        if (sizes.Length.Length <= plan.Box.Thickness.Length * 2)
            throw NoRoom.Of(
                $"The box of the {group.Name} would be {NoRoom.Show(sizes.Length.Length)} long: front and back take all of that.",
                sizes.Source,
                "longer slides"
            );
    }
}
