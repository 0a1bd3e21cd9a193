using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping.Square;

/// <summary>A flat of a square board: where it lies, its maker, and its run of loops, the outer one first.</summary>
internal struct SquareFlat
{
    public int Axis;

    /// <summary>Whether it looks up the axis.</summary>
    public bool IsUp;
    public int Cut;
    public int FirstLoop;
    public int LoopCount;
}

/// <summary>
/// Finds the flats of a square board: sides between a filled and an empty cell in one plane of the grid that hang together. Their
/// outlines follow the sides of cells; as nothing touches itself, there is one way on from everywhere.
/// </summary>
internal sealed class SquareFaces(SquareGrid grid, SquareCorners corners) : IFlats
{
    private readonly Store<int> members = new();
    private int[] labels = [];
    private int[] ways = [];

    public Store<SquareFlat> Flats { get; } = new();

    /// <summary>Where each loop starts among the corners; one more for the end of the last.</summary>
    public Store<int> LoopStarts { get; } = new();

    /// <summary>Loops are counter-clockwise around material seen from outside.</summary>
    public Store<int> LoopCorners { get; } = new();

    public ReadOnlySpan<int> Loop(int loop) => LoopCorners.Span[LoopStarts[loop]..LoopStarts[loop + 1]];

    public void Find()
    {
        Flats.Clear();
        LoopStarts.Clear();
        LoopCorners.Clear();
        LoopStarts.Add(0);
        if (ways.Length < grid.CellCount)
        {
            ways = new int[2 * grid.CellCount];
            labels = new int[6 * grid.CellCount];
        }

        Array.Clear(labels, 0, 3 * grid.CellCount);
        Array.Clear(ways, 0, grid.CellCount);
        for (var axis = 0; axis < 3; axis++)
        {
            var at = new Across(grid, axis);
            for (var plane = 0; plane < at.PlaneCount; plane++)
            {
                FindIn(in at, plane);
            }
        }
    }

    /// <inheritdoc/>
    public int FlatAt(int axis, bool isUp, Vec3 point)
    {
        var at = new Across(grid, axis);
        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        var side =
            (isUp ? at.PlaneCount - 1 : 0) * at.Step
            + (CellOf(u, point.At(u)) * at.StepU)
            + (CellOf(v, point.At(v)) * at.StepV);
        return labels[at.FirstLabel + side] - 1;
    }

    private int CellOf(int axis, double value)
    {
        var planes = grid.Planes(axis);
        var cell = 1;
        while (cell < planes.Length - 1 && planes[cell] < value)
        {
            cell++;
        }

        return cell;
    }

    // A side of a cell has the number of the cell under it, and so has the crossing at the cell's upper end along all axes.
    private void FindIn(in Across at, int plane)
    {
        var cells = grid.Cells;
        var mine = labels.AsSpan(at.FirstLabel, grid.CellCount);
        for (var v = 1; v < at.CountV; v++)
        {
            var side = (plane * at.Step) + (v * at.StepV);
            for (var u = 1; u < at.CountU; u++)
            {
                side += at.StepU;
                if (cells[side] != cells[side + at.Step] && mine[side] == 0)
                {
                    Gather(in at, side, plane, mine);
                }
            }
        }
    }

