namespace Dryfit.Solids.Shaping;

/// <summary>Finds what of a prism's outline a flat of the solid comes from.</summary>
internal static class Walls
{
    /// <summary>The chord of the outline whose wall a flat lies in, by a point of it and its normal (against that of the cut's
    /// own wall); -1 for an end of the prism.</summary>
    public static int ChordAt(PrismCut prism, Vec3 point, Vec3 normal)
    {
        var frame = prism.Frame;
        var (nx, ny) = (Vec3.Dot(normal, frame.U), Vec3.Dot(normal, frame.V));
        if (((nx * nx) + (ny * ny)) < 0.5)
        {
            return -1;
        }

        var arm = point - frame.Origin;
        var p = new Vec2(Vec3.Dot(arm, frame.U), Vec3.Dot(arm, frame.V));
        var outline = prism.Outline;
        var best = -1;
        var least = double.PositiveInfinity;
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b) = (outline[i], outline[i + 1 < outline.Count ? i + 1 : 0]);
            var (x, y) = (b.X - a.X, b.Y - a.Y);
            var squared = (x * x) + (y * y);

            // A chord of nearly the flat's own direction that comes nearest to its point.
            var slant = (nx * x) + (ny * y);
            if (squared == 0 || slant * slant > 1e-12 * squared)
            {
                continue;
            }

            var share = Math.Clamp((((p.X - a.X) * x) + ((p.Y - a.Y) * y)) / squared, 0, 1);
            var (dx, dy) = (a.X + (share * x) - p.X, a.Y + (share * y) - p.Y);
            var distance = (dx * dx) + (dy * dy);
            if (distance < least)
            {
                (best, least) = (i, distance);
            }
        }

        return best;
    }

    /// <summary>The true surface of a side of the outline; null where it is flat.</summary>
    public static Surface? SurfaceOf(PrismCut prism, int side) =>
        prism.Outline.Sides[side] switch
        {
            ArcSide arc => new CylinderSurface(
                prism.Frame.ToWorld(new(arc.Centre.X, arc.Centre.Y, 0)),
                prism.Frame.W,
                arc.Radius
            ),
            CurveSide curve => new SweptSurface(prism.Frame, curve),
            _ => null,
        };
}
