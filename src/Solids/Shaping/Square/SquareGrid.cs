using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping.Square;

/// <summary>
/// A board with square cuts only, on the grid of their planes: every cell between neighbouring planes is filled or empty, so
/// that nothing has to be asked of points and planes. Around the board lies one layer of empty cells.
/// </summary>
internal sealed class SquareGrid
{
    // Past this the general way, which looks only where cuts meet, is the better one.
    private const int MostCells = 1 << 12;

    private readonly Store<double>[] planes = [new(), new(), new()];
    private readonly Store<SquareCut> cuts = new();
    private readonly Store<int> open = new();
    private byte[] cells = [];
    private byte[] seen = [];

    /// <summary>1 for each filled cell; the last index of the layer around the board is <see cref="CellCount"/> - 1.</summary>
    public ReadOnlySpan<byte> Cells => cells.AsSpan(0, CellCount);

    public int CellCount { get; private set; }

    /// <summary>The cuts that take something, each as the range of cells it takes.</summary>
    public ReadOnlySpan<SquareCut> Cuts => cuts.Span;

    /// <summary>The planes across an axis, upwards: the blank's faces are the first and the last one. Cell i lies between planes
    /// i - 1 and i.</summary>
    public ReadOnlySpan<double> Planes(int axis) => planes[axis].Span;

    /// <summary>How far apart in <see cref="Cells"/> neighbours along an axis are.</summary>
    public int Step(int axis) =>
        axis switch
        {
            0 => 1,
            1 => planes[0].Count + 1,
            _ => (planes[0].Count + 1) * (planes[1].Count + 1),
        };

    /// <summary>False where a cut is not square, or where there are too many planes for a grid.</summary>
    public bool Lay(Vec3 size, IReadOnlyList<Cut> all, List<int> some)
    {
        cuts.Clear();
        for (var axis = 0; axis < 3; axis++)
        {
            planes[axis].Clear();
            planes[axis].Add(0);
            planes[axis].Add(size.At(axis));
        }

        foreach (var i in some)
        {
            if (all[i] is not BoxCut box)
            {
                return false;
            }

            AddPlanes(box, size);
        }

        CellCount = Step(2) * (planes[2].Count + 1);
        if (CellCount > MostCells)
        {
            return false;
        }

        Fill();
        foreach (var i in some)
        {
            Take((BoxCut)all[i], i, size);
        }

        return true;
    }

    /// <summary>What the filled cells hold, and their first moments about the origin.</summary>
    public double Volume(out Vec3 moments)
    {
        var xs = Planes(0);
        var ys = Planes(1);
        var zs = Planes(2);
        var volume = 0.0;
        moments = default;
        for (var z = 1; z < zs.Length; z++)
        {
            for (var y = 1; y < ys.Length; y++)
            {
                // A row of cells: its length, and that times its middle.
                var row = cells.AsSpan((z * Step(2)) + (y * Step(1)), xs.Length);
                var (length, moment) = (0.0, 0.0);
                for (var x = 1; x < xs.Length; x++)
                {
                    if (row[x] != 0)
                    {
                        length += xs[x] - xs[x - 1];
                        moment += (xs[x] - xs[x - 1]) * (xs[x] + xs[x - 1]) / 2;
                    }
                }

                var section = (ys[y] - ys[y - 1]) * (zs[z] - zs[z - 1]);
                volume += length * section;
                moments +=
                    new Vec3(moment, length * (ys[y] + ys[y - 1]) / 2, length * (zs[z] + zs[z - 1]) / 2) * section;
            }
        }

        return volume;
    }

    /// <summary>How many pieces the filled cells make.</summary>
    public int CountPieces()
    {
        if (seen.Length < CellCount)
        {
            seen = new byte[2 * CellCount];
        }

        cells.AsSpan(0, CellCount).CopyTo(seen);
        var pieces = 0;
        for (var start = seen.AsSpan(0, CellCount).IndexOf((byte)1); start >= 0; )
        {
            pieces++;
            Empty(start);
            var further = seen.AsSpan(start, CellCount - start).IndexOf((byte)1);
            start = further < 0 ? -1 : start + further;
        }

        return pieces;
    }

