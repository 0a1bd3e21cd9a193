using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>One side of an edge of the solid: the way around one face, counter-clockwise seen from outside.</summary>
internal struct HalfEdge
{
    public int From;
    public int To;

    /// <summary>Twice the plane, plus 1 where the face looks against the plane's normal.</summary>
    public int Flat;

    /// <summary>The half-edge of the neighbouring face.</summary>
    public int Mate;

    /// <summary>The cut that made the face here; -1 for the blank.</summary>
    public int Cut;
    public int Line;

    /// <summary>Whether it runs against the line's direction.</summary>
    public bool IsFalling;
    public int Next;
    public int Previous;
}

/// <summary>
/// Finds the edges of the solid. An edge lies on a line where two faces of bodies meet. Each such line is parted by all
/// planes of faces that come near, and for each part the wedges between the line's planes are looked at: kept by all blanks
/// and taken away by no cut, or not. Where that changes from wedge to wedge there is a face, and every run of solid wedges
/// gives one pair of half-edges, so that each edge has two faces even where the exact solid touches itself.
/// </summary>
internal sealed class EdgeFinder(PlaneTable planes, PointTable points, BodyTable bodies, LineTable lines)
{
    private const int MostPlanesOnLine = 16;

    private readonly Store<Crossing> crossings = new();
    private readonly Store<int> seenPlane = new();
    private readonly Store<Inside> inside = new();
    private readonly Store<int> nearHere = new();
    private readonly Store<int> nearThere = new();
    private readonly FaceCrossing crossing = new(planes, bodies);
    private Line current;
    private int stamp;

    public Store<HalfEdge> Edges { get; } = new();

    /// <summary>Whether the solid touches itself along some edge, so that there are two pairs of half-edges in one place.</summary>
    public bool HasDoubled { get; private set; }

    public void Find()
    {
        Edges.Clear();
        HasDoubled = false;
        lines.Clear();
        NoteLines();
        seenPlane.Resize(0, 0);
        seenPlane.Resize(planes.Count, -1);
        stamp = 0;
        for (var i = 0; i < lines.Lines.Count; i++)
        {
            current = lines.Lines[i];
            stamp++;
            if (current.PlaneCount > MostPlanesOnLine)
            {
                throw new NotSupportedException($"More than {MostPlanesOnLine} planes meet in one line.");
            }

            if (current.Stretches >= 0)
            {
                FindCrossings();
                FindEdges(i);
            }
        }
    }

    private void NoteLines()
    {
        for (var a = 0; a < bodies.Bodies.Count; a++)
        {
            ref var body = ref bodies.Bodies[a];
            NoteOwnLines(in body);
            for (var b = a + 1; b < bodies.Bodies.Count; b++)
            {
                ref var other = ref bodies.Bodies[b];
                if (body.Bounds.Touches(in other.Bounds))
                {
                    NoteLines(in body, in other);
                }
            }
        }
    }

    // The edges of the body itself.
    private void NoteOwnLines(in Body body)
    {
        var end = body.FirstFace + body.FaceCount;
        for (var f = body.FirstFace; f < end; f++)
        {
            for (var g = f + 1; g < end; g++)
            {
                if (body.AreNeighbours(f, g))
                {
                    NoteLine(f, g, areOfOneBody: true);
                }
            }
        }
    }

    private void NoteLines(in Body body, in Body other)
    {
        FindNear(in body, in other, nearHere);
        FindNear(in other, in body, nearThere);
        foreach (var f in nearHere.Span)
        {
            foreach (var g in nearThere.Span)
            {
                NoteLine(f, g, areOfOneBody: false);
            }
        }
    }

    // The faces of a body that come near another one.
    private void FindNear(in Body body, in Body other, Store<int> near)
    {
        near.Clear();
        for (var f = body.FirstFace; f < body.FirstFace + body.FaceCount; f++)
        {
            ref var face = ref bodies.Faces[f];
            if (!face.IsSeam && face.Bounds.Touches(in other.Bounds) && crossing.MayReach(in face, in other))
            {
                near.Add(f);
            }
        }
    }

    private void NoteLine(int f, int g, bool areOfOneBody)
    {
        ref var face = ref bodies.Faces[f];
        ref var other = ref bodies.Faces[g];
        if (face.IsSeam || other.IsSeam || face.Plane == other.Plane || !face.Bounds.Touches(in other.Bounds))
        {
            return;
        }

        var common = face.Bounds.Common(in other.Bounds).Common(bodies.Room);
        if (!common.IsEmpty && (areOfOneBody || crossing.Narrow(f, g, ref common)))
        {
            lines.Note(face.Plane, other.Plane, in common);
        }
    }

