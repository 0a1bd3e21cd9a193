using System.Globalization;
using Dryfit.Findings;

namespace Dryfit.Recipe;

/// <summary>
/// Holds a tree against the shape it should have: unknown and missing keys, values of the wrong kind, words that are
/// none, lists too long or short. What formulas say is checked where formulas are known.
/// </summary>
public static class ShapeCheck
{
    /// <summary>Trees that were read stay within <see cref="ReadLimits.Depth"/>; this guards against ones made in code.</summary>
    private const int Deepest = ReadLimits.Depth + 8;

    private const int LongestName = 60;

    /// <summary>Everything that does not fit, in the order of the text.</summary>
    public static IReadOnlyList<InputError> Check(Node node, Shape shape)
    {
        var errors = new InputErrors();
        Check(node, shape, errors, 0);
        return errors.All;
    }

    private static void Check(Node node, Shape shape, InputErrors errors, int depth)
    {
        if (errors.Full)
            return;
        if (depth > Deepest)
        {
            errors.Add("Words are nested too deep.", node.Place);
            return;
        }
        switch (shape)
        {
            case EitherShape either:
                CheckEither(node, either, errors, depth);
                break;
            case ListShape list when node is Sequence items:
                CheckList(items, list, errors, depth);
                break;
            case NamedShape named when node is Mapping names:
                CheckNames(names, named, errors, depth);
                break;
            case RecordShape record when node is Mapping word:
                CheckWord(word, record, errors, depth);
                break;
            case ListShape or NamedShape or RecordShape:
                errors.Add(WrongKind(node, shape));
                break;
            default:
                if (node is Scalar scalar)
                    CheckScalar(scalar, shape, errors);
                else
                    errors.Add(WrongKind(node, shape));
                break;
        }
    }

    private static void CheckEither(Node node, EitherShape either, InputErrors errors, int depth)
    {
        var meant = Alternatives.Pick(node, either);
        var before = errors.Count;
        Check(node, meant, errors, depth + 1);
        // A single value that fits none: tell all that would have been right here, not only the nearest.
        if (node is Scalar && errors.Count == before + 1 && errors.All[^1] is { } only && only.Place == node.Place)
            errors.Amend(only with { Expected = ShapeWords.Describe(either) });
    }

    private static void CheckList(Sequence list, ListShape shape, InputErrors errors, int depth)
    {
        var count = list.Items.Count;
        if (count < shape.AtLeast || count > shape.AtMost)
        {
            var wanted =
                shape.AtLeast == shape.AtMost ? $"exactly {shape.AtLeast}"
                : count < shape.AtLeast ? $"at least {shape.AtLeast}"
                : $"at most {shape.AtMost}";
            errors.Add(
                string.Create(CultureInfo.InvariantCulture, $"The list has {count} items; it must have {wanted}."),
                list.Place,
                ShapeWords.Describe(shape)
            );
        }
        foreach (var item in list.Items)
            Check(item, shape.Item, errors, depth + 1);
    }

    private static void CheckNames(Mapping names, NamedShape shape, InputErrors errors, int depth)
    {
        foreach (var entry in names.Entries)
        {
            if (entry.Key.Length > LongestName)
                errors.Add(
                    $"The name of this {shape.Named} is longer than {LongestName} characters.",
                    entry.KeyPlace,
                    "a short name"
                );
            Check(entry.Value, shape.Item, errors, depth + 1);
        }
    }

    private static void CheckWord(Mapping word, RecordShape record, InputErrors errors, int depth)
    {
        var fields = record.Fields.ToDictionary(f => f.Key, StringComparer.Ordinal);
        var written = word.Entries.Select(e => e.Key).ToHashSet(StringComparer.Ordinal);
        var free = record.Fields.Select(f => f.Key).Where(k => !written.Contains(k)).ToList();
        foreach (var missing in record.Fields.Where(f => f.Required && !written.Contains(f.Key)))
        {
            // A misspelt required key is one mistake, not two.
            if (written.Any(k => !fields.ContainsKey(k) && NearestWord.To(k, [missing.Key]) is not null))
                continue;
            errors.Add(
                $"The {record.Name} has no '{missing.Key}'.",
                word.Place,
                $"'{missing.Key}': {ShapeWords.Describe(missing.Shape)}"
            );
        }
        foreach (var entry in word.Entries)
        {
            if (errors.Full)
                return;
            if (fields.TryGetValue(entry.Key, out var field))
                Check(entry.Value, field.Shape, errors, depth + 1);
            else if (record.FurtherKeys is null)
                errors.Add(UnknownKey(entry, record, free));
        }
    }

