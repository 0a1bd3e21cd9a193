using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>
/// An opening as the tape found it, as four straight edges. Four sides alone do not fix a quadrilateral: the bottom is
/// taken as level, the hinge side of a single door as plumb; for a pair and for drawers both ends lean alike.
/// </summary>
internal static class FoundOpening
{
    public const string Assumption =
        "The opening is judged by the sizes measured, its bottom taken as level and its hinge side as plumb.";

    /// <summary>One edge of the opening as it is met going in a direction.</summary>
    public static Outline Edge(Grid grid, Opening opening, MeasuredOpening found, Front front, Direction side)
    {
        var (bottomLeft, bottomRight) = Ends(opening, front, found.WidthAtBottom);
        var (topLeft, topRight) = Ends(opening, front, found.WidthAtTop);
        var floor = opening.Clear.Min.Z;
        var z = grid.ToUnits(floor);
        return side switch
        {
            Direction.Left => Outline.Straight(
                side,
                Axis.Z,
                new(z, -grid.ToUnits(bottomLeft), grid.ToUnits(floor + found.HeightAtLeft), -grid.ToUnits(topLeft))
            ),
            Direction.Right => Outline.Straight(
                side,
                Axis.Z,
                new(z, grid.ToUnits(bottomRight), grid.ToUnits(floor + found.HeightAtRight), grid.ToUnits(topRight))
            ),
            Direction.Down => Outline.Straight(
                side,
                Axis.X,
                new(grid.ToUnits(bottomLeft), -z, grid.ToUnits(bottomRight), -z)
            ),
            _ => Outline.Straight(
                side,
                Axis.X,
                new(
                    grid.ToUnits(topLeft),
                    grid.ToUnits(floor + found.HeightAtLeft),
                    grid.ToUnits(topRight),
                    grid.ToUnits(floor + found.HeightAtRight)
                )
            ),
        };
    }

    private static (Length Left, Length Right) Ends(Opening opening, Front front, Length width)
    {
        if (!front.Neighbours.Any(n => n.Side.Axis() == Axis.X) && front.Motion == FrontMotion.TurnsOnLeftEdge)
            return (opening.Clear.Min.X, opening.Clear.Min.X + width);
        if (!front.Neighbours.Any(n => n.Side.Axis() == Axis.X) && front.Motion == FrontMotion.TurnsOnRightEdge)
            return (opening.Clear.Max.X - width, opening.Clear.Max.X);
        var left = ((opening.Clear.Min.X + opening.Clear.Max.X) - width) / 2;
        return (left, left + width);
    }
}
