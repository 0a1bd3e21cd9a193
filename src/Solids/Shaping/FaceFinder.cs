using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>One flat of the solid: an outer loop and the holes in it.</summary>
internal struct Flat
{
    /// <summary>Twice the plane, plus 1 where the face looks against the plane's normal.</summary>
    public int Side;
    public int Cut;
    public int FirstLoop;
    public int LoopCount;

    /// <summary>Head of the list of mouths of lone bores in it; -1 where there are none.</summary>
    public int Mouths;
}

/// <summary>A loop of corners, counter-clockwise around material seen from outside.</summary>
internal struct Loop
{
    public int Side;
    public int FirstEdge;
    public int Cut;

    /// <summary>Its run of corners.</summary>
    public int First;
    public int Count;

    /// <summary>Twice its area in the plane's two leading coordinates, as rounded.</summary>
    public double Area;

    /// <summary>Whether it goes around a hole.</summary>
    public bool IsHole;

    /// <summary>The outer loop around a hole; itself for an outer one.</summary>
    public int Outer;
}

/// <summary>Sorts loops into faces: every hole to the loop that holds it.</summary>
internal sealed class FaceFinder(PlaneTable planes, PointTable points, Store<HalfEdge> edges, LoopFinder corners)
{
    private readonly Store<int> loopOfEdge = new();
    private readonly Store<int> order = new();
    private readonly Store<Loop> loops = new();
    private readonly Store<int> waiting = new();
    private readonly FacePoints shape = new(points);

    public Store<Flat> Flats { get; } = new();

    public Store<Loop> Loops { get; } = new();

    /// <summary>Corners of all loops, a run each.</summary>
    public Store<int> LoopCorners { get; } = new();

    /// <summary>For each of these the corner in the middle of its way to the next one, or -1; empty where there is none at all.</summary>
    public Store<int> LoopMiddles { get; } = new();

    /// <summary>For each half-edge, the flat it bounds.</summary>
    public Store<int> FlatOfEdge { get; } = new();

    public void Find()
    {
        Flats.Clear();
        Loops.Clear();
        LoopCorners.Clear();
        LoopMiddles.Clear();
        loops.Clear();
        loopOfEdge.Resize(0, 0);
        loopOfEdge.Resize(edges.Count, -1);
        for (var e = 0; e < edges.Count; e++)
        {
            if (loopOfEdge[e] < 0)
            {
                Trace(e);
            }
        }

        GroupBySide();
        FlatOfEdge.Resize(0, 0);
        FlatOfEdge.Resize(edges.Count, -1);
        for (var e = 0; e < edges.Count; e++)
        {
            FlatOfEdge[e] = loops[loopOfEdge[e]].Outer;
        }
    }

    /// <summary>The flat on one side of a plane that has a point of the plane in it.</summary>
    public int FlatAt(int side, Vec3 point)
    {
        var found = -1;
        var count = 0;
        for (var i = 0; i < Flats.Count; i++)
        {
            if (Flats[i].Side == side)
            {
                found = i;
                count++;
            }
        }

        for (var i = 0; count > 1 && i < Flats.Count; i++)
        {
            ref var outer = ref Loops[Flats[i].FirstLoop];
            if (outer.Side == side)
            {
                var (x, y) = Flat2(in outer, point);
                if (Holds(in outer, x, y))
                {
                    return i;
                }
            }
        }

        return found;
    }

    private void Trace(int start)
    {
        var loop = new Loop
        {
            Side = edges[start].Flat,
            FirstEdge = start,
            Cut = int.MaxValue,
            First = LoopCorners.Count,
            Outer = -1,
        };
        var e = start;
        do
        {
            loopOfEdge[e] = loops.Count;
            loop.Cut = Math.Min(loop.Cut, edges[e].Cut);
            if (corners.Corner[e] >= 0)
            {
                LoopCorners.Add(corners.Corner[e]);
            }

            e = edges[e].Next;
        } while (e != start);

        loop.Count = LoopCorners.Count - loop.First;
        if (corners.Middle.Count > 0)
        {
            NoteMiddles(start);
        }

        var (around, error) = (0.0, 0.0);
        var (ox, oy) = Flat2(in loop, 0);
        for (var i = 0; i < loop.Count; i++)
        {
            var (ax, ay) = Flat2(in loop, i);
            var (bx, by) = Flat2(in loop, (i + 1) % loop.Count);
            loop.Area += ((ax - ox) * (by - oy)) - ((ay - oy) * (bx - ox));
            around += Math.Abs(bx - ax) + Math.Abs(by - ay);
            error = Math.Max(error, points[corners.CornerPoint[LoopCorners[loop.First + i]]].Error);
        }

        // What rounding may have moved the corners by; the turns never lie.
        var doubt = ((4 * error) + (1e-12 * planes.Scale)) * around;
        loop.IsHole = Math.Abs(loop.Area) > doubt ? loop.Area < 0 : !corners.TurnsLeft(start);
        loops.Add(loop);
    }

    // An edge may go straight on past its middle or start before the loop does: a middle belongs to the corner last met.
    private void NoteMiddles(int start)
    {
        var e = start;
        while (corners.Corner[e] < 0)
        {
            e = edges[e].Next;
        }

        var first = e;
        do
        {
            if (corners.Corner[e] >= 0)
            {
                LoopMiddles.Add(-1);
            }

            if (corners.Middle[e] >= 0)
            {
                LoopMiddles[LoopMiddles.Count - 1] = corners.Middle[e];
            }

            e = edges[e].Next;
        } while (e != first);
    }

