namespace Dryfit.Solids.Measuring;

/// <summary>Closest points of points, stretches and triangles (after Ericson, "Real-Time Collision Detection", 2005, 5.1).</summary>
internal static class Closest
{
    /// <summary>The smallest squared distance of two triangles and the points that have it; 0 where they cross.</summary>
    public static double Points(in Triangle s, in Triangle t, double limit, out Vec3 onS, out Vec3 onT)
    {
        var best = limit;
        (onS, onT) = (default, default);
        for (var i = 0; i < 3; i++)
        {
            var q = OnTriangle(s[i], in t);
            Keep(s[i], q, ref best, ref onS, ref onT);
            var p = OnTriangle(t[i], in s);
            Keep(p, t[i], ref best, ref onS, ref onT);
        }

        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                OnStretches(s[i], s[(i + 1) % 3], t[j], t[(j + 1) % 3], out var p, out var q);
                Keep(p, q, ref best, ref onS, ref onT);
            }
        }

        for (var i = 0; i < 3 && best > 0; i++)
        {
            if (Pierces(s[i], s[(i + 1) % 3], in t, out var at) || Pierces(t[i], t[(i + 1) % 3], in s, out at))
            {
                (onS, onT, best) = (at, at, 0);
            }
        }

        return best;
    }

    /// <summary>The point of a triangle that is closest to p.</summary>
    public static Vec3 OnTriangle(Vec3 p, in Triangle t)
    {
        var (a, b, c) = (t.A, t.B, t.C);
        var (ab, ac, ap) = (b - a, c - a, p - a);
        var (d1, d2) = (Vec3.Dot(ab, ap), Vec3.Dot(ac, ap));
        if (d1 <= 0 && d2 <= 0)
        {
            return a;
        }

        var bp = p - b;
        var (d3, d4) = (Vec3.Dot(ab, bp), Vec3.Dot(ac, bp));
        if (d3 >= 0 && d4 <= d3)
        {
            return b;
        }

        var vc = (d1 * d4) - (d3 * d2);
        if (vc <= 0 && d1 >= 0 && d3 <= 0)
        {
            return a + (ab * (d1 / (d1 - d3)));
        }

        var cp = p - c;
        var (d5, d6) = (Vec3.Dot(ab, cp), Vec3.Dot(ac, cp));
        if (d6 >= 0 && d5 <= d6)
        {
            return c;
        }

        var vb = (d5 * d2) - (d1 * d6);
        if (vb <= 0 && d2 >= 0 && d6 <= 0)
        {
            return a + (ac * (d2 / (d2 - d6)));
        }

        var va = (d3 * d6) - (d5 * d4);
        if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0)
        {
            return b + ((c - b) * ((d4 - d3) / (d4 - d3 + (d5 - d6))));
        }

        // Inside: the foot on a triangle across an axis is exact.
        if (a.X == b.X && a.X == c.X)
        {
            return p with { X = a.X };
        }

        if (a.Y == b.Y && a.Y == c.Y)
        {
            return p with { Y = a.Y };
        }

        if (a.Z == b.Z && a.Z == c.Z)
        {
            return p with { Z = a.Z };
        }

        var sum = va + vb + vc;
        return a + (ab * (vb / sum)) + (ac * (vc / sum));
    }

    private static void Keep(Vec3 p, Vec3 q, ref double best, ref Vec3 onS, ref Vec3 onT)
    {
        var d = q - p;
        var squared = Vec3.Dot(d, d);
        if (squared < best)
        {
            (best, onS, onT) = (squared, p, q);
        }
    }

    private static void OnStretches(Vec3 p1, Vec3 q1, Vec3 p2, Vec3 q2, out Vec3 onFirst, out Vec3 onSecond)
    {
        var (d1, d2, r) = (q1 - p1, q2 - p2, p1 - p2);
        var (a, e, f) = (Vec3.Dot(d1, d1), Vec3.Dot(d2, d2), Vec3.Dot(d2, r));
        var (b, c) = (Vec3.Dot(d1, d2), Vec3.Dot(d1, r));
        var denominator = (a * e) - (b * b);
        var s = denominator > 0 ? Math.Clamp(((b * f) - (c * e)) / denominator, 0, 1) : 0;
        var t = ((b * s) + f) / e;
        if (t < 0)
        {
            (t, s) = (0, Math.Clamp(-c / a, 0, 1));
        }
        else if (t > 1)
        {
            (t, s) = (1, Math.Clamp((b - c) / a, 0, 1));
        }

        onFirst = s == 1 ? q1 : p1 + (d1 * s);
        onSecond = t == 1 ? q2 : p2 + (d2 * t);
    }

    // Whether the open stretch goes through the triangle's inside, from one side to the other.
    private static bool Pierces(Vec3 p, Vec3 q, in Triangle t, out Vec3 at)
    {
        at = default;
        var normal = Vec3.Cross(t.B - t.A, t.C - t.A);
        var (from, to) = (Vec3.Dot(normal, p - t.A), Vec3.Dot(normal, q - t.A));
        if (!((from < 0 && to > 0) || (from > 0 && to < 0)))
        {
            return false;
        }

        at = p + ((q - p) * (from / (from - to)));
        return Vec3.Dot(Vec3.Cross(t.B - t.A, at - t.A), normal) >= 0
            && Vec3.Dot(Vec3.Cross(t.C - t.B, at - t.B), normal) >= 0
            && Vec3.Dot(Vec3.Cross(t.A - t.C, at - t.C), normal) >= 0;
    }
}
