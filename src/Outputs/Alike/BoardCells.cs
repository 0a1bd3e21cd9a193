using System.Text;
using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Outputs.Alike;

/// <summary>
/// What square cuts leave of a blank, as cells between the fewest planes that tell it: two sets of cuts that leave the
/// same give the same planes and the same cells, and so the same text.
/// </summary>
internal sealed class BoardCells
{
    private readonly Length[][] _planes;
    private readonly bool[] _gone;

    private BoardCells(Length[][] planes)
    {
        _planes = planes;
        _gone = new bool[Count(0) * Count(1) * Count(2)];
    }

    /// <summary>The planes and cells as text: equal text, equal shape.</summary>
    public string Written
    {
        get
        {
            var text = new StringBuilder();
            foreach (var planes in _planes)
                text.AppendJoin(' ', planes.Select(p => p.Millimetres.ToString())).Append('|');
            foreach (var gone in _gone)
                text.Append(gone ? '.' : '#');
            return text.ToString();
        }
    }

    public static BoardCells Of(Extent blank, IReadOnlyList<Extent> cuts)
    {
        var planes = new Length[3][];
        foreach (var axis in (Axis[])[Axis.X, Axis.Y, Axis.Z])
        {
            planes[(int)axis] =
            [
                .. cuts.SelectMany(cut => new[] { cut.Min[axis], cut.Max[axis] })
                    .Append(blank.Min[axis])
                    .Append(blank.Max[axis])
                    .Distinct()
                    .Order(),
            ];
        }

        var cells = new BoardCells(planes);
        foreach (var cut in cuts)
            cells.TakeAway(cut);
        return cells.WithoutNeedlessPlanes();
    }

    private void TakeAway(Extent cut)
    {
        var from = (Axis axis) => Array.BinarySearch(_planes[(int)axis], cut.Min[axis]);
        var to = (Axis axis) => Array.BinarySearch(_planes[(int)axis], cut.Max[axis]);
        for (var x = from(Axis.X); x < to(Axis.X); x++)
        {
            for (var y = from(Axis.Y); y < to(Axis.Y); y++)
                _gone.AsSpan(Index(x, y, from(Axis.Z)), to(Axis.Z) - from(Axis.Z)).Fill(true);
        }
    }

    /// <summary>A plane is needless where the slabs on its two sides are the same all over.</summary>
    private BoardCells WithoutNeedlessPlanes()
    {
        var kept = new int[3][];
        for (var axis = 0; axis < 3; axis++)
        {
            kept[axis] =
            [
                .. Enumerable.Range(0, Count(axis)).Where(slab => slab == 0 || !SlabsAreSame(axis, slab - 1, slab)),
            ];
        }

        var reduced = new BoardCells([
            .. Enumerable
                .Range(0, 3)
                .Select(a => (Length[])[.. kept[a].Select(slab => _planes[a][slab]), _planes[a][^1]]),
        ]);
        for (var x = 0; x < kept[0].Length; x++)
        {
            for (var y = 0; y < kept[1].Length; y++)
            {
                for (var z = 0; z < kept[2].Length; z++)
                    reduced._gone[reduced.Index(x, y, z)] = _gone[Index(kept[0][x], kept[1][y], kept[2][z])];
            }
        }

        return reduced;
    }

    private bool SlabsAreSame(int axis, int a, int b)
    {
        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        Span<int> at = stackalloc int[3];
        for (at[u] = 0; at[u] < Count(u); at[u]++)
        {
            for (at[v] = 0; at[v] < Count(v); at[v]++)
            {
                at[axis] = a;
                var before = _gone[Index(at[0], at[1], at[2])];
                at[axis] = b;
                if (before != _gone[Index(at[0], at[1], at[2])])
                    return false;
            }
        }

        return true;
    }

    private int Count(int axis) => _planes[axis].Length - 1;

    private int Index(int x, int y, int z) => (((x * Count(1)) + y) * Count(2)) + z;
}
