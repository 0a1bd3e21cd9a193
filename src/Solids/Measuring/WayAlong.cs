namespace Dryfit.Solids.Measuring;

/// <summary>How far one solid can move in a direction until it meets another.</summary>
internal static class WayAlong
{
    public static Gap? Measure(Placed a, Placed b, Vec3 direction, double cap)
    {
        if (SharedVolume.Common(a, b) is { } common)
        {
            var point = common.Vertices[0];
            return new(0, point, point);
        }

        var across = Across(direction);
        var (own, other) = (new WorldMesh(a), new WorldMesh(b));
        var leading = Facing(own, across, 1, Window(other, across));
        var waiting = Facing(other, across, -1, Window(own, across));
        // The nearest first: once two touch, nothing can be nearer, and what waits behind the nearest need not be asked.
        leading.Sort((s, t) => t.Bounds.Max.Z.CompareTo(s.Bounds.Max.Z));
        waiting.Sort((s, t) => s.Bounds.Min.Z.CompareTo(t.Bounds.Min.Z));
        var least = Math.BitIncrement(cap);
        Gap? gap = null;
        Span<Vec3> shape = stackalloc Vec3[16];
        Span<Vec3> spare = stackalloc Vec3[16];
        foreach (var s in leading)
        {
            foreach (var t in waiting)
            {
                if (t.Bounds.Min.Z - s.Bounds.Max.Z >= least)
                {
                    break;
                }

                if (
                    t.Bounds.Max.Z < s.Bounds.Min.Z
                    || t.Bounds.Max.X <= s.Bounds.Min.X
                    || s.Bounds.Max.X <= t.Bounds.Min.X
                    || t.Bounds.Max.Y <= s.Bounds.Min.Y
                    || s.Bounds.Max.Y <= t.Bounds.Min.Y
                )
                {
                    continue;
                }

                foreach (var corner in Shared(in s, in t, shape, spare))
                {
                    var (from, to) = (Height(in s, corner), Height(in t, corner));
                    var way = Math.Max(0, to - from);
                    if (to - from >= -1e-12 * Math.Max(Math.Abs(to), Math.Abs(from)) && way < least)
                    {
                        least = way;
                        gap = new(way, World(across, corner, from), World(across, corner, to));
                    }
                }

                if (least == 0)
                {
                    return gap;
                }
            }
        }

        return gap;
    }

    // A frame with the direction as its W; along an axis its coordinates are the world's own.
    private static Frame Across(Vec3 w)
    {
        var (x, y, z) = (Math.Abs(w.X), Math.Abs(w.Y), Math.Abs(w.Z));
        var start =
            z >= x && z >= y ? new Vec3(1, 0, 0)
            : x >= y ? new Vec3(0, 1, 0)
            : new Vec3(0, 0, 1);
        var u = start - (w * Vec3.Dot(start, w));
        u *= 1 / Math.Sqrt(Vec3.Dot(u, u));
        return new(default, u, Vec3.Cross(w, u), w);
    }

    private static Vec3 World(in Frame across, Vec3 corner, double height) =>
        across.ToWorld(corner with { Z = height });

    // The triangles that look along the direction (or against it), in the frame's coordinates, counter-clockwise from W.
    // Those that lie wholly beside the window meet nothing and are left out.
    private static List<Triangle> Facing(WorldMesh mesh, in Frame across, int sign, Box window)
    {
        var facing = new List<Triangle>();
        for (var i = 0; i < mesh.Count; i++)
        {
            var triangle = mesh[i];
            var (a, b, c) = (Local(across, triangle.A), Local(across, triangle.B), Local(across, triangle.C));
            if (
                Math.Max(a.X, Math.Max(b.X, c.X)) <= window.Min.X
                || Math.Min(a.X, Math.Min(b.X, c.X)) >= window.Max.X
                || Math.Max(a.Y, Math.Max(b.Y, c.Y)) <= window.Min.Y
                || Math.Min(a.Y, Math.Min(b.Y, c.Y)) >= window.Max.Y
            )
            {
                continue;
            }

            var turn = Exact.Orientation.Turn(a.X, a.Y, b.X, b.Y, c.X, c.Y) * sign;
            if (turn > 0)
            {
                facing.Add(sign > 0 ? new(a, b, c) : new(a, c, b));
            }
        }

        return facing;
    }

    // The box around a mesh in the frame's coordinates.
    private static Box Window(WorldMesh mesh, in Frame across)
    {
        if (mesh.Vertices.Length == 0)
        {
            return default;
        }

        var first = Local(across, mesh.Vertices[0]);
        var window = new Box(first, first);
        foreach (var vertex in mesh.Vertices)
        {
            var p = Local(across, vertex);
            window = new(Vec3Order.Least(window.Min, p), Vec3Order.Most(window.Max, p));
        }

        return window;
    }

    private static Vec3 Local(in Frame frame, Vec3 p) =>
        new(Vec3.Dot(frame.U, p), Vec3.Dot(frame.V, p), Vec3.Dot(frame.W, p));

    // The outline that both cover, seen along the direction; empty where it has no area.
    private static Span<Vec3> Shared(in Triangle s, in Triangle t, Span<Vec3> shape, Span<Vec3> spare)
    {
        (shape[0], shape[1], shape[2]) = (s.A, s.B, s.C);
        var count = 3;
        for (var i = 0; i < 3 && count > 0; i++)
        {
            var (a, b) = (t[i], t[(i + 1) % 3]);
            var kept = 0;
            for (var j = 0; j < count; j++)
            {
                var (p, q) = (shape[j], shape[(j + 1) % count]);
                var (left, next) = (Left(a, b, p), Left(a, b, q));
                if (left >= 0)
                {
                    spare[kept++] = p;
                }

                if ((left > 0 && next < 0) || (left < 0 && next > 0))
                {
                    var part = left / (left - next);
                    spare[kept++] = p + ((q - p) * part);
                }
            }

            spare[..kept].CopyTo(shape);
            count = kept;
        }

        var area = 0.0;
        for (var j = 1; j + 1 < count; j++)
        {
            area += Left(shape[0], shape[j], shape[j + 1]);
        }

        var width = Math.Max(s.Bounds.Max.X - s.Bounds.Min.X, s.Bounds.Max.Y - s.Bounds.Min.Y);
        return area > 1e-12 * width * width ? shape[..count] : [];
    }

    private static double Left(Vec3 a, Vec3 b, Vec3 p) => ((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X));

    // The height of a triangle over a point of the frame's plane; exact where it is level.
    private static double Height(in Triangle t, Vec3 p)
    {
        if (t.A.Z == t.B.Z && t.A.Z == t.C.Z)
        {
            return t.A.Z;
        }

        var all = Left(t.A, t.B, t.C);
        return t.A.Z + ((t.B.Z - t.A.Z) * (Left(t.A, p, t.C) / all)) + ((t.C.Z - t.A.Z) * (Left(t.A, t.B, p) / all));
    }
}
