using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Parts a face into well-shaped triangles: a four-cornered face by its better diagonal, others by a sweep whose diagonals are
/// then turned, into the constrained Delaunay triangulation. The mouth of a round hole takes part with every third corner or so;
/// the corners between are fanned in at the end, which they allow unless something comes very near.
/// </summary>
internal sealed class FaceTriangulator(PointTable points)
{
    private readonly FacePoints shape = new(points);
    private readonly Store<int> triangles = new();
    private readonly Store<Mouth> mouths = new();
    private readonly Store<int> middles = new();
    private FaceSweep? sweep;
    private DiagonalTurner? turner;

    /// <summary>Starts a face in a plane.</summary>
    public void Start(in Plane plane, int side)
    {
        shape.Start(in plane, side);
        mouths.Clear();
        middles.Clear();
    }

    /// <summary>Starts a face that is parted as it is seen along an axis.</summary>
    public void Start(int axis, bool isUp)
    {
        shape.Start(axis, isSwapped: !isUp);
        mouths.Clear();
        middles.Clear();
    }

    public void StartLoop()
    {
        shape.StartLoop();
        mouths.Add(default);
    }

    public void Add(Vec3 position, int name, int vertex) => shape.Add(position, name, vertex);

    /// <summary>Puts a vertex in the middle of the side from the corner added last to its next. The face is triangulated without
    /// it and the triangle on that side parted at the end: being rounded it lies beside the side, and must decide nothing.</summary>
    public void PartSide(int vertex)
    {
        while (middles.Count < shape.Count)
        {
            middles.Add(-1);
        }

        middles[shape.Count - 1] = vertex;
    }

    /// <summary>Adds a round hole: a run of vertices, taken upwards (step 1) or downwards (-1).</summary>
    public void AddMouth(int first, int count, int step, ReadOnlySpan<Vec3> vertices)
    {
        shape.StartLoop();
        var stride = count % 8 == 0 && count >= 16 ? count / 8 : 1;
        mouths.Add(new(first, count, step, stride));
        for (var i = 0; i < count; i += stride)
        {
            var vertex = first + (step > 0 ? i : (count - i) % count);
            shape.Add(vertices[vertex], -1, vertex);
        }
    }

    /// <summary>Writes the triangles of the face.</summary>
    public void Run(ReadOnlySpan<Vec3> vertices, Store<int> into)
    {
        if (shape.Count == 3)
        {
            AddTriangle(into, 0, 1, 2);
            return;
        }

        if (shape.Count == 4 && TryDiagonal(into))
        {
            return;
        }

        Triangulate();
        var before = into.Count;
        if (!WriteWithMouths(vertices, into))
        {
            into.CutBack(before);
            FillMouths(vertices);
            Triangulate();
            WriteWithMouths(vertices, into);
        }
    }

    private void Triangulate()
    {
        (sweep ??= new(shape)).Run(shape.Starts, triangles);
        (turner ??= new(shape)).Run(triangles);
    }

    private void AddTriangle(Store<int> into, int a, int b, int c)
    {
        if (middles.Count > 0)
        {
            AddParted(
                into,
                (shape.Vertex(a), MiddleOf(a, b)),
                (shape.Vertex(b), MiddleOf(b, c)),
                (shape.Vertex(c), MiddleOf(c, a))
            );
            return;
        }

        into.Add(shape.Vertex(a));
        into.Add(shape.Vertex(b));
        into.Add(shape.Vertex(c));
    }

    // The vertex in the middle of a side of a triangle, where it is a side of the face and has one.
    private int MiddleOf(int from, int to) =>
        from < middles.Count && middles[from] >= 0 && to == shape.After(from) ? middles[from] : -1;