    private void FindCrossings()
    {
        crossings.Clear();
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
                    || !crossing.MayCross(in current, in face)
                )
                {
                    continue;
                }

                seenPlane[face.Plane] = stamp;
                AddCrossing(face.Plane);
            }
        }

        // Few: by insertion.
        for (var i = 1; i < crossings.Count; i++)
        {
            var moving = crossings[i];
            var at = i;
            while (at > 0 && Compare(in crossings[at - 1], in moving) > 0)
            {
                crossings[at] = crossings[at - 1];
                at--;
            }

            crossings[at] = moving;
        }
    }

    private void AddCrossing(int plane)
    {
        var point = points.Meet(current.P, current.Q, plane);
        if (point < 0)
        {
            return;
        }

        foreach (ref var known in crossings.Span)
        {
            if (known.Point == point)
            {
                return;
            }
        }

        ref var p = ref points[point];
        crossings.Add(new(point, plane, (p.X * current.Dx) + (p.Y * current.Dy) + (p.Z * current.Dz)));
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

    private void FindEdges(int line)
    {
        for (var i = 0; i + 1 < crossings.Count; i++)
        {
            var (from, to) = (crossings[i].Point, crossings[i + 1].Point);
            ref var p = ref points[from];
            ref var q = ref points[to];
            var (x, y, z) = ((p.X + q.X) / 2, (p.Y + q.Y) / 2, (p.Z + q.Z) / 2);
            if (!current.Bounds.Holds(x, y, z))
            {
                continue;
            }

            for (var s = current.Stretches; s >= 0; s = lines.Stretches[s].Next)
            {
                if (lines.Stretches[s].Bounds.Holds(x, y, z))
                {
                    Classify(line, from, to, x, y, z);
                    break;
                }
            }
        }
    }

    private void Classify(int line, int from, int to, double x, double y, double z)
    {
        var count = current.PlaneCount;
        Span<int> ring = stackalloc int[count];
        Span<int> turned = stackalloc int[count];
        Arrange(ring, turned);
        var all = (1u << (2 * count)) - 1;
        if (count == MostPlanesOnLine)
        {
            all = uint.MaxValue;
        }

        var kept = all;
        var taken = 0u;
        inside.Clear();
        for (var b = 0; b < bodies.Bodies.Count; b++)
        {
            ref var body = ref bodies.Bodies[b];
            var mask = 0u;
            var walls = 0ul;
            if (body.Bounds.Holds(x, y, z))
            {
                mask = Wedges(in body, from, to, new(x, y, z), all, ring, turned, out walls);
            }

            if (body.IsKept)
            {
                kept &= mask;
                if (kept == 0)
                {
                    return;
                }
            }
            else
            {
                taken |= mask;
            }

            if (walls != 0)
            {
                inside.Add(new(body.Cut, body.IsKept, mask, walls));
            }
        }

        var solid = kept & ~taken;
        if (solid != 0 && solid != all)
        {
            Emit(line, from, to, solid, all, ring, turned);
        }
    }

    // The wedges of a body around the open stretch between two points that no face of it crosses: its middle decides; where
    // the doubles leave a doubt, its exact ends.
    private uint Wedges(
        in Body body,
        int from,
        int to,
        Vec3 middle,
        uint all,
        Span<int> ring,
        Span<int> turned,
        out ulong walls
    )
    {
        var count = ring.Length;
        var mask = all;
        walls = 0;
        var doubt = points[from].Error + points[to].Error + (8 * PlaneTable.UnitRoundOff * planes.Scale);
        for (var f = body.FirstFace; f < body.FirstFace + body.FaceCount; f++)
        {
            ref var face = ref bodies.Faces[f];
            ref var plane = ref planes[face.Plane];
            var outside = face.Outward * plane.Evaluate(middle.X, middle.Y, middle.Z);
            if (outside > doubt + plane.Error)
            {
                return 0;
            }

            if (outside < -(doubt + plane.Error))
            {
                continue;
            }

            var place = ring.IndexOf(face.Plane);
            if (place < 0)
            {
                if (points.Side(from, face.Plane) * face.Outward > 0 || points.Side(to, face.Plane) * face.Outward > 0)
                {
                    return 0;
                }

                continue;
            }

            // Wedges place .. place + count - 1 lie behind the plane as it is turned in the ring.
            var behind = ((1u << count) - 1) << place;
            var outward = face.Outward * turned[place];
            mask &= outward > 0 ? behind : all & ~behind;
            if (!face.IsSeam)
            {
                walls |= 1ul << ((2 * place) + (outward > 0 ? 1 : 0));
            }
        }

        return mask;
    }

    // Sorts the line's planes by angle around it and turns their normals into one half circle.
    private void Arrange(Span<int> ring, Span<int> turned)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var plane = lines.Planes[current.FirstPlane + i];
            var turn = i < 2 ? 1 : lines.Turn(in current, current.P, plane);
            var at = i;
            while (at > 1 && lines.Turn(in current, ring[at - 1], plane) * turn * turned[at - 1] < 0)
            {
                ring[at] = ring[at - 1];
                turned[at] = turned[at - 1];
                at--;
            }

            ring[at] = plane;
            turned[at] = turn;
        }
    }

    // Wedge j lies between half-planes j and j + 1; half-plane j < count is on the turned normal's left, j + count opposite.
    // Half-faces are paired across the solid between them. Where something empty is flat instead (a cut that touches a face
    // from within along a line) they are paired across what is empty, so that the face is not slit.
    private void Emit(int line, int from, int to, uint solid, uint all, Span<int> ring, Span<int> turned)
    {
        var wedges = 2 * ring.Length;
        var isSlit = HasFlatRun(all & ~solid, wedges) && !HasFlatRun(solid, wedges);
        var runs = isSlit ? all & ~solid : solid;
        var count = 0;
        for (var first = 0; first < wedges; first++)
        {
            if (!StartsRun(runs, first, wedges, out var after))
            {
                continue;
            }

            // A run of half a turn is the flat of one face: no edge.
            count++;
            if ((after - first + wedges) % wedges == ring.Length)
            {
                continue;
            }

            var start = Edges.Count;
            var (rising, falling) = isSlit ? (first, after) : (after, first);
            Edges.Add(Half(line, to, from, start + 1, ring, turned, falling, isFalling: true));
            Edges.Add(Half(line, from, to, start, ring, turned, rising, isFalling: false));
        }

        HasDoubled |= count > 1;
    }

    private static bool StartsRun(uint runs, int first, int wedges, out int after)
    {
        after = first;
        if ((runs & (1u << first)) == 0 || (runs & (1u << ((first + wedges - 1) % wedges))) != 0)
        {
            return false;
        }

        while ((runs & (1u << after)) != 0)
        {
            after = (after + 1) % wedges;
        }

        return true;
    }

    private static bool HasFlatRun(uint runs, int wedges)
    {
        for (var first = 0; first < wedges; first++)
        {
            if (StartsRun(runs, first, wedges, out var after) && (after - first + wedges) % wedges == wedges / 2)
            {
                return true;
            }
        }

        return false;
    }

    // The half-face at a half-plane where solid begins (seen around the line) runs down the line, where it ends up the line.
    private HalfEdge Half(
        int line,
        int from,
        int to,
        int mate,
        Span<int> ring,
        Span<int> turned,
        int half,
        bool isFalling
    )
    {
        // Half-planes of the ring's first half have the turned normal outside where solid begins, the others where it ends.
        var count = ring.Length;
        var alongTurned = isFalling == half < count;
        var place = half % count;
        var empty = isFalling ? (half + (2 * count) - 1) % (2 * count) : half;
        var outward = (alongTurned ? 1 : -1) * turned[place];
        return new()
        {
            From = from,
            To = to,
            Flat = (2 * ring[place]) + (outward > 0 ? 0 : 1),
            Mate = mate,
            Line = line,
            IsFalling = isFalling,
            Cut = Maker(place, alongTurned, empty),
            Next = -1,
            Previous = -1,
        };
    }

    // The face looks into the empty wedge: its maker is a blank that ends here, or a cut that begins here.
    private int Maker(int place, bool alongTurned, int emptyWedge)
    {
        var maker = int.MaxValue;
        foreach (ref var body in inside.Span)
        {
            var outward = body.IsKept == alongTurned;
            var holdsEmpty = (body.Mask & (1u << emptyWedge)) != 0;
            if (holdsEmpty != body.IsKept && (body.Walls & (1ul << ((2 * place) + (outward ? 1 : 0)))) != 0)
            {
                maker = Math.Min(maker, body.Cut);
            }
        }

        return maker == int.MaxValue ? -1 : maker;
    }

    private readonly record struct Crossing(int Point, int Plane, double Along);

    private readonly record struct Inside(int Cut, bool IsKept, uint Mask, ulong Walls);
}