    private static InputError UnknownKey(Entry entry, RecordShape record, List<string> free)
    {
        var keys = record.Fields.Select(f => f.Key);
        var colon = entry.Key.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0 && keys.Contains(entry.Key[..colon].Trim(), StringComparer.Ordinal))
            return new InputError(
                "A space is missing after the colon.",
                entry.KeyPlace,
                "a key, a colon, a space and a value",
                $"{entry.Key[..colon]}: {entry.Key[(colon + 1)..]}"
            );
        if (entry.Key.Contains(')', StringComparison.Ordinal))
            return new InputError(
                $"{Excerpt.Quote(entry.Key)} is no key: the comma before it has ended a value.",
                entry.KeyPlace,
                "quotes around a formula with a comma inside { }"
            );
        var a = ShapeWords.A(record.Name);
        return new InputError(
            $"{char.ToUpperInvariant(a[0])}{a[1..]} has no key {Excerpt.Quote(entry.Key)}.",
            entry.KeyPlace,
            record.Fields.Count == 0 ? "no keys" : ShapeWords.OneOf(free.Count > 0 ? free : [.. keys]),
            NearestWord.To(entry.Key, free)
        );
    }

    private static void CheckScalar(Scalar scalar, Shape shape, InputErrors errors)
    {
        switch (shape)
        {
            case BareShape:
                if (!scalar.IsEmpty)
                    errors.Add("Nothing may stand behind this key.", scalar.Place, ShapeWords.Describe(shape));
                break;
            case YesNoShape:
                if (YesNo.Read(scalar) is null)
                    errors.Add(
                        $"{Excerpt.Quote(scalar.Text)} is neither yes nor no.",
                        scalar.Place,
                        "yes or no",
                        NearestWord.To(scalar.Text, ["yes", "no"])
                    );
                break;
            case PhraseShape phrase:
                errors.AddAll(Phrase.Read(scalar, phrase).Errors);
                break;
            case var _ when scalar.IsEmpty:
                errors.Add("A value is missing here.", scalar.Place, ShapeWords.Describe(shape));
                break;
            case ChoiceShape choice:
                if (!choice.Words.Contains(scalar.Text, StringComparer.Ordinal))
                    errors.Add(
                        $"{Excerpt.Quote(scalar.Text)} is no word for this place.",
                        scalar.Place,
                        ShapeWords.Describe(choice),
                        NearestWord.To(scalar.Text, choice.Words)
                    );
                break;
            case CountShape count:
                CheckCount(scalar, count, errors);
                break;
        }
    }

    /// <summary>A number written out is held against its limits here; what a formula gives, where it is worked out.</summary>
    private static void CheckCount(Scalar scalar, CountShape count, InputErrors errors)
    {
        var text = scalar.Text.Trim();
        var digits = text.TrimStart('-');
        if (digits.Length == 0 || !digits.All(char.IsAsciiDigit))
            return;
        if (
            !int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            || number < count.From
            || number > count.To
        )
            errors.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Excerpt.Quote(text)} is not from {count.From} to {count.To}."
                ),
                scalar.Place,
                ShapeWords.Describe(count)
            );
    }

    private static InputError WrongKind(Node node, Shape shape)
    {
        var found = node switch
        {
            Sequence => "A list stands here",
            Mapping => "Keys stand here",
            Scalar { IsEmpty: true } => "A value is missing here",
            Scalar scalar => $"The single value {Excerpt.Quote(scalar.Text)} stands here",
            _ => "Something else stands here",
        };
        var wanted = shape switch
        {
            ListShape => "; a list is wanted",
            NamedShape or RecordShape => "; keys with values are wanted",
            _ when node is Scalar => "",
            _ => "; a single value is wanted",
        };
        return new InputError($"{found}{wanted}.", node.Place, ShapeWords.Describe(shape));
    }
}
