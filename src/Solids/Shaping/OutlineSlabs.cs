namespace Dryfit.Solids.Shaping;

/// <summary>
/// Parts an outline into convex pieces by seams across: from corner to corner along its first coordinate, each stretch between
/// a side below and a side above is a piece, and runs on over a corner that leaves it convex. Seams are parallel: however many
/// corners a hollow arc has, no two of them meet, where pieces without seams of this kind would all meet in one corner.
/// </summary>
internal sealed class OutlineSlabs
{
    private readonly List<Vec2> corners;
    private readonly double low;
    private readonly List<Edge> crossing = [];
    private List<Piece> open = [];

    private OutlineSlabs(List<Vec2> corners)
    {
        this.corners = corners;
        low = corners.Min(corner => corner.Y);
    }

    /// <summary>The pieces of a tidy outline, counter-clockwise each.</summary>
    public static List<List<PieceSide>> Pieces(List<Vec2> corners) => new OutlineSlabs(corners).Part();

    private List<List<PieceSide>> Part()
    {
        var pieces = new List<List<PieceSide>>();
        var cuts = corners.Select(corner => corner.X).Distinct().Order().ToList();
        for (var i = 0; i < cuts.Count; i++)
        {
            var next = i + 1 < cuts.Count ? Between(cuts[i], cuts[i + 1]) : [];
            var goesOn = new List<Piece>();
            foreach (var (bottom, top) in next)
            {
                var before = open.Find(piece => piece.TryGoOn(bottom, top, corners));
                goesOn.Add(before ?? new(bottom, top, cuts[i]));
            }

            foreach (var piece in open.Where(piece => !goesOn.Contains(piece)))
            {
                pieces.Add(Closed(piece, cuts[i]));
            }

            open = goesOn;
        }

        return pieces;
    }

    // The pairs of a lower and an upper edge between two neighbouring cuts, from below.
    private List<(Edge Bottom, Edge Top)> Between(double from, double to)
    {
        crossing.Clear();
        for (var i = 0; i < corners.Count; i++)
        {
            var j = i + 1 < corners.Count ? i + 1 : 0;
            var edge = corners[i].X < corners[j].X ? new Edge(i, j) : new(j, i);
            if (corners[edge.Left].X <= from && corners[edge.Right].X >= to)
            {
                crossing.Add(edge);
            }
        }

        crossing.Sort(Compare);
        var pairs = new List<(Edge, Edge)>();
        for (var i = 0; i + 1 < crossing.Count; i += 2)
        {
            pairs.Add((crossing[i], crossing[i + 1]));
        }

        return pairs;
    }

    // Which of two edges that both run past lies lower: the corner of one that lies within the other's stretch tells.
    private int Compare(Edge a, Edge b)
    {
        if (a == b)
        {
            return 0;
        }

        var left =
            corners[a.Left].X >= corners[b.Left].X
                ? Outline.Turn(corners[b.Left], corners[b.Right], corners[a.Left])
                : -Outline.Turn(corners[a.Left], corners[a.Right], corners[b.Left]);
        return left != 0 ? left
            : corners[a.Right].X <= corners[b.Right].X
                ? Outline.Turn(corners[b.Left], corners[b.Right], corners[a.Right])
            : -Outline.Turn(corners[a.Left], corners[a.Right], corners[b.Right]);
    }

    private List<PieceSide> Closed(Piece piece, double end)
    {
        var sides = new List<PieceSide>();
        var (bottoms, tops) = (piece.Bottoms, piece.Tops);
        foreach (var edge in bottoms)
        {
            Add(sides, edge.Left, edge.Right, piece.Start, end);
        }

        AddEnd(sides, bottoms[^1], tops[^1], end, isUp: true);
        for (var i = tops.Count - 1; i >= 0; i--)
        {
            Add(sides, tops[i].Right, tops[i].Left, piece.Start, end);
        }

        AddEnd(sides, bottoms[0], tops[0], piece.Start, isUp: false);
        return sides;
    }

    private void Add(List<PieceSide> sides, int a, int b, double start, double end)
    {
        var edge = corners[a].X < corners[b].X ? new Edge(a, b) : new(b, a);
        sides.Add(new(corners[a], corners[b], Stretch(a), Stretch(b), IsSeam: false));

        Vec2 Stretch(int corner) =>
            corners[corner].X < start ? At(edge, start)
            : corners[corner].X > end ? At(edge, end)
            : corners[corner];
    }

    // The end of a piece: none where below and above meet, else a seam, unless a side of the outline lies in it.
    private void AddEnd(List<PieceSide> sides, Edge bottom, Edge top, double x, bool isUp)
    {
        var (below, above) = (At(bottom, x), At(top, x));
        if (
            isUp
                ? bottom.Right == top.Right && corners[top.Right].X == x
                : bottom.Left == top.Left && corners[top.Left].X == x
        )
        {
            return;
        }

        var isSeam = true;
        for (var i = 0; i < corners.Count && isSeam; i++)
        {
            var (p, q) = (corners[i], corners[i + 1 < corners.Count ? i + 1 : 0]);
            isSeam = !(p.X == x && q.X == x && Math.Max(p.Y, q.Y) >= below.Y && Math.Min(p.Y, q.Y) <= above.Y);
        }

        // One line across has the same two points whichever piece ends in it.
        var (foot, head) = (new Vec2(x, low), new Vec2(x, low + 1));
        sides.Add(isUp ? new(foot, head, below, above, isSeam) : new(head, foot, above, below, isSeam));
    }

    private Vec2 At(Edge edge, double x)
    {
        var (a, b) = (corners[edge.Left], corners[edge.Right]);
        return x == a.X ? a
            : x == b.X ? b
            : new(x, a.Y + ((b.Y - a.Y) * ((x - a.X) / (b.X - a.X))));
    }

    /// <summary>A side of the outline by its corners, that with the smaller first coordinate first.</summary>
    private readonly record struct Edge(int Left, int Right);

    private sealed class Piece(Edge bottom, Edge top, double start)
    {
        public double Start => start;

        public List<Edge> Bottoms { get; } = [bottom];

        public List<Edge> Tops { get; } = [top];

        /// <summary>Takes in the next pair of edges where they are its own, or go on from its own and leave it convex.</summary>
        public bool TryGoOn(Edge bottom, Edge top, List<Vec2> corners)
        {
            var (below, above) = (Bottoms[^1], Tops[^1]);
            var isConvex =
                (
                    bottom == below
                    || (
                        bottom.Left == below.Right
                        && Outline.Turn(corners[below.Left], corners[below.Right], corners[bottom.Right]) > 0
                    )
                )
                && (
                    top == above
                    || (
                        top.Left == above.Right
                        && Outline.Turn(corners[above.Left], corners[above.Right], corners[top.Right]) < 0
                    )
                );
            if (isConvex && bottom != below)
            {
                Bottoms.Add(bottom);
            }

            if (isConvex && top != above)
            {
                Tops.Add(top);
            }

            return isConvex;
        }
    }
}
