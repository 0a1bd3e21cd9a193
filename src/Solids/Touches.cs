using Dryfit.Solids.Measuring;
using Dryfit.Solids.Shaping;

namespace Dryfit.Solids;

/// <summary>Where a solid touches itself: along the straight way between two points, or in one point, both ends of it; board
/// coordinates.</summary>
/// <param name="Cuts">The cuts whose faces meet there, each once, in order.</param>
public sealed record Touch(Vec3 From, Vec3 To, IReadOnlyList<int> Cuts)
{
    /// <summary>Whether it is a single point.</summary>
    public bool IsPoint => From == To;
}

/// <summary>Finds where a solid touches itself.</summary>
public static class Touches
{
    /// <summary>
    /// Every stretch and point in which the exact solid touches itself: where two edges of it lie in one line, and corners that
    /// are there twice and are on no such stretch. Places are right to the rounding of the corners. Empty where
    /// <see cref="Solid.TouchesItself"/> is false.
    /// </summary>
    public static IReadOnlyList<Touch> Of(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        if (!solid.TouchesItself)
        {
            return [];
        }

        var near = 1e-9 * Reach.Of(solid.Size);
        var edges = Edges(solid);
        var touches = new List<Touch>();
        for (var i = 0; i < edges.Count; i++)
        {
            for (var j = i + 1; j < edges.Count && edges[j].Bounds.Min.X <= edges[i].Bounds.Max.X + near; j++)
            {
                if (Shared(edges[i], edges[j], near) is { } touch)
                {
                    Add(touches, touch, near);
                }
            }
        }

        foreach (var twin in solid.Vertices.CountBy(place => place).Where(place => place.Value > 1))
        {
            var place = twin.Key;
            if (!touches.Exists(touch => Distance(place, touch.From, touch.To) <= near))
            {
                touches.Add(new(place, place, CutsAt(solid, place)));
            }
        }

        return touches;
    }

    // Stretches that follow each other in one line are one: a corner may have been put in the middle.
    private static void Add(List<Touch> touches, Touch touch, double near)
    {
        for (var i = 0; i < touches.Count; i++)
        {
            if (Joined(touches[i], touch, near) is { } joined)
            {
                touches.RemoveAt(i);
                Add(touches, joined, near);
                return;
            }
        }

        touches.Add(touch);
    }

    private static Touch? Joined(Touch a, Touch b, double near)
    {
        var along = a.To - a.From;
        var length = Math.Sqrt(Vec3.Dot(along, along));
        along *= 1 / length;
        var (p, q) = (Vec3.Dot(b.From - a.From, along), Vec3.Dot(b.To - a.From, along));
        if (
            Distance(b.From, a.From + (along * p), a.From + (along * p)) > near
            || Distance(b.To, a.From + (along * q), a.From + (along * q)) > near
            || Math.Min(p, q) > length + near
            || Math.Max(p, q) < -near
        )
        {
            return null;
        }

        var (start, end) = p <= q ? (b.From, b.To) : (b.To, b.From);
        return new(
            Math.Min(p, q) < 0 ? start : a.From,
            Math.Max(p, q) > length ? end : a.To,
            [.. a.Cuts.Union(b.Cuts).Order()]
        );
    }

    // The edges between two faces, by where they start along x.
    private static List<Edge> Edges(Solid solid)
    {
        var halves = new Dictionary<(int From, int To), int>();
        var edges = new List<Edge>();
        for (var f = 0; f < solid.Faces.Count; f++)
        {
            var face = solid.Faces[f];
            for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i++)
            {
                var (from, to) = (solid.Triangles[i], solid.Triangles[i % 3 == 2 ? i - 2 : i + 1]);
                halves[(from, to)] = f;
                if (halves.TryGetValue((to, from), out var other) && other != f)
                {
                    edges.Add(new(solid.Vertices[from], solid.Vertices[to], face.Cut, solid.Faces[other].Cut));
                }
            }
        }

        return [.. edges.OrderBy(edge => edge.Bounds.Min.X)];
    }

    // The stretch in which two edges run in one line; null where they do not.
    private static Touch? Shared(Edge a, Edge b, double near)
    {
        if (a.Bounds.SquaredDistance(b.Bounds) > near * near)
        {
            return null;
        }

        var along = a.To - a.From;
        var length = Math.Sqrt(Vec3.Dot(along, along));
        if (length <= near)
        {
            return null;
        }

        along *= 1 / length;
        var (p, q) = (Vec3.Dot(b.From - a.From, along), Vec3.Dot(b.To - a.From, along));
        var (start, end) = (Math.Max(0, Math.Min(p, q)), Math.Min(length, Math.Max(p, q)));
        if (end - start <= near || Aside(b.From, p) > near || Aside(b.To, q) > near)
        {
            return null;
        }

        var cuts = new SortedSet<int> { a.Cut, a.OtherCut, b.Cut, b.OtherCut };
        cuts.Remove(-1);
        return new(At(start), At(end), [.. cuts]);

        Vec3 At(double way) =>
            way == 0 ? a.From
            : way == length ? a.To
            : way == p ? b.From
            : b.To;

        double Aside(Vec3 point, double way)
        {
            var arm = point - a.From - (along * way);
            return Math.Sqrt(Vec3.Dot(arm, arm));
        }
    }

    private static double Distance(Vec3 point, Vec3 from, Vec3 to)
    {
        var (along, arm) = (to - from, point - from);
        var squared = Vec3.Dot(along, along);
        arm -= along * (squared > 0 ? Math.Clamp(Vec3.Dot(arm, along) / squared, 0, 1) : 0);
        return Math.Sqrt(Vec3.Dot(arm, arm));
    }

    private static List<int> CutsAt(Solid solid, Vec3 place)
    {
        var cuts = new SortedSet<int>();
        foreach (var face in solid.Faces.Where(face => face.Cut >= 0))
        {
            for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i++)
            {
                if (solid.Vertices[solid.Triangles[i]] == place)
                {
                    cuts.Add(face.Cut);
                }
            }
        }

        return [.. cuts];
    }

    private sealed record Edge(Vec3 From, Vec3 To, int Cut, int OtherCut)
    {
        public Box Bounds { get; } = new(Vec3Order.Least(From, To), Vec3Order.Most(From, To));
    }
}
