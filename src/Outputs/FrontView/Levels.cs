using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>Where the bodies of a piece begin and end: carcases, stands and tops, their doors and drawers left out.</summary>
internal sealed class Levels
{
    private readonly Span2 _bounds;
    private readonly List<Span2> _bodies;

    public Levels(Piece piece, IReadOnlyDictionary<string, Span2> partBounds, Span2 bounds)
    {
        _bounds = bounds;
        var groups = piece.Groups.ToDictionary(group => group.Id, group => group, StringComparer.Ordinal);
        _bodies =
        [
            .. piece
                .Parts.Where(part => partBounds.ContainsKey(part.Id))
                .GroupBy(part => Body(part.Group, groups), StringComparer.Ordinal)
                .Where(body => body.Key.Length > 0)
                .Select(body => body.Select(part => partBounds[part.Id]).Aggregate(Span2.Around)),
        ];
    }

    /// <summary>Z of every level, from the lowest to the highest, the ends of the whole piece among them.</summary>
    public List<double> Heights() =>
        [
            .. _bodies
                .SelectMany(span => (double[])[span.MinZ, span.MaxZ])
                .Concat([_bounds.MinZ, _bounds.MaxZ])
                .Distinct()
                .Order(),
        ];

    /// <summary>X of the ends of bodies that stand side by side, from left to right; empty where none do.</summary>
    public List<double> Widths()
    {
        var beside = _bodies.Where(span => span.Width < _bounds.Width).ToList();
        if (beside.Count < 2)
            return [];
        // Only what shares a height stands side by side; the lowest such row is the one that is dimensioned.
        var lowest = beside.MinBy(span => span.MinZ);
        var middle = (lowest.MinZ + lowest.MaxZ) / 2;
        var row = beside.Where(span => span.MinZ < middle && span.MaxZ > middle).ToList();
        if (row.Count < 2)
            return [];
        return
        [
            .. row.SelectMany(span => (double[])[span.MinX, span.MaxX])
                .Concat([_bounds.MinX, _bounds.MaxX])
                .Distinct()
                .Order(),
        ];
    }

    /// <summary>The body that a group belongs to; "" for doors, drawers, and what stands loose.</summary>
    private static string Body(string id, Dictionary<string, Group> groups)
    {
        while (groups.TryGetValue(id, out var group))
        {
            if (group.Kind is GroupKind.Carcase or GroupKind.KeptCarcase or GroupKind.Stand or GroupKind.Top)
                return id;
            if (group.Parent is null || group.Kind is GroupKind.Door or GroupKind.Drawer)
                break;
            id = group.Parent;
        }
        return "";
    }
}
