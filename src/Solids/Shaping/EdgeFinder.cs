using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Finds the edges of the solid. An edge lies on a line where two faces of bodies meet. Each such line is parted by all
/// planes of faces that come near, and for each part the wedges between the line's planes are looked at: kept by all blanks
/// and taken away by no cut, or not. Where that changes from wedge to wedge there is a face, and every run of solid wedges
/// gives one pair of half-edges, so that each edge has two faces even where the exact solid touches itself.
/// </summary>
internal sealed class EdgeFinder
{
    private const int MostPlanesOnLine = 16;

    private readonly PlaneTable planes;
    private readonly PointTable points;
    private readonly BodyTable bodies;
    private readonly LineTable lines;
    private readonly Store<Inside> inside = new();
    private readonly LineFinder lineFinder;
    private readonly CrossingFinder crossingFinder;
    private Line current;

    public EdgeFinder(PlaneTable planes, PointTable points, BodyTable bodies, LineTable lines)
    {
        (this.planes, this.points, this.bodies, this.lines) = (planes, points, bodies, lines);
        var facing = new FaceCrossing(planes, bodies);
        lineFinder = new(bodies, lines, facing);
        crossingFinder = new(planes, points, bodies, lines, facing);
    }

    public Store<HalfEdge> Edges { get; } = new();

    /// <summary>Whether the solid touches itself along some edge, so that there are two pairs of half-edges in one place.</summary>
    public bool HasDoubled { get; private set; }

    public void Find()
    {
        Edges.Clear();
        HasDoubled = false;
        lines.Clear();
        lineFinder.Find();
        crossingFinder.Start();
        for (var i = 0; i < lines.Lines.Count; i++)
        {
            current = lines.Lines[i];
            if (current.PlaneCount > MostPlanesOnLine)
            {
                throw new NotSupportedException($"More than {MostPlanesOnLine} planes meet in one line.");
            }

            if (current.Stretches >= 0)
            {
                crossingFinder.Find(in current);
                FindEdges(i);
            }
        }
    }

    private void FindEdges(int line)
    {
        var crossings = crossingFinder.Crossings;
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

    private readonly record struct Inside(int Cut, bool IsKept, uint Mask, ulong Walls);
}
