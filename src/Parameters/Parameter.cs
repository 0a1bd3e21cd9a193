using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters.Formulas;
using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>One parameter as written, with its value set from outside if there is one.</summary>
internal sealed class Parameter
{
    private readonly Entry _entry;
    private readonly Scalar _value;
    private readonly bool _isSet;
    private readonly Mapping? _word;
    private readonly Scope _scope;
    private readonly InnerNames? _inner;

    private Parameter(Entry entry, Scalar value, bool isSet, Mapping? word, Scope scope, InnerNames? inner)
    {
        _inner = inner;
        _entry = entry;
        _value = value;
        _isSet = isSet;
        _word = word;
        _scope = scope;
    }

    /// <summary>Null where it has no value at all, which the shape's check has told.</summary>
    public static Parameter? Read(Entry entry, Scalar? setting, Scope scope)
    {
        var word = entry.Value as Mapping;
        var value = setting ?? entry.Value as Scalar ?? word?["default"] as Scalar;
        return value is { IsEmpty: false } ? new Parameter(entry, value, setting is not null, word, scope, null) : null;
    }

    /// <summary>A parameter of a maker's own word, with the value given where it is used; null where it has none.</summary>
    public static Parameter? Read(Entry entry, Scalar? given, Scope scope, InnerNames inner)
    {
        var word = entry.Value as Mapping;
        var value = given ?? entry.Value as Scalar ?? word?["default"] as Scalar;
        return value is { IsEmpty: false } ? new Parameter(entry, value, false, word, scope, inner) : null;
    }

    /// <summary>What YAML reads as nothing, or as yes and no, where it is not quoted (YAML 1.2.2, section 10.3.2).</summary>
    private static readonly string[] NoNames =
    [
        "",
        "~",
        "null",
        "Null",
        "NULL",
        "true",
        "True",
        "TRUE",
        "false",
        "False",
        "FALSE",
    ];

    public void Define()
    {
        var choices = Choices();
        if ((_word?["is"] as Scalar)?.Text.Trim() == "name" || (choices.Count > 0 && choices.Any(IsWord)))
            DefineWord([.. choices.Select(c => c.Text.Trim())], choices);
        else if (_inner is not null)
            _inner.Define(_entry.Key, _entry.KeyPlace, Work);
        else
            _scope.Define(_entry.Key, _entry.KeyPlace, Work);
    }

    private List<Scalar> Choices() =>
        _word?["choices"] is Sequence list ? [.. list.Items.OfType<Scalar>().Where(s => !s.IsEmpty)] : [];

    /// <summary>A choice that is no number is a word, and then all of them are.</summary>
    private static bool IsWord(Scalar choice) =>
        FormulaText.Parse(choice.Text, out _) is not (NumberExpression or NegatedExpression { Of: NumberExpression });

    private void DefineWord(IReadOnlyList<string> words, List<Scalar> choices)
    {
        // Words look like names; they are settled here so that nobody looks for such names.
        foreach (var scalar in choices.Append(_value).Concat(_word?["default"] is Scalar written ? [written] : []))
            _scope.SettleAsWord(scalar);
        var word = _value.Text.Trim();
        // Where there are choices, a value that is none of them is refused below.
        foreach (var scalar in words.Count == 0 ? [_value] : choices)
        {
            if (scalar.TextStart == 0 && NoNames.Contains(scalar.Text.Trim(), StringComparer.Ordinal))
                _scope.Report(
                    new InputError(
                        $"'{_entry.Key}' is a name or a word, and {Excerpt.Quote(scalar.Text.Trim())} is none.",
                        scalar.Place,
                        "a name or a word; in quotes where it reads like no or nothing"
                    )
                );
        }
        // A word given where an own word is used may be one that a name stands for there.
        if (_inner is not null && !words.Contains(word, StringComparer.Ordinal))
            word = _scope.WordAt(_value, word) ?? _scope.InnerOf(_value)?.Spell(word) ?? word;
        if (words.Count > 0 && !words.Contains(word, StringComparer.Ordinal))
        {
            _scope.Report(
                new InputError(
                    $"'{_entry.Key}' cannot be {Excerpt.Quote(word)}.",
                    _value.Place,
                    ShapeWords.OneOf(words),
                    NearestWord.To(word, words)
                )
            );
            word = words[0];
        }
        if (_inner is not null)
            _inner.DefineWord(_entry.Key, _entry.KeyPlace, word, words);
        else
            _scope.DefineWord(_entry.Key, _entry.KeyPlace, word, words);
    }

