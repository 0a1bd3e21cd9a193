using System.Text;

namespace Dryfit.Reference.Tests.Published;

/// <summary>Reads the files of <c>Data</c>: comma-separated, quoted where a value has a comma, a header line first.</summary>
public static class PublishedTable
{
    public static IReadOnlyList<PublishedRow> Read(string file)
    {
        using var stream =
            typeof(PublishedTable).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"There is no table {file}.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var header = Fields(reader.ReadLine()!);
        var rows = new List<PublishedRow>();
        while (reader.ReadLine() is { } line)
        {
            var fields = Fields(line);
            string Of(string column) => fields[header.IndexOf(column)];
            rows.Add(
                new(
                    Of("id"),
                    Of("item"),
                    Of("quantity"),
                    Of("value"),
                    Of("unit"),
                    Of("formula_or_inputs"),
                    Of("source"),
                    Of("status")
                )
            );
        }
        return rows;
    }

    /// <summary>The row of an id: <c>08-002</c>.</summary>
    public static PublishedRow Row(string file, string id) =>
        Read(file).Single(row => string.Equals(row.Id, id, StringComparison.Ordinal));

    private static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
                field.Append(line[i++]);
            else if (line[i] == '"')
                quoted = !quoted;
            else if (line[i] == ',' && !quoted)
                Finish();
            else
                field.Append(line[i]);
        }
        Finish();
        return fields;

        void Finish()
        {
            fields.Add(field.ToString());
            field.Clear();
        }
    }
}
