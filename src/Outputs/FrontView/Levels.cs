using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>Where the bodies of a piece begin and end: carcases, stands and tops, their doors and drawers left out.</summary>
internal sealed class Levels
{
    /// <summary>Ends nearer to each other than this are one level: a wall out of true has no step.</summary>
    private const double OneLevelMm = 0.5;

    private readonly Piece _piece;
    private readonly Span2 _bounds;
    private readonly List<Span2> _bodies;
    private readonly List<Span2> _carcases;

    public Levels(Piece piece, IReadOnlyDictionary<string, Span2> partBounds, Span2 bounds)
    {
        _piece = piece;
        _bounds = bounds;
        _bodies = Bodies(
            partBounds,
            kind => kind is GroupKind.Carcase or GroupKind.KeptCarcase or GroupKind.Stand or GroupKind.Top
        );
        _carcases = Bodies(partBounds, kind => kind is GroupKind.Carcase or GroupKind.KeptCarcase);
    }

    /// <summary>Z of every level, from the lowest to the highest, the ends of the whole piece among them.</summary>
    public List<double> Heights() =>
        Levelled(_bodies.SelectMany(span => (double[])[span.MinZ, span.MaxZ]), _bounds.MinZ, _bounds.MaxZ);

    /// <summary>X of the ends of carcases that stand side by side, from left to right; empty where none do.</summary>
    public List<double> Widths()
    {
        var beside = _carcases.Where(span => span.Width < _bounds.Width).ToList();
        if (beside.Count < 2)
            return [];
        // Only what shares a height stands side by side; the lowest such row is the one that is dimensioned.
        var lowest = beside.MinBy(span => span.MinZ);
        var middle = (lowest.MinZ + lowest.MaxZ) / 2;
        var row = beside.Where(span => span.MinZ < middle && span.MaxZ > middle).ToList();
        return row.Count < 2
            ? []
            : Levelled(row.SelectMany(span => (double[])[span.MinX, span.MaxX]), _bounds.MinX, _bounds.MaxX);
    }

    /// <summary>Ends in order, those that are one level told once.</summary>
    private List<double> Levelled(IEnumerable<double> ends, double first, double last)
    {
        var near = OneLevelMm * _piece.Grid.UnitsPerMm;
        var levels = new List<double> { first };
        foreach (var end in ends.Distinct().Order())
        {
            if (end > levels[^1] + near && end < last - near)
                levels.Add(end);
        }
        levels.Add(last);
        return levels;
    }

    private List<Span2> Bodies(IReadOnlyDictionary<string, Span2> partBounds, Func<GroupKind, bool> isBody)
    {
        var groups = _piece.Groups.ToDictionary(group => group.Id, group => group, StringComparer.Ordinal);
        return
        [
            .. _piece
                .Parts.Where(part => partBounds.ContainsKey(part.Id))
                .GroupBy(part => Body(part.Group, groups, isBody), StringComparer.Ordinal)
                .Where(body => body.Key.Length > 0)
                .Select(body => body.Select(part => partBounds[part.Id]).Aggregate(Span2.Around)),
        ];
    }

    /// <summary>The body that a group belongs to; "" for doors, drawers, and what stands loose.</summary>
    private static string Body(string id, Dictionary<string, Group> groups, Func<GroupKind, bool> isBody)
    {
        while (groups.TryGetValue(id, out var group))
        {
            if (isBody(group.Kind))
                return id;
            if (group.Parent is null || group.Kind is GroupKind.Door or GroupKind.Drawer)
                break;
            id = group.Parent;
        }
        return "";
    }
}