    private (double X, double Y) Flat2(in Loop loop, int i) =>
        Flat2(in loop, corners.CornerPosition[LoopCorners[loop.First + i]]);

    private (double X, double Y) Flat2(in Loop loop, Vec3 position)
    {
        ref var plane = ref planes[loop.Side / 2];
        var across = FacePoints.Across(in plane);
        var towards = across switch
        {
            0 => plane.Nx,
            1 => plane.Ny,
            _ => plane.Nz,
        };
        return FacePoints.Flatten(position, across, towards > 0 != (loop.Side % 2 == 0));
    }

    private void GroupBySide()
    {
        order.Clear();
        for (var i = 0; i < loops.Count; i++)
        {
            order.Add(i);
        }

        order.Span.Sort(
            (a, b) => loops[a].Side != loops[b].Side ? loops[a].Side.CompareTo(loops[b].Side) : a.CompareTo(b)
        );
        for (var first = 0; first < order.Count; )
        {
            var last = first;
            while (last < order.Count && loops[order[last]].Side == loops[order[first]].Side)
            {
                last++;
            }

            Gather(first, last);
            first = last;
        }
    }

    private void Gather(int first, int last)
    {
        var (outers, some) = (0, -1);
        for (var i = first; i < last; i++)
        {
            outers += loops[order[i]].IsHole ? 0 : 1;
            some = loops[order[i]].IsHole ? some : order[i];
        }

        if (outers == 1)
        {
            for (var i = first; i < last; i++)
            {
                ref var loop = ref loops[order[i]];
                loop.Outer = loop.IsHole ? some : -1;
            }
        }
        else if (outers < last - first)
        {
            FindOuters(first, last);
        }

        for (var i = first; i < last; i++)
        {
            ref var outer = ref loops[order[i]];
            if (outer.IsHole)
            {
                continue;
            }

            var flat = new Flat
            {
                Side = outer.Side,
                Cut = outer.Cut,
                FirstLoop = Loops.Count,
                Mouths = -1,
            };
            Loops.Add(outer);
            for (var j = first; j < last; j++)
            {
                ref var hole = ref loops[order[j]];
                if (hole.Outer == order[i])
                {
                    flat.Cut = Math.Min(flat.Cut, hole.Cut);
                    Loops.Add(hole);
                    hole.Outer = -2 - Flats.Count;
                }
            }

            flat.LoopCount = Loops.Count - flat.FirstLoop;
            outer.Outer = -2 - Flats.Count;
            Flats.Add(flat);
        }

        for (var i = first; i < last; i++)
        {
            ref var loop = ref loops[order[i]];
            loop.Outer = -2 - loop.Outer;
        }
    }

    // What is right below the leftmost corner of a hole tells: an edge of the loop around it, or of a hole in the same one.
    private void FindOuters(int first, int last)
    {
        ref var plane = ref planes[loops[order[first]].Side / 2];
        shape.Start(in plane, loops[order[first]].Side);
        waiting.Clear();
        for (var i = first; i < last; i++)
        {
            ref var loop = ref loops[order[i]];
            shape.StartLoop();
            var leftmost = shape.Count;
            for (var c = loop.First; c < loop.First + loop.Count; c++)
            {
                var corner = LoopCorners[c];
                shape.Add(corners.CornerPosition[corner], corners.CornerPoint[corner], corner);
                leftmost = shape.Compare(shape.Count - 1, leftmost) < 0 ? shape.Count - 1 : leftmost;
            }

            if (loop.IsHole)
            {
                waiting.Add(leftmost);
            }
        }

        // From the left, so that a hole found below is known already.
        waiting.Span.Sort((a, b) => shape.Compare(a, b) is var apart and not 0 ? apart : a.CompareTo(b));
        foreach (var leftmost in waiting.Span)
        {
            var below = order[first + EdgeBelow(leftmost)];
            loops[order[first + shape.Loop(leftmost)]].Outer = loops[below].IsHole ? loops[below].Outer : below;
        }
    }

    // The loop of the highest edge below a corner that has material above it: one that runs from left to right.
    private int EdgeBelow(int corner)
    {
        var best = -1;
        for (var i = 0; i < shape.Count; i++)
        {
            if (
                shape.Compare(i, corner) < 0
                && shape.Compare(corner, shape.After(i)) < 0
                && shape.Turn(i, shape.After(i), corner) > 0
                && (best < 0 || IsAbove(i, best))
            )
            {
                best = i;
            }
        }

        return best >= 0
            ? shape.Loop(best)
            : throw new InvalidOperationException("A hole in a face has no face around it.");
    }

    // Whether of two edges that do not cross, both under one corner, the first is the higher.
    private bool IsAbove(int edge, int other)
    {
        var (end, otherEnd) = (shape.After(edge), shape.After(other));
        var startsLater = shape.Compare(other, edge) < 0;
        var turn = startsLater ? shape.Turn(other, otherEnd, edge) : -shape.Turn(edge, end, other);
        return turn != 0 ? turn > 0
            : shape.Compare(end, otherEnd) < 0 ? shape.Turn(other, otherEnd, end) > 0
            : shape.Turn(edge, end, otherEnd) < 0;
    }

    private bool Holds(in Loop loop, double x, double y)
    {
        var isInside = false;
        for (var i = 0; i < loop.Count; i++)
        {
            var (ax, ay) = Flat2(in loop, i);
            var (bx, by) = Flat2(in loop, (i + 1) % loop.Count);
            if (ay > y != by > y)
            {
                var turn = Orientation.Turn(ax, ay, bx, by, x, y);
                isInside ^= by > ay ? turn > 0 : turn < 0;
            }
        }

        return isInside;
    }
}
