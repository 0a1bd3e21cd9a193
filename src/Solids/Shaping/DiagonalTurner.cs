using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Turns the diagonals of a triangulation until each is the better of the two in its quadrangle (Lawson's flips): of all
/// triangulations of the face, the one with the widest smallest angles.
/// </summary>
internal sealed class DiagonalTurner(FacePoints points)
{
    private int[] slots = [];
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

    // Sides that run opposite ways between the same corners are neighbours: found by a small table of their own.
    private void Join(Store<int> triangles)
    {
        doubtful.Clear();
        neighbour.Resize(triangles.Count, -1);
        neighbour.Span.Fill(-1);
        var size = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)triangles.Count * 2);
        if (slots.Length < size)
        {
            slots = new int[size];
        }

        Array.Clear(slots, 0, size);
        var corners = triangles.Span;
        for (var side = 0; side < corners.Length; side++)
        {
            var (from, to) = (corners[side], corners[After(side)]);
            var (low, high) = (Math.Min(from, to), Math.Max(from, to));
            var slot =
                (int)(((((uint)low * 0x9E3779B1u) ^ ((uint)high * 0x85EBCA77u)) * 0xC2B2AE3Du) >> 7) & (size - 1);
            while (slots[slot] != 0)
            {
                var other = slots[slot] - 1;
                if (neighbour[other] < 0 && corners[other] == to && corners[After(other)] == from)
                {
                    neighbour[side] = other;
                    neighbour[other] = side;
                    doubtful.Add(side);
                    break;
                }

                slot = (slot + 1) & (size - 1);
            }

            if (neighbour[side] < 0)
            {
                slots[slot] = side + 1;
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

    // Turning seldom helps, so that this is asked first. Only a convex quadrangle has another diagonal.
    private bool IsBetterTurned(int a, int b, int c, int d) =>
        points.LookWidelyAt(a, b, c, d) && points.Turn(d, b, c) > 0 && points.Turn(c, a, d) > 0;
}
