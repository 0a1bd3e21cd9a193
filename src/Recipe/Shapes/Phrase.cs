using Dryfit.Findings;

namespace Dryfit.Recipe;

/// <summary>Reads several words in any order: <c>framed pair</c>, <c>glazed, hinged left</c>.</summary>
public static class Phrase
{
    /// <summary>The word chosen of each group, in the order of the groups (null where none), with what is wrong.</summary>
    public static PhraseWords Read(Scalar scalar, PhraseShape shape)
    {
        var chosen = new string?[shape.Groups.Count];
        var errors = new List<InputError>();
        foreach (var (start, said) in Split(scalar.Text, shape))
        {
            var place = scalar.PlaceOf(start, said.Length);
            var group = GroupOf(said, shape);
            if (group < 0)
                errors.Add(Unknown(said, place, shape));
            else if (chosen[group] is { } before)
                errors.Add(
                    new InputError($"'{before}' and '{said}' exclude each other; only one can stand here.", place)
                );
            else
                chosen[group] = said;
        }
        if (errors.Count == 0 && scalar.IsEmpty)
            errors.Add(new InputError("Nothing is said here.", scalar.Place, ShapeWords.Describe(shape)));
        return new PhraseWords(chosen, errors);
    }

    private static InputError Unknown(string said, SourcePlace place, PhraseShape shape) =>
        new(
            $"{Excerpt.Quote(said)} is no word for this place.",
            place,
            ShapeWords.Describe(shape),
            NearestWord.To(said, shape.Groups.SelectMany(g => g.Words))
        );

    private static int GroupOf(string word, PhraseShape shape)
    {
        for (var g = 0; g < shape.Groups.Count; g++)
        {
            if (shape.Groups[g].Words.Contains(word, StringComparer.Ordinal))
                return g;
        }
        return -1;
    }

    /// <summary>The text cut into words of the shape, the longest that fits first ("hinged left" before "hinged").</summary>
    private static IEnumerable<(int Start, string Word)> Split(string text, PhraseShape shape)
    {
        var words = shape.Groups.SelectMany(g => g.Words).OrderByDescending(w => w.Length).ToList();
        var i = 0;
        while (i < text.Length)
        {
            if (IsGap(text[i]))
            {
                i++;
                continue;
            }
            var word = words.FirstOrDefault(w => StandsAt(text, i, w)) ?? text[i..EndOfWord(text, i)];
            yield return (i, word);
            i += word.Length;
        }
    }

    private static bool StandsAt(string text, int at, string word) =>
        string.CompareOrdinal(text, at, word, 0, word.Length) == 0
        && (at + word.Length == text.Length || IsGap(text[at + word.Length]));

    private static int EndOfWord(string text, int at)
    {
        while (at < text.Length && !IsGap(text[at]))
            at++;
        return at;
    }

    private static bool IsGap(char c) => c == ',' || char.IsWhiteSpace(c);
}

/// <summary>What was read of a phrase.</summary>
/// <param name="Chosen">The word of each group of the shape, null where none of it was said.</param>
/// <param name="Errors">Words that are none, or that exclude each other.</param>
public sealed record PhraseWords(IReadOnlyList<string?> Chosen, IReadOnlyList<InputError> Errors);
