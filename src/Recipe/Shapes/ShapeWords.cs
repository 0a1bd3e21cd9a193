using System.Globalization;

namespace Dryfit.Recipe;

/// <summary>Shapes as phrases: what an error says was expected, what the reference page says belongs there.</summary>
public static class ShapeWords
{
    private const int MostWords = 12;

    /// <summary>A noun phrase without a full stop: "a length such as 3 1/2", "one of framed, slab".</summary>
    public static string Describe(Shape shape) =>
        shape switch
        {
            LengthShape { Sign: LengthSign.AboveZero } => "a length above zero such as 3 1/2, or a formula",
            LengthShape => "a length such as 3 1/2, or a formula",
            CountShape c => string.Create(
                CultureInfo.InvariantCulture,
                $"a whole number from {c.From} to {c.To}, or a formula"
            ),
            NumberShape => "a number such as 2 or 1/3, or a formula",
            QuantityShape => "a length or number such as 3 1/2, or a formula",
            TextShape => "a text",
            YesNoShape => "yes or no",
            BareShape => "nothing behind the key",
            ChoiceShape c => OneOf(c.Words),
            PhraseShape p => "words out of " + string.Join("; ", p.Groups.Select(g => Words(g.Words, " or "))),
            NameShape n => $"the name of {A(n.Of)}",
            SpokenShape s => s.Describes,
            ListShape l => ListOf(l),
            NamedShape n => $"names of your choosing, each with {Describe(n.Item)}",
            RecordShape r => $"the keys of {A(r.Name)}",
            EitherShape e => string.Join(
                ", or ",
                Alternatives.Flatten(e).Select(Describe).Distinct(StringComparer.Ordinal)
            ),
            _ => throw new InvalidOperationException($"A shape without words: {shape.GetType().Name}"),
        };

    /// <summary>"a drawer", "an opening".</summary>
    public static string A(string noun) =>
        (noun.Length > 0 && "aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an " : "a ") + noun;

    /// <summary>"one of framed, slab", cut where there are too many to read.</summary>
    public static string OneOf(IReadOnlyList<string> words) =>
        words.Count == 1 ? $"'{words[0]}'" : "one of " + Words(words, ", ");

    private static string Words(IReadOnlyList<string> words, string between) =>
        words.Count <= MostWords ? string.Join(between, words) : string.Join(between, words.Take(MostWords)) + " …";

    private static string ListOf(ListShape list)
    {
        var size =
            list.AtLeast == list.AtMost ? string.Create(CultureInfo.InvariantCulture, $"a list of {list.AtLeast}")
            : list.AtLeast > 1 ? string.Create(CultureInfo.InvariantCulture, $"a list of at least {list.AtLeast}")
            : "a list";
        return list.Item is RecordShape record
            ? $"{size}, each {A(record.Name)}"
            : $"{size}, each {Describe(list.Item)}";
    }
}
