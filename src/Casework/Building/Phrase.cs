using Dryfit.Findings;

namespace Dryfit.Casework.Building;

/// <summary>A phrase by which the recipe means some parts, units or openings, and what it says of them.</summary>
internal sealed class Phrase<T>(string text, SourcePlace place, T said)
{
    private readonly Namesake _means = new(text);

    // The left side of the right drawer and the right side of the left one have the same words.
    private bool _isInOrder;

    public string Text { get; } = text;

    public SourcePlace Place { get; } = place;

    public T Said { get; } = said;

    /// <summary>True where the phrase is the whole name of something: then it means nothing else.</summary>
    public bool IsWholeName { get; private set; }

    /// <summary>True once it has met something in the piece.</summary>
    public bool Used { get; set; }

    /// <summary>Tells the phrase which names there are.</summary>
    public void Know(IReadOnlyCollection<string> names)
    {
        IsWholeName = names.Any(_means.IsWhole);
        _isInOrder = names.Any(_means.IsExactly);
    }

    public bool Means(string name) =>
        _isInOrder ? _means.IsExactly(name)
        : IsWholeName ? _means.IsWhole(name)
        : _means.IsIn(name);

    /// <summary>Whether the phrase itself holds a word.</summary>
    public bool Says(string word) => _means.Says(word);
}
