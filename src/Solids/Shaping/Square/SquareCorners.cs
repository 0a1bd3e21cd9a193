using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping.Square;

/// <summary>
/// Names the corners of a square board. Where planes of the grid cross, the eight cells around decide: a corner is where three
/// edges or more meet; and some sets of cells touch themselves there, which is left to the general way.
/// </summary>
internal sealed class SquareCorners(SquareGrid grid)
{
    private static readonly Kind[] Kinds = [.. Enumerable.Range(0, 256).Select(KindOf)];

    private int[] names = [];

    private enum Kind : byte
    {
        None,
        Corner,
        Touching,
    }

    public Store<Vec3> Positions { get; } = new();

    /// <summary>By the cell before each crossing along all axes: the corner there, or -1.</summary>
    public ReadOnlySpan<int> Names => names.AsSpan(0, grid.CellCount);

    /// <summary>False where the solid touches itself.</summary>
    public bool Find()
    {
        Positions.Clear();
        if (names.Length < grid.CellCount)
        {
            names = new int[2 * grid.CellCount];
        }

        names.AsSpan(0, grid.CellCount).Fill(-1);
        var xs = grid.Planes(0);
        var ys = grid.Planes(1);
        var zs = grid.Planes(2);
        var (stepY, stepZ) = (grid.Step(1), grid.Step(2));
        var cells = grid.Cells;
        for (var z = 0; z < zs.Length; z++)
        {
            for (var y = 0; y < ys.Length; y++)
            {
                // Four rows of cells side by side; what the first four cells were is carried along.
                var first = (z * stepZ) + (y * stepY);
                var a = cells.Slice(first, xs.Length + 1);
                var b = cells.Slice(first + stepY, xs.Length + 1);
                var c = cells.Slice(first + stepZ, xs.Length + 1);
                var d = cells.Slice(first + stepY + stepZ, xs.Length + 1);
                var around = 0;
                for (var x = 0; x < xs.Length; x++)
                {
                    around = (around >> 1) | (a[x + 1] << 1) | (b[x + 1] << 3) | (c[x + 1] << 5) | (d[x + 1] << 7);
                    switch (Kinds[around])
                    {
                        case Kind.Corner:
                            names[first + x] = Positions.Add(new(xs[x], ys[y], zs[z]));
                            break;
                        case Kind.Touching:
                            return false;
                        default:
                            break;
                    }

                    around &= 0b10101010;
                }
            }
        }

        return true;
    }

    // Bit x + 2 y + 4 z of the set is the cell on that side of the crossing along each axis.
    private static Kind KindOf(int set)
    {
        var edges = 0;
        for (var axis = 0; axis < 3; axis++)
        {
            var (u, v) = (1 << ((axis + 1) % 3), 1 << ((axis + 2) % 3));
            for (var side = 0; side < 2; side++)
            {
                // The four cells around the edge that leaves the crossing on this side.
                var at = side << axis;
                var (near, nextU, nextV, far) = (
                    Has(set, at),
                    Has(set, at + u),
                    Has(set, at + v),
                    Has(set, at + u + v)
                );
                if (near == far && nextU == nextV && near != nextU)
                {
                    return Kind.Touching;
                }

                edges += near == nextU && nextV == far || near == nextV && nextU == far ? 0 : 1;
            }

            if (HasFacesTouching(set, axis, isUp: true) || HasFacesTouching(set, axis, isUp: false))
            {
                return Kind.Touching;
            }
        }

        return !IsJoined(set) || !IsJoined(~set & 0xFF) ? Kind.Touching
            : edges > 2 ? Kind.Corner
            : Kind.None;
    }

    private static bool Has(int set, int cell) => (set >> cell & 1) != 0;

    // Whether two faces in one plane that look the same way meet in the crossing only.
    private static bool HasFacesTouching(int set, int axis, bool isUp)
    {
        var (up, u, v) = (1 << axis, 1 << ((axis + 1) % 3), 1 << ((axis + 2) % 3));
        var (near, nextU, nextV, far) = (IsFace(0), IsFace(u), IsFace(v), IsFace(u + v));
        return near == far && nextU == nextV && near != nextU;

        bool IsFace(int cell) => Has(set, cell) == isUp && Has(set, cell + up) != isUp;
    }

    // Whether the cells of a set all hang together by their sides.
    private static bool IsJoined(int set)
    {
        var joined = set & -set;
        for (var i = 0; i < 8; i++)
        {
            var wider = joined;
            wider |= (joined & 0b01010101) << 1 | (joined & 0b10101010) >> 1;
            wider |= (joined & 0b00110011) << 2 | (joined & 0b11001100) >> 2;
            wider |= (joined & 0b00001111) << 4 | (joined & 0b11110000) >> 4;
            joined = wider & set;
        }

        return joined == set;
    }
}
