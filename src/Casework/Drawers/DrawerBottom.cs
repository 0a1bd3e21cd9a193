using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// The bottom of a drawer box: loose in a groove all round, slid into three grooves under the back, or screwed on from
/// below. Its grain runs from side to side.
/// </summary>
internal static class DrawerBottom
{
    private const int ScrewsEach = 3;

    public static PartDraft Make(
        PieceBuilder piece,
        GroupDraft group,
        DrawerPlan plan,
        DrawerSizes sizes,
        DrawerCorners corners,
        (PartDraft Left, PartDraft Right, PartDraft Front, PartDraft Back) walls
    ) =>
        plan.BottomSet == BottomSet.Planted
            ? Planted(piece, group, plan, sizes, walls)
            : LetIn(piece, group, plan, sizes, corners, walls);

    private static PartDraft Planted(
        PieceBuilder piece,
        GroupDraft group,
        DrawerPlan plan,
        DrawerSizes sizes,
        (PartDraft Left, PartDraft Right, PartDraft Front, PartDraft Back) walls
    )
    {
        if (plan.OwnFront)
            throw NoRoom.Of(
                $"The front of the {group.Name} reaches down over the edge of a planted bottom, which would show.",
                sizes.Source,
                "`bottom set: slid in`, or a front screwed to the box"
            );
        var bottom = piece.Board(
            group,
            "bottom",
            Role.DrawerBottom,
            plan.Bottom,
            Lie.Of(Direction.Right, Direction.Up),
            sizes.Width.As("bottom length"),
            sizes.Length.As("bottom width"),
            new(walls.Left.Extent.Min.X, sizes.FrontY, sizes.BottomZ),
            sizes.Source
        );
        foreach (var wall in (ReadOnlySpan<PartDraft>)[walls.Left, walls.Right, walls.Front, walls.Back])
            Screws.Between(piece, wall, bottom, Direction.Up, ScrewsEach);
        return bottom;
    }

    private static PartDraft LetIn(
        PieceBuilder piece,
        GroupDraft group,
        DrawerPlan plan,
        DrawerSizes sizes,
        DrawerCorners corners,
        (PartDraft Left, PartDraft Right, PartDraft Front, PartDraft Back) walls
    )
    {
        var wall = plan.Box.Thickness.As("side thickness");
        var face = plan.OwnFront ? plan.Face.Thickness.As("front thickness") : wall;
        var depth = piece.Shop.Length(DrawerRules.DrawerGrooveDepth, "groove depth");
        var play = piece.Shop.Length(DrawerRules.DrawerBottomPlay, "play");
        Refuse(group, plan, sizes, depth, play);
        var slidIn = plan.BottomSet == BottomSet.SlidIn;
        var length = (sizes.Width - wall - wall + depth + depth - play - play).As("bottom length");
        var inside = corners.BackIn is { } backIn ? sizes.Length - backIn : sizes.Length;
        var width = (slidIn ? inside - face + depth - play : inside - face - wall + depth + depth - play - play).As(
            "bottom width"
        );
        var own = piece.SizesAsCut(group, "bottom", Role.DrawerBottom, length, width, plan.Bottom.Thickness);
        var z = sizes.BottomZ + sizes.Run.BottomUp.Length;
        var (left, right) = (walls.Left.Extent.Max.X, walls.Right.Extent.Min.X);
        var (front, back) = (walls.Front.Extent.Max.Y, walls.Back.Extent.Min.Y);
        var y = slidIn ? walls.Back.Extent.Max.Y - own.Width.Length : (front + back - own.Width.Length) / 2;
        var bottom = piece.Board(
            group,
            "bottom",
            Role.DrawerBottom,
            plan.Bottom,
            Lie.Of(Direction.Right, Direction.Up),
            length,
            width,
            new((left + right - own.Length.Length) / 2, y, z),
            sizes.Source
        );
        var room = new Extent(
            new(left - depth.Length, front - depth.Length, z),
            new(
                right + depth.Length,
                slidIn ? walls.Left.Extent.Max.Y : back + depth.Length,
                z + plan.Bottom.Thickness.Length
            )
        );
        Let(walls.Left, Direction.Left);
        Let(walls.Right, Direction.Right);
        Let(walls.Front, Direction.Front);
        if (slidIn)
            Screws.Between(piece, walls.Back, bottom, Direction.Up, ScrewsEach);
        else
            Let(walls.Back, Direction.Back);
        return bottom;

        void Let(PartDraft member, Direction into)
        {
            var inner = member.Extent.Side(into.Opposite());
            var groove = corners.StopsGrooves
                ? room
                : member
                    .Extent.With(into, inner + (depth.Length * into.Sign()))
                    .With(Direction.Down, z)
                    .With(Direction.Up, room.Max.Z);
            member.CutAway(CutKind.Groove, groove, piece.NextJointId);
            piece.Join(JointKind.Loose, member, bottom, into, depth.Length - play.Length, play.Length, glued: false);
        }
    }

    private static void Refuse(GroupDraft group, DrawerPlan plan, DrawerSizes sizes, Figure depth, Figure play)
    {
        if (depth.Length >= plan.Box.Thickness.Length)
            throw NoRoom.Of(
                $"The sides of the {group.Name} are {NoRoom.Show(plan.Box.Thickness.Length)} thick: a groove {NoRoom.Show(depth.Length)} deep would cut through.",
                sizes.Source,
                "a thicker material for the box, or a lesser `groove depth` for drawers in the shop file"
            );
        if (play.Length >= depth.Length)
            throw NoRoom.Of(
                $"The bottom of the {group.Name} would fall out: its play of {NoRoom.Show(play.Length)} takes the whole groove.",
                sizes.Source,
                "a deeper groove or less play in the shop file's rules for drawers"
            );
    }
}
