namespace Dryfit.Casework.Building;

/// <summary>
/// A phrase by which a maker means some parts or a unit: "left upper door rails" means every part whose name holds
/// all of these words, in any order, plural or not.
/// </summary>
public sealed class Namesake
{
    private readonly HashSet<string> _words;

    public Namesake(string phrase)
    {
        _words = WordsOf(phrase);
    }

    /// <summary>Whether a name holds every word of the phrase.</summary>
    public bool IsIn(string name) => _words.Count > 0 && _words.IsSubsetOf(WordsOf(name));

    /// <summary>Whether the phrase itself holds a word.</summary>
    public bool Says(string word) => _words.Contains(word);

    public static HashSet<string> WordsOf(string name) =>
        name.Split([' ', '-', '_', '/', ','], StringSplitOptions.RemoveEmptyEntries)
            .Select(Singular)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);

    // Makers' nouns need no more: rails, stiles, doors, sides, shelves; "glass" and "cross" keep theirs.
    private static string Singular(string word)
    {
        if (word.Equals("shelves", StringComparison.OrdinalIgnoreCase))
            return "shelf";
        return word.Length > 3 && word[^1] is 's' or 'S' && word[^2] is not ('s' or 'S') ? word[..^1] : word;
    }
}
