using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Lays a top on the carcase, with its overhangs, held by screws from below.</summary>
internal static class TopMaker
{
    public static PartDraft Make(PieceBuilder piece, CarcasePlan plan, TopPlan top, Box box)
    {
        var envelope = plan.Envelope;
        var banded = Edging.Panel(
            piece,
            plan.Group,
            "top",
            Role.Top,
            top.Material,
            Lie.Of(Direction.Right, Direction.Up),
            Over(Over(plan.Width, top.Left), top.Right).As("top length"),
            Over(Over(plan.Depth, top.Front), top.Back).As("top width"),
            new(envelope.Min.X - top.Left.Length, envelope.Min.Y - top.Front.Length, box.TopZ),
            top.Edging is null ? null : new Bands(top.Edging, Direction.Front, Direction.Left, Direction.Right)
        );
        var board = banded.Panel;
        foreach (var part in box.Closing)
            Screws.Between(piece, part, board, Direction.Down, 4);
        top.Edge?.Cut(banded, Direction.Up);
        return board;
    }

    /// <summary>With an overhang where there is one: nothing is no term of a sum.</summary>
    private static Figure Over(Figure size, Figure overhang) => overhang.Length == Length.Zero ? size : size + overhang;
}
