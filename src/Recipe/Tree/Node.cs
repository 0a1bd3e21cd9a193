using Dryfit.Findings;

namespace Dryfit.Recipe;

/// <summary>A value of the recipe with its place in the text.</summary>
public abstract record Node(SourcePlace Place);

/// <summary>A single value, as written: <c>3 1/2</c>, <c>width - 2</c>, <c>framed pair</c>. Empty where nothing stands.</summary>
/// <param name="Text">The text without quotes of YAML; lengths may hold inch and foot marks of their own.</param>
public sealed record Scalar(string Text, SourcePlace Place) : Node(Place)
{
    /// <summary>
    /// How many characters after the start of <see cref="Node.Place"/> the text begins: 1 behind a quote; -1 where
    /// text and file do not run side by side (several lines, escapes).
    /// </summary>
    public int TextStart { get; init; }

    /// <summary>Nothing stands here but the key.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text);

    /// <summary>The place of a stretch of the text; the whole value where that cannot be told.</summary>
    /// <param name="start">0 for the first character of <see cref="Text"/>.</param>
    /// <param name="length">In UTF-16 units; less than 1 counts as 1.</param>
    public SourcePlace PlaceOf(int start, int length) =>
        TextStart < 0 ? Place : Place with { Column = Place.Column + TextStart + start, Length = Math.Max(1, length) };
}

/// <summary>A list, in the order written.</summary>
public sealed record Sequence(IReadOnlyList<Node> Items, SourcePlace Place) : Node(Place);

/// <summary>Keys with their values, in the order written; no key stands twice.</summary>
public sealed record Mapping(IReadOnlyList<Entry> Entries, SourcePlace Place) : Node(Place)
{
    /// <summary>The value of a key, or null where it is not written.</summary>
    public Node? this[string key] =>
        Entries.FirstOrDefault(e => string.Equals(e.Key, key, StringComparison.Ordinal))?.Value;
}

/// <summary>One key with its value.</summary>
public sealed record Entry(string Key, SourcePlace KeyPlace, Node Value);
