using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Outputs.Alike;

/// <summary>
/// A turn of a board about its thickness, counter-clockwise seen from the show face. It keeps the show face up; only
/// <see cref="None"/> and <see cref="Half"/> keep the line of the grain.
/// </summary>
public enum Turn
{
    None,
    Quarter,
    Half,
    ThreeQuarters,
}

/// <summary>
/// A board that is laid down turned: what was at a point of the board stands at another, and the turned board again has
/// its corner at zero and reaches to its turned length and width.
/// </summary>
/// <param name="Turn">By how much.</param>
/// <param name="Length">The board's length before the turn.</param>
/// <param name="Width">The board's width before the turn.</param>
public readonly record struct TurnedBoard(Turn Turn, Length Length, Length Width)
{
    /// <summary>True where length and width change places.</summary>
    public bool Swaps => Turn is Turn.Quarter or Turn.ThreeQuarters;

    /// <summary>Where a point of the board comes to lie.</summary>
    public Point Of(Point p) =>
        Turn switch
        {
            Turn.Quarter => new(Width - p.Y, p.X, p.Z),
            Turn.Half => new(Length - p.X, Width - p.Y, p.Z),
            Turn.ThreeQuarters => new(p.Y, Length - p.X, p.Z),
            _ => p,
        };

    /// <summary>Where a direction of the board comes to point.</summary>
    public Direction Of(Direction direction)
    {
        for (var quarters = (int)Turn; quarters > 0; quarters--)
        {
            direction = direction switch
            {
                Direction.Right => Direction.Back,
                Direction.Back => Direction.Left,
                Direction.Left => Direction.Front,
                Direction.Front => Direction.Right,
                _ => direction,
            };
        }

        return direction;
    }

    /// <summary>Where a box of the board comes to lie.</summary>
    public Extent Of(Extent box)
    {
        var (a, b) = (Of(box.Min), Of(box.Max));
        return new(
            new(Measure.Length.Min(a.X, b.X), Measure.Length.Min(a.Y, b.Y), Measure.Length.Min(a.Z, b.Z)),
            new(Measure.Length.Max(a.X, b.X), Measure.Length.Max(a.Y, b.Y), Measure.Length.Max(a.Z, b.Z))
        );
    }
}
