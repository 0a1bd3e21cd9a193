using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>
/// Puts words in the place of the names that stand for them: where <c>style</c> is a parameter that is the word
/// <c>framed</c>, <c>doors: style pair</c> becomes <c>doors: framed pair</c>.
/// </summary>
public static class NamedWords
{
    /// <summary>The tree with words for names wherever one of several words, a phrase, yes or no, or a name may stand.</summary>
    /// <param name="node">The tree; where it does not fit the shape, nothing is looked at.</param>
    /// <param name="isName">Whether the value of a <see cref="NameShape"/> is a name as it stands.</param>
    public static Node Put(Node node, Shape shape, Scope scope, Func<Scalar, NameShape, bool> isName) =>
        Put(node, shape, scope, isName, 0);

    private static Node Put(Node node, Shape shape, Scope scope, Func<Scalar, NameShape, bool> isName, int depth)
    {
        if (depth > ReadLimits.Depth)
            return node;
        switch (node, shape)
        {
            case (Scalar scalar, EitherShape either):
                return
                    Alternatives
                        .Flatten(either)
                        .Select(one => Word(scalar, one, scope, isName))
                        .FirstOrDefault(word => word != scalar)
                        is { } word
                    && !Fits(scalar, either)
                    ? word
                    : scalar;
            case (Scalar scalar, _):
                return Fits(scalar, shape) ? scalar : Word(scalar, shape, scope, isName);
            case (_, EitherShape either):
                return Put(node, Alternatives.Pick(node, either), scope, isName, depth);
            case (Sequence list, ListShape of):
                var items = list.Items.Select(item => Put(item, of.Item, scope, isName, depth + 1)).ToList();
                return items.SequenceEqual(list.Items, ReferenceEqualityComparer.Instance)
                    ? list
                    : list with
                    {
                        Items = items,
                    };
            case (Mapping names, NamedShape of):
                return In(names, _ => of.Item, scope, isName, depth);
            case (Mapping written, RecordShape record):
                var fields = record.Fields.ToDictionary(f => f.Key, f => f.Shape, StringComparer.Ordinal);
                return In(written, key => fields.GetValueOrDefault(key), scope, isName, depth);
            default:
                return node;
        }
    }

    private static Mapping In(
        Mapping mapping,
        Func<string, Shape?> shapeOf,
        Scope scope,
        Func<Scalar, NameShape, bool> isName,
        int depth
    )
    {
        var entries = mapping.Entries.ToList();
        var isSame = true;
        for (var n = 0; n < entries.Count; n++)
        {
            if (shapeOf(entries[n].Key) is not { } shape)
                continue;
            var put = Put(entries[n].Value, shape, scope, isName, depth + 1);
            if (ReferenceEquals(put, entries[n].Value))
                continue;
            entries[n] = entries[n] with { Value = put };
            isSame = false;
        }
        return isSame ? mapping : mapping with { Entries = entries };
    }

    /// <summary>Whether the words written are fixed words of the place: those win over names.</summary>
    private static bool Fits(Scalar scalar, Shape shape) =>
        shape switch
        {
            EitherShape either => Alternatives.Flatten(either).Any(one => Fits(scalar, one)),
            ChoiceShape choice => choice.Words.Contains(scalar.Text, StringComparer.Ordinal),
            YesNoShape => YesNo.Read(scalar) is not null,
            PhraseShape phrase => !scalar.IsEmpty && Phrase.Read(scalar, phrase).Errors.Count == 0,
            _ => false,
        };

    private static Scalar Word(Scalar scalar, Shape shape, Scope scope, Func<Scalar, NameShape, bool> isName)
    {
        if (scalar.IsEmpty)
            return scalar;
        switch (shape)
        {
            case NameShape when scope.InnerOf(scalar)?.Full(scalar.Text) is { } full:
                return scope.InPlaceOf(scalar, full);
            case NameShape name when isName(scalar, name):
                return scalar;
            case ChoiceShape { TakesNames: true } or YesNoShape or NameShape:
                return scope.WordAt(scalar, scalar.Text.Trim()) is { } word ? scope.InPlaceOf(scalar, word) : scalar;
            case PhraseShape:
                var words = scalar.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
                var said = string.Join(' ', words.Select(w => scope.WordAt(scalar, w) ?? w));
                return words.Any(w => scope.WordAt(scalar, w) is not null) ? scope.InPlaceOf(scalar, said) : scalar;
            default:
                return scalar;
        }
    }
}
