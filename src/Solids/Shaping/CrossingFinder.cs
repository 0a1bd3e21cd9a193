using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>A point in which a plane of a face crosses a line, and how far along the line it lies, as rounded.</summary>
internal readonly record struct Crossing(int Point, int Plane, double Along);

/// <summary>Parts a line by the planes of all faces that come near it.</summary>
internal sealed class CrossingFinder(
    PlaneTable planes,
    PointTable points,
    BodyTable bodies,
    LineTable lines,
    FaceCrossing facing
)
{
    // By plane: the number of the line that it was last seen at.
    private readonly Store<int> seenPlane = new();
    private Line current;
    private int stamp;

    /// <summary>In order along the line found last; each point once.</summary>
    public Store<Crossing> Crossings { get; } = new();

    /// <summary>Starts with a construction whose planes and lines are all known.</summary>
    public void Start()
    {
        seenPlane.Resize(0, 0);
        seenPlane.Resize(planes.Count, -1);
        stamp = 0;
    }

    public void Find(in Line line)
    {
        current = line;
        stamp++;
        Crossings.Clear();
        for (var i = 0; i < current.PlaneCount; i++)
        {
            seenPlane[lines.Planes[current.FirstPlane + i]] = stamp;
        }

        for (var b = 0; b < bodies.Bodies.Count; b++)
        {
            ref var body = ref bodies.Bodies[b];
            if (!body.Bounds.Touches(in current.Bounds))
            {
                continue;
            }

            for (var f = body.FirstFace; f < body.FirstFace + body.FaceCount; f++)
            {
                ref var face = ref bodies.Faces[f];
                if (
                    seenPlane[face.Plane] == stamp
                    || !face.Bounds.Touches(in current.Bounds)
                    || !facing.MayCross(in current, in face)
                )
                {
                    continue;
                }

                seenPlane[face.Plane] = stamp;
                AddCrossing(face.Plane);
            }
        }

        // Few: by insertion.
        for (var i = 1; i < Crossings.Count; i++)
        {
            var moving = Crossings[i];
            var at = i;
            while (at > 0 && Compare(in Crossings[at - 1], in moving) > 0)
            {
                Crossings[at] = Crossings[at - 1];
                at--;
            }

            Crossings[at] = moving;
        }
    }

    private void AddCrossing(int plane)
    {
        var point = points.Meet(current.P, current.Q, plane);
        if (point < 0)
        {
            return;
        }

        foreach (ref var known in Crossings.Span)
        {
            if (known.Point == point)
            {
                return;
            }
        }

        ref var p = ref points[point];
        Crossings.Add(new(point, plane, (p.X * current.Dx) + (p.Y * current.Dy) + (p.Z * current.Dz)));
    }

    // By place along the line; where the doubles cannot tell, by the side on which one lies of the plane that made the other.
    private int Compare(in Crossing a, in Crossing b)
    {
        if (a.Point == b.Point)
        {
            return 0;
        }

        var apart = a.Along - b.Along;
        var doubt =
            (2 * (points[a.Point].Error + points[b.Point].Error)) + (16 * PlaneTable.UnitRoundOff * planes.Scale);
        if (Math.Abs(apart) > doubt)
        {
            return Math.Sign(apart);
        }

        var rises = points.Determinant(current.P, current.Q, b.Plane, out _);
        return points.Side(a.Point, b.Plane) * rises;
    }
}
