namespace Dryfit.Solids.Measuring;

/// <summary>Walks around a solid where a plane cuts it: from triangle to triangle, then from face to face, then round by round.</summary>
internal sealed class SectionWalk
{
    private readonly Placed placed;
    private readonly Frame frame;
    private readonly Vec3[] local;

    // From an edge that comes down through the plane to the one that goes up beside it, with the face between.
    private readonly Dictionary<(int, int), ((int, int) Next, int Face)> steps = [];

    public SectionWalk(Placed placed, Frame frame)
    {
        (this.placed, this.frame) = (placed, frame);
        local = [.. placed.Solid.Vertices.Select(vertex => Local(placed.Frame.ToWorld(vertex)))];
    }

    public List<Profile> Outlines()
    {
        var solid = placed.Solid;
        for (var f = 0; f < solid.Faces.Count; f++)
        {
            var face = solid.Faces[f];
            for (var t = face.FirstTriangle; t < face.FirstTriangle + face.TriangleCount; t++)
            {
                Cross(3 * t, f);
            }
        }

        var outlines = new List<Profile>();
        var done = new HashSet<(int, int)>();
        foreach (var start in steps.Keys)
        {
            var loop = new List<(Vec2 From, int Face)>();
            for (var at = start; done.Add(at); at = steps[at].Next)
            {
                loop.Add((Place(at), steps[at].Face));
            }

            if (loop.Count > 0)
            {
                outlines.Add(new([.. Sides(FaceByFace(loop))]));
            }
        }

        return outlines;
    }

    private void Cross(int first, int face)
    {
        (int, int)? rising = null;
        (int, int)? falling = null;
        var triangles = placed.Solid.Triangles;
        for (var j = 0; j < 3; j++)
        {
            var (a, b) = (triangles[first + j], triangles[first + ((j + 1) % 3)]);
            if (local[a].Z <= 0 && local[b].Z > 0)
            {
                rising = (a, b);
            }
            else if (local[a].Z > 0 && local[b].Z <= 0)
            {
                falling = (b, a);
            }
        }

        if (rising is { } to && falling is { } from)
        {
            steps[from] = (to, face);
        }
    }

    private Vec2 Place((int Below, int Above) edge)
    {
        var (below, above) = (local[edge.Below], local[edge.Above]);
        var p = below + ((above - below) * (-below.Z / (above.Z - below.Z)));
        return new(p.X, p.Y);
    }

    // One stretch for each face that is crossed, however many triangles it has.
    private static List<(Vec2 From, int Face)> FaceByFace(List<(Vec2 From, int Face)> loop)
    {
        var stretches = loop.Where((stretch, i) => stretch.Face != loop[(i + loop.Count - 1) % loop.Count].Face)
            .ToList();
        return stretches.Count > 2 ? stretches : loop;
    }

    private List<ProfileSide> Sides(List<(Vec2 From, int Face)> stretches)
    {
        // Start where a round begins, so that none is told in two.
        var rounds = stretches.Select((stretch, i) => RoundOf(stretch, After(stretches, i).From)).ToList();
        var first = rounds.FindIndex(round => round != rounds[^1]);
        var sides = new List<ProfileSide>();
        if (first < 0 && rounds[0] is { } whole)
        {
            var half = stretches.Count / 2;
            sides.Add(Arc(whole, stretches[0].From, stretches[half].From, half));
            sides.Add(Arc(whole, stretches[half].From, stretches[0].From, stretches.Count - half));
            return sides;
        }

        for (var done = 0; done < stretches.Count; )
        {
            var at = (Math.Max(first, 0) + done) % stretches.Count;
            var count = 1;
            while (
                rounds[at] is not null
                && done + count < stretches.Count
                && rounds[(at + count) % stretches.Count] == rounds[at]
            )
            {
                count++;
            }

            var (from, to) = (stretches[at].From, stretches[(at + count) % stretches.Count].From);
            sides.Add(rounds[at] is { } round ? Arc(round, from, to, count) : new StraightSide(from, to));
            done += count;
        }

        return sides;
    }

    private static (Vec2 From, int Face) After(List<(Vec2 From, int Face)> stretches, int i) =>
        stretches[(i + 1) % stretches.Count];

    private static ArcSide Arc(Circle circle, Vec2 from, Vec2 to, int chords) =>
        new(from, to, circle.Centre, circle.Radius, circle.Bend, chords);

    // The circle that a stretch is a chord of; null where the face is flat, slants, or is not crossed from edge to edge.
    private Circle? RoundOf((Vec2 From, int Face) stretch, Vec2 to)
    {
        if (placed.Solid.Faces[stretch.Face].Surface is not CylinderSurface round)
        {
            return null;
        }

        var centre = Local(placed.Frame.ToWorld(round.AxisPoint));
        var along = Local(placed.Frame.ToWorld(round.AxisPoint + round.AxisDirection)) - centre;
        var (ax, ay) = (stretch.From.X - centre.X, stretch.From.Y - centre.Y);
        var (bx, by) = (to.X - centre.X, to.Y - centre.Y);
        var near = 1e-9 * round.Radius;
        return
            Math.Abs(along.X) < 1e-9
            && Math.Abs(along.Y) < 1e-9
            && Math.Abs(Math.Sqrt((ax * ax) + (ay * ay)) - round.Radius) < near
            && Math.Abs(Math.Sqrt((bx * bx) + (by * by)) - round.Radius) < near
            ? new(new(centre.X, centre.Y), round.Radius, (ax * by) - (ay * bx) > 0 ? Bend.Left : Bend.Right)
            : null;
    }

    private Vec3 Local(Vec3 world)
    {
        var p = world - frame.Origin;
        return new(Vec3.Dot(p, frame.U), Vec3.Dot(p, frame.V), Vec3.Dot(p, frame.W));
    }

    private sealed record Circle(Vec2 Centre, double Radius, Bend Bend);
}
