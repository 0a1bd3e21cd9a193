using System.Numerics;
using Dryfit.Measure;

namespace Dryfit.Casework.Building;

/// <summary>Finds the grid on which every length of the piece is a whole number.</summary>
internal static class GridChoice
{
    /// <summary>1/128 in is 127 and 0.1 mm is 64 of these.</summary>
    private const int UnitsPerMm = 640;

    /// <summary>Finer than this the numbers of the solids would lose their room; what is finer still is rounded.</summary>
    private const int FinestParts = 1 << 20;

    public static Grid For(IReadOnlyList<PartDraft> parts)
    {
        var common = BigInteger.One;
        foreach (var length in parts.SelectMany(Lengths))
        {
            var denominator = (length.Millimetres * UnitsPerMm).Denominator;
            common = common / BigInteger.GreatestCommonDivisor(common, denominator) * denominator;
            if (common > FinestParts)
                return new Grid((long)UnitsPerMm * 1024);
        }
        return new Grid(UnitsPerMm * (long)common);
    }

    private static IEnumerable<Length> Lengths(PartDraft part)
    {
        yield return part.Length.Length;
        yield return part.Width.Length;
        yield return part.Thickness.Length;
        foreach (var length in Coordinates(part.Place.Origin))
            yield return length;
        foreach (var length in part.Cuts.SelectMany(Lengths))
            yield return length;
        for (var turn = part.Turn; turn is not null; turn = turn.Within)
        {
            yield return turn.Pivot.X;
            yield return turn.Pivot.Y;
            if (turn.About != Axis.Z)
                yield return turn.Pivot.Z;
        }
    }

    private static IEnumerable<Length> Lengths(PartCut cut) =>
        cut switch
        {
            SquareCut square => [.. Coordinates(square.Extent.Min), .. Coordinates(square.Extent.Max)],
            RoundCut round => [.. Coordinates(round.From), round.Diameter / 2, round.Depth],
            OutlineCut outline => [.. outline.Outline.SelectMany(p => new[] { p.A, p.B }), outline.From, outline.To],
            _ => [],
        };

    private static Length[] Coordinates(Point point) => [point.X, point.Y, point.Z];
}
