using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Finds by trying how much is needed, to the maker's own step: 1/16 in or 1 mm.</summary>
internal static class Solved
{
    /// <summary>Wider than this a strip that closes a gap is a part of the design, and no remedy.</summary>
    public static Length WidestFiller { get; } = Length.FromMillimetres(300);

    private static readonly Length Inch16 = Length.FromInches(0, 1, 16);
    private static readonly Length Millimetre = Length.FromMillimetres(1);

    /// <summary>The least length that does, no more than <paramref name="most"/>; null where that does not either.</summary>
    public static Length? Smallest(InspectedPiece piece, Length most, Func<Length, bool> does)
    {
        var step = Step(piece);
        var (low, high) = (0, (int)(most / step).Ceiling());
        if (!does(step * high))
            return null;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (does(step * middle))
                high = middle;
            else
                low = middle;
        }
        return step * high;
    }

    /// <summary>The greatest length that does, below <paramref name="most"/>, which does not; null where none does.</summary>
    public static Length? Largest(InspectedPiece piece, Length most, Func<Length, bool> does)
    {
        var step = Step(piece);
        var (low, high) = (0, (int)(most / step).Ceiling());
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (does(step * middle))
                low = middle;
            else
                high = middle;
        }
        return low > 0 ? step * low : null;
    }

    private static Length Step(InspectedPiece piece) =>
        piece.Piece.Format.Unit == LengthUnit.Inch ? Inch16 : Millimetre;
}
