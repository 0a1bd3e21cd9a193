using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Joins half-edges into the loops around faces, gives every corner of the solid its own vertex (one for each fan of faces, so
/// that a point where the solid touches itself is there twice), and drops points in the middle of a straight edge.
/// </summary>
internal sealed class LoopFinder(PointTable points, LineTable lines, Store<HalfEdge> edges)
{
    private readonly Store<int> firstFrom = new();
    private readonly Store<int> nextFrom = new();
    private readonly Store<bool> hasFan = new();

    /// <summary>For each half-edge the corner it starts at, -1 where it only goes straight on.</summary>
    public Store<int> Corner { get; } = new();

    /// <summary>Whether two fans of faces meet in one point: there the solid touches itself.</summary>
    public bool HasTwins { get; private set; }

    /// <summary>The point of each corner; -1 for one put in the middle of an edge.</summary>
    public Store<int> CornerPoint { get; } = new();

    public Store<Vec3> CornerPosition { get; } = new();

    /// <summary>For each half-edge the corner put in its middle, or -1; empty where there is none at all.</summary>
    public Store<int> Middle { get; } = new();

    /// <summary>Whether somewhere a face touches itself in a point.</summary>
    public bool HasTouching { get; private set; }

    public void Find(bool hasDoubled)
    {
        HasTouching = false;
        firstFrom.Resize(0, 0);
        firstFrom.Resize(points.Count, -1);
        nextFrom.Resize(0, 0);
        nextFrom.Resize(edges.Count, -1);
        for (var e = edges.Count - 1; e >= 0; e--)
        {
            nextFrom[e] = firstFrom[edges[e].From];
            firstFrom[edges[e].From] = e;
        }

        for (var e = 0; e < edges.Count; e++)
        {
            var next = Following(e);
            if (edges[next].Previous >= 0)
            {
                throw new InvalidOperationException("A face of the solid does not close.");
            }

            edges[e].Next = next;
            edges[next].Previous = e;
        }

        FindCorners();
        Middle.Resize(0, 0);
        if (hasDoubled)
        {
            PartDoubled();
        }
    }

    /// <summary>Whether the loop of a half-edge goes around its face and not around a hole, decided by its turns alone, so that
    /// it holds for slivers thinner than the rounding of their corners.</summary>
    public bool TurnsLeft(int start)
    {
        var sum = 0.0;
        var e = start;
        do
        {
            var next = edges[e].Next;
            var (a, b) = (Direction(in edges[e]), Direction(in edges[next]));
            var cross = Vec3.Cross(a, b);
            sum += Turn(e, next) * Math.Atan2(Math.Sqrt(Vec3.Dot(cross, cross)), Vec3.Dot(a, b));
            e = next;
        } while (e != start);

        return sum > 0;
    }

    private int Following(int e)
    {
        ref var edge = ref edges[e];
        var found = -1;
        var count = 0;
        for (var o = firstFrom[edge.To]; o >= 0; o = nextFrom[o])
        {
            if (edges[o].Flat == edge.Flat)
            {
                found = o;
                count++;
            }
        }

        return count switch
        {
            1 => found,
            0 => throw new InvalidOperationException("A face of the solid does not close."),
            _ => Nearest(e),
        };
    }

    // Of several ways on, the first one clockwise from the way back, so that the face's own corner lies between.
    private int Nearest(int e)
    {
        HasTouching = true;
        ref var edge = ref edges[e];
        var best = -1;
        for (var o = firstFrom[edge.To]; o >= 0; o = nextFrom[o])
        {
            if (edges[o].Flat == edge.Flat && (best < 0 || IsBefore(o, best, e)))
            {
                best = o;
            }
        }

        return best;
    }

    // Whether a comes before b, turning clockwise from the way back along e.
    private bool IsBefore(int a, int b, int e)
    {
        var (halfA, halfB) = (Half(a, e), Half(b, e));
        return halfA != halfB ? halfA < halfB : Turn(a, b) < 0;
    }

    // 0 for less than half a turn clockwise from the way back, 1 for straight on, 2 for more, 3 for the way back itself.
    private int Half(int way, int e) =>
        Turn(e, way) switch
        {
            > 0 => 0,
            < 0 => 2,
            _ => Vec3.Dot(Direction(in edges[e]), Direction(in edges[way])) > 0 ? 1 : 3,
        };

    // Sign of the turn from one way to another within their face, seen from outside. With n the face's normal and the ways
    // n x a and n x b, their cross product is n times the determinant of n, a and b.
    private int Turn(int first, int second)
    {
        var flat = edges[first].Flat;
        var (a, signA) = Across(first);
        var (b, signB) = Across(second);
        return a == b ? 0 : points.Determinant(flat / 2, a, b, out _) * signA * signB * (flat % 2 == 0 ? 1 : -1);
    }

    // Another plane through the edge, and whether the edge runs along (1) or against (-1) face normal x its normal.
    private (int Plane, int Sign) Across(int e)
    {
        ref var edge = ref edges[e];
        ref var line = ref lines.Lines[edge.Line];
        var plane = line.P == edge.Flat / 2 ? line.Q : line.P;
        return (plane, lines.Turn(in line, edge.Flat / 2, plane) * (edge.IsFalling ? -1 : 1));
    }

    private Vec3 Direction(in HalfEdge edge)
    {
        ref var line = ref lines.Lines[edge.Line];
        return new Vec3(line.Dx, line.Dy, line.Dz) * (edge.IsFalling ? -1 : 1);
    }

    private void FindCorners()
    {
        Corner.Resize(0, 0);
        Corner.Resize(edges.Count, -2);
        CornerPoint.Clear();
        CornerPosition.Clear();
        HasTwins = false;
        hasFan.Resize(0, false);
        hasFan.Resize(points.Count, false);
        for (var e = 0; e < edges.Count; e++)
        {
            if (Corner[e] != -2)
            {
                continue;
            }

            // Around the point from face to face; a point between just two faces is no corner.
            var faces = 0;
            for (var o = e; faces == 0 || o != e; o = edges[edges[o].Previous].Mate)
            {
                faces++;
            }

            HasTwins |= hasFan[edges[e].From];
            hasFan[edges[e].From] = true;
            var corner = faces == 2 ? -1 : AddCorner(edges[e].From, points.At(edges[e].From));
            var at = e;
            do
            {
                Corner[at] = corner;
                at = edges[edges[at].Previous].Mate;
            } while (at != e);
        }
    }

    private int AddCorner(int point, Vec3 position)
    {
        CornerPosition.Add(position);
        return CornerPoint.Add(point);
    }

    // Where the solid touches itself along an edge, two edges may run between the same two corners; one of them gets a corner
    // in its middle, so that each edge of the mesh still has two faces.
    private void PartDoubled()
    {
        Middle.Resize(edges.Count, -1);
        var seen = new HashSet<(int From, int To)>();
        for (var e = 0; e < edges.Count; e++)
        {
            if (Corner[e] < 0)
            {
                continue;
            }

            var last = e;
            while (Corner[edges[last].Next] < 0)
            {
                last = edges[last].Next;
            }

            if (seen.Add((Corner[e], Corner[edges[last].Next])))
            {
                continue;
            }

            // The other way along the same edge may be the one that was parted already.
            if (Middle[e] < 0 && Middle[last] < 0)
            {
                var (a, b) = (points.At(edges[e].From), points.At(edges[last].To));
                Middle[e] = AddCorner(-1, (a + b) * 0.5);
                Middle[edges[e].Mate] = Middle[e];
            }
        }
    }
}
