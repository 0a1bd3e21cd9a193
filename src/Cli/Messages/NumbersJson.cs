using System.Text.Json;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Numbers;

namespace Dryfit.Cli;

/// <summary>A list held against the model, for other programs.</summary>
internal static class NumbersJson
{
    public static string Write(Held held, Piece piece) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteBoolean("right", held.IsRight);
            json.WriteNumber("compared", held.Compared);
            json.WriteStartArray("differences");
            foreach (var wrong in held.Differences)
                Write(json, wrong, piece.Format);
            json.WriteEndArray();
            json.WriteStartArray("strange");
            foreach (var strange in held.Strange)
            {
                json.WriteStartObject();
                json.WriteString("phrase", strange.Line.Phrase);
                json.WriteString("nearest", strange.Nearest);
                WritePlace(json, strange.Line.Place);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("quantities");
            foreach (var count in held.Counts)
            {
                json.WriteStartObject();
                json.WriteString("phrase", count.Line.Phrase);
                json.WriteNumber("listed", count.Line.Quantity ?? 0);
                json.WriteNumber("model", count.Right);
                WritePlace(json, count.Line.Place);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("missing");
            foreach (var name in held.Missing)
                json.WriteStringValue(name);
            json.WriteEndArray();
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, Difference wrong, LengthFormat format)
    {
        json.WriteStartObject();
        json.WriteString("part", wrong.Part);
        json.WriteString("size", NumbersText.Say(wrong.Listed.Which));
        WritePlace(json, wrong.Listed.Place);
        json.WriteString("listed", wrong.Listed.Text);
        json.WriteString("listedExactMm", wrong.Listed.Value.Millimetres.ToString());
        json.WriteString("model", format.WriteWithUnit(wrong.Right));
        json.WriteString("modelExactMm", wrong.Right.Millimetres.ToString());
        json.WriteStartArray("guesses");
        foreach (var guess in wrong.Guesses)
            json.WriteStringValue(guess);
        json.WriteEndArray();
        json.WriteStartArray("inPlace");
        foreach (var finding in wrong.Findings)
        {
            json.WriteStartObject();
            json.WriteString("id", finding.Kind.Id);
            json.WriteString("severity", finding.Kind.Severity == Severity.Stop ? "stop" : "warn");
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, SourcePlace place)
    {
        json.WriteString("file", place.File);
        json.WriteNumber("line", place.Line);
        json.WriteNumber("column", place.Column);
        json.WriteNumber("length", place.Length);
    }
}
