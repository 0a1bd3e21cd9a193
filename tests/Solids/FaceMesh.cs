namespace Dryfit.Solids.Tests;

/// <summary>The triangles of one face in two coordinates of its plane, and the loops around it.</summary>
internal sealed class FaceMesh
{
    private readonly Solid solid;
    private readonly Face face;
    private readonly Vec3 right;
    private readonly Vec3 up;
    private readonly Dictionary<(int From, int To), int> tips = [];

    public FaceMesh(Solid solid, Face face)
    {
        (this.solid, this.face) = (solid, face);
        var other = Math.Abs(face.Normal.X) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        var across = Vec3.Cross(other, face.Normal);
        right = across * (1 / Math.Sqrt(Vec3.Dot(across, across)));
        up = Vec3.Cross(face.Normal, right);
        for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i += 3)
        {
            var (a, b, c) = (solid.Triangles[i], solid.Triangles[i + 1], solid.Triangles[i + 2]);
            tips.Add((a, b), c);
            tips.Add((b, c), a);
            tips.Add((c, a), b);
        }
    }

    /// <summary>The narrowest angle of all triangles, in degrees.</summary>
    public double LeastAngle => tips.Min(side => Angle(side.Value, side.Key.From, side.Key.To));

    /// <summary>The least distance of two corners.</summary>
    public double LeastDistance
    {
        get
        {
            var corners = tips.Keys.Select(side => side.From).Distinct().Select(At).ToList();
            return corners.SelectMany((a, i) => corners.Skip(i + 1).Select(b => Distance(a, b))).Min();
        }
    }

    /// <summary>By how many degrees the two angles that look at a diagonal are at most over half a turn. Where that is nothing for
    /// any diagonal the triangulation is the constrained Delaunay one (Lee and Lin, "Generalized Delaunay triangulation for
    /// planar graphs", 1986), which of all has the widest narrowest angle.</summary>
    public double WorstDiagonal =>
        tips.Where(side => tips.ContainsKey((side.Key.To, side.Key.From)))
            .Select(side =>
                Angle(side.Value, side.Key.From, side.Key.To)
                + Angle(tips[(side.Key.To, side.Key.From)], side.Key.To, side.Key.From)
                - 180
            )
            .DefaultIfEmpty(-180)
            .Max();

    /// <summary>The loops around the face: counter-clockwise the outer one, clockwise the holes. Null where one touches itself or
    /// another in a corner.</summary>
    public List<List<Vec2>>? Loops()
    {
        if (Around.GroupBy(side => side.From).Any(from => from.Count() > 1))
        {
            return null;
        }

        var next = Around.ToDictionary(side => side.From, side => side.To);
        var loops = new List<List<Vec2>>();
        while (next.Count > 0)
        {
            var loop = new List<Vec2>();
            var at = next.Keys.Min();
            while (next.Remove(at, out var after))
            {
                loop.Add(At(at));
                at = after;
            }

            loops.Add(loop);
        }

        return loops;
    }

    private IEnumerable<(int From, int To)> Around => tips.Keys.Where(side => !tips.ContainsKey((side.To, side.From)));

    private Vec2 At(int vertex) => new(Vec3.Dot(solid.Vertices[vertex], right), Vec3.Dot(solid.Vertices[vertex], up));

    private double Angle(int tip, int from, int to) => Angle(At(tip), At(from), At(to));

    /// <summary>The angle at a tip, in degrees.</summary>
    public static double Angle(Vec2 tip, Vec2 from, Vec2 to)
    {
        var (ax, ay, bx, by) = (from.X - tip.X, from.Y - tip.Y, to.X - tip.X, to.Y - tip.Y);
        return Math.Atan2(Math.Abs((ax * by) - (ay * bx)), (ax * bx) + (ay * by)) * 180 / Math.PI;
    }

    private static double Distance(Vec2 a, Vec2 b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
