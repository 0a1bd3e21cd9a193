using Dryfit.Solids.Shaping;

namespace Dryfit.Solids.Measuring;

/// <summary>Boxes that share no room, and what they are together.</summary>
internal struct CellList
{
    private const int Most = 64;
    private List<Box>? boxes;

    public readonly int Count => boxes?.Count ?? 0;

    public readonly double Volume
    {
        get
        {
            var volume = 0.0;
            foreach (var box in boxes ?? [])
            {
                var size = box.Max - box.Min;
                volume += size.X * size.Y * size.Z;
            }

            return volume;
        }
    }

    /// <summary>The box around all of them; there is at least one.</summary>
    public readonly Box Bounds
    {
        get
        {
            var bounds = boxes![0];
            foreach (var box in boxes)
            {
                bounds = Around(bounds, box);
            }

            return bounds;
        }
    }

    /// <summary>Adds one; false where there are too many to be worth it.</summary>
    public bool TryAdd(Box box)
    {
        boxes ??= [];
        boxes.Add(box);
        return boxes.Count <= Most;
    }

    /// <summary>How long the longest straight line along an axis (0, 1, 2) is that never leaves them: cells that share a part
    /// of a face carry each other on.</summary>
    public readonly double LongestAlong(int axis)
    {
        if (boxes is not { Count: > 0 })
        {
            return 0;
        }

        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        var (rows, columns) = (Steps(u), Steps(v));
        var longest = 0.0;
        var run = new List<(double From, double To)>();
        for (var i = 0; i + 1 < rows.Count; i++)
        {
            for (var j = 0; j + 1 < columns.Count; j++)
            {
                run.Clear();
                foreach (var box in boxes)
                {
                    if (
                        box.Min.At(u) <= rows[i]
                        && box.Max.At(u) > rows[i]
                        && box.Min.At(v) <= columns[j]
                        && box.Max.At(v) > columns[j]
                    )
                    {
                        run.Add((box.Min.At(axis), box.Max.At(axis)));
                    }
                }

                longest = Math.Max(longest, LongestRun(run));
            }
        }

        return longest;
    }

    private readonly List<double> Steps(int axis) =>
        [.. boxes!.Select(box => box.Min.At(axis)).Concat(boxes!.Select(box => box.Max.At(axis))).Distinct().Order()];

    private static double LongestRun(List<(double From, double To)> run)
    {
        run.Sort();
        var (longest, from, to) = (0.0, double.NaN, double.NaN);
        foreach (var stretch in run)
        {
            from = stretch.From == to ? from : stretch.From;
            to = stretch.To;
            longest = Math.Max(longest, to - from);
        }

        return longest;
    }

    private static Box Around(Box a, Box b) => new(Vec3Order.Least(a.Min, b.Min), Vec3Order.Most(a.Max, b.Max));
}