    private void Gather(in Across at, int start, int plane, Span<int> mine)
    {
        var cells = grid.Cells;
        var under = cells[start];
        var label = Flats.Count + 1;
        members.Clear();
        members.Add(start);
        mine[start] = label;
        ReadOnlySpan<int> neighbours = [at.StepU, -at.StepU, at.StepV, -at.StepV];
        for (var i = 0; i < members.Count; i++)
        {
            foreach (var step in neighbours)
            {
                var other = members[i] + step;
                if (cells[other] == under && cells[other + at.Step] != under && mine[other] == 0)
                {
                    mine[other] = label;
                    members.Add(other);
                }
            }
        }

        var firstLoop = LoopStarts.Count - 1;
        MarkWays(in at, mine, label, isUp: under != 0);

        // The first side found has the outline's lowest corner; a hole's lowest is at the upper end of some side.
        Trace(start - at.StepU - at.StepV);
        foreach (var side in members.Span)
        {
            if (ways[side] != 0)
            {
                Trace(side);
            }
        }

        Flats.Add(
            new()
            {
                Axis = at.Axis,
                IsUp = under != 0,
                Cut = MakerOf(in at, plane, isUp: under != 0),
                FirstLoop = firstLoop,
                LoopCount = LoopStarts.Count - 1 - firstLoop,
            }
        );
    }

    // The way on from each crossing on an outline, as a step.
    private void MarkWays(in Across at, ReadOnlySpan<int> mine, int label, bool isUp)
    {
        var (u, v) = (at.StepU, at.StepV);
        foreach (var side in members.Span)
        {
            if (mine[side - v] != label)
            {
                ways[isUp ? side - u - v : side - v] = isUp ? u : -u;
            }

            if (mine[side + u] != label)
            {
                ways[isUp ? side - v : side] = isUp ? v : -v;
            }

            if (mine[side + v] != label)
            {
                ways[isUp ? side : side - u] = isUp ? -u : u;
            }

            if (mine[side - u] != label)
            {
                ways[isUp ? side - u : side - u - v] = isUp ? -v : v;
            }
        }
    }

    private void Trace(int start)
    {
        var names = corners.Names;
        var crossing = start;
        do
        {
            if (names[crossing] >= 0)
            {
                LoopCorners.Add(names[crossing]);
            }

            var way = ways[crossing];
            ways[crossing] = 0;
            crossing += way;
        } while (crossing != start);

        LoopStarts.Add(LoopCorners.Count);
    }

    // The blank, or the first of the cuts that begin or end here and reach to the outline.
    private int MakerOf(in Across at, int plane, bool isUp)
    {
        if (plane == 0 || plane == at.PlaneCount - 1)
        {
            return -1;
        }

        var maker = int.MaxValue;
        foreach (ref readonly var cut in grid.Cuts)
        {
            if (
                cut.Cut < maker
                && (isUp ? cut.From(at.Axis) : cut.To(at.Axis)) == plane + 1
                && TakesAtOutline(in at, in cut)
            )
            {
                maker = cut.Cut;
            }
        }

        return maker;
    }

    private bool TakesAtOutline(in Across at, in SquareCut cut)
    {
        var mine = labels.AsSpan(at.FirstLabel, grid.CellCount);
        var label = mine[members[0]];
        foreach (var side in members.Span)
        {
            var (u, v) = (side / at.StepU % (at.CountU + 1), side / at.StepV % (at.CountV + 1));
            if (
                cut.From((at.Axis + 1) % 3) <= u
                && u < cut.To((at.Axis + 1) % 3)
                && cut.From((at.Axis + 2) % 3) <= v
                && v < cut.To((at.Axis + 2) % 3)
                && (
                    mine[side - at.StepU] != label
                    || mine[side + at.StepU] != label
                    || mine[side - at.StepV] != label
                    || mine[side + at.StepV] != label
                )
            )
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>How to walk the planes across an axis: U and V are the next two axes in turn.</summary>
    private readonly struct Across(SquareGrid grid, int axis)
    {
        public readonly int Axis = axis;
        public readonly int Step = grid.Step(axis);
        public readonly int StepU = grid.Step((axis + 1) % 3);
        public readonly int StepV = grid.Step((axis + 2) % 3);
        public readonly int PlaneCount = grid.Planes(axis).Length;
        public readonly int CountU = grid.Planes((axis + 1) % 3).Length;
        public readonly int CountV = grid.Planes((axis + 2) % 3).Length;
        public readonly int FirstLabel = axis * grid.CellCount;
    }
}
