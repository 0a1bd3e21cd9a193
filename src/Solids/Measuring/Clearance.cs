namespace Dryfit.Solids.Measuring;

/// <summary>
/// The smallest distance between two placed solids. Faces whose boxes come near are paired, the nearest boxes first; within a
/// pair the triangles that can still do better are held against each other.
/// </summary>
internal static class Clearance
{
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

        var gap = BetweenSurfaces(a, b, aroundA, aroundB, cap);
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

    private static Gap? BetweenSurfaces(Placed a, Placed b, Box aroundA, Box aroundB, double cap)
    {
        var nearA = Near(a, aroundB, cap);
        var nearB = Near(b, aroundA, cap);
        var couples = new List<(double Squared, int A, int B)>();
        for (var i = 0; i < nearA.Count; i++)
        {
            for (var j = 0; j < nearB.Count; j++)
            {
                var squared = nearA[i].Box.SquaredDistance(nearB[j].Box);
                if (squared <= cap * cap)
                {
                    couples.Add((squared, i, j));
                }
            }
        }

        couples.Sort();

        // The least distance above the cap that can still be found.
        var best = Math.BitIncrement(cap * cap);
        Gap? gap = null;
        foreach (var (squared, i, j) in couples)
        {
            if (squared >= best || best == 0)
            {
                break;
            }

            var couple = Closer(a, b, nearA[i], nearB[j], ref best);
            gap = couple ?? gap;
        }

        return gap;
    }

    private static List<(int Face, Box Box)> Near(Placed placed, Box other, double cap)
    {
        var near = new List<(int Face, Box Box)>();
        var boxes = placed.Solid.FaceBoxes;

        // First where the boxes are at home, with room for rounding; then exactly, in the world.
        var home = other.CarriedBack(placed.Frame);
        var room = cap + (1e-12 * (Shaping.Reach.Of(home.Min) + Shaping.Reach.Of(home.Max)));
        for (var f = 0; f < boxes.Length; f++)
        {
            if (boxes[f].SquaredDistance(home) > room * room)
            {
                continue;
            }

            var box = boxes[f].Carried(placed.Frame);
            if (box.SquaredDistance(other) <= cap * cap)
            {
                near.Add((f, box));
            }
        }

        return near;
    }

    private static Gap? Closer(
        Placed a,
        Placed b,
        (int Face, Box Box) first,
        (int Face, Box Box) second,
        ref double best
    )
    {
        Gap? gap = null;
        var others = Triangles(b, second.Face, first.Box, best);
        foreach (var s in Triangles(a, first.Face, second.Box, best))
        {
            foreach (var t in others)
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

    private static List<Triangle> Triangles(Placed placed, int index, Box other, double best)
    {
        var solid = placed.Solid;
        var face = solid.Faces[index];
        var vertices = solid.Vertices as Vec3[] ?? [.. solid.Vertices];
        var corners = solid.Triangles as int[] ?? [.. solid.Triangles];
        var near = new List<Triangle>(Math.Min(face.TriangleCount, 16));

        // First at home, with room for rounding; then exactly, in the world.
        var home = other.CarriedBack(placed.Frame);
        var room = Math.Sqrt(best) + (1e-12 * (Shaping.Reach.Of(home.Min) + Shaping.Reach.Of(home.Max)));
        for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i += 3)
        {
            var (a, b, c) = (vertices[corners[i]], vertices[corners[i + 1]], vertices[corners[i + 2]]);
            if (
                Misses(a.X, b.X, c.X, home.Min.X - room, home.Max.X + room)
                || Misses(a.Y, b.Y, c.Y, home.Min.Y - room, home.Max.Y + room)
                || Misses(a.Z, b.Z, c.Z, home.Min.Z - room, home.Max.Z + room)
            )
            {
                continue;
            }

            var triangle = new Triangle(placed.Frame.ToWorld(a), placed.Frame.ToWorld(b), placed.Frame.ToWorld(c));
            if (triangle.Bounds.SquaredDistance(other) < best)
            {
                near.Add(triangle);
            }
        }

        return near;
    }

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
