using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// Wooden runners under the sides of a drawer, screwed to the uprights: behind the rail below where there is one, as slips
/// on a floor that lies flush with the edge, else in the opening. Over the sides kickers keep the drawn drawer from
/// tipping, where a rail leaves room for them behind it.
/// </summary>
internal sealed class WoodenRunners(PieceBuilder piece, FrontSite site, string name, DrawerPlan plan, DrawerSizes sizes)
{
    private const int ScrewsEach = 3;

    /// <summary>Less than this is no kicker.</summary>
    private static readonly Length Thinnest = Length.FromMillimetres(6);

    private readonly Length _proud = piece.Shop.Length(RunnerRules.Proud).Length;
    private readonly Figure _thickness = piece.Shop.Length(RunnerRules.Thickness, "runner thickness");
    private readonly Extent _clear = site.Opening.Clear;

    /// <param name="guides">What guides the box on the left and on the right.</param>
    public void Make(DrawerBox box, (PartDraft Left, PartDraft Right) guides)
    {
        foreach (var (side, upright, frame, wall, guide) in Sides(box, guides))
        {
            Runner(side, upright, frame, plan.BottomSet == BottomSet.Planted ? box.Bottom : wall, guide);
            Kicker(side, upright, frame);
        }
    }

    private (Direction, PartDraft, PartDraft, PartDraft, PartDraft)[] Sides(
        DrawerBox box,
        (PartDraft Left, PartDraft Right) guides
    ) =>
        [
            (Direction.Left, site.InsideLeft, site.HingeLeft, box.Left, guides.Left),
            (Direction.Right, site.InsideRight, site.HingeRight, box.Right, guides.Right),
        ];

    private void Runner(Direction side, PartDraft upright, PartDraft frame, PartDraft rests, PartDraft guide)
    {
        var top = sizes.BottomZ;
        var floor = site.Floor?.Reckoned.Max.Z;
        // As thick as there is room above the floor.
        var free = floor is { } z && z <= _clear.Min.Z ? top - z : _thickness.Length;
        var thickness =
            free < _thickness.Length ? Given("from the floor to the drawer", free).As("runner thickness") : _thickness;
        var strip = Strip(side, upright, "runner", thickness, top - thickness.Length);
        if (site.Floor is { } under && strip.Reckoned.Min.Z == under.Reckoned.Max.Z)
            piece.Join(JointKind.Butt, under, strip, Direction.Down);
        if (strip.Reckoned.Min.Y == site.InsideFrontY && site.Below is { } rail && site.IsFramed)
            piece.Join(JointKind.Butt, rail, strip, Direction.Front, glued: false);
        if (frame != upright && strip.Reckoned.Min.Y == site.InsideFrontY)
            piece.Join(JointKind.Butt, frame, strip, Direction.Front, glued: false);
        if (guide != upright && guide.Reckoned.Min.Z == strip.Reckoned.Max.Z)
            piece.Join(JointKind.Butt, strip, guide, Direction.Down, glued: false);
        piece.Join(JointKind.Resting, strip, rests, Direction.Down, glued: false);
    }

    private void Kicker(Direction side, PartDraft upright, PartDraft frame)
    {
        if (!site.IsFramed || site.Above is not { } rail)
            return;
        // The runner of a drawer above takes its share of the room behind the rail.
        var room = rail.Reckoned.Height - (_thickness.Length - _proud) - _proud;
        if (site.Ceiling is { } ceiling && ceiling.Reckoned.Min.Z >= _clear.Max.Z)
            room = Length.Min(room, ceiling.Reckoned.Min.Z - _clear.Max.Z - (_proud / 2));
        var kicker = piece.Shop.Length(RunnerRules.Kicker, "kicker thickness");
        if (room < Thinnest)
            return;
        var thickness = room < kicker.Length ? Given("room behind the rail", room).As("kicker thickness") : kicker;
        var strip = Strip(side, upright, "kicker", thickness, _clear.Max.Z);
        if (strip.Reckoned.Min.Y != site.InsideFrontY)
            return;
        piece.Join(JointKind.Butt, rail, strip, Direction.Front, glued: false);
        if (frame != upright)
            piece.Join(JointKind.Butt, frame, strip, Direction.Front, glued: false);
    }

    private PartDraft Strip(Direction side, PartDraft upright, string what, Figure thickness, Length z)
    {
        var wall = upright.Reckoned.Side(side.Opposite());
        var edge = _clear.Side(side);
        var gap = Length.Abs(edge - wall);
        var reach = piece.Shop.Length(RunnerRules.Width, "reach of the runner");
        var half = (_clear.Width / 2) - _proud;
        if (half < reach.Length)
            reach = Given("half of the opening", half);
        var width = (gap == Length.Zero ? reach : Given("from the upright to the opening", gap) + reach).As(
            $"{what} width"
        );
        var front = FrontY();
        var length = Given("from behind the front to the back", site.InsideBackY - _proud - front).As($"{what} length");
        var x = side == Direction.Left ? wall : wall - width.Length;
        var strip = piece.Board(
            site.Carcase,
            $"{name} {Spoken.Of(side)} {what}",
            Role.Runner,
            plan.Runners,
            Lie.Of(Direction.Back, Direction.Up),
            length,
            width,
            new(x, front, z),
            plan.Place,
            thickness,
            holds: side
        );
        Screws.Between(piece, upright, strip, side, ScrewsEach);
        return strip;
    }

    /// <summary>Behind the face frame, and behind an inset front.</summary>
    private Length FrontY() =>
        plan.Fit.Hang == Hang.Inset
            ? Length.Max(site.InsideFrontY, site.FaceY + plan.Front.Thickness.Length + _proud)
            : Length.Max(site.InsideFrontY, site.FaceY + (site.IsFramed ? Length.Zero : _proud));

    private static Figure Given(string name, Length length) =>
        Figure.Given(name, length, new TradeOrigin("between parts that stand already"));
}
