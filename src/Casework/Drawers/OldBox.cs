using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// An old drawer box cut down at a named end or edge. Every wall is drawn as found, with what is cut off it; corners whose
/// joint goes with that are rabbeted or screwed anew, the others stay as they were.
/// </summary>
internal sealed class OldBox(PieceBuilder piece, GroupDraft group, DrawerPlan plan, OldBoxPlan old, DrawerSizes sizes)
{
    private const int ScrewsEach = 3;

    private readonly Length _side = old.Side.Length;
    private readonly Length _rabbet = piece.Shop.Length(DrawerRules.DrawerJointDepth).Length;

    public DrawerBox Make()
    {
        var (width, length) = (sizes.Width.Length, sizes.Length.Length);
        Refuse(width, length);
        var x = sizes.MiddleX - (width / 2);
        var (y, z) = (sizes.FrontY, sizes.BottomZ);
        var (inLeft, inRight) = (x + _side, x + width - _side);
        var whole = new Extent(new(x, y, z), new(x + width, y + length, z + sizes.Height.Length));

        var left = Wall("left side", Role.DrawerSide, Direction.Left, whole.With(Direction.Right, inLeft), old.Length);
        var right = Wall(
            "right side",
            Role.DrawerSide,
            Direction.Right,
            whole.With(Direction.Left, inRight),
            old.Length
        );
        var across = (old.Width - old.Side - old.Side + (Reach(old.Found) * 2)).As("length as found");
        var front = Wall(
            "box front",
            Role.DrawerBoxFront,
            Direction.Front,
            Across(Direction.Front).With(Direction.Back, y + _side),
            across
        );
        var back = Wall(
            "back",
            Role.DrawerBack,
            Direction.Back,
            Across(Direction.Back).With(Direction.Front, y + length - _side),
            across
        );
        RefuseSliver(left);
        foreach (var (side, into) in new[] { (left, Direction.Left), (right, Direction.Right) })
        {
            Join(side, front, into, Direction.Front);
            Join(side, back, into, Direction.Back);
        }
        return new DrawerBox
        {
            Left = left,
            Right = right,
            Front = front,
            Back = back,
            Bottom = Bottom(left, right, front, back),
            Dividers = [],
        };

        Extent Across(Direction end) =>
            whole
                .With(Direction.Left, inLeft - Reach(JointAt(Direction.Left, end)).Length)
                .With(Direction.Right, inRight + Reach(JointAt(Direction.Right, end)).Length);
    }

    /// <summary>What a corner is, now.</summary>
    private DrawerJoint JointAt(Direction side, Direction end) =>
        old.CutAt == side || old.CutAt == end ? old.Anew : old.Found;

    /// <summary>How far front and back reach into the sides.</summary>
    private Figure Reach(DrawerJoint joint) =>
        joint switch
        {
            DrawerJoint.Rabbeted => piece.Shop.Length(DrawerRules.DrawerJointDepth, "joint depth"),
            DrawerJoint.Screwed => Figure.Given("nothing", Length.Zero, new TradeOrigin("butted")),
            _ => old.Side,
        };

    /// <summary>A wall as found, and what is cut off it so that it stands where it should.</summary>
    private PartDraft Wall(string name, Role role, Direction shows, Extent now, Figure length)
    {
        var lie = Lie.Of(shows.Axis() == Axis.X ? Direction.Back : Direction.Right, shows);
        var run = lie.Along.Axis();
        // What goes off beyond the named end; where both ends lose their joints, half goes off each.
        var over = length.Length - now.Size(run);
        var low = old.CutAt is { } at && at.Axis() == run ? (at.Sign() < 0 ? over : Length.Zero) : over / 2;
        var foot = old.CutAt == Direction.Down ? old.Height.Length - sizes.Height.Length : Length.Zero;
        if (over < Length.Zero)
            throw NoRoom.Of(
                $"The {name} of the old box is too short to be joined so again once its old joint is cut off.",
                old.Place,
                "`joined anew: screwed`, or less cut off"
            );
        var wall = piece.Board(
            group,
            name,
            role,
            plan.Box,
            lie,
            length,
            old.Height,
            now.Min.With(run, now.Min[run] - low).With(Axis.Z, now.Min.Z - foot),
            old.Place,
            old.Side,
            isKept: true
        );
        foreach (
            var way in (ReadOnlySpan<Direction>)
                [Directions.Along(run, -1), Directions.Along(run, 1), Direction.Down, Direction.Up]
        )
        {
            if (wall.Extent.Side(way) != now.Side(way))
                wall.CutAway(CutKind.CutDown, wall.Extent.With(way.Opposite(), now.Side(way)));
        }
        return wall;
    }

    private void Join(PartDraft side, PartDraft cross, Direction into, Direction end)
    {
        switch (JointAt(into, end))
        {
            case DrawerJoint.Rabbeted:
                var inner = side.Extent.Side(into.Opposite());
                var edge = cross.Extent.Side(end);
                side.CutAway(
                    CutKind.Rabbet,
                    side.Extent.With(into, inner + (_rabbet * into.Sign()))
                        .With(end, edge)
                        .With(end.Opposite(), edge - (_side * end.Sign())),
                    piece.NextJointId
                );
                piece.Join(JointKind.Rabbet, side, cross, into, _rabbet);
                break;
            case DrawerJoint.Screwed:
                Screws.Between(piece, side, cross, into, ScrewsEach, glued: true);
                break;
            default:
                Dovetails.Between(piece, cross, side, into.Opposite(), end, Within(side, cross));
                break;
        }
    }

