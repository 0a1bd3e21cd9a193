using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>One of the three coordinates of a measured point.</summary>
internal enum Vec3Axis
{
    X,
    Y,
    Z,
}

/// <summary>Small questions about boxes and directions of measured points, in grid units.</summary>
internal static class Boxes
{
    public static double On(this Vec3 point, Vec3Axis axis) =>
        axis switch
        {
            Vec3Axis.X => point.X,
            Vec3Axis.Y => point.Y,
            _ => point.Z,
        };

    /// <summary>The unit vector of a direction of the piece.</summary>
    public static Vec3 Unit(this Direction direction) =>
        direction.Axis() switch
        {
            Axis.X => new(direction.Sign(), 0, 0),
            Axis.Y => new(0, direction.Sign(), 0),
            _ => new(0, 0, direction.Sign()),
        };

    public static Vec3Axis Measured(this Axis axis) => (Vec3Axis)(int)axis;

    /// <summary>How far a point lies in a direction: it grows as one goes that way.</summary>
    public static double Along(this Vec3 point, Direction direction) =>
        point.On(direction.Axis().Measured()) * direction.Sign();

    /// <summary>The point moved so that it lies so far in a direction.</summary>
    public static Vec3 With(this Vec3 point, Direction direction, double along) =>
        point + (direction.Unit() * (along - point.Along(direction)));

    /// <summary>How far the box reaches in a direction.</summary>
    public static double Reach(this Box box, Direction direction) =>
        (direction.Sign() > 0 ? box.Max : box.Min).Along(direction);

    /// <summary>The eight corners of a box.</summary>
    public static IEnumerable<Vec3> Corners(this Box box) =>
        Enumerable
            .Range(0, 8)
            .Select(n => new Vec3(
                (n & 1) == 0 ? box.Min.X : box.Max.X,
                (n & 2) == 0 ? box.Min.Y : box.Max.Y,
                (n & 4) == 0 ? box.Min.Z : box.Max.Z
            ));

    public static Vec3 Centre(this Box box) => (box.Min + box.Max) * 0.5;

    public static double Size(this Box box, Axis axis) => box.Max.On(axis.Measured()) - box.Min.On(axis.Measured());

    public static Box Around(this Box a, Box b) =>
        new(
            new(Math.Min(a.Min.X, b.Min.X), Math.Min(a.Min.Y, b.Min.Y), Math.Min(a.Min.Z, b.Min.Z)),
            new(Math.Max(a.Max.X, b.Max.X), Math.Max(a.Max.Y, b.Max.Y), Math.Max(a.Max.Z, b.Max.Z))
        );

    public static Box Grown(this Box box, double by) =>
        new(box.Min - new Vec3(by, by, by), box.Max + new Vec3(by, by, by));

    /// <summary>The box with its side in a direction moved out.</summary>
    public static Box Grown(this Box box, Direction direction, double by) =>
        direction.Sign() > 0
            ? box with
            {
                Max = box.Max + (direction.Unit() * by),
            }
            : box with
            {
                Min = box.Min + (direction.Unit() * by),
            };

    /// <summary>Whether two boxes share at least a point.</summary>
    public static bool Touches(this Box a, Box b) =>
        a.Min.X <= b.Max.X
        && b.Min.X <= a.Max.X
        && a.Min.Y <= b.Max.Y
        && b.Min.Y <= a.Max.Y
        && a.Min.Z <= b.Max.Z
        && b.Min.Z <= a.Max.Z;

    /// <summary>Whether two boxes share more than their skins.</summary>
    public static bool Overlaps(this Box a, Box b) =>
        a.Min.X < b.Max.X
        && b.Min.X < a.Max.X
        && a.Min.Y < b.Max.Y
        && b.Min.Y < a.Max.Y
        && a.Min.Z < b.Max.Z
        && b.Min.Z < a.Max.Z;

    /// <summary>The box around points; there is at least one.</summary>
    public static Box Of(IReadOnlyList<Vec3> points)
    {
        var box = new Box(points[0], points[0]);
        for (var i = 1; i < points.Count; i++)
            box = box.Around(new(points[i], points[i]));
        return box;
    }
}
