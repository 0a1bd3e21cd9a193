namespace Dryfit.Solids.Measuring;

/// <summary>The triangles of a placed solid in world coordinates.</summary>
internal sealed class WorldMesh
{
    private readonly IReadOnlyList<int> triangles;

    public WorldMesh(Placed placed)
    {
        var solid = placed.Solid;
        triangles = solid.Triangles;
        Vertices = new Vec3[solid.Vertices.Count];
        for (var i = 0; i < Vertices.Length; i++)
        {
            Vertices[i] = placed.Frame.ToWorld(solid.Vertices[i]);
            Bounds = i == 0 ? new(Vertices[0], Vertices[0]) : Around(Bounds, Vertices[i]);
        }
    }

    public Vec3[] Vertices { get; }

    public Box Bounds { get; }

    public int Count => triangles.Count / 3;

    public Triangle this[int i] =>
        new(Vertices[triangles[3 * i]], Vertices[triangles[(3 * i) + 1]], Vertices[triangles[(3 * i) + 2]]);

    private static Box Around(Box box, Vec3 p) => new(Vec3Order.Least(box.Min, p), Vec3Order.Most(box.Max, p));
}

/// <summary>A triangle with the box around it.</summary>
internal readonly struct Triangle(Vec3 a, Vec3 b, Vec3 c)
{
    public Vec3 A { get; } = a;

    public Vec3 B { get; } = b;

    public Vec3 C { get; } = c;

    public Box Bounds { get; } =
        new(Vec3Order.Least(a, Vec3Order.Least(b, c)), Vec3Order.Most(a, Vec3Order.Most(b, c)));

    public Vec3 this[int i] =>
        i switch
        {
            0 => A,
            1 => B,
            _ => C,
        };
}

/// <summary>Coordinate by coordinate.</summary>
internal static class Vec3Order
{
    public static Vec3 Least(Vec3 a, Vec3 b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    public static Vec3 Most(Vec3 a, Vec3 b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));

    /// <summary>The square of the distance between two boxes; 0 where they touch.</summary>
    public static double SquaredDistance(this Box a, Box b)
    {
        var x = Apart(a.Min.X, a.Max.X, b.Min.X, b.Max.X);
        var y = Apart(a.Min.Y, a.Max.Y, b.Min.Y, b.Max.Y);
        var z = Apart(a.Min.Z, a.Max.Z, b.Min.Z, b.Max.Z);
        return (x * x) + (y * y) + (z * z);
    }

    private static double Apart(double minA, double maxA, double minB, double maxB) =>
        minA > maxB ? minA - maxB
        : minB > maxA ? minB - maxA
        : 0;
}
