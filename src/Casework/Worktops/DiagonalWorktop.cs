using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Corners;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Worktops;

/// <summary>
/// The worktop over a diagonal corner: one board along both walls. Its front edge runs at 45 degrees from where the front
/// edge of the one run's worktop ends to where the other's does, and its ends are bolted to them.
/// </summary>
internal static class DiagonalWorktop
{
    /// <summary>The board, cut to its outline.</summary>
    public static PartDraft Lay(
        PieceBuilder piece,
        GroupDraft group,
        TopPlan plan,
        Body body,
        DiagonalPlan diagonal,
        Length z
    )
    {
        var shape = new DiagonalShape(body.Envelope, body.Depth, body.Turn, diagonal);
        // The fronts of both runs stand so far before their carcases: so much less is cut off.
        var leg = plan.Front.Length == Length.Zero ? shape.Cut : shape.Cut - plan.Front;
        if (leg.Length <= Length.Zero)
            throw Refused("The worktop reaches over all of the diagonal.", diagonal.Place, "a smaller front overhang");
        var width = plan.Back.Length == Length.Zero ? body.Depth : body.Depth + plan.Back;
        var length = plan.Back.Length == Length.Zero ? body.Width : body.Width + plan.Back;
        var board = piece.Board(
            group,
            "top",
            Role.Worktop,
            plan.Material,
            Lie.Of(Direction.Right, Direction.Up),
            length.As("worktop length"),
            width.As("worktop width"),
            shape
                .Box((Length.Zero, length.Length), (Length.Zero, width.Length), (z, z + plan.Material.Thickness.Length))
                .Min
        );
        shape.CutCorner(board, Length.Zero, leg.Length);
        return board;
    }

    /// <summary>What the worktop over a diagonal corner cannot have.</summary>
    public static void Refuse(Fields fields, TopPlan plan)
    {
        DiagonalTop.Refuse(plan, fields.Place);
        foreach (var key in (ReadOnlySpan<string>)["joints", "cut outs"])
        {
            if (fields.Has(key))
                throw Refused(
                    $"The worktop over a diagonal corner is one whole board: it has no {key}.",
                    fields.PlaceOf(key),
                    $"{key} in the worktops of the two runs"
                );
        }
        if (fields.Map("overhang") is not null && (plan.Left.Length.Sign != 0 || plan.Right.Length.Sign != 0))
            throw Refused(
                "The worktop over a diagonal corner has no overhang at its ends: there the worktops of the runs begin.",
                fields.PlaceOf("overhang"),
                "overhang: { front: 20 mm }"
            );
    }

    /// <summary>Bolts it to the worktops of its own run that end where it begins.</summary>
    public static void Join(PieceBuilder piece, Worktop own, IReadOnlyList<Worktop> made)
    {
        foreach (var other in made.Where(top => top.Run.Turn == own.Run.Turn && top.Run.Top == own.Run.Top))
        {
            if (other.Right == own.Left)
                BoltPockets.Butt(piece, own.Lengths[0], other.Lengths[^1], Direction.Right);
            else if (other.Left == own.Right)
                BoltPockets.Butt(piece, own.Lengths[0], other.Lengths[0], Direction.Left);
        }
    }

    private static CannotBuildException Refused(string message, SourcePlace place, string wanted) =>
        new(new InputError(message, place, wanted));
}
