using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Facings;

/// <summary>
/// A frame with panels: stiles over the full height, rails and muntins with tenons in the grooves that run along all
/// members, panels loose in them. The groove lies a lip behind the front; the faces of all members are flush.
/// </summary>
internal sealed class PanelFrameMaker(PieceBuilder piece, PanelFramePlan plan, FrameStance stance, Extent outside)
{
    /// <summary>A lip thinner than 3 mm splits off: common practice.</summary>
    private static readonly Length ThinnestLip = Length.FromMillimetres(3);

    private readonly FrameGroove _groove = GrooveOf(piece, plan);
    private readonly FramePanels _panels = new(piece, plan, stance);
    private readonly List<PartDraft> _members = [];
    private readonly List<Extent> _fields = [];

    private Figure Depth => _groove.Depth;

    private Direction Right => stance.Right;

    private Direction Left => stance.Right.Opposite();

    public PanelFrame Make(Figure width, Figure height)
    {
        var inside = (width - plan.Stile - plan.Stile).As("between the stiles");
        var clear = (height - plan.BottomRail - plan.TopRail).As("between the rails");
        Refuse(inside, clear);
        var heights = RowHeights.Of(plan.Called, height, plan.TopRail, plan.BottomRail, plan.MiddleRails, clear);
        var reach = plan.IsTenoned ? GroovedTenon.LengthOf(piece, plan.Stile, _groove) : Depth;
        var left = Upright(stance.LeftStile, height, plan.Stile, Length.Zero, Length.Zero);
        var right = Upright(stance.RightStile, height, plan.Stile, width.Length - plan.Stile.Length, Length.Zero);
        Groove(left, Right);
        Groove(right, Left);
        var rails = Rails(left, right, inside, heights, reach);
        for (var row = 0; row < heights.Count; row++)
            Row(
                FieldNames.Row(heights.Count - 1 - row, heights.Count),
                left,
                right,
                rails[row],
                rails[row + 1],
                inside,
                heights[row]
            );
        return new(
            left,
            right,
            _members,
            _fields,
            plan.Material.Thickness.Length - _groove.Lip.Length - _groove.Width.Length
        );
    }

    /// <summary>All rails, from the lowest.</summary>
    private List<PartDraft> Rails(
        PartDraft left,
        PartDraft right,
        Figure inside,
        IReadOnlyList<Figure> heights,
        Figure reach
    )
    {
        var rails = new List<PartDraft>();
        var z = Length.Zero;
        for (var n = 0; n <= heights.Count; n++)
        {
            var (name, wide) =
                n == 0 ? ("bottom rail", plan.BottomRail)
                : n == heights.Count ? ("top rail", plan.TopRail)
                : (heights.Count == 2 ? "middle rail" : $"middle rail {n}", plan.MiddleRails!.Width);
            var rail = Rail(
                name,
                (inside + reach + reach).As("rail length"),
                wide,
                plan.Stile.Length - reach.Length,
                z
            );
            if (n > 0)
                Groove(rail, Direction.Down);
            if (n < heights.Count)
                Groove(rail, Direction.Up);
            Direction? outer =
                n == 0 ? Direction.Down
                : n == heights.Count ? Direction.Up
                : null;
            Tenon(rail, left, Left, reach, outer);
            Tenon(rail, right, Right, reach, outer);
            rail.ShoulderLength = (rail.Length - reach - reach).As("shoulder to shoulder");
            rail.BetweenShoulders = rail.Reckoned.Grown(Left, -reach.Length).Grown(Right, -reach.Length);
            rails.Add(rail);
            z += wide.Length;
            if (n < heights.Count)
                z += heights[n].Length;
        }
        return rails;
    }

    private void Row(
        string name,
        PartDraft left,
        PartDraft right,
        PartDraft below,
        PartDraft above,
        Figure inside,
        Figure clear
    )
    {
        var count = (plan.Muntins?.Count ?? 0) + 1;
        var between = plan.Muntins?.Width;
        var field = between is null ? inside : ((inside - (between * (count - 1))) / count).As("between the muntins");
        if (field.Length <= Depth.Length)
            throw Refused("The muntins leave no panels between them.", "fewer or narrower muntins");
        var from = plan.Stile.Length;
        var before = left;
        for (var n = 0; n < count; n++)
        {
            var next = n == count - 1 ? right : Muntin(n);
            var called = FieldNames.Joined(name, "panel");
            var space = outside
                .With(Left, outside.Side(Left) + (from * Right.Sign()))
                .With(Right, outside.Side(Left) + ((from + field.Length) * Right.Sign()))
                .With(Direction.Down, below.Reckoned.Max.Z)
                .With(Direction.Up, above.Reckoned.Min.Z);
            _fields.Add(space);
            _panels.Lay(
                count == 1 ? called : $"{called} {n + 1}",
                _groove,
                space,
                field,
                clear,
                [(before, Left), (next, Right), (below, Direction.Down), (above, Direction.Up)]
            );
            from += field.Length + (between?.Length ?? Length.Zero);
            before = next;
        }

        PartDraft Muntin(int n)
        {
            var called = FieldNames.Joined(name, "muntin");
            var muntin = Upright(
                count == 2 ? called : $"{called} {n + 1}",
                clear + Depth + Depth,
                between!,
                from + field.Length,
                below.Reckoned.Max.Z - outside.Min.Z - Depth.Length
            );
            muntin.ShoulderLength = (muntin.Length - Depth - Depth).As("shoulder to shoulder");
            muntin.BetweenShoulders = muntin
                .Reckoned.Grown(Direction.Down, -Depth.Length)
                .Grown(Direction.Up, -Depth.Length);
            Groove(muntin, Left);
            Groove(muntin, Right);
            Stub(muntin, below, Direction.Down);
            Stub(muntin, above, Direction.Up);
            return muntin;
        }
    }

