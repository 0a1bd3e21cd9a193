using System.Globalization;
using System.Text;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Numbers;

/// <summary>Reads a cut list written by hand, or a <c>parts.csv</c>, from its text.</summary>
public static class HandListReader
{
    private const int MostBytes = 1 << 20;

    /// <param name="file">As places call it.</param>
    /// <param name="utf8">The list, with or without a byte order mark.</param>
    /// <param name="unit">What a number without a unit means.</param>
    public static Result<HandList> Read(string file, ReadOnlyMemory<byte> utf8, LengthUnit unit)
    {
        var errors = new InputErrors();
        if (utf8.Length > MostBytes)
            return new(null, [new InputError("The list is larger than 1 MiB.", new(file, 1, 1, 1))]);
        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(utf8.Span).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return new(
                null,
                [new InputError("The list is not UTF-8 text.", new(file, 1, 1, 1), "a text saved as UTF-8")]
            );
        }
        var rows = CsvLines.Read(file, text, errors);
        if (errors.Count == 0 && rows.Count == 0)
            errors.Add("The list is empty.", new(file, 1, 1, 1));
        if (errors.Count > 0 || ListColumns.Of(rows[0], errors) is not { } columns)
            return new(null, errors.All);
        var lines = new List<ListLine>();
        foreach (var row in rows.Skip(1))
        {
            if (Line(row, columns, unit, errors) is { } line)
                lines.Add(line);
        }
        return errors.Count == 0 ? new(new HandList(lines), []) : new(null, errors.All);
    }

    private static ListLine? Line(IReadOnlyList<CsvField> row, ListColumns columns, LengthUnit unit, InputErrors errors)
    {
        var part = columns.Field(row, "part") ?? columns.Field(row, "id");
        if (part is null)
        {
            errors.Add("This line names no part.", row[0].Place, "the name of a part");
            return null;
        }
        var sizes = new List<ListSize>();
        foreach (
            var (which, column) in ((SizeKind, string)[])
                [(SizeKind.Length, "length"), (SizeKind.Width, "width"), (SizeKind.Thickness, "thickness")]
        )
        {
            if (columns.Field(row, column) is { } field && Size(field, unit, errors) is { } length)
                sizes.Add(new ListSize(which, length, field.Text, field.Place));
        }
        var ids = columns.Field(row, "ids")?.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [];
        if (columns.Field(row, "id") is { } id && ids.Length == 0)
            ids = [id.Text];
        return new ListLine(part.Text, ids, sizes, Quantity(columns.Field(row, "quantity"), errors), part.Place);
    }

    private static int? Quantity(CsvField? field, InputErrors errors)
    {
        if (field is null)
            return null;
        if (
            int.TryParse(field.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            && count is > 0 and <= 10_000
        )
            return count;
        errors.Add($"{Excerpt.Quote(field.Text)} is no number of parts.", field.Place, "a whole number above zero");
        return null;
    }

    private static Length? Size(CsvField field, LengthUnit unit, InputErrors errors)
    {
        var read = LengthText.Parse(field.Text, unit);
        if (!read.Ok && ShownLength.Read(field.Text, unit) is { } shown)
            return shown;
        if (read.Failure is { } failure)
            errors.Add(
                failure.Message,
                field.PlaceOf(failure.Position, failure.Extent),
                failure.Expected,
                failure.Suggestion
            );
        else if (read.Length.Sign <= 0)
            errors.Add("A size is above zero.", field.Place, "a length such as 23 1/4\"");
        else
            return read.Length;
        return null;
    }
}
