using Dryfit.Findings;

namespace Dryfit.Numbers;

/// <summary>
/// The fields of a list line by line (RFC 4180, with the separator told by the first line: semicolon, tab or comma). Lines
/// that are empty or begin with <c>#</c> are left out. An inch mark behind a number is no quote, and a quoted field may end
/// in one.
/// </summary>
internal static class CsvLines
{
    private const int MostLines = 10_000;
    private const int MostFields = 100;

    public static IReadOnlyList<IReadOnlyList<CsvField>> Read(string file, string text, InputErrors errors)
    {
        var rows = new List<IReadOnlyList<CsvField>>();
        var lines = SourceLines.Split(text);
        if (lines.Count > MostLines)
        {
            errors.Add(
                $"The list has more than {MostLines} lines.",
                new(file, MostLines + 1, 1, 1),
                "a list for one piece"
            );
            return rows;
        }
        char? separator = null;
        for (var n = 0; n < lines.Count && !errors.Full; n++)
        {
            var line = lines[n];
            if (string.IsNullOrWhiteSpace(line) || line.TrimStart().StartsWith('#'))
                continue;
            separator ??=
                line.Contains(';', StringComparison.Ordinal) ? ';'
                : line.Contains('\t', StringComparison.Ordinal) ? '\t'
                : ',';
            rows.Add(Fields(file, n + 1, line, separator.Value, errors));
        }
        return rows;
    }

    private static List<CsvField> Fields(string file, int number, string line, char separator, InputErrors errors)
    {
        var fields = new List<CsvField>();
        for (var at = 0; at <= line.Length; )
        {
            if (fields.Count == MostFields)
            {
                errors.Add($"A line has more than {MostFields} fields.", new(file, number, at + 1, 1));
                return fields;
            }
            var start = at;
            while (start < line.Length && line[start] == ' ' && separator != ' ')
                start++;
            var (text, end) = start < line.Length && line[start] == '"' ? Quoted(line, start, separator) : (null, -1);
            if (text is null)
            {
                end = line.IndexOf(separator, at);
                end = end < 0 ? line.Length : end;
                text = line[at..end];
            }
            var shown = text.Trim();
            var from = Math.Min(start, end);
            var isQuoted = from < line.Length && line[from] == '"' && text.Length < end - from;
            fields.Add(new CsvField(shown, new(file, number, from + 1, Math.Max(1, end - from)), isQuoted ? 1 : 0));
            at = end + 1;
        }
        return fields;
    }

    /// <summary>The text of a quoted field and where the separator behind it stands; null where the quote is never closed.</summary>
    private static (string? Text, int End) Quoted(string line, int start, char separator)
    {
        for (var i = start + 1; i < line.Length; i++)
        {
            if (line[i] != '"')
                continue;
            var behind = i + 1;
            while (behind < line.Length && line[behind] == ' ')
                behind++;
            // A doubled quote stands for one; before the separator it is an inch mark and the end.
            if (behind == line.Length || line[behind] == separator)
                return (line[(start + 1)..i].Replace("\"\"", "\"", StringComparison.Ordinal), behind);
        }
        return (null, -1);
    }
}

/// <summary>A field without its quotes, with its place in the file.</summary>
/// <param name="TextStart">How many characters after the start of the place the text begins: 1 behind a quote.</param>
internal sealed record CsvField(string Text, SourcePlace Place, int TextStart)
{
    /// <summary>The place of a stretch of the text.</summary>
    public SourcePlace PlaceOf(int start, int length) =>
        Place with
        {
            Column = Place.Column + TextStart + start,
            Length = Math.Max(1, length),
        };
}
