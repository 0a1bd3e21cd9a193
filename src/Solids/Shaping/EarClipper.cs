using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>Parts a flat with holes into triangles, by bridges to its holes and ears. Slow and sure: all its decisions are exact.</summary>
internal sealed class EarClipper(FacePoints points)
{
    private readonly Store<int> ring = new();
    private readonly Store<int> next = new();
    private readonly Store<int> previous = new();

    private readonly Store<Hole> waiting = new();
    private readonly Store<bool> tried = new();

    private Store<int> triangles = new();

    public void Run(Store<int> into)
    {
        triangles = into;
        triangles.Clear();
        Bridge();
        Clip();
    }

    private int End(int loop) => loop + 1 < points.Starts.Length ? points.Starts[loop + 1] : points.Count;

    // One ring through all loops: each hole is tied to the nearest corner of the ring that its rightmost corner sees. Holes are
    // tried from the right; one that sees only other holes waits for them.
    private void Bridge()
    {
        ring.Clear();
        next.Clear();
        previous.Clear();
        AddRing(0, points.Starts[0]);
        waiting.Clear();
        for (var hole = 1; hole < points.Starts.Length; hole++)
        {
            waiting.Add(new(hole, Rightmost(hole)));
        }

        waiting.Span.Sort(
            (a, b) => points.X(b.Point).CompareTo(points.X(a.Point)) is var x and not 0 ? x : a.Loop - b.Loop
        );
        var turn = 0;
        var failed = 0;
        while (waiting.Count > 0)
        {
            turn %= waiting.Count;
            var hole = waiting[turn];
            var from = SeenFrom(hole, failed > waiting.Count);
            if (from < 0)
            {
                turn++;
                failed++;
                continue;
            }

            failed = 0;
            waiting.Remove(turn);
            TieHole(from, AddRing(hole.Loop, hole.Point));
        }
    }

    private int Rightmost(int loop)
    {
        var best = points.Starts[loop];
        for (var i = best; i < End(loop); i++)
        {
            if (points.X(i) > points.X(best) || (points.X(i) == points.X(best) && points.Y(i) > points.Y(best)))
            {
                best = i;
            }
        }

        return best;
    }

    private void TieHole(int from, int entry)
    {
        var exit = AddNode(ring[entry]);
        var fromAgain = AddNode(ring[from]);
        var last = previous[entry];
        var after = next[from];
        Tie(last, exit);
        Tie(exit, fromAgain);
        Tie(fromAgain, after);
        Tie(from, entry);
    }

    private void Tie(int a, int b)
    {
        next[a] = b;
        previous[b] = a;
    }

    private int AddNode(int point)
    {
        next.Add(-1);
        previous.Add(-1);
        return ring.Add(point);
    }

    private int AddRing(int loop, int first)
    {
        var (start, end) = (points.Starts[loop], End(loop));
        var node = ring.Count;
        for (var i = 0; i < end - start; i++)
        {
            AddNode(start + ((first - start + i) % (end - start)));
        }

        for (var i = node; i < ring.Count; i++)
        {
            Tie(i, i + 1 < ring.Count ? i + 1 : node);
        }

        return node;
    }

    // The nearest node of the ring that a hole's corner sees, -1 where it sees none.
    private int SeenFrom(Hole hole, bool isDesperate)
    {
        var (x, y) = (points.X(hole.Point), points.Y(hole.Point));
        tried.Resize(0, false);
        tried.Resize(ring.Count, false);
        var nearest = -1;
        while (true)
        {
            var best = -1;
            var least = double.PositiveInfinity;
            for (var n = 0; n < ring.Count; n++)
            {
                var (dx, dy) = (points.X(ring[n]) - x, points.Y(ring[n]) - y);
                var distance = (dx * dx) + (dy * dy);
                if (!tried[n] && distance < least)
                {
                    (best, least) = (n, distance);
                }
            }

            if (best < 0)
            {
                return isDesperate ? nearest : -1;
            }

            nearest = nearest < 0 ? best : nearest;
            if (LooksInto(best, hole.Point) && LooksOut(hole, ring[best]) && IsClear(ring[best], hole.Point))
            {
                return best;
            }

            tried[best] = true;
        }
    }

