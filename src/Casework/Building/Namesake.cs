namespace Dryfit.Casework.Building;

/// <summary>
/// A phrase by which a maker means some parts or a unit: "left upper door rails" means every part whose name holds all of
/// these words, in any order, plural or not. A word of place belongs to the noun behind it: "left door stiles" does not
/// mean the left stile of the right door.
/// </summary>
public sealed class Namesake
{
    /// <summary>Words of place, in groups of which a thing has one: what is left is neither right nor in the middle.</summary>
    private static readonly string[][] Places =
    [
        ["left", "right", "middle"],
        ["top", "bottom", "upper", "lower"],
        ["front", "rear", "back"],
    ];

    private readonly List<string> _words;

    public Namesake(string phrase)
    {
        _words = WordsOf(phrase);
    }

    /// <summary>Whether a name holds every word of the phrase, each as often as the phrase does, and none at odds with it.</summary>
    public bool IsIn(string name)
    {
        var words = WordsOf(name);
        var left = words.ToList();
        return _words.Count > 0 && _words.TrueForAll(left.Remove) && !IsAtOdds(words);
    }

    /// <summary>Whether the phrase is a whole name, its words in any order.</summary>
    public bool IsWhole(string name)
    {
        var words = WordsOf(name);
        return words.Count == _words.Count && _words.TrueForAll(words.Remove);
    }

    /// <summary>Whether the phrase is a whole name, its words in the order of that name.</summary>
    public bool IsExactly(string name) => WordsOf(name).SequenceEqual(_words, StringComparer.Ordinal);

    /// <summary>Whether the phrase itself holds a word.</summary>
    public bool Says(string word) => _words.Contains(word);

    /// <summary>Whether every noun of the name that the phrase puts somewhere is said to be somewhere else there.</summary>
    private bool IsAtOdds(List<string> name) =>
        Placed(_words)
            .Any(said =>
            {
                var nouns = Placed(name).Where(own => own.Noun == said.Noun).GroupBy(own => own.NounAt).ToList();
                return nouns.Count > 0
                    && nouns.TrueForAll(noun => IsElsewhere(said.Place, noun.Select(n => n.Place).ToList()));
            });

    private static bool IsElsewhere(string place, List<string> own)
    {
        var siblings = Places.First(group => group.Contains(place));
        return !own.Contains(place) && own.Exists(siblings.Contains);
    }

    /// <summary>Each word of place with the noun behind it.</summary>
    private static IEnumerable<(string Place, string Noun, int NounAt)> Placed(List<string> words)
    {
        for (var n = 0; n < words.Count; n++)
        {
            if (!IsPlace(words[n]))
                continue;
            var noun = words.FindIndex(n, word => !IsPlace(word));
            if (noun >= 0)
                yield return (words[n], words[noun], noun);
        }
    }

    private static bool IsPlace(string word) => Places.Any(group => group.Contains(word));

    private static List<string> WordsOf(string name) =>
        name.Split([' ', '-', '_', '/', ','], StringSplitOptions.RemoveEmptyEntries)
            .Select(word => Singular(word.ToLowerInvariant()))
            .ToList();

    // Makers' nouns need no more: rails, stiles, doors, sides, shelves; "glass" and "cross" keep theirs.
    private static string Singular(string word)
    {
        if (word == "shelves")
            return "shelf";
        return word.Length > 3 && word[^1] == 's' && word[^2] != 's' ? word[..^1] : word;
    }
}
