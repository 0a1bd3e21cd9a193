using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Turns the diagonals of a triangulation until each is the better of the two in its quadrangle (Lawson's flips): of all
/// triangulations of the face, the one with the widest smallest angles.
/// </summary>
internal sealed class DiagonalTurner(FacePoints points)
{
    private readonly Dictionary<long, int> sides = [];
    private readonly Store<int> neighbour = new();
    private readonly Store<int> doubtful = new();

    public void Run(Store<int> triangles)
    {
        if (triangles.Count <= 3)
        {
            return;
        }

        Join(triangles);
        var budget = triangles.Count * 16;
        while (doubtful.Count > 0 && budget-- > 0)
        {
            var side = doubtful[doubtful.Count - 1];
            doubtful.CutBack(doubtful.Count - 1);
            Check(side, triangles);
        }
    }

    // Side i of the row runs from its corner to the next corner of the same triangle.
    private static int After(int side) => side % 3 == 2 ? side - 2 : side + 1;

    private static int Before(int side) => side % 3 == 0 ? side + 2 : side - 1;

    private void Join(Store<int> triangles)
    {
        sides.Clear();
        doubtful.Clear();
        neighbour.Resize(0, 0);
        neighbour.Resize(triangles.Count, -1);
        for (var side = 0; side < triangles.Count; side++)
        {
            long from = triangles[side];
            long to = triangles[After(side)];
            if (sides.Remove((to << 32) | from, out var other))
            {
                neighbour[side] = other;
                neighbour[other] = side;
                doubtful.Add(side);
            }
            else
            {
                sides[(from << 32) | to] = side;
            }
        }
    }

    private void Check(int side, Store<int> triangles)
    {
        var other = neighbour[side];
        if (other < 0)
        {
            return;
        }

        // a-b is the diagonal, c and d the corners on its left and right.
        var (a, b, c, d) = (triangles[side], triangles[After(side)], triangles[Before(side)], triangles[Before(other)]);
        if (!IsBetterTurned(a, b, c, d))
        {
            return;
        }

        var (bc, ca) = (After(side), Before(side));
        var (ad, db) = (After(other), Before(other));
        var (outerBc, outerCa, outerAd, outerDb) = (neighbour[bc], neighbour[ca], neighbour[ad], neighbour[db]);

        // Triangle one becomes d, b, c and triangle two c, a, d; the diagonal is now d-c.
        triangles[side] = d;
        triangles[bc] = b;
        triangles[ca] = c;
        triangles[other] = c;
        triangles[ad] = a;
        triangles[db] = d;
        Set(side, outerDb);
        Set(bc, outerBc);
        Set(other, outerCa);
        Set(ad, outerAd);
        Set(ca, db);
        doubtful.Add(side);
        doubtful.Add(bc);
        doubtful.Add(other);
        doubtful.Add(ad);
    }

    private void Set(int side, int other)
    {
        neighbour[side] = other;
        if (other >= 0)
        {
            neighbour[other] = side;
        }
    }

    private bool IsBetterTurned(int a, int b, int c, int d)
    {
        // Only a convex quadrangle has another diagonal.
        if (points.Turn(d, b, c) <= 0 || points.Turn(c, a, d) <= 0)
        {
            return false;
        }

        // The angles at c and d together are more than half a turn.
        var (cax, cay, cbx, cby) = (
            points.X(a) - points.X(c),
            points.Y(a) - points.Y(c),
            points.X(b) - points.X(c),
            points.Y(b) - points.Y(c)
        );
        var (dax, day, dbx, dby) = (
            points.X(a) - points.X(d),
            points.Y(a) - points.Y(d),
            points.X(b) - points.X(d),
            points.Y(b) - points.Y(d)
        );
        var sinC = (cax * cby) - (cay * cbx);
        var cosC = (cax * cbx) + (cay * cby);
        var sinD = (dbx * day) - (dby * dax);
        var cosD = (dax * dbx) + (day * dby);
        var sum = (sinC * cosD) + (cosC * sinD);
        return sum < -1e-12 * (Math.Abs(sinC * cosD) + Math.Abs(cosC * sinD));
    }
}
