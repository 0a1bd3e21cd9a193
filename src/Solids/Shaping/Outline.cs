using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>Outlines of prisms: tidied, turned counter-clockwise, and parted into convex pieces.</summary>
internal static class Outline
{
    // A hollow arc seen from one corner gives a fan of pieces; their seams would all meet in one line.
    private const int MostPiecesAtOneCorner = 6;

    /// <summary>Drops repeated and needless corners and turns the outline counter-clockwise. Empty where nothing is left.</summary>
    public static List<Vec2> Tidy(IReadOnlyList<Vec2> outline)
    {
        var corners = new List<Vec2>(outline.Count);
        foreach (var corner in outline)
        {
            corners.Add(corner);
        }

        for (var i = 0; i < corners.Count && corners.Count >= 3; )
        {
            var before = corners[(i + corners.Count - 1) % corners.Count];
            var after = corners[(i + 1) % corners.Count];
            if (Turn(before, corners[i], after) == 0)
            {
                corners.RemoveAt(i);
                i = Math.Max(0, i - 2);
            }
            else
            {
                i++;
            }
        }

        if (corners.Count < 3)
        {
            return [];
        }

        if (TurnsRight(corners))
        {
            corners.Reverse();
        }

        return corners;
    }

    /// <exception cref="ArgumentException">Two sides of the outline cross or touch.</exception>
    public static void RefuseCrossing(List<Vec2> corners)
    {
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            for (var j = i + 2; j < corners.Count; j++)
            {
                if (i == 0 && j == corners.Count - 1)
                {
                    continue;
                }

                var (c, d) = (corners[j], corners[(j + 1) % corners.Count]);
                if (
                    Math.Max(a.X, b.X) >= Math.Min(c.X, d.X)
                    && Math.Max(c.X, d.X) >= Math.Min(a.X, b.X)
                    && Math.Max(a.Y, b.Y) >= Math.Min(c.Y, d.Y)
                    && Math.Max(c.Y, d.Y) >= Math.Min(a.Y, b.Y)
                    && Turn(a, b, c) * Turn(a, b, d) <= 0
                    && Turn(c, d, a) * Turn(c, d, b) <= 0
                )
                {
                    throw new ArgumentException("The outline of a prism crosses or touches itself.", nameof(corners));
                }
            }
        }
    }

    /// <summary>Parts a tidy outline into convex pieces, each counter-clockwise.</summary>
    public static List<List<PieceSide>> Pieces(List<Vec2> corners)
    {
        var all = new List<int>(corners.Count);
        var convex = true;
        for (var i = 0; i < corners.Count; i++)
        {
            all.Add(i);
            convex &=
                Turn(corners[(i + corners.Count - 1) % corners.Count], corners[i], corners[(i + 1) % corners.Count])
                > 0;
        }

        if (convex)
        {
            return [Sides(corners, all)];
        }

        var pieces = Triangles(corners, all);
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var j = i + 1; j < pieces.Count; j++)
            {
                if (Joined(corners, pieces[i], pieces[j]) is { } joined)
                {
                    pieces[i] = joined;
                    pieces.RemoveAt(j);
                    j = i;
                }
            }
        }

        return MostAtOneCorner(corners.Count, pieces) > MostPiecesAtOneCorner
            ? OutlineSlabs.Pieces(corners)
            : pieces.ConvertAll(piece => Sides(corners, piece));
    }

    public static int Turn(Vec2 a, Vec2 b, Vec2 c) => Orientation.Turn(a.X, a.Y, b.X, b.Y, c.X, c.Y);

    // The lowest of the leftmost corners is a convex one: the way it turns is the way the outline turns.
    private static bool TurnsRight(List<Vec2> corners)
    {
        var least = 0;
        for (var i = 1; i < corners.Count; i++)
        {
            if (
                corners[i].X < corners[least].X
                || (corners[i].X == corners[least].X && corners[i].Y < corners[least].Y)
            )
            {
                least = i;
            }
        }

        var count = corners.Count;
        return Turn(corners[(least + count - 1) % count], corners[least], corners[(least + 1) % count]) < 0;
    }

    private static List<PieceSide> Sides(List<Vec2> corners, List<int> piece)
    {
        var sides = new List<PieceSide>(piece.Count);
        for (var i = 0; i < piece.Count; i++)
        {
            var (from, to) = (piece[i], piece[(i + 1) % piece.Count]);
            var (a, b) = (corners[from], corners[to]);
            sides.Add(new(a, b, a, b, IsSeam: (from + 1) % corners.Count != to));
        }

        return sides;
    }

    private static int MostAtOneCorner(int count, List<List<int>> pieces)
    {
        Span<int> at = count <= 256 ? stackalloc int[count] : new int[count];
        at.Clear();
        var most = 0;
        foreach (var piece in pieces)
        {
            foreach (var corner in piece)
            {
                most = Math.Max(most, ++at[corner]);
            }
        }

        return most;
    }

    private static List<List<int>> Triangles(List<Vec2> corners, List<int> rest)
    {
        var triangles = new List<List<int>>();
        while (rest.Count > 3)
        {
            var ear = FindEar(corners, rest);
            var before = rest[(ear + rest.Count - 1) % rest.Count];
            var after = rest[(ear + 1) % rest.Count];
            if (Turn(corners[before], corners[rest[ear]], corners[after]) != 0)
            {
                triangles.Add([before, rest[ear], after]);
            }

            rest.RemoveAt(ear);
        }

        triangles.Add(rest);
        return triangles;
    }

    private static int FindEar(List<Vec2> corners, List<int> rest)
    {
        for (var i = 0; i < rest.Count; i++)
        {
            var (a, b, c) = (rest[(i + rest.Count - 1) % rest.Count], rest[i], rest[(i + 1) % rest.Count]);
            if (Turn(corners[a], corners[b], corners[c]) <= 0)
            {
                continue;
            }

            var isFree = true;
            foreach (var other in rest)
            {
                isFree &=
                    other == a
                    || other == b
                    || other == c
                    || Turn(corners[a], corners[b], corners[other]) < 0
                    || Turn(corners[b], corners[c], corners[other]) < 0
                    || Turn(corners[c], corners[a], corners[other]) < 0;
            }

            if (isFree)
            {
                return i;
            }
        }

        throw new ArgumentException("The outline of a prism crosses or touches itself.", nameof(corners));
    }

    // Two convex pieces with a common side make one where the result is convex at both ends of that side.
    private static List<int>? Joined(List<Vec2> corners, List<int> a, List<int> b)
    {
        for (var i = 0; i < a.Count; i++)
        {
            var (from, to) = (a[i], a[(i + 1) % a.Count]);
            var j = b.IndexOf(to);
            if (j < 0 || b[(j + 1) % b.Count] != from)
            {
                continue;
            }

            var joined = new List<int>(a.Count + b.Count - 2);
            for (var k = 1; k <= a.Count; k++)
            {
                joined.Add(a[(i + k) % a.Count]);
            }

            for (var k = 2; k < b.Count; k++)
            {
                joined.Add(b[(j + k) % b.Count]);
            }

            for (var k = 0; k < joined.Count; k++)
            {
                var before = joined[(k + joined.Count - 1) % joined.Count];
                if (Turn(corners[before], corners[joined[k]], corners[joined[(k + 1) % joined.Count]]) <= 0)
                {
                    return null;
                }
            }

            return joined;
        }

        return null;
    }
}