    private PartDraft Upright(string name, Figure length, Figure wide, Length from, Length up) =>
        Member(name, stance.Stile, Direction.Up, length.As("stile length"), wide, from, up, wide.Length);

    private PartDraft Rail(string name, Figure length, Figure wide, Length from, Length up) =>
        Member(name, stance.Rail, Right, length, wide, from, up, length.Length);

    /// <param name="from">From the left end of the frame to the member.</param>
    /// <param name="up">From its lower edge to that of the member.</param>
    /// <param name="across">How much of the width the member takes.</param>
    private PartDraft Member(
        string name,
        Role role,
        Direction along,
        Figure length,
        Figure wide,
        Length from,
        Length up,
        Length across
    )
    {
        var start = outside.Side(Left) + ((Right.Sign() > 0 ? from : from + across) * Right.Sign());
        var member = piece.Board(
            stance.Group,
            stance.Prefix + name,
            role,
            plan.Material,
            Lie.Of(along, stance.Shows),
            length,
            wide,
            outside.Min.With(Right.Axis(), start).With(Axis.Z, outside.Min.Z + up)
        );
        _members.Add(member);
        return member;
    }

    private void Groove(PartDraft member, Direction edge) =>
        EdgeGroove.Cut(member, edge, Depth.Length, _groove.Lip.Length, _groove.Width.Length, shows: stance.Shows);

    private void Tenon(PartDraft rail, PartDraft stile, Direction into, Figure reach, Direction? outer)
    {
        if (plan.IsTenoned)
            GroovedTenon.At(piece, stile, rail, into, reach.Length, outer, _groove, stance.Shows);
        else
            Stub(rail, stile, into);
    }

    private void Stub(PartDraft enters, PartDraft receives, Direction into)
    {
        var (front, back) = (In(enters, _groove.Lip.Length), In(enters, _groove.Lip.Length + _groove.Width.Length));
        StubTenon.At(
            piece,
            receives,
            enters,
            into,
            Depth.Length,
            stance.Shows.Axis(),
            Length.Min(front, back),
            Length.Max(front, back)
        );
    }

    /// <summary>So deep behind the front of a member.</summary>
    private Length In(PartDraft member, Length deep) => member.Extent.Side(stance.Shows) - (deep * stance.Shows.Sign());

    /// <summary>
    /// As wide as a flat panel is thick: such a frame has no back to be thin for. A raised panel is cut down to a tongue for
    /// the groove of the house.
    /// </summary>
    private static FrameGroove GrooveOf(PieceBuilder piece, PanelFramePlan plan)
    {
        var width = plan.Raised is null
            ? plan.Panel.Thickness.As("panel thickness")
            : piece.Shop.Length(DoorRules.DoorGrooveWidth, "groove width");
        var lip = piece.Shop.Length(DoorRules.DoorLip, "lip");
        if (plan.Behind is { } behind)
        {
            var room = Figure.Given(
                "what is left before the groove",
                plan.Material.Thickness.Length - width.Length - behind,
                new TradeOrigin("common practice")
            );
            if (room.Length >= ThinnestLip)
                lip = Figure.Min(lip, room).As("lip");
        }
        return new(piece.Shop.Length(DoorRules.DoorGrooveDepth, "groove depth"), lip, width);
    }

    private void Refuse(Figure inside, Figure clear)
    {
        if (Length.Min(inside.Length, clear.Length) <= Length.Zero)
            throw Refused(
                $"Stiles and rails of a {plan.Called} leave nothing between them.",
                "narrower stiles and rails"
            );
        if (_groove.Lip.Length + _groove.Width.Length >= plan.Material.Thickness.Length)
            throw Refused(
                $"Lip and panel take all of the thickness of the {plan.Called}.",
                "a thicker material, or a thinner panel"
            );
        var narrowest = Length.Min(plan.Stile.Length, Length.Min(plan.TopRail.Length, plan.BottomRail.Length));
        if (plan.MiddleRails is { } middle)
            narrowest = Length.Min(narrowest, middle.Width.Length);
        if (plan.Muntins is { } muntins)
            narrowest = Length.Min(narrowest, muntins.Width.Length);
        if (Depth.Length * 2 >= narrowest)
            throw Refused("The grooves would cut through stiles and rails.", "wider stiles and rails");
    }

    private CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, plan.Place, wanted));
}
