using Dryfit.Findings;

namespace Dryfit.Numbers;

/// <summary>Which column holds what, by the words of the first line, in any order; other columns are not looked at.</summary>
internal sealed record ListColumns
{
    private const string Expected = "a first line such as: part, length, width, thickness, quantity";

    private static readonly (string Column, string[] Words)[] Known =
    [
        ("part", ["part", "name", "piece", "item", "what"]),
        ("id", ["id"]),
        ("ids", ["all ids"]),
        ("length", ["length", "long", "l"]),
        ("width", ["width", "wide", "w"]),
        ("thickness", ["thickness", "thick", "t"]),
        ("quantity", ["quantity", "qty", "count", "pieces", "pcs", "number", "how many"]),
    ];

    private readonly Dictionary<string, int> _at = new(StringComparer.Ordinal);

    /// <summary>The columns; null, and reported, where the line is no head of a list.</summary>
    public static ListColumns? Of(IReadOnlyList<CsvField> head, InputErrors errors)
    {
        var columns = new ListColumns();
        for (var n = 0; n < head.Count; n++)
        {
            var word = head[n].Text.ToLowerInvariant();
            var column = Known.FirstOrDefault(known => known.Words.Contains(word, StringComparer.Ordinal)).Column;
            if (column is not null && !columns._at.TryAdd(column, n))
                errors.Add($"There are two columns for the {column}.", head[n].Place);
        }
        var at = columns._at;
        if (!at.ContainsKey("part") && !at.ContainsKey("id"))
            errors.Add("The first line names no column for the part.", head[0].Place, Expected);
        else if (!at.ContainsKey("length") && !at.ContainsKey("width") && !at.ContainsKey("thickness"))
            errors.Add("The first line names no column for a size.", head[0].Place, Expected);
        return errors.Count == 0 ? columns : null;
    }

    /// <summary>The field of a line under a column; null where there is none or it is empty.</summary>
    public CsvField? Field(IReadOnlyList<CsvField> line, string column) =>
        _at.TryGetValue(column, out var n) && n < line.Count && line[n].Text.Length > 0 ? line[n] : null;
}