    /// <summary>Where a side and a cross wall meet as the old box was put together, before anything came off it.</summary>
    private static Extent Within(PartDraft side, PartDraft cross) => Extent.Shared(side.Extent, cross.Extent)!.Value;

    private PartDraft Bottom(PartDraft left, PartDraft right, PartDraft front, PartDraft back)
    {
        var depth = piece.Shop.Length(DrawerRules.DrawerGrooveDepth, "groove depth");
        var play = piece.Shop.Length(DrawerRules.DrawerBottomPlay, "play");
        var up = UnderBottom();
        var inside = new Extent(
            new(sizes.MiddleX - (sizes.Width.Length / 2) + _side, sizes.FrontY + _side, sizes.BottomZ + up),
            new(
                sizes.MiddleX + (sizes.Width.Length / 2) - _side,
                sizes.FrontY + sizes.Length.Length - _side,
                sizes.BottomZ + up + plan.Bottom.Thickness.Length
            )
        );
        var grown = depth.Length - play.Length;
        var now = inside;
        foreach (var way in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right, Direction.Front, Direction.Back])
            now = now.Grown(way, grown);
        var found = (
            Length: old.Width - old.Side - old.Side + ((depth - play) * 2),
            Width: old.Length - old.Side - old.Side + ((depth - play) * 2)
        );
        var at = now.Min;
        if (old.CutAt == Direction.Left)
            at = at.With(Axis.X, now.Max.X - found.Length.Length);
        if (old.CutAt == Direction.Front)
            at = at.With(Axis.Y, now.Max.Y - found.Width.Length);
        var bottom = piece.Board(
            group,
            "bottom",
            Role.DrawerBottom,
            plan.Bottom,
            Lie.Of(Direction.Right, Direction.Up),
            found.Length.As("bottom length as found"),
            found.Width.As("bottom width as found"),
            at,
            old.Place,
            isKept: true
        );
        foreach (var way in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right, Direction.Front, Direction.Back])
        {
            if (bottom.Extent.Side(way) != now.Side(way))
                bottom.CutAway(CutKind.CutDown, bottom.Extent.With(way.Opposite(), now.Side(way)));
        }
        foreach (
            var (wall, into) in new[]
            {
                (left, Direction.Left),
                (right, Direction.Right),
                (front, Direction.Front),
                (back, Direction.Back),
            }
        )
        {
            var groove = now;
            foreach (
                var way in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right, Direction.Front, Direction.Back]
            )
                groove = groove.Grown(way, play.Length);
            wall.CutAway(CutKind.Groove, groove, piece.NextJointId);
            piece.Join(JointKind.Loose, wall, bottom, into, grown, play.Length, glued: false);
        }
        return bottom;
    }

    /// <summary>From the lower edge, as it is now, to the bottom: the old groove while enough of it is left, else a new one.</summary>
    private Length UnderBottom()
    {
        var up = piece.Shop.Length(DrawerRules.DrawerBottomUp).Length;
        var off = old.CutAt == Direction.Down ? old.Height.Length - sizes.Height.Length : Length.Zero;
        if (off <= up / 2)
            return up - off;
        if (off >= up + plan.Bottom.Thickness.Length)
            return up;
        throw NoRoom.Of(
            $"Cut down by {NoRoom.Show(off)}, the old box keeps an open piece of the groove for its bottom at its lower edge.",
            old.Place,
            "a cut that takes the groove away or leaves it whole, or one at the top edge"
        );
    }

    private void RefuseSliver(PartDraft side)
    {
        if (old.Found != DrawerJoint.Dovetailed || old.CutAt?.Axis() != Axis.Z)
            return;
        var above = old.CutAt == Direction.Down;
        var at = above ? old.Height.Length - sizes.Height.Length : sizes.Height.Length;
        if (Dovetails.LeavesSliver(piece, side, old.Height.Length, _side, at, above))
            throw NoRoom.Of(
                $"Cut down to {NoRoom.Show(sizes.Height.Length)}, the old box keeps a sliver of a dovetail that hangs on nothing.",
                old.Place,
                "to: a little more or less"
            );
    }

    private void Refuse(Length width, Length length)
    {
        if (width <= _side * 2 || length <= _side * 2 || _rabbet >= _side)
            throw NoRoom.Of(
                $"The old box with walls of {NoRoom.Show(_side)} leaves nothing inside, {NoRoom.Show(width)} wide and {NoRoom.Show(length)} long.",
                old.Place,
                "less cut off"
            );
        if (sizes.Run.IsUnder || plan.Running == DrawerRunning.SideHung)
            throw NoRoom.Of(
                "An old box runs on side slides or on runners: its bottom and sides are as they were made.",
                old.Place,
                "`slides: side` or `slides: runners`"
            );
        if (plan.OwnFront || plan.Dividers is not null)
            throw NoRoom.Of(
                "An old box gets a new front screwed to it, and no dividers.",
                old.Place,
                "a drawer without `own front` and `dividers`"
            );
    }
}