    private void AddPlanes(BoxCut box, Vec3 size)
    {
        if (!Reaches(box, size))
        {
            return;
        }

        for (var axis = 0; axis < 3; axis++)
        {
            AddPlane(axis, box.Min.At(axis), size.At(axis));
            AddPlane(axis, box.Max.At(axis), size.At(axis));
        }
    }

    private static bool Reaches(BoxCut box, Vec3 size)
    {
        for (var axis = 0; axis < 3; axis++)
        {
            if (!(Math.Max(box.Min.At(axis), 0) < Math.Min(box.Max.At(axis), size.At(axis))))
            {
                return false;
            }
        }

        return true;
    }

    // Few: by insertion.
    private void AddPlane(int axis, double value, double end)
    {
        if (!(value > 0 && value < end))
        {
            return;
        }

        var row = planes[axis];
        var at = row.Count - 1;
        while (row[at - 1] > value)
        {
            at--;
        }

        if (row[at - 1] != value)
        {
            row.Add(end);
            row.Span[at..^1].CopyTo(row.Span[(at + 1)..]);
            row[at] = value;
        }
    }

    private void Fill()
    {
        if (cells.Length < CellCount)
        {
            cells = new byte[2 * CellCount];
        }

        Array.Clear(cells, 0, CellCount);
        for (var z = 1; z < planes[2].Count; z++)
        {
            for (var y = 1; y < planes[1].Count; y++)
            {
                cells.AsSpan((z * Step(2)) + (y * Step(1)) + 1, planes[0].Count - 1).Fill(1);
            }
        }
    }

    private void Take(BoxCut box, int index, Vec3 size)
    {
        if (!Reaches(box, size))
        {
            return;
        }

        var cut = new SquareCut(
            index,
            FirstPast(0, box.Min.X),
            FirstPast(1, box.Min.Y),
            FirstPast(2, box.Min.Z),
            FirstPast(0, box.Max.X),
            FirstPast(1, box.Max.Y),
            FirstPast(2, box.Max.Z)
        );
        cuts.Add(cut);
        for (var z = cut.FromZ; z < cut.ToZ; z++)
        {
            for (var y = cut.FromY; y < cut.ToY; y++)
            {
                cells.AsSpan((z * Step(2)) + (y * Step(1)) + cut.FromX, cut.ToX - cut.FromX).Clear();
            }
        }
    }

    // The first cell past a plane; a place outside the blank counts as the face of the blank there.
    private int FirstPast(int axis, double value)
    {
        var row = planes[axis].Span;
        var i = 0;
        while (i + 1 < row.Length && row[i] < value)
        {
            i++;
        }

        return i + 1;
    }

    private void Empty(int start)
    {
        open.Clear();
        open.Add(start);
        seen[start] = 0;
        ReadOnlySpan<int> ways = [1, -1, Step(1), -Step(1), Step(2), -Step(2)];
        while (open.Count > 0)
        {
            var cell = open[open.Count - 1];
            open.CutBack(open.Count - 1);
            foreach (var way in ways)
            {
                if (seen[cell + way] != 0)
                {
                    seen[cell + way] = 0;
                    open.Add(cell + way);
                }
            }
        }
    }
}

/// <summary>The cells that a square cut takes: from the first up to, but without, the last, along each axis.</summary>
internal readonly record struct SquareCut(int Cut, int FromX, int FromY, int FromZ, int ToX, int ToY, int ToZ)
{
    public int From(int axis) =>
        axis switch
        {
            0 => FromX,
            1 => FromY,
            _ => FromZ,
        };

    public int To(int axis) =>
        axis switch
        {
            0 => ToX,
            1 => ToY,
            _ => ToZ,
        };
}
