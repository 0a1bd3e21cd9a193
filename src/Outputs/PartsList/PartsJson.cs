using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;
using Dryfit.Parameters;

namespace Dryfit.Outputs.PartsList;

/// <summary>The parts list for other programs, <c>parts.json</c>; the schema is <c>templates/schema/parts.schema.json</c>.</summary>
public sealed class PartsJson
{
    private const int Version = 1;

    private static readonly JsonWriterOptions Options = new()
    {
        // Letters stay readable, while <, >, & and quotes stay escaped, so that a page may hold the text as it is.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        Indented = true,
        NewLine = "\n",
    };

    private readonly Piece _piece;
    private readonly Utf8JsonWriter _json;
    private readonly JointWords _joints;

    private PartsJson(Piece piece, Utf8JsonWriter json) =>
        (_piece, _json, _joints) = (piece, json, new JointWords(piece));

    public static OutputFile Write(Piece piece)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, Options))
            new PartsJson(piece, json).Write();
        bytes.Write("\n"u8);
        return new("parts.json", bytes.WrittenMemory);
    }

    private void Write()
    {
        var rows = PartsRow.Of(_piece);
        _json.WriteStartObject();
        _json.WriteNumber("version", Version);
        _json.WriteString("piece", PlainText.Clean(_piece.Name));
        _json.WriteString("unit", _piece.Format.Unit == LengthUnit.Inch ? "in" : "mm");
        _json.WriteNumber("partCount", rows.Sum(row => row.Quantity));
        _json.WriteNumber("massKg", Rounded(rows.Sum(row => row.MassKg * row.Quantity), 3));
        _json.WriteStartArray("rows");
        foreach (var row in rows)
            Write(row);
        _json.WriteEndArray();
        _json.WriteEndObject();
    }

    private void Write(PartsRow row)
    {
        var part = row.First;
        _json.WriteStartObject();
        _json.WriteString("id", part.Id);
        _json.WriteString("name", PlainText.Clean(row.Name));
        _json.WriteNumber("quantity", row.Quantity);
        _json.WriteStartArray("roles");
        foreach (var role in row.Roles)
            _json.WriteStringValue(Words.Of(role));
        _json.WriteEndArray();
        Write(part.Material);
        Size("length", part.Length);
        Size("width", part.Width);
        Size("thickness", part.Thickness);
        Size("shoulderLength", part.ShoulderLength);
        Size("shoulderWidth", part.ShoulderWidth);
        Size("finishedLength", part.FinishedLength);
        Size("finishedWidth", part.FinishedWidth);
        _json.WriteString("grain", part.Material.HasGrain ? "along the length" : "any way");
        if (part.Run is { } run)
        {
            _json.WriteStartObject("grainRun");
            _json.WriteString("board", PlainText.Clean(run.Board));
            _json.WriteNumber("number", run.Number);
            _json.WriteNumber("of", run.Of);
            Mm("spanMm", run.Span);
            Mm("atMm", run.At);
            _json.WriteString("from", run.Begins == Direction.Left ? "left" : "top");
            _json.WriteEndObject();
        }
        _json.WriteBoolean("kept", part.IsKept);
        _json.WriteNumber("volumeMm3", row.VolumeCubicMm);
        _json.WriteNumber("massKg", Rounded(row.MassKg, 6));
        _json.WriteStartArray("cuts");
        var words = new CutWords(part, _piece.Format);
        foreach (var cut in part.Cuts)
            Write(cut, words);
        _json.WriteEndArray();
        _json.WriteStartArray("parts");
        foreach (var member in row.Kind.Members)
            Write(member.Part, (int)member.Turn * 90);
        _json.WriteEndArray();
        _json.WriteEndObject();
    }

    private void Write(Material material)
    {
        _json.WriteStartObject("material");
        _json.WriteString("name", PlainText.Clean(material.Name));
        _json.WriteString("kind", Words.Of(material.Kind));
        _json.WriteString("stuff", PlainText.Clean(material.Stuff));
        _json.WriteNumber("densityKgPerM3", material.DensityKgPerM3);
        _json.WriteString("densitySource", PlainText.Clean(material.DensitySource));
        _json.WriteEndObject();
    }

    private void Write(PartCut cut, CutWords words)
    {
        _json.WriteStartObject();
        _json.WriteString("id", cut.Id);
        _json.WriteString("kind", Words.Of(cut.Kind));
        _json.WriteString("text", words.One(cut));
        switch (cut)
        {
            case SquareCut square:
                _json.WriteString("shape", "square");
                Point("fromMm", square.Extent.Min);
                Point("toMm", square.Extent.Max);
                break;
            case RoundCut round:
                _json.WriteString("shape", "round");
                Point("fromMm", round.From);
                _json.WriteString("into", BoardDirection(round.Into));
                Mm("diameterMm", round.Diameter);
                Mm("depthMm", round.Depth);
                _json.WriteNumber("tiltDegrees", round.TiltDegrees);
                _json.WriteString("leaning", BoardDirection(round.Leaning));
                break;
            case OutlineCut outline:
                Write(outline);
                break;
        }

        _json.WriteEndObject();
    }

    private void Write(OutlineCut cut)
    {
        _json.WriteString("shape", "outline");
        _json.WriteString("along", Words.Of(cut.Along));
        Mm("startMm", cut.From);
        Mm("endMm", cut.To);
        _json.WriteStartArray("cornersMm");
        foreach (var corner in cut.Outline)
            WriteInOneLine(corner.A, corner.B);
        _json.WriteEndArray();
        if (cut.Outline.All(corner => corner.Arc is null))
            return;
        _json.WriteStartArray("arcs");
        for (var n = 0; n < cut.Outline.Count; n++)
        {
            if (cut.Outline[n].Arc is not { } arc)
                continue;
            _json.WriteStartObject();
            _json.WriteNumber("corner", n);
            _json.WritePropertyName("centreMm");
            WriteInOneLine(arc.A, arc.B);
            _json.WriteBoolean("clockwise", arc.Clockwise);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void Write(Part part, int turnDegrees)
    {
        _json.WriteStartObject();
        _json.WriteString("id", part.Id);
        _json.WriteString("name", PlainText.Clean(part.Name));
        _json.WriteString("group", part.Group);
        _json.WriteString("role", Words.Of(part.Role));
        _json.WriteBoolean("asCut", part.IsAsCut);
        _json.WriteStartObject("finishes");
        foreach (var (scheme, finish) in part.Finishes.OrderBy(f => f.Key, StringComparer.Ordinal))
            _json.WriteString(PlainText.Clean(scheme), PlainText.Clean(finish));
        _json.WriteEndObject();
        _json.WriteNumber("turnDegrees", turnDegrees);
        _json.WriteStartObject("place");
        Point("originMm", part.Place.Origin);
        _json.WriteString("along", Words.Of(part.Place.Lie.Along));
        _json.WriteString("across", Words.Of(part.Place.Lie.Across));
        _json.WriteString("shows", Words.Of(part.Place.Lie.Shows));
        Point("minMm", part.Extent.Min);
        Point("maxMm", part.Extent.Max);
        Turns(part.Turn);
        _json.WriteEndObject();
        _json.WriteStartArray("joints");
        foreach (var joint in _joints.Of(part))
        {
            _json.WriteStartObject();
            _json.WriteString("id", joint.Joint.Id);
            _json.WriteString("kind", Words.Of(joint.Joint.Kind));
            _json.WriteString("text", joint.Words);
            _json.WriteString("with", joint.Other);
            _json.WriteBoolean("enters", joint.IsEntering);
            Mm("engagementMm", joint.Joint.Engagement);
            _json.WriteBoolean("glued", joint.Joint.Glued);
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
        _json.WriteEndObject();
    }

    /// <summary>A size three ways: as the maker writes it, in millimetres, and exactly as a fraction of millimetres.</summary>
    private void Size(string name, Figure? size)
    {
        if (size is null)
        {
            _json.WriteNull(name);
            return;
        }

        _json.WriteStartObject(name);
        _json.WriteString("text", _piece.Format.WriteWithUnit(size.Length));
        Mm("mm", size.Length);
        _json.WriteString("exactMm", size.Length.Millimetres.ToString());
        _json.WriteEndObject();
    }

    /// <summary>The turns that bring the part from its own frame into the piece, in the order of doing.</summary>
    private void Turns(PlanTurn? turn)
    {
        if (turn is null)
            return;
        _json.WriteStartArray("turns");
        for (; turn is not null; turn = turn.Within)
        {
            _json.WriteStartObject();
            Point("pivotMm", turn.Pivot);
            _json.WriteNumber("degrees", turn.Degrees.ToDouble());
            if (turn.About != Axis.Z)
                _json.WriteString("about", turn.About == Axis.Y ? "front to back" : "left to right");
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void Point(string name, Point point)
    {
        _json.WritePropertyName(name);
        WriteInOneLine(point.X, point.Y, point.Z);
    }

    /// <summary>A list of millimetres in one line: three lines a point would make up half of the file.</summary>
    private void WriteInOneLine(params ReadOnlySpan<Length> lengths)
    {
        var numbers = new StringBuilder();
        foreach (var length in lengths)
        {
            numbers.Append(numbers.Length == 0 ? "[" : ", ");
            numbers.Append(CultureInfo.InvariantCulture, $"{ExactNumbers.Millimetres(length)}");
        }

        _json.WriteRawValue(numbers.Append(']').ToString());
    }

    private void Mm(string name, Length length) => _json.WriteNumber(name, ExactNumbers.Millimetres(length));

    /// <summary>Board directions as signed board axes: x along the length, y across the width, z towards the show face.</summary>
    private static string BoardDirection(Direction direction) =>
        (direction.Sign() > 0 ? "+" : "-") + Words.Of(direction.Axis());

    private static double Rounded(double number, int decimals) =>
        Math.Round(number, decimals, MidpointRounding.AwayFromZero);
}
