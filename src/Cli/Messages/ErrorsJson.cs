using System.Text.Json;
using Dryfit.Findings;

namespace Dryfit.Cli;

/// <summary>Errors of the input as JSON, for editors: <c>{ "errors": [ { "message", "file", "line", ... } ] }</c>.</summary>
internal static class ErrorsJson
{
    public static void Write(IReadOnlyList<InputError> errors, TextWriter writer) =>
        writer.WriteLine(
            JsonText.Of(json =>
            {
                json.WriteStartObject();
                json.WriteStartArray("errors");
                foreach (var error in errors)
                    Write(error, json);
                json.WriteEndArray();
                json.WriteEndObject();
            })
        );

    private static void Write(InputError error, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("message", error.Message);
        if (error.Place is { } place)
        {
            json.WriteString("file", place.File);
            json.WriteNumber("line", place.Line);
            json.WriteNumber("column", place.Column);
            json.WriteNumber("length", place.Length);
            json.WriteStartArray("usedAt");
            foreach (var use in place.Uses)
            {
                json.WriteStartObject();
                json.WriteString("file", use.File);
                json.WriteNumber("line", use.Line);
                json.WriteNumber("column", use.Column);
                json.WriteNumber("length", use.Length);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        if (error.Expected is not null)
            json.WriteString("expected", error.Expected);
        if (error.Suggestion is not null)
            json.WriteString("suggestion", error.Suggestion);
        json.WriteEndObject();
    }
}
