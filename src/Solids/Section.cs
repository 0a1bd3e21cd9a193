namespace Dryfit.Solids;

/// <summary>Cuts solids with a plane to look at.</summary>
public static class Section
{
    /// <summary>
    /// The outlines of a placed solid in the plane of a frame's U and V, in the frame's own coordinates: counter-clockwise
    /// around material, clockwise around holes. Where a face lies in the plane the side of W counts.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<Vec2>> At(Placed placed, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(placed);
        var solid = placed.Solid;
        var local = new Vec3[solid.Vertices.Count];
        for (var i = 0; i < local.Length; i++)
        {
            var p = placed.Frame.ToWorld(solid.Vertices[i]) - frame.Origin;
            local[i] = new(Vec3.Dot(p, frame.U), Vec3.Dot(p, frame.V), Vec3.Dot(p, frame.W));
        }

        // Each triangle across the plane goes from the side on which it comes up through it to the one on which it goes down;
        // its neighbour carries on from there, so that the outlines close by themselves.
        var next = new Dictionary<(int, int), (int, int)>();
        for (var i = 0; i < solid.Triangles.Count; i += 3)
        {
            Cross(solid, local, i, next);
        }

        return Loops(local, next);
    }

    /// <summary>The area within outlines, holes taken off; square grid units.</summary>
    public static double Area(IReadOnlyList<IReadOnlyList<Vec2>> outlines)
    {
        var twice = 0.0;
        foreach (var outline in outlines)
        {
            for (var i = 0; i < outline.Count; i++)
            {
                var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
                twice += (a.X * b.Y) - (a.Y * b.X);
            }
        }

        return twice / 2;
    }

    private static void Cross(Solid solid, Vec3[] local, int first, Dictionary<(int, int), (int, int)> next)
    {
        (int, int)? rising = null;
        (int, int)? falling = null;
        for (var j = 0; j < 3; j++)
        {
            var (a, b) = (solid.Triangles[first + j], solid.Triangles[first + ((j + 1) % 3)]);
            if (local[a].Z <= 0 && local[b].Z > 0)
            {
                rising = (a, b);
            }
            else if (local[a].Z > 0 && local[b].Z <= 0)
            {
                falling = (b, a);
            }
        }

        if (rising is { } from && falling is { } to)
        {
            next[to] = from;
        }
    }

    private static List<List<Vec2>> Loops(Vec3[] local, Dictionary<(int, int), (int, int)> next)
    {
        var loops = new List<List<Vec2>>();
        var done = new HashSet<(int, int)>();
        foreach (var start in next.Keys)
        {
            var loop = new List<Vec2>();
            for (var at = start; done.Add(at); at = next[at])
            {
                var (below, above) = (local[at.Item1], local[at.Item2]);
                var share = -below.Z / (above.Z - below.Z);
                var p = below + ((above - below) * share);
                loop.Add(new(p.X, p.Y));
            }

            if (loop.Count > 0)
            {
                loops.Add(loop);
            }
        }

        return loops;
    }
}
