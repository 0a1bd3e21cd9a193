using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Joins half-edges into the loops around faces, gives every corner of the solid its own vertex (one for each fan of faces, so
/// that a point where the solid touches itself is there twice), and drops points in the middle of a straight edge.
/// </summary>
internal sealed class LoopFinder(PlaneTable planes, PointTable points, LineTable lines, Store<HalfEdge> edges)
{
    private readonly Store<int> firstFrom = new();
    private readonly Store<int> nextFrom = new();

    /// <summary>For each half-edge the corner it starts at, -1 where it only goes straight on.</summary>
    public Store<int> Corner { get; } = new();

    /// <summary>The point of each corner.</summary>
    public Store<int> CornerPoint { get; } = new();

    public void Find()
    {
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
        ref var edge = ref edges[e];
        ref var plane = ref planes[edge.Flat / 2];
        var normal = new Vec3(plane.Nx, plane.Ny, plane.Nz) * (edge.Flat % 2 == 0 ? 1 : -1);
        var back = Direction(in edge) * -1;
        var best = -1;
        var least = double.PositiveInfinity;
        for (var o = firstFrom[edge.To]; o >= 0; o = nextFrom[o])
        {
            if (edges[o].Flat != edge.Flat)
            {
                continue;
            }

            var way = Direction(in edges[o]);
            var clockwise = -Math.Atan2(Vec3.Dot(normal, Vec3.Cross(back, way)), Vec3.Dot(back, way));
            if (clockwise < 1e-14)
            {
                clockwise += 2 * Math.PI;
            }

            if (clockwise < least)
            {
                (best, least) = (o, clockwise);
            }
        }

        return best;
    }

    private Vec3 Direction(in HalfEdge edge)
    {
        ref var line = ref lines.Lines[edge.Line];
        var direction = new Vec3(line.Dx, line.Dy, line.Dz);
        return Vec3.Dot(points.At(edge.To) - points.At(edge.From), direction) > 0 ? direction : direction * -1;
    }

    private void FindCorners()
    {
        Corner.Resize(0, 0);
        Corner.Resize(edges.Count, -2);
        CornerPoint.Clear();
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

            var corner = faces == 2 ? -1 : CornerPoint.Add(edges[e].From);
            var at = e;
            do
            {
                Corner[at] = corner;
                at = edges[edges[at].Previous].Mate;
            } while (at != e);
        }
    }
}
