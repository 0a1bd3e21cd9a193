namespace Dryfit.Outputs.FrontView;

/// <summary>Rectangles of the paper sorted into squares, so that neighbours are found without looking at all of them.</summary>
internal sealed class AreaIndex
{
    private const double SquareMm = 12;

    private readonly Dictionary<(int X, int Y), List<Area>> _squares = [];

    public void Add(Area area)
    {
        foreach (var square in Squares(area))
        {
            if (!_squares.TryGetValue(square, out var areas))
                _squares.Add(square, areas = []);
            areas.Add(area);
        }
    }

    /// <summary>True where some rectangle shares more than an edge with an area.</summary>
    public bool Touches(Area area)
    {
        foreach (var square in Squares(area))
        {
            if (_squares.TryGetValue(square, out var areas) && areas.Exists(other => other.Touches(area)))
                return true;
        }
        return false;
    }

    private static IEnumerable<(int X, int Y)> Squares(Area area)
    {
        for (var x = Square(area.Left); x <= Square(area.Right); x++)
        {
            for (var y = Square(area.Top); y <= Square(area.Bottom); y++)
                yield return (x, y);
        }
    }

    /// <summary>Sheets are under a metre: what is marked outside of them is put at their rim.</summary>
    private static int Square(double mm) => (int)Math.Clamp(mm / SquareMm, -10, 100);
}