    // Whether a point lies within the face seen from a hole's corner.
    private bool LooksOut(Hole hole, int point)
    {
        var (start, end) = (points.Starts[hole.Loop], End(hole.Loop));
        var before = hole.Point == start ? end - 1 : hole.Point - 1;
        var after = hole.Point + 1 == end ? start : hole.Point + 1;
        return LooksInto(before, hole.Point, after, point);
    }

    // Whether a point lies within the corner of the ring at a node.
    private bool LooksInto(int node, int point)
    {
        return LooksInto(ring[previous[node]], ring[node], ring[next[node]], point);
    }

    private bool LooksInto(int b, int o, int a, int point)
    {
        if (points.AreSame(o, point))
        {
            return true;
        }

        var left = Turn(o, a, point);
        var right = Turn(b, o, point);
        return Turn(b, o, a) > 0 ? left > 0 && right > 0 : left > 0 || right > 0;
    }

    private bool IsClear(int a, int b)
    {
        if (points.AreSame(a, b))
        {
            return true;
        }

        for (var loop = 0; loop < points.Starts.Length; loop++)
        {
            for (var (p, q) = (End(loop) - 1, points.Starts[loop]); q < End(loop); p = q++)
            {
                if (Crosses(a, b, p, q))
                {
                    return false;
                }
            }
        }

        // Bridges that are already there.
        for (var n = 0; n < ring.Count; n++)
        {
            if (Crosses(a, b, ring[n], ring[next[n]]))
            {
                return false;
            }
        }

        return true;
    }

    // Whether p-q meets the open stretch a-b, ends of p-q included where they are not ends of a-b.
    private bool Crosses(int a, int b, int p, int q)
    {
        var (tp, tq) = (Turn(a, b, p), Turn(a, b, q));
        if (tp * tq > 0)
        {
            return false;
        }

        if (tp == 0 && Between(a, b, p))
        {
            return true;
        }

        if (tq == 0 && Between(a, b, q))
        {
            return true;
        }

        return tp * tq < 0 && Turn(p, q, a) * Turn(p, q, b) < 0;
    }

    private bool Between(int a, int b, int p)
    {
        var along =
            ((points.X(p) - points.X(a)) * (points.X(b) - points.X(a)))
            + ((points.Y(p) - points.Y(a)) * (points.Y(b) - points.Y(a)));
        var back =
            ((points.X(p) - points.X(b)) * (points.X(a) - points.X(b)))
            + ((points.Y(p) - points.Y(b)) * (points.Y(a) - points.Y(b)));
        return along > 0 && back > 0;
    }

    private int Turn(int a, int b, int c) => points.Turn(a, b, c);

    private void Clip()
    {
        var left = ring.Count;
        var node = 0;
        var failed = 0;
        while (left > 3)
        {
            if (failed > left || IsEar(node))
            {
                // Where rounding leaves no ear at all, any corner is as good as another.
                triangles.Add(ring[previous[node]]);
                triangles.Add(ring[node]);
                triangles.Add(ring[next[node]]);
                Tie(previous[node], next[node]);
                node = next[next[node]];
                left--;
                failed = 0;
            }
            else
            {
                node = next[node];
                failed++;
            }
        }

        triangles.Add(ring[previous[node]]);
        triangles.Add(ring[node]);
        triangles.Add(ring[next[node]]);
    }

    private bool IsEar(int node)
    {
        var (before, after) = (previous[node], next[node]);
        var (a, b, c) = (ring[before], ring[node], ring[after]);
        if (Turn(a, b, c) <= 0)
        {
            return false;
        }

        for (var n = next[after]; n != before; n = next[n])
        {
            var p = ring[n];
            if (
                !points.AreSame(p, a)
                && !points.AreSame(p, b)
                && !points.AreSame(p, c)
                && Turn(a, b, p) >= 0
                && Turn(b, c, p) >= 0
                && Turn(c, a, p) >= 0
            )
            {
                return false;
            }
        }

        return true;
    }

    private readonly record struct Hole(int Loop, int Point);
}
