namespace Dryfit.Solids.Exact;

/// <summary>A point without rounding, (X, Y, Z) / W: where three planes meet, or one given by doubles.</summary>
internal sealed class ExactPoint
{
    private readonly Dyadic x;
    private readonly Dyadic y;
    private readonly Dyadic z;
    private readonly Dyadic w;

    public ExactPoint(ExactPlane a, ExactPlane b, ExactPlane c)
    {
        var (bcX, bcY, bcZ) = Cross(b, c);
        var (caX, caY, caZ) = Cross(c, a);
        var (abX, abY, abZ) = Cross(a, b);
        x = (a.D * bcX) + (b.D * caX) + (c.D * abX);
        y = (a.D * bcY) + (b.D * caY) + (c.D * abY);
        z = (a.D * bcZ) + (b.D * caZ) + (c.D * abZ);
        w = (a.A * bcX) + (a.B * bcY) + (a.C * bcZ);
    }

    public ExactPoint(Vec3 position) => (x, y, z, w) = (position.X, position.Y, position.Z, 1.0);

    public int Side(ExactPlane s) => ((s.A * x) + (s.B * y) + (s.C * z) - (s.D * w)).Sign * w.Sign;

    public (double X, double Y, double Z) Round() => (Dyadic.Divide(x, w), Dyadic.Divide(y, w), Dyadic.Divide(z, w));

    /// <summary>The order of two points along an axis.</summary>
    public static int Compare(ExactPoint a, ExactPoint b, int axis)
    {
        var (p, q) = axis switch
        {
            0 => (a.x, b.x),
            1 => (a.y, b.y),
            _ => (a.z, b.z),
        };
        return ((p * b.w) - (q * a.w)).Sign * a.w.Sign * b.w.Sign;
    }

    /// <summary>The turn of three points seen along an axis.</summary>
    public static int Turn(ExactPoint a, ExactPoint b, ExactPoint c, int axis)
    {
        var ((ax, ay), (bx, by), (cx, cy)) = (a.Flat(axis), b.Flat(axis), c.Flat(axis));
        var det = (ax * ((by * c.w) - (b.w * cy))) - (ay * ((bx * c.w) - (b.w * cx))) + (a.w * ((bx * cy) - (by * cx)));
        return det.Sign * a.w.Sign * b.w.Sign * c.w.Sign;
    }

    private (Dyadic X, Dyadic Y) Flat(int axis) =>
        axis switch
        {
            0 => (y, z),
            1 => (z, x),
            _ => (x, y),
        };

    public static Dyadic Determinant(ExactPlane a, ExactPlane b, ExactPlane c)
    {
        var (bcX, bcY, bcZ) = Cross(b, c);
        return (a.A * bcX) + (a.B * bcY) + (a.C * bcZ);
    }

    private static (Dyadic X, Dyadic Y, Dyadic Z) Cross(ExactPlane a, ExactPlane b) =>
        ((a.B * b.C) - (a.C * b.B), (a.C * b.A) - (a.A * b.C), (a.A * b.B) - (a.B * b.A));
}
