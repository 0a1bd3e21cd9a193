using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Heads;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>
/// Frieze and cornice round a diagonal corner carcase: a board across the corner and returns along the ends, mitred at half
/// of the 135 degrees between them. Where an end has no return, the board is sawn in line with that end.
/// </summary>
internal sealed class DiagonalHead(PieceBuilder piece, CarcasePlan plan, DiagonalPlan diagonal, DiagonalShape shape)
{
    private readonly GroupDraft _front = piece.Group(
        "head",
        GroupKind.Facing,
        plan.Group,
        plan.Group.Source,
        shape.Turn
    );

    /// <param name="top">The height of the upper end of the sides.</param>
    public void Make(HeadPlan head, Length top)
    {
        Figure? before = null;
        foreach (var boards in (ReadOnlySpan<SurroundPlan?>)[head.Frieze, head.Cornice])
        {
            if (boards is null)
                continue;
            Plant(boards, before, top - boards.Height.Length);
            before = before is null ? boards.Material.Thickness : before + boards.Material.Thickness;
        }
    }

    /// <param name="before">How far what was planted already stands before the carcase; null for nothing.</param>
    private void Plant(SurroundPlan boards, Figure? before, Length bottom)
    {
        var others = piece.Parts.ToList();
        var thickness = boards.Material.Thickness;
        var outer = (before is null ? thickness : before + thickness).As("outside of the " + boards.Name);
        var (nearReturns, farReturns) = diagonal.WallAtRight
            ? (boards.AtLeft, boards.AtRight)
            : (boards.AtRight, boards.AtLeft);
        var front = Front(boards, before, outer, bottom);
        var made = new List<PartDraft> { front };
        if (nearReturns)
        {
            var from = shape.Cut - Past(outer);
            var length = plan.Depth - from;
            made.Add(
                Return(
                    boards,
                    diagonal.WallAtRight ? "left return" : "right return",
                    Lie.Of(Direction.Back, shape.Near),
                    length,
                    shape.Box(
                        (-outer.Length, thickness.Length - outer.Length),
                        (from.Length, from.Length + length.Length),
                        (bottom, bottom)
                    ),
                    Direction.Front
                )
            );
        }
        if (farReturns)
        {
            var from = shape.Cut - Past(outer);
            var length = plan.Width - from;
            made.Add(
                Return(
                    boards,
                    diagonal.WallAtRight ? "right return" : "left return",
                    Lie.Of(Direction.Right, Direction.Front),
                    length,
                    shape.Box(
                        (from.Length, from.Length + length.Length),
                        (-outer.Length, thickness.Length - outer.Length),
                        (bottom, bottom)
                    ),
                    shape.Near
                )
            );
        }
        foreach (var board in made)
            RefuseClash(boards, board, others);
        foreach (var board in made.Skip(1))
            piece.Join(
                JointKind.Mitre,
                front,
                board,
                board.Place.Lie.Shows == Direction.Front ? shape.Near : Direction.Front
            );
        foreach (var board in made)
        {
            if (boards.Shape is { } moulded)
                ShapedEdge.Cut(board, Direction.Down, board.Place.Lie.Shows, moulded);
            Tie(board, others);
        }
    }

    private PartDraft Front(SurroundPlan boards, Figure? before, Figure outer, Length bottom)
    {
        var thickness = boards.Material.Thickness;
        // With a return the board reaches past the corner; without, it ends in line with the end of the carcase.
        Figure Beyond(bool returns) => returns ? Past(outer) : before!;
        var length = shape.FrontWidth;
        var start = Length.Zero;
        foreach (var (returns, isLeft) in (ReadOnlySpan<(bool, bool)>)[(boards.AtLeft, true), (boards.AtRight, false)])
        {
            if (!returns && before is null)
                continue;
            var by = Beyond(returns);
            length = returns ? length + by : length - by;
            if (isLeft)
                start = returns ? -by.Length : by.Length;
        }
        var front = piece.Board(
            _front,
            $"{boards.Name} front",
            Role.Moulding,
            boards.Material,
            Lie.Of(Direction.Right, Direction.Front),
            length.As($"{boards.Name} length"),
            boards.Height,
            (shape.Pivot with { Z = bottom }).Moved(Direction.Right, start).Moved(Direction.Front, outer.Length),
            boards.Place
        );
        foreach (
            var (returns, end) in (ReadOnlySpan<(bool, Direction)>)
                [(boards.AtLeft, Direction.Left), (boards.AtRight, Direction.Right)]
        )
        {
            if (returns)
                EndMitre.Cut(front, end, Direction.Front, Past(thickness).Length);
            else
                EndMitre.Cut(front, end, Direction.Back, thickness.Length);
        }
        return front;
    }

    private PartDraft Return(SurroundPlan boards, string name, Lie lie, Figure length, Extent place, Direction end)
    {
        var board = piece.Board(
            plan.Group,
            $"{boards.Name} {name}",
            Role.Moulding,
            boards.Material,
            lie,
            length.As($"{boards.Name} return length"),
            boards.Height,
            place.Min,
            boards.Place
        );
        EndMitre.Cut(board, end, lie.Shows, Past(boards.Material.Thickness).Length);
        return board;
    }

    /// <summary>How far what stands so far out reaches past a corner of 135 degrees: the tangent of 22.5 degrees times it.</summary>
    private static Figure Past(Figure outer) => (DiagonalShape.Across(outer) - outer).As("past the corner");

    private void RefuseClash(SurroundPlan boards, PartDraft board, IReadOnlyList<PartDraft> others)
    {
        var clash = others.FirstOrDefault(other =>
            other.Group.Turn == board.Group.Turn && Extent.Shared(board.Reckoned, other.Reckoned) is not null
        );
        if (clash is not null)
            throw Refused(boards, $"The {board.Name} would stand in the place of the {clash.Name}.");
        var hidden = piece.Openings.FirstOrDefault(opening =>
            opening.Id.StartsWith($"{plan.Group.Id}/", StringComparison.Ordinal)
            && piece.Fronts.Any(front => front.Opening == opening.Id)
            && opening.Clear.Max.Z > board.Reckoned.Min.Z
        );
        if (hidden is not null && board.Group == _front)
            throw Refused(boards, $"The {board.Name} would hang before the front of the {hidden.Name}.");
    }

    /// <summary>The front is glued on; the returns are glued in their mitres only and screwed from inside.</summary>
    private void Tie(PartDraft board, IReadOnlyList<PartDraft> others)
    {
        var inward = board.Place.Lie.Shows.Opposite();
        foreach (var other in others.Where(other => other.Group.Turn == board.Group.Turn))
        {
            if (!Resting.ShareFace(board.Reckoned, other.Reckoned, inward))
                continue;
            if (board.Group == _front)
                piece.Join(JointKind.Butt, other, board, inward);
            else
                Screws.Between(piece, other, board, inward, 3);
        }
    }

    private static CannotBuildException Refused(SurroundPlan boards, string message) =>
        new(new InputError(message, boards.Place, "a lower board, inset doors, or a wider rail there"));
}
