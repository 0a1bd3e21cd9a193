using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// Boxes halved again and again by their middles, so that those near a place are found without asking all: building
/// costs n log n, a question about log n and what it finds.
/// </summary>
internal sealed class BoxTree
{
    private const int LeafSize = 4;

    private readonly IReadOnlyList<Box> _boxes;
    private readonly int[] _order;
    private readonly List<Branch> _branches = [];

    public BoxTree(IReadOnlyList<Box> boxes)
    {
        _boxes = boxes;
        _order = [.. Enumerable.Range(0, boxes.Count)];
        if (boxes.Count > 0)
            Grow(0, boxes.Count);
    }

    /// <summary>The indices of all boxes that reach into or touch the one asked about, in rising order.</summary>
    public List<int> Touching(Box box)
    {
        var found = new List<int>();
        if (_branches.Count > 0)
            Collect(0, box, found);
        found.Sort();
        return found;
    }

    private int Grow(int from, int to)
    {
        var at = _branches.Count;
        var around = _boxes[_order[from]];
        for (var i = from + 1; i < to; i++)
            around = around.Around(_boxes[_order[i]]);
        _branches.Add(new(around, from, to, -1, -1));
        if (to - from <= LeafSize)
            return at;

        var size = around.Max - around.Min;
        var axis =
            size.X >= size.Y && size.X >= size.Z ? Vec3Axis.X
            : size.Y >= size.Z ? Vec3Axis.Y
            : Vec3Axis.Z;
        // The index breaks ties, so that the tree is the same every time.
        Array.Sort(
            _order,
            from,
            to - from,
            Comparer<int>.Create(
                (a, b) =>
                {
                    var order = Middle(a, axis).CompareTo(Middle(b, axis));
                    return order != 0 ? order : a.CompareTo(b);
                }
            )
        );
        var middle = (from + to) / 2;
        var low = Grow(from, middle);
        var high = Grow(middle, to);
        _branches[at] = _branches[at] with { Low = low, High = high };
        return at;
    }

    private void Collect(int at, Box box, List<int> found)
    {
        var branch = _branches[at];
        if (!branch.Around.Touches(box))
            return;
        if (branch.Low < 0)
        {
            for (var i = branch.From; i < branch.To; i++)
            {
                if (_boxes[_order[i]].Touches(box))
                    found.Add(_order[i]);
            }
            return;
        }
        Collect(branch.Low, box, found);
        Collect(branch.High, box, found);
    }

    private double Middle(int box, Vec3Axis axis) => _boxes[box].Min.On(axis) + _boxes[box].Max.On(axis);

    private readonly record struct Branch(Box Around, int From, int To, int Low, int High);
}
