namespace Dryfit.Casework.Carcases;

/// <summary>What bays are called, left to right.</summary>
internal static class BayNames
{
    /// <param name="within">The bay they divide; empty for the whole front.</param>
    public static IReadOnlyList<string> For(int count, string within)
    {
        string[] names = count switch
        {
            1 => [within],
            2 => ["left bay", "right bay"],
            3 => ["left bay", "middle bay", "right bay"],
            _ => [.. Enumerable.Range(1, count).Select(n => $"bay {n}")],
        };
        return within.Length == 0 || count == 1 ? names : [.. names.Select(n => $"{within} {n}")];
    }
}

/// <summary>
/// Names of what fills the openings of one carcase: a bay goes before "door" only where doors stand in more than one
/// bay, as a maker would say it.
/// </summary>
internal sealed class FillingNames
{
    private readonly Dictionary<Filling, int> _bays = [];
    private readonly Dictionary<string, int> _drawers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _openings = new(StringComparer.Ordinal);

    /// <summary>Counts in how many bays each filling stands.</summary>
    public void Count(Region front)
    {
        foreach (var column in front.Columns.Count > 0 ? front.Columns : [front])
        {
            foreach (var filling in column.Leaves.Select(l => l.Filling).Distinct())
                _bays[filling] = _bays.GetValueOrDefault(filling) + 1;
        }
    }

    public string Prefix(Filling filling, string bay) => _bays.GetValueOrDefault(filling) > 1 ? bay : "";

    /// <summary>Drawers are counted from the top of each bay.</summary>
    public string NextDrawer(string bay)
    {
        var key = Prefix(Filling.Drawer, bay);
        _drawers[key] = _drawers.GetValueOrDefault(key) + 1;
        return $"drawer {_drawers[key]}";
    }

    /// <summary>Nothing for the first opening of a bay; then a number.</summary>
    public string NextOpening(string bay)
    {
        _openings[bay] = _openings.GetValueOrDefault(bay) + 1;
        return _openings[bay] == 1 ? "" : $" {_openings[bay]}";
    }
}
