using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>The bottom of a drawer box, loose in a groove of all four walls; its grain runs from side to side.</summary>
internal static class DrawerBottom
{
    public static PartDraft Make(
        PieceBuilder piece,
        GroupDraft group,
        DrawerPlan plan,
        DrawerSizes sizes,
        (PartDraft Left, PartDraft Right, PartDraft Front, PartDraft Back) walls
    )
    {
        var wall = plan.Box.Thickness.As("side thickness");
        var depth = piece.Shop.Length(DrawerRules.DrawerGrooveDepth, "groove depth");
        var play = piece.Shop.Length(DrawerRules.DrawerBottomPlay, "play");
        Refuse(group, plan, sizes, depth, play);
        var length = (sizes.Width - wall - wall + depth + depth - play - play).As("bottom length");
        var width = (sizes.Length - wall - wall + depth + depth - play - play).As("bottom width");
        var own = piece.SizesAsCut(group, "bottom", Role.DrawerBottom, length, width, plan.Bottom.Thickness);
        var z = sizes.BottomZ + sizes.Run.BottomUp.Length;
        var (left, right) = (walls.Left.Extent.Max.X, walls.Right.Extent.Min.X);
        var (front, back) = (walls.Front.Extent.Max.Y, walls.Back.Extent.Min.Y);
        var bottom = piece.Board(
            group,
            "bottom",
            Role.DrawerBottom,
            plan.Bottom,
            Lie.Of(Direction.Right, Direction.Up),
            length,
            width,
            new((left + right - own.Length.Length) / 2, (front + back - own.Width.Length) / 2, z),
            sizes.Source
        );
        Let(walls.Left, Direction.Left);
        Let(walls.Right, Direction.Right);
        Let(walls.Front, Direction.Front);
        Let(walls.Back, Direction.Back);
        return bottom;

        void Let(PartDraft member, Direction into)
        {
            var inner = member.Extent.Side(into.Opposite());
            var groove = member
                .Extent.With(into, inner + (depth.Length * into.Sign()))
                .With(Direction.Down, z)
                .With(Direction.Up, z + plan.Bottom.Thickness.Length);
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
