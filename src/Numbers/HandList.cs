using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Numbers;

/// <summary>A cut list written by hand, as read.</summary>
public sealed record HandList(IReadOnlyList<ListLine> Lines);

/// <summary>One line of a list: what it names and the sizes it gives.</summary>
/// <param name="Phrase">The part or parts as the maker calls them.</param>
/// <param name="Ids">Ids of parts, where the list has them; they count before the phrase.</param>
/// <param name="Quantity">How many; null where that is not said.</param>
public sealed record ListLine(
    string Phrase,
    IReadOnlyList<string> Ids,
    IReadOnlyList<ListSize> Sizes,
    int? Quantity,
    SourcePlace Place
);

/// <summary>A size that a list gives.</summary>
/// <param name="Which">Length, width or thickness.</param>
/// <param name="Text">As written.</param>
public sealed record ListSize(SizeKind Which, Length Value, string Text, SourcePlace Place);

/// <summary>Which size of a part.</summary>
public enum SizeKind
{
    /// <summary>Along the grain; of a whole door from bottom to top.</summary>
    Length,

    /// <summary>Across the grain; of a whole door from left to right.</summary>
    Width,
    Thickness,
}
