namespace Dryfit.Solids;

/// <summary>A point or direction. Coordinates are numbers of the caller's grid, taken exactly as given.</summary>
public readonly record struct Vec3(double X, double Y, double Z)
{
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vec3 operator *(Vec3 a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    public static double Dot(Vec3 a, Vec3 b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static Vec3 Cross(Vec3 a, Vec3 b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));
}

/// <summary>A point in the plane of an outline, in the same grid.</summary>
public readonly record struct Vec2(double X, double Y);

/// <summary>A right-handed frame of unit directions: point (a, b, c) of the frame is Origin + a U + b V + c W.</summary>
public readonly record struct Frame(Vec3 Origin, Vec3 U, Vec3 V, Vec3 W)
{
    public static Frame Identity { get; } = new(default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    public Vec3 ToWorld(Vec3 p) => Origin + (U * p.X) + (V * p.Y) + (W * p.Z);
}

/// <summary>An axis-aligned box; Min is not above Max in any coordinate.</summary>
public readonly record struct Box(Vec3 Min, Vec3 Max);
