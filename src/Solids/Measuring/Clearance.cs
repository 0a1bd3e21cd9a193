using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Measuring;

/// <summary>
/// The smallest distance between two placed solids. Patches whose boxes come near are paired, the nearest boxes first; within a
/// pair the triangles that can still do better are held against each other. One per thread, kept for its memory.
/// </summary>
internal sealed class Clearance
{
    [ThreadStatic]
    private static Clearance? mine;

    private readonly Store<FacePatch> nearA = new();
    private readonly Store<FacePatch> nearB = new();
    private readonly Store<double> distances = new();
    private readonly Store<(int A, int B)> couples = new();
    private readonly Store<Triangle> ownTriangles = new();
    private readonly Store<Triangle> otherTriangles = new();

    // Distances of axis planes come out exact; the others are right to a few units of the last place of the coordinates. What
    // is closer than this part of the largest coordinate touches.
    private const double Touching = 1.0 / (1L << 46);

    public static Gap? Measure(Placed a, Placed b, double cap)
    {
        var (aroundA, aroundB) = (a.Solid.Bounds.Carried(a.Frame), b.Solid.Bounds.Carried(b.Frame));
        if (a.Solid.PieceCount == 0 || b.Solid.PieceCount == 0 || !(aroundA.SquaredDistance(aroundB) <= cap * cap))
        {
            return null;
        }

        var gap = (mine ??= new()).BetweenSurfaces(a, b, aroundA, aroundB, cap);
        if (gap is not null)
        {
            var reach = Math.Max(Shaping.Reach.Of(gap.OnA), Shaping.Reach.Of(gap.OnB));
            if (gap.Distance <= Touching * reach)
            {
                return gap with { Distance = 0 };
            }
        }

        // No surface meets, but one may be inside the other.
        if ((Holds(aroundA, aroundB) || Holds(aroundB, aroundA)) && SharedVolume.Common(a, b) is { } common)
        {
            var point = common.Vertices[0];
            return new(0, point, point);
        }

        return gap;
    }

    private Gap? BetweenSurfaces(Placed a, Placed b, Box aroundA, Box aroundB, double cap)
    {
        FindNear(a, aroundB, cap, nearA);
        FindNear(b, aroundA, cap, nearB);
        distances.Clear();
        couples.Clear();
        for (var i = 0; i < nearA.Count; i++)
        {
            for (var j = 0; j < nearB.Count; j++)
            {
                var squared = nearA[i].Box.SquaredDistance(nearB[j].Box);
                if (squared <= cap * cap)
                {
                    distances.Add(squared);
                    couples.Add((i, j));
                }
            }
        }

        distances.Span.Sort(couples.Span);

        // The least distance above the cap that can still be found.
        var best = Math.BitIncrement(cap * cap);
        Gap? gap = null;
        for (var c = 0; c < couples.Count && distances[c] < best; c++)
        {
            var (i, j) = couples[c];
            gap = Closer(a, b, in nearA[i], in nearB[j], ref best) ?? gap;
        }

        return gap;
    }

    // The patches that come near the other's box, with their boxes in the world.
    private static void FindNear(Placed placed, Box other, double cap, Store<FacePatch> near)
    {
        near.Clear();

        // First where the boxes are at home, with room for rounding; then exactly, in the world.
        var home = other.CarriedBack(placed.Frame);
        var room = cap + Rounding(home);
        foreach (ref readonly var patch in placed.Solid.Patches.AsSpan())
        {
            if (patch.Box.SquaredDistance(home) > room * room)
            {
                continue;
            }

            var box = patch.Box.Carried(placed.Frame);
            if (box.SquaredDistance(other) <= cap * cap)
            {
                near.Add(patch with { Box = box });
            }
        }
    }

    private Gap? Closer(Placed a, Placed b, in FacePatch first, in FacePatch second, ref double best)
    {
        FindTriangles(a, in first, second.Box, best, ownTriangles);
        if (ownTriangles.Count == 0)
        {
            return null;
        }

        FindTriangles(b, in second, first.Box, best, otherTriangles);
        Gap? gap = null;
        foreach (ref readonly var s in ownTriangles.Span)
        {
            foreach (ref readonly var t in otherTriangles.Span)
            {
                if (s.Bounds.SquaredDistance(t.Bounds) >= best)
                {
                    continue;
                }

                var squared = Closest.Points(in s, in t, best, out var p, out var q);
                if (squared < best)
                {
                    best = squared;
                    gap = new(Math.Sqrt(squared), p, q);
                    if (best == 0)
                    {
                        return gap;
                    }
                }
            }
        }

        return gap;
    }

    private static void FindTriangles(Placed placed, in FacePatch patch, Box other, double best, Store<Triangle> near)
    {
        near.Clear();
        var vertices = placed.Solid.CornerArray();
        var corners = placed.Solid.TriangleArray().AsSpan(3 * patch.FirstTriangle, 3 * patch.TriangleCount);

        // First at home, with room for rounding; then exactly, in the world.
        var home = other.CarriedBack(placed.Frame);
        var room = Math.Sqrt(best) + Rounding(home);
        var (min, max) = (home.Min - new Vec3(room, room, room), home.Max + new Vec3(room, room, room));
        for (var i = 0; i < corners.Length; i += 3)
        {
            ref readonly var a = ref vertices[corners[i]];
            ref readonly var b = ref vertices[corners[i + 1]];
            ref readonly var c = ref vertices[corners[i + 2]];
            if (
                Misses(a.X, b.X, c.X, min.X, max.X)
                || Misses(a.Y, b.Y, c.Y, min.Y, max.Y)
                || Misses(a.Z, b.Z, c.Z, min.Z, max.Z)
            )
            {
                continue;
            }

            var triangle = new Triangle(placed.Frame.ToWorld(a), placed.Frame.ToWorld(b), placed.Frame.ToWorld(c));
            if (triangle.Bounds.SquaredDistance(other) < best)
            {
                near.Add(in triangle);
            }
        }
    }

    private static double Rounding(Box home) => 1e-12 * (Shaping.Reach.Of(home.Min) + Shaping.Reach.Of(home.Max));

    private static bool Misses(double a, double b, double c, double min, double max) =>
        (a < min && b < min && c < min) || (a > max && b > max && c > max);

    private static bool Holds(Box outer, Box inner) =>
        outer.Min.X <= inner.Min.X
        && outer.Min.Y <= inner.Min.Y
        && outer.Min.Z <= inner.Min.Z
        && outer.Max.X >= inner.Max.X
        && outer.Max.Y >= inner.Max.Y
        && outer.Max.Z >= inner.Max.Z;
}
