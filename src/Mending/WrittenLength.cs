using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Mending;

/// <summary>A length that stands in a file as a number, by itself or in a formula: something that an edit may change.</summary>
internal sealed record WrittenLength
{
    /// <summary>The number with its unit, and nothing else of the value.</summary>
    public required SourcePlace Place { get; init; }

    public required string Text { get; init; }

    public required Length Value { get; init; }

    public required NumberStyle Style { get; init; }

    /// <summary>Where the whole value begins: sums lead to that.</summary>
    public required SourcePlace Whole { get; init; }

    /// <summary>Whether the number is the whole value.</summary>
    public required bool IsAlone { get; init; }

    /// <summary>The keys on the way to it, the outermost first.</summary>
    public required IReadOnlyList<string> Keys { get; init; }

    /// <summary>Places of those keys and of what they hold, the innermost first.</summary>
    public required IReadOnlyList<SourcePlace> Within { get; init; }

    /// <summary>The step it may be changed by, and a value that such steps lead to.</summary>
    public (Length By, Length From)? Steps { get; init; }

    /// <summary>Whether it is a number of the maker's own for a part or unit.</summary>
    public bool IsAsCut => Keys is ["as cut", ..];

    /// <summary>The nearest length that may be written here.</summary>
    public Length Nearest(Length wish)
    {
        var (by, from) = Steps ?? (Style.Step, Length.Zero);
        return from + (wish - from).RoundTo(by);
    }

    /// <summary>The edit that makes it another length; null where that cannot be written, or is what stands there.</summary>
    public Edit? To(Length length)
    {
        var written = length.Sign > 0 ? Style.Write(length) : null;
        return written is null || length == Value ? null : new Edit(Place, Text, written);
    }
}
