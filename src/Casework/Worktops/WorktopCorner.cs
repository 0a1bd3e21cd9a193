using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Shaping;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Worktops;

/// <summary>
/// Where the worktop of a return meets the one over the corner it returns from. All is told in the return's own frame,
/// which is a quarter turned against the other's.
/// </summary>
/// <param name="Main">The worktop over the corner.</param>
/// <param name="First">The carcase of the return that stands before the corner.</param>
/// <param name="IsLeft">Whether the corner is at the left end of the return.</param>
internal sealed record WorktopCorner(Worktop Main, Body First, bool IsLeft)
{
    private Direction End => IsLeft ? Direction.Left : Direction.Right;

    /// <summary>The corner of a run that returns from one that has its worktop already; null where it does not.</summary>
    public static WorktopCorner? Of(WorktopRun run, IReadOnlyList<Worktop> made)
    {
        foreach (var (body, _) in run.Carcases)
        {
            var main = made.FirstOrDefault(top =>
                top.Run.Carcases.Any(c => c.Body.Name == body.Spot.Neighbour) && top.Run.Turn != run.Turn
            );
            if (main is not null && body.Turn == body.Spot.Frame && body.Spot.Towards is { } end)
                return new(main, body, end == Direction.Left);
        }
        return null;
    }

    /// <summary>Where a line across the corner's run, at a depth of its own frame, stands along the return.</summary>
    private Length Along(Length mainY)
    {
        var pivot = First.Turn!.Pivot;
        return IsLeft ? pivot.X + pivot.Y - mainY : pivot.X + mainY - pivot.Y;
    }

    /// <summary>Length and left end of the return's worktop: to the front of the other, or on to the wall where it is mitred.</summary>
    /// <param name="run">Width of the run with its overhang at the free end.</param>
    public (Figure Length, Length Left) Stretch(Figure run, TopPlan plan, bool isMitred)
    {
        var meets = Along(isMitred ? Main.Back : Main.Front + WorktopEdges.BehindFront(Main));
        var start = IsLeft ? First.Envelope.Min.X : First.Envelope.Max.X;
        var on = Length.Abs(start - meets);
        var reach = Figure.Given(
            isMitred ? "on to the corner of the walls" : "on to the other worktop",
            on,
            new TradeOrigin("where the two worktops meet")
        );
        var length = on.Sign == 0 ? run : run + reach;
        return (length, IsLeft ? meets : meets - length.Length);
    }

    /// <summary>Cuts and ties the two.</summary>
    public void Join(PieceBuilder piece, Worktop own, bool isMitred)
    {
        var mainBoard = IsLeft ? Main.Lengths[^1] : Main.Lengths[0];
        var board = IsLeft ? own.Lengths[0] : own.Lengths[^1];
        var pivot = First.Turn!.Pivot;
        // The wall behind the return, along the corner's own run.
        var wall = IsLeft ? pivot.X + own.Back - pivot.Y : pivot.X - (own.Back - pivot.Y);
        var mainEnd = IsLeft ? Main.Right : Main.Left;
        WorktopEdges.RefuseUnlike(Main, own, isMitred);
        own.EndsInCorners.Add(End);
        if (wall == mainEnd)
            Main.EndsInCorners.Add(IsLeft ? Direction.Right : Direction.Left);
        if (!isMitred)
        {
            var behind = WorktopEdges.BehindFront(Main);
            if (behind > Length.Zero)
                LetIn(piece, mainBoard, board, own, wall, behind);
            BoltPockets.Corner(piece, mainBoard, board, End, wall, behind, IsLeft);
            return;
        }
        if (wall != mainEnd)
            throw new CannotBuildException(
                new InputError(
                    "The two worktops do not end in one corner: there is no mitre between them.",
                    board.Source,
                    "the same overhang at the back of the one as at the end of the other, or corner: butt"
                )
            );
        var joint = piece.NextJointId;
        EndMitre.Cut(mainBoard, IsLeft ? Direction.Right : Direction.Left, Direction.Back, own.Depth, joint);
        EndMitre.Cut(board, End, Direction.Back, Main.Depth, joint);
        BoltPockets.Mitre(piece, mainBoard, board, End, IsLeft);
    }

    /// <summary>
    /// Cuts the shaped front of the one away where the other butts against it, and mitres the two shapes against each
    /// other in the inner corner: as deep as the shape reaches in, no deeper (common practice for moulded worktops).
    /// </summary>
    private void LetIn(PieceBuilder piece, PartDraft main, PartDraft board, Worktop own, Length wall, Length behind)
    {
        var joint = piece.NextJointId;
        var (zero, inner) = (Length.Zero, IsLeft ? wall - own.Depth : wall + own.Depth);
        Swept.Cut(
            main,
            CutKind.Notch,
            main.Reckoned.Min with
            {
                X = inner,
            },
            IsLeft ? Direction.Right : Direction.Left,
            Direction.Back,
            [(zero, zero), (own.Depth, zero), (own.Depth, behind), (behind, behind)],
            joint: joint
        );
        Swept.Cut(
            board,
            CutKind.Mitre,
            Swept.Corner(board.Extent, End, Direction.Front),
            End.Opposite(),
            Direction.Back,
            [(zero, zero), (behind, zero), (zero, behind)],
            joint: joint
        );
    }
}
