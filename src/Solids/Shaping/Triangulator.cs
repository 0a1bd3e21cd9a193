using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>Parts a flat with holes into triangles, by bridges to its holes and ears; then turns diagonals for good shape.</summary>
internal sealed class Triangulator
{
    private readonly Store<double> xs = new();
    private readonly Store<double> ys = new();
    private readonly Store<int> ring = new();
    private readonly Store<int> starts = new();
    private readonly Store<int> next = new();
    private readonly Store<int> previous = new();
    private readonly DiagonalTurner turner = new();

    /// <summary>Three point numbers a triangle, counter-clockwise, in the order the points were added.</summary>
    public Store<int> Triangles { get; } = new();

    public void Clear()
    {
        xs.Clear();
        ys.Clear();
        starts.Clear();
        Triangles.Clear();
    }

    /// <summary>Starts a loop; the first is the outer one (counter-clockwise), the rest are holes (clockwise).</summary>
    public void StartLoop() => starts.Add(xs.Count);

    public void AddPoint(double x, double y)
    {
        xs.Add(x);
        ys.Add(y);
    }

    public void Run()
    {
        Bridge();
        Clip();
        turner.Run(Triangles, xs, ys);
    }

    private int End(int loop) => loop + 1 < starts.Count ? starts[loop + 1] : xs.Count;

    // One ring through all loops: each hole, rightmost first, is tied to a point of the ring that sees it.
    private void Bridge()
    {
        ring.Clear();
        next.Clear();
        previous.Clear();
        AddRing(0, starts[0]);
        Span<int> holes = starts.Count <= 256 ? stackalloc int[starts.Count - 1] : new int[starts.Count - 1];
        Span<int> rightmost = starts.Count <= 256 ? stackalloc int[starts.Count - 1] : new int[starts.Count - 1];
        for (var h = 0; h < holes.Length; h++)
        {
            holes[h] = starts[h + 1];
            for (var i = starts[h + 1]; i < End(h + 1); i++)
            {
                if (xs[i] > xs[holes[h]] || (xs[i] == xs[holes[h]] && ys[i] > ys[holes[h]]))
                {
                    holes[h] = i;
                }
            }

            rightmost[h] = h + 1;
        }

        holes.Sort(
            rightmost,
            (a, b) =>
                xs[a] != xs[b] ? xs[b].CompareTo(xs[a])
                : ys[a] != ys[b] ? ys[b].CompareTo(ys[a])
                : a - b
        );
        for (var h = 0; h < holes.Length; h++)
        {
            var from = SeenFrom(holes[h]);
            var entry = AddRing(rightmost[h], holes[h]);
            var exit = AddNode(ring[entry]);
            var fromAgain = AddNode(ring[from]);
            var last = previous[entry];
            var after = next[from];
            Tie(last, exit);
            Tie(exit, fromAgain);
            Tie(fromAgain, after);
            Tie(from, entry);
        }
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
        var (start, end) = (starts[loop], End(loop));
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

    // The nearest point of the ring, to the right, that the hole's rightmost point sees.
    private int SeenFrom(int point)
    {
        var (x, y) = (xs[point], ys[point]);
        Span<bool> tried = ring.Count <= 1024 ? stackalloc bool[ring.Count] : new bool[ring.Count];
        while (true)
        {
            var best = -1;
            var least = double.PositiveInfinity;
            for (var n = 0; n < ring.Count; n++)
            {
                var (dx, dy) = (xs[ring[n]] - x, ys[ring[n]] - y);
                var distance = (dx * dx) + (dy * dy);
                if (!tried[n] && distance < least && (dx > 0 || (dx == 0 && dy >= 0)))
                {
                    (best, least) = (n, distance);
                }
            }

            if (best < 0)
            {
                throw new InvalidOperationException("A hole in a face sees no part of its rim.");
            }

            if (LooksInto(best, x, y) && IsClear(ring[best], point))
            {
                return best;
            }

            tried[best] = true;
        }
    }

    // Whether the point lies within the corner of the ring at a node.
    private bool LooksInto(int node, double x, double y)
    {
        var (b, o, a) = (ring[previous[node]], ring[node], ring[next[node]]);
        if (xs[o] == x && ys[o] == y)
        {
            return true;
        }

        var left = Orientation.Turn(xs[o], ys[o], xs[a], ys[a], x, y);
        var right = Orientation.Turn(xs[b], ys[b], xs[o], ys[o], x, y);
        return Turn(b, o, a) > 0 ? left > 0 && right > 0 : left > 0 || right > 0;
    }

    private bool IsClear(int a, int b)
    {
        if (xs[a] == xs[b] && ys[a] == ys[b])
        {
            return true;
        }

        for (var n = 0; n < ring.Count; n++)
        {
            var (p, q) = (ring[n], ring[next[n]]);
            if (Crosses(a, b, p, q))
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
        var along = ((xs[p] - xs[a]) * (xs[b] - xs[a])) + ((ys[p] - ys[a]) * (ys[b] - ys[a]));
        var back = ((xs[p] - xs[b]) * (xs[a] - xs[b])) + ((ys[p] - ys[b]) * (ys[a] - ys[b]));
        return along > 0 && back > 0;
    }

    private int Turn(int a, int b, int c) => Orientation.Turn(xs[a], ys[a], xs[b], ys[b], xs[c], ys[c]);

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
                Triangles.Add(ring[previous[node]]);
                Triangles.Add(ring[node]);
                Triangles.Add(ring[next[node]]);
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

        Triangles.Add(ring[previous[node]]);
        Triangles.Add(ring[node]);
        Triangles.Add(ring[next[node]]);
    }

    private bool IsEar(int node)
    {
        var (before, after) = (previous[node], next[node]);
        var (a, b, c) = (ring[before], ring[node], ring[after]);
        if (Turn(a, b, c) <= 0)
        {
            return false;
        }

        var (ax, ay, bx, by, cx, cy) = (xs[a], ys[a], xs[b], ys[b], xs[c], ys[c]);
        var (minX, maxX) = (Math.Min(ax, Math.Min(bx, cx)), Math.Max(ax, Math.Max(bx, cx)));
        var (minY, maxY) = (Math.Min(ay, Math.Min(by, cy)), Math.Max(ay, Math.Max(by, cy)));
        for (var n = next[after]; n != before; n = next[n])
        {
            var (x, y) = (xs[ring[n]], ys[ring[n]]);
            if (x < minX || x > maxX || y < minY || y > maxY)
            {
                continue;
            }

            if ((x == ax && y == ay) || (x == bx && y == by) || (x == cx && y == cy))
            {
                continue;
            }

            if (
                Orientation.Turn(ax, ay, bx, by, x, y) >= 0
                && Orientation.Turn(bx, by, cx, cy, x, y) >= 0
                && Orientation.Turn(cx, cy, ax, ay, x, y) >= 0
            )
            {
                return false;
            }
        }

        return true;
    }
}
