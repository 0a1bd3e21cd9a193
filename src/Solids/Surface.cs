namespace Dryfit.Solids;

/// <summary>The true surface of a face, in board coordinates; neighbouring facets with an equal surface are shaded as one.</summary>
public abstract record Surface
{
    /// <summary>The unit normal of the true surface at a point of it, out of the solid.</summary>
    /// <param name="point">A corner of the facet; where the surface is round, its radius there need not be exact.</param>
    /// <param name="facet">The facet's own outward normal: it tells which side is out.</param>
    public abstract Vec3 NormalAt(Vec3 point, Vec3 facet);
}

/// <summary>A flat.</summary>
public sealed record PlaneSurface : Surface
{
    public static PlaneSurface Instance { get; } = new();

    public override Vec3 NormalAt(Vec3 point, Vec3 facet) => facet;
}

/// <summary>A round: the wall of a bore, or what an arc of a profile leaves.</summary>
/// <param name="AxisPoint">A point of the axis.</param>
/// <param name="AxisDirection">The axis' unit direction.</param>
/// <param name="Radius">Grid units.</param>
public sealed record CylinderSurface(Vec3 AxisPoint, Vec3 AxisDirection, double Radius) : Surface
{
    public override Vec3 NormalAt(Vec3 point, Vec3 facet)
    {
        var arm = point - AxisPoint;
        var across = arm - (AxisDirection * Vec3.Dot(arm, AxisDirection));
        return across.Towards(facet);
    }
}

/// <summary>What a smooth curve of a profile leaves, swept straight.</summary>
/// <param name="Frame">The curve lies in the plane of U and V and is swept along W.</param>
/// <param name="Curve">The curve in the frame's coordinates.</param>
public sealed record SweptSurface(Frame Frame, CurveSide Curve) : Surface
{
    public override Vec3 NormalAt(Vec3 point, Vec3 facet)
    {
        var arm = point - Frame.Origin;
        var (x, y) = (Vec3.Dot(arm, Frame.U), Vec3.Dot(arm, Frame.V));
        var points = Curve.Points;
        var near = 0;
        for (var i = 1; i < points.Count; i++)
        {
            near = SquaredDistance(points[i], x, y) < SquaredDistance(points[near], x, y) ? i : near;
        }

        var along = Along(points, near);
        return ((Frame.U * along.Y) - (Frame.V * along.X)).Towards(facet);
    }

    // Which way the curve goes in a point of it: as its neighbours lie to each other, at an end as a parabola through three has it.
    private static Vec2 Along(IReadOnlyList<Vec2> points, int at)
    {
        var last = points.Count - 1;
        if (last < 2 || (at > 0 && at < last))
        {
            var (a, b) = (points[Math.Max(at - 1, 0)], points[Math.Min(at + 1, last)]);
            return new(b.X - a.X, b.Y - a.Y);
        }

        var inwards = at == 0 ? 1 : -1;
        var (p, q, r) = (points[at], points[at + inwards], points[at + (2 * inwards)]);
        return new(((4 * q.X) - (3 * p.X) - r.X) * inwards, ((4 * q.Y) - (3 * p.Y) - r.Y) * inwards);
    }

    private static double SquaredDistance(Vec2 p, double x, double y) =>
        ((p.X - x) * (p.X - x)) + ((p.Y - y) * (p.Y - y));
}

internal static class Normals
{
    /// <summary>The unit vector along a normal or against it, as the facet looks; the facet's own where that says nothing.</summary>
    public static Vec3 Towards(this Vec3 normal, Vec3 facet)
    {
        var side = Vec3.Dot(normal, facet);
        return side == 0 ? facet : normal * (Math.Sign(side) / Math.Sqrt(Vec3.Dot(normal, normal)));
    }
}
