using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.Findings;

/// <summary>Findings for other programs; the schema is <c>templates/schema/findings.schema.json</c>.</summary>
public static class FindingsJson
{
    private const int Version = 1;

    private static readonly JsonWriterOptions Options = new()
    {
        // Letters stay readable, while <, >, & and quotes stay escaped, so that a page may hold the text as it is.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        Indented = true,
        NewLine = "\n",
    };

    public static OutputFile Write(Piece piece, Report report)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, Options))
            WriteReport(json, piece, report);
        bytes.Write("\n"u8);
        return new("findings.json", bytes.WrittenMemory);
    }

    private static void WriteReport(Utf8JsonWriter json, Piece piece, Report report)
    {
        var names = PartNames.Of(piece);
        json.WriteStartObject();
        json.WriteNumber("version", Version);
        json.WriteString("piece", PlainText.Clean(piece.Name));
        json.WriteString("unit", piece.Format.Unit == LengthUnit.Inch ? "in" : "mm");
        json.WriteBoolean("stopsTheSaw", report.StopsTheSaw);
        json.WriteStartObject("counts");
        foreach (var severity in (Severity[])[Severity.Stop, Severity.Warn, Severity.Note])
            json.WriteNumber(FindingWords.Severity(severity), report.Count(severity));
        json.WriteNumber("accepted", report.Findings.Count(finding => finding.AcceptedBecause is not null));
        json.WriteEndObject();
        json.WriteStartArray("findings");
        for (var i = 0; i < report.Findings.Count; i++)
            WriteFinding(json, i + 1, report.Findings[i], piece.Format, names);
        json.WriteEndArray();
        json.WriteStartArray("checks");
        foreach (var check in report.Checks)
            WriteCheck(json, check);
        json.WriteEndArray();
        if (report.Mended is { } mended)
            WriteMended(json, mended);
        json.WriteEndObject();
    }

    private static void WriteFinding(
        Utf8JsonWriter json,
        int number,
        Finding finding,
        LengthFormat format,
        PartNames names
    )
    {
        json.WriteStartObject();
        json.WriteNumber("number", number); // the same number as on the drawing and the page
        json.WriteString("id", finding.Kind.Id);
        json.WriteString("severity", FindingWords.Severity(finding.Kind.Severity));
        json.WriteString("title", finding.Kind.Title);
        json.WriteString("message", PlainText.Clean(finding.Message));
        json.WriteString("why", finding.Kind.Why);
        WriteOptional(json, "source", finding.Kind.Source);
        json.WriteStartArray("parts");
        foreach (var id in finding.Parts)
        {
            json.WriteStartObject();
            json.WriteString("id", PlainText.Clean(id));
            json.WriteString("name", names[id]);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WritePropertyName("place");
        WritePlace(json, finding.Place);
        json.WriteStartArray("related");
        foreach (var place in finding.Related)
            WritePlace(json, place);
        json.WriteEndArray();
        WriteWhere(json, finding.Where);
        WriteMeasured(json, finding.Measured, format);
        WriteWanted(json, finding.Wanted, format);
        WriteMisses(json, finding, format);
        WriteRemedy(json, finding.Remedy);
        json.WriteStartArray("assumptions");
        foreach (var assumption in finding.Assumptions)
            json.WriteStringValue(PlainText.Clean(assumption));
        json.WriteEndArray();
        WriteOptional(json, "acceptedBecause", finding.AcceptedBecause);
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, SourcePlace? place)
    {
        if (place is null)
        {
            json.WriteNullValue();
            return;
        }
        json.WriteStartObject();
        json.WriteString("file", PlainText.Clean(place.File));
        json.WriteNumber("line", place.Line);
        json.WriteNumber("column", place.Column);
        json.WriteNumber("length", place.Length);
        if (place.UsedAt is { } use)
        {
            json.WritePropertyName("usedAt");
            WritePlace(json, use);
        }
        json.WriteEndObject();
    }

    private static void WriteWhere(Utf8JsonWriter json, SpacePlace? where)
    {
        if (where is null)
        {
            json.WriteNull("where");
            return;
        }
        json.WriteStartObject("where");
        WritePoint(json, "fromMm", where.From);
        WritePoint(json, "toMm", where.To);
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, string name, SpacePoint point)
    {
        json.WriteStartArray(name);
        json.WriteNumberValue(Decimal(point.XMm));
        json.WriteNumberValue(Decimal(point.YMm));
        json.WriteNumberValue(Decimal(point.ZMm));
        json.WriteEndArray();
    }

    private static void WriteMeasured(Utf8JsonWriter json, Measured? measured, LengthFormat format)
    {
        if (measured is null)
        {
            json.WriteNull("measured");
            return;
        }
        json.WriteStartObject("measured");
        json.WriteString("name", PlainText.Clean(measured.Name));
        json.WriteString("text", FindingWords.Measured(measured, format));
        switch (measured)
        {
            case MeasuredLength length:
                WriteLength(json, "value", length.Value, format);
                break;
            case MeasuredRange range:
                WriteLength(json, "smallest", range.Smallest, format);
                WriteLength(json, "largest", range.Largest, format);
                break;
            case MeasuredVolume volume:
                json.WriteNumber("cubicMm", Decimal(volume.CubicMm));
                WriteLength(json, "depth", volume.Depth, format);
                break;
            case MeasuredAngle angle:
                json.WriteNumber("degrees", angle.Degrees);
                json.WriteNumber("wantedDegrees", angle.WantedDegrees);
                break;
        }
        json.WriteEndObject();
    }

    private static void WriteWanted(Utf8JsonWriter json, Wanted? wanted, LengthFormat format)
    {
        if (wanted is null)
        {
            json.WriteNull("wanted");
            return;
        }
        json.WriteStartObject("wanted");
        json.WriteString("text", FindingWords.Wanted(wanted, format));
        WriteLength(json, "atLeast", wanted.AtLeast, format);
        WriteLength(json, "atMost", wanted.AtMost, format);
        json.WriteEndObject();
    }

    private static void WriteMisses(Utf8JsonWriter json, Finding finding, LengthFormat format)
    {
        json.WriteStartArray("offBy");
        foreach (var miss in FindingWords.Misses(finding))
        {
            json.WriteStartObject();
            json.WriteString("way", miss.TooMuch ? "too much" : "too little");
            WriteLength(json, "by", miss.By, format);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteRemedy(Utf8JsonWriter json, Remedy? remedy)
    {
        if (remedy is null)
        {
            json.WriteNull("remedy");
            return;
        }
        json.WriteStartObject("remedy");
        json.WriteString("text", PlainText.Clean(remedy.Text));
        json.WriteBoolean("sure", remedy.Sure);
        WriteEdits(json, remedy.Edits);
        json.WriteEndObject();
    }

    private static void WriteEdits(Utf8JsonWriter json, IReadOnlyList<Edit> edits)
    {
        json.WriteStartArray("edits");
        foreach (var edit in edits)
        {
            json.WriteStartObject();
            json.WriteString("file", PlainText.Clean(edit.Place.File));
            json.WriteNumber("line", edit.Place.Line);
            json.WriteNumber("column", edit.Place.Column);
            json.WriteNumber("length", edit.Place.Length);
            json.WriteString("old", PlainText.Clean(edit.OldText));
            json.WriteString("new", PlainText.Clean(edit.NewText));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteMended(Utf8JsonWriter json, Mended mended)
    {
        json.WriteStartObject("mended");
        WriteEdits(json, mended.Edits);
        json.WriteStartArray("left");
        foreach (var left in mended.Left)
        {
            json.WriteStartObject();
            json.WriteNumber("number", left.Number);
            json.WriteString("why", PlainText.Clean(left.Why));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteNumber("builds", mended.Builds);
        json.WriteBoolean("stopsTheSaw", mended.After.StopsTheSaw);
        json.WriteEndObject();
    }

    private static void WriteCheck(Utf8JsonWriter json, CheckRun check)
    {
        json.WriteStartObject();
        json.WriteString("name", PlainText.Clean(check.Name));
        json.WriteBoolean("ran", check.Ran);
        if (check.NotRun is { } why)
        {
            json.WriteString("notRun", PlainText.Clean(why));
        }
        else
        {
            json.WriteNumber("covered", check.Covered);
            json.WriteString("of", PlainText.Clean(check.Of));
        }
        json.WriteEndObject();
    }

    /// <summary>A length three ways: as the maker writes it, in millimetres, and exactly as a fraction of millimetres.</summary>
    private static void WriteLength(Utf8JsonWriter json, string name, Length? length, LengthFormat format)
    {
        if (length is not { } value)
        {
            json.WriteNull(name);
            return;
        }
        json.WriteStartObject(name);
        json.WriteString("text", format.WriteWithUnit(value));
        json.WriteNumber("mm", Decimal(value.ToMillimetres()));
        json.WriteString("exactMm", value.Millimetres.ToString());
        json.WriteEndObject();
    }

    private static void WriteOptional(Utf8JsonWriter json, string name, string? text)
    {
        if (text is null)
            json.WriteNull(name);
        else
            json.WriteString(name, PlainText.Clean(text));
    }

    /// <summary>A millionth of a millimetre is finer than anything measured; rounding keeps the digits few.</summary>
    private static double Decimal(double value) => Math.Round(value, 6, MidpointRounding.AwayFromZero) + 0.0;
}
