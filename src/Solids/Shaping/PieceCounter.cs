using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>Counts the pieces of the solid: flats that share an edge are of one shell; a shell around material is a piece, one
/// around a void is not.</summary>
internal sealed class PieceCounter(
    PlaneTable planes,
    PointTable points,
    LineTable lines,
    Store<HalfEdge> edges,
    FaceFinder faces
)
{
    // A shell with more volume than this part of the scale's cube has the sign that its rounded volume says.
    private const double Doubt = 1e-9;

    private readonly Store<int> shell = new();

    /// <summary>How many pieces there are.</summary>
    /// <param name="volumes">For each flat the volume between it and some point; sums are written back.</param>
    public int Count(Store<double> volumes)
    {
        if (JoinFlats() <= 1)
        {
            return Math.Min(shell.Count, 1);
        }

        for (var i = shell.Count - 1; i > 0; i--)
        {
            var root = Root(i);
            if (root != i)
            {
                volumes[root] += volumes[i];
            }
        }

        var doubt = Doubt * planes.Scale * planes.Scale * planes.Scale;
        var pieces = 0;
        for (var i = 0; i < shell.Count; i++)
        {
            if (shell[i] == i && (Math.Abs(volumes[i]) > doubt ? volumes[i] > 0 : IsAroundMaterial(i)))
            {
                pieces++;
            }
        }

        return pieces;
    }

    // How many shells there are; every flat then knows the first of its own.
    private int JoinFlats()
    {
        shell.Clear();
        for (var i = 0; i < faces.Flats.Count; i++)
        {
            shell.Add(i);
        }

        var shells = shell.Count;
        for (var e = 0; e < edges.Count && shells > 1; e++)
        {
            var (a, b) = (Root(faces.FlatOfEdge[e]), Root(faces.FlatOfEdge[edges[e].Mate]));
            if (a != b)
            {
                shell[Math.Max(a, b)] = Math.Min(a, b);
                shells--;
            }
        }

        return shells;
    }

    private int Root(int i)
    {
        while (shell[i] != i)
        {
            shell[i] = shell[shell[i]];
            i = shell[i];
        }

        return i;
    }

    // At an outermost edge of a shell (one on the hull of its points) material lies within its faces or without. Exact, for
    // shells so thin that their volume says nothing.
    private bool IsAroundMaterial(int root)
    {
        var best = -1;
        for (var e = 0; e < edges.Count; e++)
        {
            if (Root(faces.FlatOfEdge[e]) == root && (best < 0 || IsFurtherOut(e, best) > 0))
            {
                best = e;
            }
        }

        for (var e = 0; e < edges.Count; e++)
        {
            if (Root(faces.FlatOfEdge[e]) == root && IsFurtherOut(e, best) == 0 && !IsConvex(e))
            {
                return false;
            }
        }

        return true;
    }

    // The one that starts at the first point along x, y and z; from there the one that goes up z, else the one furthest right
    // seen from above, of those above each other the lowest.
    private int IsFurtherOut(int a, int b)
    {
        ref var first = ref edges[a];
        ref var second = ref edges[b];
        var (from, fromB) = (points.Exactly(first.From), points.Exactly(second.From));
        for (var axis = 0; axis < 3 && first.From != second.From; axis++)
        {
            if (ExactPoint.Compare(from, fromB, axis) is var apart and not 0)
            {
                return -apart;
            }
        }

        var (to, toB) = (points.Exactly(first.To), points.Exactly(second.To));
        var (isUp, isUpB) = (IsUpright(from, to), IsUpright(from, toB));
        if (isUp || isUpB)
        {
            return isUp.CompareTo(isUpB);
        }

        for (var axis = 2; axis >= 0; axis--)
        {
            // Seen along z, then along y from behind, then along x.
            if (ExactPoint.Turn(from, to, toB, axis) is var turn and not 0)
            {
                return axis == 1 ? -turn : turn;
            }
        }

        return 0;
    }

    private static bool IsUpright(ExactPoint from, ExactPoint to) =>
        ExactPoint.Compare(from, to, 0) == 0 && ExactPoint.Compare(from, to, 1) == 0;

    // Whether material fills less than half a turn between the two faces of an edge.
    private bool IsConvex(int e)
    {
        ref var edge = ref edges[e];
        var (mine, other) = (edge.Flat, edges[edge.Mate].Flat);
        var turn = lines.Turn(in lines.Lines[edge.Line], mine / 2, other / 2);
        return turn * (mine % 2 == other % 2 ? 1 : -1) * (edge.IsFalling ? -1 : 1) > 0;
    }
}
