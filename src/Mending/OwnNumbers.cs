using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Mending;

/// <summary>What the maker's own numbers would be by the sum: the piece is built without them, and the same sizes are asked.</summary>
internal sealed class OwnNumbers
{
    private readonly Dictionary<SourcePlace, Length?> _reckoned = [];

    /// <param name="now">The piece with the maker's own numbers.</param>
    /// <param name="reckoned">The piece without them.</param>
    public OwnNumbers(Piece now, Piece reckoned)
    {
        var sizes = SizesOf(reckoned).ToDictionary(size => (size.Of, size.Which), size => size.Figure);
        foreach (var (of, which, figure) in SizesOf(now))
        {
            if (Reasons.SaidAt(figure) is not { } place || !sizes.TryGetValue((of, which), out var wanted))
                continue;
            // One number for several parts that should differ has no reckoned value of its own.
            var length = Reasons.SaidAt(wanted) == place ? (Length?)null : wanted.Length;
            _reckoned[place] = _reckoned.TryGetValue(place, out var known) && known != length ? null : length;
        }
    }

    /// <summary>What a number would be by the sum; null where that is not one length.</summary>
    public Length? Reckoned(WrittenLength number) => number.IsAlone ? _reckoned.GetValueOrDefault(number.Whole) : null;

    private static IEnumerable<(string Of, string Which, Figure Figure)> SizesOf(Piece piece)
    {
        foreach (var part in piece.Parts)
        {
            yield return (part.Id, "length", part.Length);
            yield return (part.Id, "width", part.Width);
            yield return (part.Id, "thickness", part.Thickness);
        }
        foreach (var group in piece.Groups)
        {
            foreach (var size in group.Sizes.DistinctBy(size => size.Name, StringComparer.Ordinal))
                yield return ("of " + group.Id, size.Name, size.Figure);
        }
    }
}
