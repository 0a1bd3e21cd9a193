using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// The box of a drawer: sides, front, back and bottom. It is put together from the members as they were cut: the longer of
/// front and back sets the width, and the shorter leaves its joint open on the right.
/// </summary>
internal sealed record DrawerBox
{
    public required PartDraft Left { get; init; }

    public required PartDraft Right { get; init; }

    public required PartDraft Front { get; init; }

    public required PartDraft Back { get; init; }

    public required PartDraft Bottom { get; init; }

    /// <summary>What stands in it.</summary>
    public required IReadOnlyList<PartDraft> Dividers { get; init; }

    public IEnumerable<PartDraft> Parts => [Left, Right, Front, Back, Bottom, .. Dividers];

    public static DrawerBox Make(PieceBuilder piece, GroupDraft group, DrawerPlan plan, DrawerSizes sizes)
    {
        var corners = new DrawerCorners(piece, plan);
        var thickness = plan.Box.Thickness;
        var walls = DrawerWalls.Of(plan, sizes);
        var across = corners.Across(sizes.Width).As(plan.OwnFront ? "front length" : "box front length");
        var run = corners.Along(sizes.Length);
        Refuse(group, plan, sizes, walls, corners);

        var frontName = plan.OwnFront ? "front" : "box front";
        var frontRole = plan.OwnFront ? Role.DrawerFront : Role.DrawerBoxFront;
        var left = piece.SizesAsCut(group, "left side", Role.DrawerSide, run, walls.Height, thickness);
        var right = piece.SizesAsCut(group, "right side", Role.DrawerSide, run, walls.Height, thickness);
        var front = piece.SizesAsCut(group, frontName, frontRole, across, walls.FrontHeight, plan.Face.Thickness);
        var back = piece.SizesAsCut(group, "back", Role.DrawerBack, across, walls.BackHeight, thickness);
        var between = Length.Max(front.Length.Length, back.Length.Length) - (corners.LetIn.Length * 2);
        var outside = left.Thickness.Length + between + right.Thickness.Length;
        var x = sizes.MiddleX - (outside / 2);
        var innerLeft = x + left.Thickness.Length;
        var sideY = sizes.FrontY + corners.Lap.Length;

        var leftSide = Board("left side", Role.DrawerSide, Direction.Left, run, walls.Height, new(x, sideY, walls.Z));
        var rightSide = Board(
            "right side",
            Role.DrawerSide,
            Direction.Right,
            run,
            walls.Height,
            new(innerLeft + between, sideY, walls.Z)
        );
        var acrossX = innerLeft - corners.LetIn.Length;
        var boxFront = Board(
            frontName,
            frontRole,
            Direction.Front,
            across,
            walls.FrontHeight,
            new(acrossX, sizes.FrontY, walls.FrontZ),
            plan.Face
        );
        var backY = leftSide.Extent.Max.Y - (corners.BackIn?.Length ?? Length.Zero) - back.Thickness.Length;
        var boxBack = Board(
            "back",
            Role.DrawerBack,
            Direction.Back,
            across,
            walls.BackHeight,
            new(acrossX, backY, walls.BackZ)
        );
        foreach (var (upright, into) in new[] { (leftSide, Direction.Left), (rightSide, Direction.Right) })
        {
            corners.Front(upright, boxFront, into);
            corners.Back(upright, boxBack, into);
        }
        var box = new DrawerBox
        {
            Left = leftSide,
            Right = rightSide,
            Front = boxFront,
            Back = boxBack,
            Bottom = DrawerBottom.Make(piece, group, plan, sizes, corners, (leftSide, rightSide, boxFront, boxBack)),
            Dividers = [],
        };
        return plan.Dividers is null
            ? box
            : box with
            {
                Dividers = DrawerDividers.Make(piece, group, plan.Dividers, box, walls),
            };

        PartDraft Board(
            string name,
            Role role,
            Direction shows,
            Figure length,
            Figure width,
            Point at,
            Material? material = null
        )
        {
            var along = shows.Axis() == Axis.X ? Direction.Back : Direction.Right;
            return piece.Board(
                group,
                name,
                role,
                material ?? plan.Box,
                Lie.Of(along, shows),
                length,
                width,
                at,
                sizes.Source
            );
        }
    }

    private static void Refuse(
        GroupDraft group,
        DrawerPlan plan,
        DrawerSizes sizes,
        DrawerWalls walls,
        DrawerCorners corners
    )
    {
        var side = plan.Box.Thickness.Length;
        if (sizes.Width.Length <= side * 2)
            throw NoRoom.Of(
                $"The box of the {group.Name} is {NoRoom.Show(sizes.Width.Length)} wide: its sides leave nothing between them.",
                sizes.Source,
                "a wider opening, or a thinner material for the box"
            );
        if (corners.LetIn.Length >= side && corners.IsLetIn)
            throw NoRoom.Of(
                $"The sides of the {group.Name} are {NoRoom.Show(side)} thick: {corners.Cuts} {NoRoom.Show(corners.LetIn.Length)} deep would cut through.",
                sizes.Source,
                "a thicker material for the box, or a lesser `joint depth` in the shop file"
            );
        if (walls.BackHeight.Length <= Length.Zero || walls.Height.Length <= walls.UnderBottom + walls.Bottom)
            throw NoRoom.Of(
                $"The box of the {group.Name} would be {NoRoom.Show(sizes.Height.Length)} high: that leaves no room over its bottom.",
                sizes.Source,
                "a higher opening, or `box height:`"
            );
        var taken = plan.Face.Thickness.Length + side + (corners.BackIn?.Length ?? Length.Zero);
        if (sizes.Length.Length <= taken)
            throw NoRoom.Of(
                $"The box of the {group.Name} would be {NoRoom.Show(sizes.Length.Length)} long: front and back take all of that.",
                sizes.Source,
                "longer slides"
            );
    }
}
