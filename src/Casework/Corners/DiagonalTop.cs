using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>
/// The top of a diagonal corner carcase: a board along both walls with its front edge across the corner, so far before the
/// front as its front overhang says, square to it.
/// </summary>
internal static class DiagonalTop
{
    /// <param name="box">The carcase as built.</param>
    /// <param name="z">The underside.</param>
    public static void Make(
        PieceBuilder piece,
        CarcasePlan plan,
        DiagonalPlan diagonal,
        DiagonalShape shape,
        TopPlan top,
        DiagonalBox box,
        Length z
    )
    {
        var (near, far) = diagonal.WallAtRight ? (top.Left, top.Right) : (top.Right, top.Left);
        var length = Over(Over(plan.Width, near), top.Back).As("top length");
        var width = Over(Over(plan.Depth, far), top.Back).As("top width");
        // Square to the front it is the overhang; along an end as much as the diagonal of its square.
        var across = top.Front.Length == Length.Zero ? top.Front : DiagonalShape.Across(top.Front);
        var leg = Over(Over(shape.Cut, near), far) - across;
        if (leg.Length <= Length.Zero)
            throw new CannotBuildException(
                new InputError("The top reaches over all of the diagonal.", diagonal.Place, "a smaller front overhang")
            );
        var board = piece.Board(
            plan.Group,
            "top",
            Role.Top,
            top.Material,
            Lie.Of(Direction.Right, Direction.Up),
            length,
            width,
            shape
                .Box(
                    (-near.Length, length.Length - near.Length),
                    (-far.Length, width.Length - far.Length),
                    (z, z + top.Material.Thickness.Length)
                )
                .Min
        );
        shape.CutCorner(board, Length.Zero, leg.Length);
        Screws.Between(piece, box.Top, board, Direction.Down, 4);
    }

    /// <summary>What no top with an edge across a corner has.</summary>
    public static void Refuse(TopPlan? top, SourcePlace place)
    {
        if (top is { Edging: not null } or { Edge: not null })
            throw new CannotBuildException(
                new InputError(
                    top.Edge is null
                        ? "The edge of a top across a corner takes no edging: bands run along square edges."
                        : "The edge of a top across a corner takes no shape: shapes run along square edges.",
                    place,
                    "a square edge, shaped by hand after it is cut"
                )
            );
    }

    private static Figure Over(Figure size, Figure overhang) => overhang.Length == Length.Zero ? size : size + overhang;
}
