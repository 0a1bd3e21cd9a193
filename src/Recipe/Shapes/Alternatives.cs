namespace Dryfit.Recipe;

/// <summary>Which alternative of an <see cref="EitherShape"/> is meant; the checker and all readers ask here.</summary>
public static class Alternatives
{
    /// <summary>
    /// The alternative that fits best, judged by kind (single value, list, keys), by fixed words, and by known keys.
    /// The first of equals wins; fixed words win over free text and formulas. Looks one level down only.
    /// </summary>
    public static Shape Pick(Node node, EitherShape either)
    {
        Shape? best = null;
        var least = int.MaxValue;
        foreach (var shape in Flatten(either))
        {
            var misfit = Misfit(node, shape);
            if (misfit < least)
                (best, least) = (shape, misfit);
        }
        return best ?? throw new InvalidOperationException("An either-shape without alternatives.");
    }

    /// <summary>The alternatives, with those of alternatives themselves in their place.</summary>
    public static IEnumerable<Shape> Flatten(EitherShape either) =>
        either.Shapes.SelectMany(s => s is EitherShape inner ? Flatten(inner) : [s]);

    /// <summary>0 for a fixed word that is there; small for what may well be meant; 1000 and more for another kind.</summary>
    private static int Misfit(Node node, Shape shape) =>
        (node, shape) switch
        {
            (_, EitherShape either) => Flatten(either).Min(s => Misfit(node, s)),
            (Scalar scalar, _) => ScalarMisfit(scalar, shape),
            (Sequence list, ListShape of) => 10 + (10 * list.Items.Take(20).Count(i => Misfit(i, of.Item) >= 100)),
            (Mapping word, RecordShape record) => RecordMisfit(word, record),
            (Mapping word, NamedShape named) => 20
                + (10 * word.Entries.Take(20).Count(e => Misfit(e.Value, named.Item) >= 100)),
            _ => OtherKind,
        };

    private const int OtherKind = 1000;

    private static int ScalarMisfit(Scalar scalar, Shape shape) =>
        shape switch
        {
            BareShape => scalar.IsEmpty ? 0 : OtherKind,
            YesNoShape => YesNo.Read(scalar) is not null ? 0 : 300,
            ChoiceShape choice => choice.Words.Contains(scalar.Text, StringComparer.Ordinal) ? 0 : 200,
            PhraseShape phrase => !scalar.IsEmpty && Phrase.Read(scalar, phrase).Errors.Count == 0 ? 0 : 190,
            _ when scalar.IsEmpty => OtherKind - 1,
            LengthShape or CountShape or NumberShape or QuantityShape => FormulaLook.Fits(scalar.Text) ? 10 : 210,
            SpokenShape => 20,
            NameShape or TextShape => 30,
            _ => OtherKind,
        };

    private static int RecordMisfit(Mapping word, RecordShape record)
    {
        var known = record.Fields.Select(f => f.Key).ToHashSet(StringComparer.Ordinal);
        var unknown = word.Entries.Count(e => !known.Contains(e.Key));
        var missing = record.Fields.Count(f => f.Required && word[f.Key] is null);
        if (record.FurtherKeys is not null)
            return missing > 0 ? OtherKind - 1 : 0;
        // Only keys of another word speak against this one; a word none of whose keys is known is hardly meant.
        var strangers = unknown > 0 && unknown == word.Entries.Count ? 50 : 0;
        return Math.Min(OtherKind - 1, 5 + (10 * unknown) + (10 * missing) + strangers);
    }
}
