using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>A plinth under a diagonal corner carcase: boards along the walls and under the ends, one across the corner.</summary>
internal sealed class DiagonalPlinth(PieceBuilder piece, CarcasePlan plan, DiagonalShape shape)
{
    public IReadOnlyList<PartDraft> Make(PlinthPlan plinth)
    {
        var group = piece.Group("plinth", GroupKind.Stand, plan.Group, plan.Group.Source);
        var across = piece.Group("plinth front", GroupKind.Stand, plan.Group, plan.Group.Source, shape.Turn);
        var (t, w, d) = (plinth.Material.Thickness, plan.Width, plan.Depth);
        var foot = plan.Envelope.Min.Z;
        var up = (foot, foot + plinth.Height.Length);
        // Behind the board across the corner.
        var line =
            shape.Cut
            + DiagonalShape.Across((plinth.Setback + t).As("behind the plinth")).As("plinth across the corner");
        var from = line.Length - t.Length;
        var rear = Board(
            "rear",
            Lie.Of(Direction.Right, Direction.Back),
            w,
            shape.Box((Length.Zero, w.Length), (d.Length - t.Length, d.Length), up)
        );
        var wall = Board(
            "wall end",
            Lie.Of(Direction.Back, shape.Far),
            d - t,
            shape.Box((w.Length - t.Length, w.Length), (Length.Zero, d.Length - t.Length), up)
        );
        var near = Board(
            "end",
            Lie.Of(Direction.Back, shape.Near),
            d - line,
            shape.Box((Length.Zero, t.Length), (from, d.Length - t.Length), up)
        );
        var far = Board(
            "other end",
            Lie.Of(Direction.Right, Direction.Front),
            w - line,
            shape.Box((from, w.Length - t.Length), (Length.Zero, t.Length), up)
        );
        EndMitre.Cut(near, Direction.Front, shape.Far, t.Length);
        EndMitre.Cut(far, shape.Near, Direction.Back, t.Length);
        var reach = (plinth.Setback + t).As("past the corner");
        var front = piece.Board(
            across,
            "board",
            Role.Plinth,
            plinth.Material,
            Lie.Of(Direction.Right, Direction.Front),
            (shape.FrontWidth + reach + reach).As("plinth length"),
            plinth.Height,
            (shape.Pivot with { Z = foot })
                .Moved(Direction.Left, reach.Length)
                .Moved(Direction.Back, plinth.Setback.Length)
        );
        EndMitre.Cut(front, Direction.Left, Direction.Back, t.Length);
        EndMitre.Cut(front, Direction.Right, Direction.Back, t.Length);
        Screws.Between(piece, near, front, Direction.Back, 2, glued: true);
        Screws.Between(piece, far, front, Direction.Back, 2, glued: true);
        Screws.Between(piece, rear, near, Direction.Back, 2, glued: true);
        Screws.Between(piece, rear, wall, Direction.Back, 2, glued: true);
        Screws.Between(piece, wall, far, shape.Far, 2, glued: true);
        return [rear, wall, near, far];

        PartDraft Board(string name, Lie lie, Figure length, Extent box) =>
            piece.Board(
                group,
                name,
                Role.Plinth,
                plinth.Material,
                lie,
                length.As("plinth length"),
                plinth.Height,
                box.Min
            );
    }
}
