using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// Walks along one edge of a front and looks straight out. Outlines are straight between their corners, so the gap is
/// measured exactly where any corner stands and runs evenly in between.
/// </summary>
/// <remarks>
/// "Out" grows away from the front, "along" runs along the edge; both are grid units of the front view, turned and
/// mirrored so that one walk does for all four sides.
/// </remarks>
internal sealed class GapWalk(Direction side)
{
    private readonly bool _isUpright = side.Axis() == Axis.X;
    private readonly int _sign = side.Sign();
    private readonly List<Edge> _front = [];
    private readonly List<(int Part, List<Edge> Edges)> _neighbours = [];
    private readonly List<Edge> _crossed = [];

    public void AddFront(FrontFace face) => _front.AddRange(Edges(face));

    public void AddNeighbour(FrontFace face) => _neighbours.Add((face.Part, Edges(face)));

    /// <summary>The gap, step by step along the edge; stretches with nothing in reach are left out.</summary>
    public List<GapStep> Steps(double reach)
    {
        var (first, last) = (_front.Min(edge => edge.Start), _front.Max(edge => edge.End));
        var stops = _front
            .Concat(_neighbours.SelectMany(neighbour => neighbour.Edges))
            .SelectMany(edge => (double[])[edge.Start, edge.End])
            .Where(along => along >= first && along <= last)
            .Distinct()
            .Order()
            .ToList();
        var steps = new List<GapStep>();
        for (var i = 1; i < stops.Count; i++)
        {
            if (StepBetween(stops[i - 1], stops[i], reach) is { } step)
                steps.Add(step);
        }
        return steps;
    }

    private GapStep? StepBetween(double start, double end, double reach)
    {
        var middle = (start + end) / 2;
        Edge? own = null;
        foreach (var edge in _front)
        {
            if (edge.Spans(start, end) && (own is null || edge.OutAt(middle) > own.Value.OutAt(middle)))
                own = edge;
        }
        if (own is not { } from)
            return null;
        var (nearest, to, part) = (reach, default(Edge), -1);
        foreach (var (neighbour, edges) in _neighbours)
        {
            Crossings(edges, start, end, middle);
            for (var i = 0; i + 1 < _crossed.Count; i += 2)
            {
                if (_crossed[i + 1].OutAt(middle) <= from.OutAt(middle))
                    continue; // it lies behind this edge
                var gap = _crossed[i].OutAt(middle) - from.OutAt(middle);
                if (gap <= nearest)
                    (nearest, to, part) = (gap, _crossed[i], neighbour);
                break;
            }
        }
        if (part < 0)
            return null;
        return new(
            part,
            end - start,
            Math.Max(0, to.OutAt(start) - from.OutAt(start)),
            Math.Max(0, to.OutAt(end) - from.OutAt(end)),
            new(
                ToView(from.OutAt(start), start),
                ToView(from.OutAt(end), end),
                ToView(to.OutAt(start), start),
                ToView(to.OutAt(end), end)
            )
        );
    }

    /// <summary>The edges that a look straight out crosses, nearest first: into a board, out of it, and so on.</summary>
    private void Crossings(List<Edge> edges, double start, double end, double middle)
    {
        _crossed.Clear();
        foreach (var edge in edges)
        {
            if (edge.Spans(start, end))
                _crossed.Add(edge);
        }
        _crossed.Sort((a, b) => a.OutAt(middle).CompareTo(b.OutAt(middle)));
    }

    private List<Edge> Edges(FrontFace face)
    {
        var edges = new List<Edge>();
        foreach (var loop in face.Loops)
        {
            for (var i = 0; i < loop.Count; i++)
            {
                var (outA, alongA) = FromView(loop[i]);
                var (outB, alongB) = FromView(loop[(i + 1) % loop.Count]);
                if (alongA < alongB)
                    edges.Add(new(alongA, outA, alongB, outB));
                else if (alongB < alongA)
                    edges.Add(new(alongB, outB, alongA, outA));
            }
        }
        return edges;
    }

    private (double Out, double Along) FromView(Vec2 point) =>
        _isUpright ? (point.X * _sign, point.Y) : (point.Y * _sign, point.X);

    private Vec2 ToView(double outwards, double along) =>
        _isUpright ? new(outwards * _sign, along) : new(along, outwards * _sign);

    /// <summary>A piece of outline that runs along the walk, however slanted.</summary>
    private readonly record struct Edge(double Start, double OutAtStart, double End, double OutAtEnd)
    {
        public bool Spans(double start, double end) => Start <= start && End >= end;

        public double OutAt(double along) =>
            OutAtStart == OutAtEnd
                ? OutAtStart
                : OutAtStart + ((OutAtEnd - OutAtStart) * (along - Start) / (End - Start));
    }
}

/// <summary>One step of the walk.</summary>
/// <param name="Neighbour">Index of the part that stands opposite.</param>
/// <param name="Run">How long the step is, in grid units.</param>
internal readonly record struct GapStep(
    int Neighbour,
    double Run,
    double GapAtStart,
    double GapAtEnd,
    GapCourse Course
);
