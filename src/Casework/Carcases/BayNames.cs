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

/// <summary>What rows are called, top to bottom, where several of them hold more than drawers.</summary>
internal static class RowNames
{
    /// <param name="shelved">Whether shelves are said for all that is open or has doors.</param>
    /// <param name="within">The bay they divide; empty for the whole front.</param>
    /// <returns>For each row what its bay is called: its own name, or that of the bay where nothing else goes by it.</returns>
    public static IReadOnlyList<string> For(IReadOnlyList<Region> rows, bool shelved, string within)
    {
        bool NeedsName(Region row) =>
            !row.IsLeaf
            || row.Filling == Filling.Doors
            || (row.Filling == Filling.Open && (shelved || row.Shelves is not null));
        if (rows.Count(NeedsName) < 2)
            return [.. rows.Select(_ => within)];
        return [.. rows.Select((row, n) => NeedsName(row) ? $"{within} {Word(n, rows.Count)}".TrimStart() : within)];
    }

    private static string Word(int n, int count) =>
        count > 3 ? $"row {n + 1}"
        : n == 0 ? "upper"
        : n == count - 1 ? "lower"
        : "middle";
}

/// <summary>
/// Names of what fills the openings of one carcase: a bay goes before "door" only where doors stand in more than one
/// bay, as a maker would say it.
/// </summary>
internal sealed class FillingNames
{
    private readonly Dictionary<Filling, HashSet<string>> _bays = [];
    private readonly Dictionary<string, int> _drawers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _openings = new(StringComparer.Ordinal);

    /// <summary>Counts in how many bays each filling stands.</summary>
    /// <param name="shelved">Whether shelves are said for all of the front.</param>
    public void Count(Region front, bool shelved, string bay = "")
    {
        shelved |= front.Shelves is not null;
        if (front.IsLeaf)
        {
            if (!_bays.TryGetValue(front.Filling, out var bays))
                _bays[front.Filling] = bays = new HashSet<string>(StringComparer.Ordinal);
            bays.Add(bay);
            return;
        }
        var (parts, names) =
            front.Columns.Count > 0
                ? (front.Columns, BayNames.For(front.Columns.Count, bay))
                : (front.Rows, RowNames.For(front.Rows, shelved, bay));
        foreach (var (part, name) in parts.Zip(names))
            Count(part, shelved, name);
    }

    public string Prefix(Filling filling, string bay) =>
        _bays.TryGetValue(filling, out var bays) && bays.Count > 1 ? bay : "";

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