    private Figure Work()
    {
        var figure = (_word?["is"] as Scalar)?.Text.Trim() switch
        {
            "number" => _scope.Number(_value, _entry.Key),
            "count" => Counted(),
            "length" => _scope.Length(_value, _entry.Key),
            _ => _scope.Any(_value) is { Bare: false, Dimension: 0 }
                ? _scope.Number(_value, _entry.Key)
                : _scope.Length(_value, _entry.Key),
        };
        // After an error the figure only stands in; nothing can be said of it.
        if (_scope.IsRefused(_value) || _scope.Any(_value) is null)
            return figure;
        CheckLimits(figure.Quantity);
        CheckChoices(figure.Quantity);
        return _isSet
            ? figure with
            {
                Reason = new GivenReason(_entry.Key, new SetOrigin(_value.Text.Trim())),
            }
            : figure;
    }

    private Figure Counted()
    {
        _scope.Count(_value);
        return _scope.Number(_value, _entry.Key);
    }

    private void CheckLimits(Quantity value)
    {
        var (from, to, step) = (Limit("from", value), Limit("to", value), Limit("step", value));
        if (
            (from is { } least && value.Magnitude < least.Magnitude)
            || (to is { } most && value.Magnitude > most.Magnitude)
        )
        {
            var nearest = from is { } low && value.Magnitude < low.Magnitude ? low : to!.Value;
            Refuse($"'{_entry.Key}' is {Shown(value)}; it must be {Range(from, to)}.", Range(from, to), Shown(nearest));
            return;
        }
        if (step is not { } by)
            return;
        if (by.Magnitude.Sign <= 0)
        {
            _scope.Report(
                new InputError("A step is above zero.", ((Scalar)_word!["step"]!).Place, "a step such as 1/8")
            );
            return;
        }
        var start = from?.Magnitude ?? Rational.Zero;
        var steps = (value.Magnitude - start) / by.Magnitude;
        if (steps.IsWhole)
            return;
        var below = value with { Magnitude = start + (by.Magnitude * steps.Floor()) };
        var above = value with { Magnitude = below.Magnitude + by.Magnitude };
        var after = from is { } first ? $" from {Shown(first)}" : "";
        var right =
            to is { } last && above.Magnitude > last.Magnitude ? Shown(below) : $"{Shown(below)} or {Shown(above)}";
        Refuse(
            $"'{_entry.Key}' is {Shown(value)}, which is no whole number of steps of {Shown(by)}{after}.",
            right,
            null
        );
    }

    private void CheckChoices(Quantity value)
    {
        var choices = Choices();
        if (choices.Count == 0)
            return;
        var allowed = choices.Select(c => Adapted(c, value)).OfType<Quantity>().ToList();
        if (allowed.Count == choices.Count && !allowed.Contains(value))
            Refuse(
                $"'{_entry.Key}' is {Shown(value)}; it must be one of its choices.",
                "one of " + string.Join(", ", allowed.Select(Shown)),
                null
            );
    }

    private Quantity? Limit(string key, Quantity like) =>
        _word?[key] is Scalar { IsEmpty: false } scalar ? Adapted(scalar, like) : null;

    /// <summary>A limit in the value's own dimension; null, and reported, where it has another.</summary>
    private Quantity? Adapted(Scalar scalar, Quantity like)
    {
        if (_scope.Any(scalar) is not { } worked)
            return null;
        if (like.IsLength)
            worked = worked.AsLength(_scope.TableOf(scalar).Unit);
        if (worked.Dimension == like.Dimension)
            return worked.Figure.Quantity;
        _scope.Report(
            new InputError(
                $"'{_entry.Key}' is {Worked.KindOf(like.Dimension)}, and this is {worked.Kind}.",
                scalar.Place,
                Worked.KindOf(like.Dimension)
            )
        );
        return null;
    }

    private void Refuse(string message, string expected, string? suggestion) =>
        _scope.Report(new InputError(message, _value.Place, expected, suggestion));

    private string Range(Quantity? from, Quantity? to) =>
        (from, to) switch
        {
            ({ } least, { } most) => $"from {Shown(least)} to {Shown(most)}",
            ({ } least, null) => $"{Shown(least)} or more",
            _ => $"{Shown(to!.Value)} or less",
        };

    private string Shown(Quantity value) =>
        value.IsLength ? _scope.Shown(Length.FromMillimetres(value.Magnitude)) : value.Magnitude.ToString();
}
