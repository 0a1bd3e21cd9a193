namespace Dryfit.Solids;

/// <summary>
/// How a solid resists turning, for a density of 1: moments and products of inertia about its centre of mass along the board's
/// axes, in grid units to the fifth. Multiply by the density for what it weighs.
/// </summary>
/// <param name="Xx">Integral of y^2 + z^2.</param>
/// <param name="Yy">Integral of z^2 + x^2.</param>
/// <param name="Zz">Integral of x^2 + y^2.</param>
/// <param name="Xy">Integral of x y.</param>
/// <param name="Yz">Integral of y z.</param>
/// <param name="Zx">Integral of z x.</param>
public sealed record Moments(double Xx, double Yy, double Zz, double Xy, double Yz, double Zx)
{
    /// <summary>Adds up the tetrahedra between the centre of mass and the triangles (exact for the faceted solid): over one with
    /// corners 0, a, b, c the integral of x_i x_j is its volume / 20 times the sum over corners plus that of the sums.</summary>
    public static Moments Of(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        double xx = 0,
            yy = 0,
            zz = 0,
            xy = 0,
            yz = 0,
            zx = 0;
        for (var i = 0; i < solid.Triangles.Count; i += 3)
        {
            var a = solid.Vertices[solid.Triangles[i]] - solid.Centroid;
            var b = solid.Vertices[solid.Triangles[i + 1]] - solid.Centroid;
            var c = solid.Vertices[solid.Triangles[i + 2]] - solid.Centroid;
            var s = a + b + c;
            var part = Vec3.Dot(a, Vec3.Cross(b, c)) / 120;
            xx += part * ((a.X * a.X) + (b.X * b.X) + (c.X * c.X) + (s.X * s.X));
            yy += part * ((a.Y * a.Y) + (b.Y * b.Y) + (c.Y * c.Y) + (s.Y * s.Y));
            zz += part * ((a.Z * a.Z) + (b.Z * b.Z) + (c.Z * c.Z) + (s.Z * s.Z));
            xy += part * ((a.X * a.Y) + (b.X * b.Y) + (c.X * c.Y) + (s.X * s.Y));
            yz += part * ((a.Y * a.Z) + (b.Y * b.Z) + (c.Y * c.Z) + (s.Y * s.Z));
            zx += part * ((a.Z * a.X) + (b.Z * b.X) + (c.Z * c.X) + (s.Z * s.X));
        }

        return new(yy + zz, zz + xx, xx + yy, xy, yz, zx);
    }
}
