using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Merges triangles that share edges to the loops around them.</summary>
internal sealed class OutlineBuilder
{
    private readonly Dictionary<(Vec2 From, Vec2 To), int> _edges = [];
    private readonly List<(Vec2 From, Vec2 To)> _order = [];

    /// <summary>Adds a triangle; all triangles go the same way round.</summary>
    public void Add(Vec2 a, Vec2 b, Vec2 c)
    {
        AddEdge(a, b);
        AddEdge(b, c);
        AddEdge(c, a);
    }

    /// <summary>The loops around what was added, without points that lie between their neighbours in a straight line.</summary>
    public List<IReadOnlyList<Vec2>> Loops()
    {
        var next = new Dictionary<Vec2, List<Vec2>>();
        foreach (var edge in _order)
        {
            for (var i = _edges[edge]; i > 0; i--)
            {
                if (!next.TryGetValue(edge.From, out var ends))
                    next.Add(edge.From, ends = []);
                ends.Add(edge.To);
            }
            _edges[edge] = 0;
        }
        var loops = new List<IReadOnlyList<Vec2>>();
        foreach (var (start, _) in _order)
        {
            while (next.TryGetValue(start, out var ends) && ends.Count > 0)
            {
                var loop = Straightened(Follow(start, next));
                if (loop.Count >= 3)
                    loops.Add(loop);
            }
        }
        return loops;
    }

    /// <summary>Adds one edge; it and its opposite take each other away.</summary>
    public void AddEdge(Vec2 from, Vec2 to)
    {
        if (from == to)
            return;
        if (_edges.TryGetValue((to, from), out var opposite) && opposite > 0)
        {
            _edges[(to, from)] = opposite - 1;
            return;
        }
        if (_edges.TryGetValue((from, to), out var count))
        {
            _edges[(from, to)] = count + 1;
            return;
        }
        _edges.Add((from, to), 1);
        _order.Add((from, to));
    }

    private static List<Vec2> Follow(Vec2 start, Dictionary<Vec2, List<Vec2>> next)
    {
        var loop = new List<Vec2>();
        var at = start;
        while (next.TryGetValue(at, out var ends) && ends.Count > 0)
        {
            loop.Add(at);
            var to = ends[^1];
            ends.RemoveAt(ends.Count - 1);
            at = to;
            if (at == start)
                break;
        }
        return loop;
    }

    private static List<Vec2> Straightened(List<Vec2> loop)
    {
        var corners = new List<Vec2>(loop.Count);
        for (var i = 0; i < loop.Count; i++)
        {
            var (before, at, after) = (loop[(i + loop.Count - 1) % loop.Count], loop[i], loop[(i + 1) % loop.Count]);
            var turn = ((at.X - before.X) * (after.Y - at.Y)) - ((at.Y - before.Y) * (after.X - at.X));
            if (turn != 0)
                corners.Add(at);
        }
        return corners;
    }
}