    // Each corner with the vertex in the middle of the side to the next one.
    private static void AddParted(
        Store<int> into,
        (int Vertex, int Middle) a,
        (int Vertex, int Middle) b,
        (int Vertex, int Middle) c
    )
    {
        for (var i = 0; i < 3; i++)
        {
            if (a.Middle >= 0)
            {
                AddParted(into, (a.Vertex, -1), (a.Middle, -1), c);
                AddParted(into, (a.Middle, -1), b, (c.Vertex, -1));
                return;
            }

            (a, b, c) = (b, c, a);
        }

        into.Add(a.Vertex);
        into.Add(b.Vertex);
        into.Add(c.Vertex);
    }

    private bool TryDiagonal(Store<int> into)
    {
        var first = shape.Turn(0, 1, 2) > 0 && shape.Turn(0, 2, 3) > 0;
        var second = shape.Turn(1, 2, 3) > 0 && shape.Turn(1, 3, 0) > 0;
        if (first && (!second || !shape.LookWidelyAt(2, 0, 1, 3)))
        {
            AddTriangle(into, 0, 1, 2);
            AddTriangle(into, 0, 2, 3);
            return true;
        }

        if (second)
        {
            AddTriangle(into, 1, 2, 3);
            AddTriangle(into, 1, 3, 0);
        }

        return second;
    }

    // False where a corner between two that took part does not see the tip of the triangle on them.
    private bool WriteWithMouths(ReadOnlySpan<Vec3> vertices, Store<int> into)
    {
        for (var t = 0; t < triangles.Count; t += 3)
        {
            var (a, b, c) = (triangles[t], triangles[t + 1], triangles[t + 2]);
            var (loopA, loopB, loopC) = (shape.Loop(a), shape.Loop(b), shape.Loop(c));
            if (IsRim(a, b, loopA, loopB))
            {
                if (!Fan(a, c, loopA, vertices, into))
                {
                    return false;
                }
            }
            else if (IsRim(b, c, loopB, loopC))
            {
                if (!Fan(b, a, loopB, vertices, into))
                {
                    return false;
                }
            }
            else if (IsRim(c, a, loopC, loopA))
            {
                if (!Fan(c, b, loopC, vertices, into))
                {
                    return false;
                }
            }
            else
            {
                AddTriangle(into, a, b, c);
            }
        }

        return true;
    }

    // Whether a side is a stretch of a mouth's rim with corners left out.
    private bool IsRim(int from, int to, int loopFrom, int loopTo)
    {
        if (loopFrom != loopTo || mouths[loopFrom].Stride <= 1)
        {
            return false;
        }

        var start = shape.Starts[loopFrom];
        var count = mouths[loopFrom].Count / mouths[loopFrom].Stride;
        return to == (from + 1 == start + count ? start : from + 1);
    }

    private bool Fan(int from, int tip, int loop, ReadOnlySpan<Vec3> vertices, Store<int> into)
    {
        ref var mouth = ref mouths[loop];
        var (at, tipVertex) = (shape.Vertex(from), shape.Vertex(tip));
        var written = into.Extend(3 * mouth.Stride);
        for (var i = 0; i < written.Length; i += 3)
        {
            var next = mouth.After(at);
            if (shape.Turn(vertices[at], vertices[next], tip) <= 0)
            {
                return false;
            }

            (written[i], written[i + 1], written[i + 2]) = (at, next, tipVertex);
            at = next;
        }

        return true;
    }

    // Takes all corners of all mouths into the face.
    private void FillMouths(ReadOnlySpan<Vec3> vertices)
    {
        for (var loop = 0; loop < mouths.Count; loop++)
        {
            mouths[loop] = mouths[loop] with { Stride = 1 };
        }

        shape.RestartFrom(mouths.Span, vertices);
    }
}

/// <summary>The rim of a round hole: a run of vertices, of which every so-manieth takes part; none where it is no mouth.</summary>
internal readonly record struct Mouth(int First, int Count, int Step, int Stride)
{
    public int After(int vertex)
    {
        var i = vertex - First + Step;
        return First
            + (
                i == Count ? 0
                : i < 0 ? Count - 1
                : i
            );
    }
}
