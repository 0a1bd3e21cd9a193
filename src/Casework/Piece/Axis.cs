using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>The piece's own axes: X to the right, Y from the front to the back, Z up.</summary>
public enum Axis
{
    X,
    Y,
    Z,
}

/// <summary>A direction of the piece. Right, back and up are the positive ways of X, Y and Z.</summary>
public enum Direction
{
    Right,
    Left,
    Back,
    Front,
    Up,
    Down,
}

/// <summary>Small questions about directions.</summary>
public static class Directions
{
    public static Axis Axis(this Direction direction) => (Axis)((int)direction / 2);

    /// <summary>+1 for right, back and up; -1 for left, front and down.</summary>
    public static int Sign(this Direction direction) => (int)direction % 2 == 0 ? 1 : -1;

    public static Direction Opposite(this Direction direction) => (Direction)((int)direction ^ 1);

    public static Direction Along(Axis axis, int sign) => (Direction)(((int)axis * 2) + (sign > 0 ? 0 : 1));

    /// <summary>The direction that makes a right-handed set with the two given: <c>a x b</c>.</summary>
    public static Direction Cross(Direction a, Direction b)
    {
        var axis = (Axis)(3 - (int)a.Axis() - (int)b.Axis());
        var cyclic = ((int)a.Axis() + 1) % 3 == (int)b.Axis() ? 1 : -1;
        return Along(axis, a.Sign() * b.Sign() * cyclic);
    }
}

/// <summary>A point of the piece, or of a board: exact.</summary>
public readonly record struct Point(Length X, Length Y, Length Z)
{
    public Length this[Axis axis] =>
        axis switch
        {
            Axis.X => X,
            Axis.Y => Y,
            _ => Z,
        };

    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public Point With(Axis axis, Length value) =>
        axis switch
        {
            Axis.X => this with { X = value },
            Axis.Y => this with { Y = value },
            _ => this with { Z = value },
        };

    /// <summary>Moved by a distance in a direction.</summary>
    public Point Moved(Direction direction, Length by) =>
        With(direction.Axis(), this[direction.Axis()] + (by * direction.Sign()));
}

/// <summary>A box along the axes of the piece or of a board: exact. Min is not above Max.</summary>
public readonly record struct Extent(Point Min, Point Max)
{
    public Length Width => Max.X - Min.X;

    public Length Depth => Max.Y - Min.Y;

    public Length Height => Max.Z - Min.Z;

    public Length Size(Axis axis) => Max[axis] - Min[axis];

    /// <summary>The coordinate of one side: <c>Side(Direction.Right)</c> is Max.X.</summary>
    public Length Side(Direction direction) => direction.Sign() > 0 ? Max[direction.Axis()] : Min[direction.Axis()];

    /// <summary>The same box with one side moved to a coordinate.</summary>
    public Extent With(Direction direction, Length coordinate) =>
        direction.Sign() > 0
            ? this with
            {
                Max = Max.With(direction.Axis(), coordinate),
            }
            : this with
            {
                Min = Min.With(direction.Axis(), coordinate),
            };

    /// <summary>The same box with one side moved outward (or inward, where negative).</summary>
    public Extent Grown(Direction direction, Length by) => With(direction, Side(direction) + (by * direction.Sign()));

    /// <summary>What two boxes share; null where they share no volume.</summary>
    public static Extent? Shared(Extent a, Extent b)
    {
        var min = new Point(Length.Max(a.Min.X, b.Min.X), Length.Max(a.Min.Y, b.Min.Y), Length.Max(a.Min.Z, b.Min.Z));
        var max = new Point(Length.Min(a.Max.X, b.Max.X), Length.Min(a.Max.Y, b.Max.Y), Length.Min(a.Max.Z, b.Max.Z));
        return min.X < max.X && min.Y < max.Y && min.Z < max.Z ? new Extent(min, max) : null;
    }
}
