using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Dryfit.Recipe;

/// <summary>
/// Writes the shapes as a JSON Schema (draft-07, https://json-schema.org/draft-07/schema), so that editors complete and
/// explain a recipe. It accepts all that the checker accepts; formulas it takes on trust.
/// </summary>
public static class JsonSchemaWriter
{
    /// <summary>The schema, indented, lines ended by LF.</summary>
    /// <param name="takesNames">Whether names of parameters may stand for words, as in recipes; a schema cannot know which.</param>
    public static string Write(RecordShape root, bool takesNames = false)
    {
        var definitions = new Definitions(root, takesNames);
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            // The file is read by people and editors, never pasted into HTML.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
            json.WriteString("title", root.Name);
            json.WriteString("description", root.Doc);
            Refer(json, definitions.Slug(root));
            json.WriteStartObject("definitions");
            foreach (var word in definitions.All)
            {
                json.WriteStartObject(definitions.Slug(word));
                WriteWord(json, word, definitions);
                json.WriteEndObject();
            }
            json.WriteEndObject();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteWord(Utf8JsonWriter json, RecordShape word, Definitions definitions)
    {
        json.WriteString("title", word.Name);
        var example = word.Example.Length == 0 ? "" : $"\n\nExample:\n{word.Example.TrimEnd()}";
        json.WriteString("description", word.Doc + example);
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", word.FurtherKeys is not null);
        json.WriteStartObject("properties");
        foreach (var field in word.Fields)
        {
            json.WriteStartObject(field.Key);
            json.WriteString("description", Explain(field));
            WriteShape(json, field.Shape, definitions);
            json.WriteEndObject();
        }
        json.WriteEndObject();
        var required = word.Fields.Where(f => f.Required).ToList();
        if (required.Count == 0)
            return;
        json.WriteStartArray("required");
        foreach (var field in required)
            json.WriteStringValue(field.Key);
        json.WriteEndArray();
    }

    private static string Explain(Field field) =>
        $"{field.Doc}\n\nHere stands {ShapeWords.Describe(field.Shape)}."
        + (field.Default is null ? "" : $"\n\nLeft out: {field.Default}.");

    /// <summary>Writes a shape's keywords into the object that is open.</summary>
    private static void WriteShape(Utf8JsonWriter json, Shape shape, Definitions definitions)
    {
        switch (shape)
        {
            case LengthShape or NumberShape or QuantityShape:
                Types(json, "string", "number");
                json.WriteString("pattern", "\\S");
                break;
            case CountShape count:
                AnyOf(json, ["number", "formula"], kind => WriteCount(json, count, kind == "formula"));
                break;
            case TextShape or NameShape or SpokenShape:
                // YAML takes 3 for a number and true for a truth value; to the recipe they are as good a text as any.
                Types(json, "string", "number", "boolean", "null");
                json.WriteString("pattern", "\\S");
                break;
            case YesNoShape:
                WriteYesNo(json);
                break;
            case BareShape:
                Types(json, "null", "string");
                json.WriteString("pattern", "^\\s*$");
                break;
            case ChoiceShape { TakesNames: true } choice when definitions.TakesNames:
                AnyOf(json, [true, false], word => WriteWordOrName(json, choice.Words, word));
                break;
            case ChoiceShape choice:
                Words(json, choice.Words);
                break;
            case PhraseShape phrase:
                AnyOf(json, [true, false], single => WritePhrase(json, phrase, single, definitions.TakesNames));
                break;
            case ListShape list:
                json.WriteString("type", "array");
                json.WriteNumber("minItems", list.AtLeast);
                json.WriteNumber("maxItems", list.AtMost);
                json.WriteStartObject("items");
                WriteShape(json, list.Item, definitions);
                json.WriteEndObject();
                break;
            case NamedShape named:
                json.WriteString("type", "object");
                json.WriteStartObject("additionalProperties");
                WriteShape(json, named.Item, definitions);
                json.WriteEndObject();
                break;
            case RecordShape record:
                Refer(json, definitions.Slug(record));
                break;
            case EitherShape either:
                AnyOf(json, [.. Alternatives.Flatten(either)], s => WriteShape(json, s, definitions));
                break;
            default:
                throw new InvalidOperationException($"A shape without a schema: {shape.GetType().Name}");
        }
    }

    private static void WriteCount(Utf8JsonWriter json, CountShape count, bool formula)
    {
        json.WriteString("type", formula ? "string" : "number");
        if (formula)
        {
            json.WriteString("pattern", "\\S");
            return;
        }
        json.WriteNumber("minimum", count.From);
        json.WriteNumber("maximum", count.To);
    }

    private static void WriteYesNo(Utf8JsonWriter json)
    {
        json.WriteStartArray("enum");
        json.WriteStringValue("yes");
        json.WriteStringValue("no");
        json.WriteBooleanValue(true);
        json.WriteBooleanValue(false);
        json.WriteStringValue("true");
        json.WriteStringValue("false");
        json.WriteStringValue("");
        json.WriteNullValue();
        json.WriteEndArray();
    }

    private const string NamePattern = "[A-Za-z_][A-Za-z0-9_]*";

    /// <summary>One of the words, for an editor to offer; or the name of a parameter that is one.</summary>
    private static void WriteWordOrName(Utf8JsonWriter json, IReadOnlyList<string> words, bool word)
    {
        if (word)
        {
            Words(json, words);
            return;
        }
        json.WriteString("type", "string");
        json.WriteString("pattern", $"^{NamePattern}$");
    }

    /// <summary>The single words, for an editor to offer; or the pattern of several in a row.</summary>
    private static void WritePhrase(Utf8JsonWriter json, PhraseShape phrase, bool single, bool takesNames)
    {
        var words = phrase.Groups.SelectMany(g => g.Words).ToList();
        if (single)
        {
            Words(json, words);
            return;
        }
        json.WriteString("type", "string");
        var each = string.Join('|', words.OrderByDescending(w => w.Length).Select(Regex.Escape))
            .Replace("\\ ", " ", StringComparison.Ordinal);
        if (takesNames)
            each += "|" + NamePattern;
        json.WriteString("pattern", $"^[\\s,]*(?:(?:{each})(?:[\\s,]+|$))+$");
    }

    /// <summary>Words as YAML may read them: <c>1</c> and <c>true</c> come as numbers and truth values.</summary>
    private static void Words(Utf8JsonWriter json, IReadOnlyList<string> words)
    {
        json.WriteStartArray("enum");
        foreach (var word in words)
        {
            json.WriteStringValue(word);
            if (word is "true" or "false")
                json.WriteBooleanValue(word == "true");
            else if (word is "null" or "~")
                json.WriteNullValue();
            else if (long.TryParse(word, System.Globalization.CultureInfo.InvariantCulture, out var number))
                json.WriteNumberValue(number);
        }
        json.WriteEndArray();
    }

    private static void Types(Utf8JsonWriter json, params ReadOnlySpan<string> types)
    {
        json.WriteStartArray("type");
        foreach (var type in types)
            json.WriteStringValue(type);
        json.WriteEndArray();
    }

    private static void AnyOf<T>(Utf8JsonWriter json, IReadOnlyList<T> alternatives, Action<T> write)
    {
        json.WriteStartArray("anyOf");
        foreach (var alternative in alternatives)
        {
            json.WriteStartObject();
            write(alternative);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    // In draft-07 a $ref hides everything beside it; inside an allOf it stands alone.
    private static void Refer(Utf8JsonWriter json, string slug)
    {
        json.WriteStartArray("allOf");
        json.WriteStartObject();
        json.WriteString("$ref", $"#/definitions/{Uri.EscapeDataString(slug)}");
        json.WriteEndObject();
        json.WriteEndArray();
    }
}
