using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// A drawer hung on strips of wood: each is screwed to the upright and stands in a groove of the drawer's side, which
/// lies on it.
/// </summary>
internal static class SideHung
{
    private const int ScrewsEach = 3;

    /// <summary>Room over the strip and before its end.</summary>
    private static readonly Length Room = Length.FromMillimetres(new Rational(16, 10));

    public static void Make(
        PieceBuilder piece,
        FrontSite site,
        string name,
        DrawerPlan plan,
        DrawerSizes sizes,
        DrawerBox box
    )
    {
        var depth = piece.Shop.Length(RunnerRules.StripGroove, "strip groove");
        Refuse(piece, plan, sizes, box, depth.Length);
        foreach (
            var (side, upright, wall) in new[]
            {
                (Direction.Left, site.InsideLeft, box.Left),
                (Direction.Right, site.InsideRight, box.Right),
            }
        )
        {
            var inner = upright.Reckoned.Side(side.Opposite());
            var outer = wall.Reckoned.Side(side);
            var beside = Given("from the upright to the drawer", Length.Abs(outer - inner));
            var reach = (beside + depth - sizes.Run.Clearance).As("strip width");
            var height = piece.Shop.Length(RunnerRules.Strip, "strip height");
            var front = Length.Max(site.InsideFrontY, box.Front.Extent.Max.Y) + Room;
            var z = wall.Extent.Min.Z + ((wall.Extent.Height - height.Length) / 2);
            var strip = piece.Board(
                site.Carcase,
                $"{name} {Spoken.Of(side)} strip",
                Role.Runner,
                plan.Runners,
                Lie.Of(Direction.Back, side.Opposite()),
                Given("from behind the front to the back", site.InsideBackY - Room - front).As("strip length"),
                height,
                new(side == Direction.Left ? inner : inner - reach.Length, front, z),
                plan.Place,
                reach,
                holds: side
            );
            Screws.Between(piece, upright, strip, side, ScrewsEach);
            var groove = new Extent(
                new(Length.Min(outer, outer - (depth.Length * side.Sign())), front - Room, z - Room),
                new(Length.Max(outer, outer - (depth.Length * side.Sign())), wall.Extent.Max.Y, z + height.Length)
            );
            var joint = piece.NextJointId;
            wall.CutAway(CutKind.Groove, groove, joint);
            // Where the back comes through the side, the strip passes its pins as well.
            if (Extent.Shared(groove, box.Back.Extent) is not null)
                box.Back.CutAway(CutKind.Notch, groove, joint);
            piece.Join(JointKind.Resting, strip, wall, Direction.Down, glued: false);
        }
    }

    private static void Refuse(PieceBuilder piece, DrawerPlan plan, DrawerSizes sizes, DrawerBox box, Length depth)
    {
        var side = plan.Box.Thickness.Length;
        var letIn = plan.Joint switch
        {
            DrawerJoint.Rabbeted or DrawerJoint.Dadoed => piece.Shop.Length(DrawerRules.DrawerJointDepth).Length,
            _ => Length.Zero,
        };
        if (depth + letIn >= side)
            throw NoRoom.Of(
                $"The sides of the drawer are {NoRoom.Show(side)} thick: the grooves for its strips, {NoRoom.Show(depth)} deep, would meet the cuts for its back.",
                plan.Place,
                "thicker stuff for the box, another joint, or `slides: runners`"
            );
        var strip = piece.Shop.Length(RunnerRules.Strip).Length;
        var low = sizes.BottomZ + sizes.Run.BottomUp.Length + box.Bottom.Thickness.Length;
        if (box.Left.Extent.Min.Z + ((box.Left.Extent.Height - strip) / 2) - Room <= low)
            throw NoRoom.Of(
                $"The sides of the drawer are {NoRoom.Show(box.Left.Extent.Height)} high: there is no room for strips of {NoRoom.Show(strip)} above its bottom.",
                plan.Place,
                "a higher drawer, or `slides: runners`"
            );
    }

    private static Figure Given(string name, Length length) =>
        Figure.Given(name, length, new TradeOrigin("between parts that stand already"));
}
