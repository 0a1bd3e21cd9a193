using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Facings;

/// <summary>
/// Faces the ends and the back of a carcase. Each facing is built as a front and turned to where it is seen: the back lies
/// over the rear edges of the ends.
/// </summary>
internal sealed class FacingMaker(PieceBuilder piece, CarcasePlan plan, FacingPlan facing, Box box)
{
    private readonly Figure _thickness = facing.Material.Thickness;

    /// <summary>The carcase within its facings.</summary>
    public static CarcasePlan Within(CarcasePlan plan)
    {
        if (plan.Facing is not { } facing)
            return plan;
        var t = facing.Material.Thickness.As("facing");
        var (width, depth, outside) = (plan.Width, plan.Depth, plan.Envelope);
        if (facing.Left is not null)
            (width, outside) = (width - t, outside.Grown(Direction.Left, -t.Length));
        if (facing.Right is not null)
            (width, outside) = (width - t, outside.Grown(Direction.Right, -t.Length));
        if (facing.Back is not null)
            (depth, outside) = (depth - t, outside.Grown(Direction.Back, -t.Length));
        return plan with
        {
            Envelope = outside,
            Width = facing.Left is null && facing.Right is null ? width : width.As("width within the facings"),
            Depth = facing.Back is null ? depth : depth.As("depth within the facing"),
        };
    }

    public void Make()
    {
        var outside = plan.Envelope;
        // To the floor over a plinth, to the legs where there are any.
        var foot = plan.Stand is LegsPlan ? outside.Min.Z + plan.Stand.Lift!.Length : outside.Min.Z;
        var full = plan.Stand is LegsPlan ? plan.Height - plan.Stand.Lift! : plan.Height;
        var height = (plan.Top is null ? full : full - plan.Top.Material.Thickness).As("facing height");
        var deep = facing.Back is null ? plan.Depth : (plan.Depth - _thickness).As("facing width");
        var rear = facing.Back is null ? outside.Max.Y : outside.Max.Y - _thickness.Length;
        if (facing.Left is { } left)
            Face("left facing", left, new(outside.Min.X, rear, foot), -90, deep, height, box.Left, box.Left);
        if (facing.Right is { } right)
            Face(
                "right facing",
                right,
                new(outside.Max.X, outside.Min.Y, foot),
                90,
                deep,
                height,
                box.Right,
                box.Right
            );
        if (facing.Back is { } back)
        {
            // A planted back lies between; else the facing meets the rear edges of the sides.
            var (first, last) = plan.Back is { Set: BackSet.Planted }
                ? (box.Back!, box.Back!)
                : (box.Right.Edge(Direction.Back), box.Left.Edge(Direction.Back));
            Face("back facing", back, new(outside.Max.X, outside.Max.Y, foot), 180, plan.Width, height, first, last);
        }
    }

    /// <param name="at">Its left, front, lower corner as it is seen; it is turned about that.</param>
    /// <param name="first">What lies behind its left end.</param>
    /// <param name="last">What lies behind its right end.</param>
    private void Face(
        string name,
        FacingKind kind,
        Point at,
        int degrees,
        Figure width,
        Figure height,
        PartDraft first,
        PartDraft last
    )
    {
        var turn = new PlanTurn(at with { Z = Length.Zero }, degrees, plan.Group.Turn);
        var group = piece.Group(name, GroupKind.Facing, plan.Group, facing.Place, turn);
        if (kind == FacingKind.Framed)
        {
            var stance = new FrameStance(
                group,
                Direction.Right,
                Direction.Front,
                "",
                "left stile",
                "right stile",
                Role.FacingStile,
                Role.FacingRail,
                Role.FacingPanel
            );
            var place = new Extent(at, at + new Point(width.Length, _thickness.Length, height.Length));
            var frame = new PanelFrameMaker(piece, facing.Frame, stance, place).Make(width, height);
            Screws.Between(piece, first, frame.Left, Direction.Back, 3);
            Screws.Between(piece, last, frame.Right, Direction.Back, 3);
            return;
        }
        var slab = piece.Board(
            group,
            "slab",
            Role.Facing,
            facing.Material,
            Lie.Of(Direction.Up, Direction.Front),
            height,
            width,
            at
        );
        Screws.Between(piece, first, slab, Direction.Back, 6);
        if (first != last)
            Screws.Between(piece, last, slab, Direction.Back, 6);
    }
}
