using System.Diagnostics.CodeAnalysis;

namespace Dryfit.Measure;

/// <summary>What reading a length gave: the length, or why there is none.</summary>
public readonly record struct LengthResult
{
    private readonly Length _length;

    private LengthResult(Length length, LengthFailure? failure) => (_length, Failure) = (length, failure);

    /// <summary>Whether a length was read.</summary>
    [MemberNotNullWhen(false, nameof(Failure))]
    public bool Ok => Failure is null;

    /// <summary>Why there is no length; null where there is one.</summary>
    public LengthFailure? Failure { get; }

    /// <summary>The length read.</summary>
    /// <exception cref="InvalidOperationException">There is none; ask <see cref="Ok"/> first.</exception>
    public Length Length => Failure is null ? _length : throw new InvalidOperationException(Failure.Message);

    internal static LengthResult Of(Length length) => new(length, null);

    internal static LengthResult Of(LengthFailure failure) => new(default, failure);
}

/// <summary>Why a text is no length, and where.</summary>
/// <param name="Position">
/// The first offending character, counted from 0 in UTF-16 units; the text's own length where it stops too early.
/// </param>
/// <param name="Extent">How many characters are at fault; at least 1.</param>
/// <param name="Message">One sentence in the shop's words.</param>
/// <param name="Expected">What would be right here, as a phrase.</param>
/// <param name="Suggestion">What was probably meant, where that can be told.</param>
public sealed record LengthFailure(
    int Position,
    int Extent,
    string Message,
    string Expected,
    string? Suggestion = null
);
