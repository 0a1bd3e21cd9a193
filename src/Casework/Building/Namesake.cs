namespace Dryfit.Casework.Building;

/// <summary>
/// A phrase by which a maker means some parts or a unit: "left upper door rails" means every part whose name holds
/// all of these words, in any order, plural or not.
/// </summary>
public sealed class Namesake
{
    private readonly List<string> _words;

    public Namesake(string phrase)
    {
        _words = WordsOf(phrase);
    }

    /// <summary>Whether a name holds every word of the phrase, each as often as the phrase does.</summary>
    public bool IsIn(string name)
    {
        if (_words.Count == 0)
            return false;
        var words = WordsOf(name);
        return _words.TrueForAll(words.Remove);
    }

    /// <summary>Whether the phrase is a whole name, its words in any order.</summary>
    public bool IsWhole(string name)
    {
        var words = WordsOf(name);
        return words.Count == _words.Count && _words.TrueForAll(words.Remove);
    }

    /// <summary>Whether the phrase itself holds a word.</summary>
    public bool Says(string word) => _words.Contains(word);

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
