using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Dryfit.Recipe;

namespace Dryfit.Parameters.Tests;

/// <summary>Trees as JSON.</summary>
internal static partial class YamlJson
{
    /// <summary>The tree as an editor's JSON Schema check sees it.</summary>
    public static JsonElement Of(Node node) => JsonSerializer.SerializeToElement(Json(node));

    private static JsonNode? Json(Node node) =>
        node switch
        {
            Mapping mapping => new JsonObject(mapping.Entries.Select(e => KeyValuePair.Create(e.Key, Json(e.Value)))),
            Sequence list => new JsonArray([.. list.Items.Select(Json)]),
            Scalar scalar => scalar.TextStart == 0 ? Plain(scalar.Text) : JsonValue.Create(scalar.Text),
            _ => throw new InvalidOperationException(),
        };

    /// <summary>Plain values as YAML's core schema takes them (YAML 1.2.2, section 10.3.2), as editors do.</summary>
    private static JsonValue? Plain(string text)
    {
        if (text is "" or "~" or "null" or "Null" or "NULL")
            return null;
        if (text is "true" or "True" or "TRUE" or "false" or "False" or "FALSE")
            return JsonValue.Create(text[0] is 't' or 'T');
        if (
            text.StartsWith("0x", StringComparison.Ordinal)
            && long.TryParse(text[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var hex)
        )
            return JsonValue.Create(hex);
        return CoreNumber().IsMatch(text)
            ? JsonValue.Create(double.Parse(text, CultureInfo.InvariantCulture))
            : JsonValue.Create(text);
    }

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex CoreNumber();
}
