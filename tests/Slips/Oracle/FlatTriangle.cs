using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Slips;

/// <summary>A triangle looked at along an axis; millimetres.</summary>
internal readonly record struct FlatTriangle(Vec2 A, Vec2 B, Vec2 C)
{
    /// <summary>What overlaps by less only touches.</summary>
    private const double LeastMm = 1e-3;

    public static FlatTriangle Of(Vec3 a, Vec3 b, Vec3 c, Axis along) =>
        new(Flat(a, along), Flat(b, along), Flat(c, along));

    /// <summary>Whether two triangles share an area: no edge of either parts them.</summary>
    public bool Shares(FlatTriangle other) =>
        !PartedBy(A, B, other)
        && !PartedBy(B, C, other)
        && !PartedBy(C, A, other)
        && !other.PartedBy(other.A, other.B, this)
        && !other.PartedBy(other.B, other.C, this)
        && !other.PartedBy(other.C, other.A, this);

    private bool PartedBy(Vec2 from, Vec2 to, FlatTriangle other)
    {
        var (x, y) = (from.Y - to.Y, to.X - from.X);
        var length = Math.Sqrt((x * x) + (y * y));
        if (length == 0)
            return false;
        var (ownLeast, ownMost) = Range(x / length, y / length);
        var (least, most) = other.Range(x / length, y / length);
        return ownMost < least + LeastMm || most < ownLeast + LeastMm;
    }

    private (double Least, double Most) Range(double x, double y)
    {
        var (a, b, c) = ((A.X * x) + (A.Y * y), (B.X * x) + (B.Y * y), (C.X * x) + (C.Y * y));
        return (Math.Min(a, Math.Min(b, c)), Math.Max(a, Math.Max(b, c)));
    }

    private static Vec2 Flat(Vec3 point, Axis along) =>
        along switch
        {
            Axis.X => new(point.Y, point.Z),
            Axis.Y => new(point.X, point.Z),
            _ => new(point.X, point.Y),
        };
}
