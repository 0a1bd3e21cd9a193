using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// Where fastenings in a row stand: each in the middle of its share of the width, all moved along together where they would
/// run into what was bored from the other side.
/// </summary>
internal static class Stagger
{
    /// <summary>Wood that stays between fastenings from two sides.</summary>
    private static readonly Length Wall = Length.FromMillimetres(2);

    /// <param name="receives">The parts that are bored.</param>
    /// <param name="at">What a fastening takes away at a place of the row, a box of the piece.</param>
    /// <returns>Their places along the row; shared out evenly where no row is free of the others.</returns>
    public static IReadOnlyList<Length> Places(
        IReadOnlyList<PartDraft> receives,
        Length from,
        Length to,
        int count,
        Func<Length, Extent> at
    )
    {
        var step = (to - from) / (count * 2);
        var even = Enumerable.Range(0, count).Select(n => from + (step * ((2 * n) + 1))).ToList();
        var taken = receives.SelectMany(Taken).ToList();
        if (taken.Count == 0)
            return even;
        var (first, second) = (at(from), at(from + Length.FromMillimetres(1)));
        var axis = Enum.GetValues<Axis>().Single(a => first.Min[a] != second.Min[a]);
        var wide = first.Size(axis);
        foreach (var by in new[] { Length.Zero, wide + Wall, -(wide + Wall), (wide + Wall) * 2, -(wide + Wall) * 2 })
        {
            var moved = even.ConvertAll(place => place + by);
            if (
                moved[0] - wide >= from
                && moved[^1] + wide <= to
                && moved.TrueForAll(place => IsFree(at(place), taken))
            )
                return moved;
        }
        return even;
    }

    private static bool IsFree(Extent place, List<Extent> taken) =>
        !taken.Exists(box => Extent.Shared(box, Grown(place)) is not null);

    /// <summary>Whether a box of the piece stays clear of all that is bored in a part, with wood between.</summary>
    public static bool IsFree(PartDraft part, Extent place) => IsFree(place, [.. Taken(part)]);

    private static Extent Grown(Extent box) =>
        Enum.GetValues<Direction>().Aggregate(box, (grown, side) => grown.Grown(side, Wall));

    /// <summary>The boxes of the piece round all that was bored or slotted.</summary>
    private static IEnumerable<Extent> Taken(PartDraft part) =>
        part
            .Cuts.Select(cut =>
                cut switch
                {
                    RoundCut { TiltDegrees: 0 } round => Dowels.HoleBox(
                        round.From,
                        round.Into,
                        round.Diameter,
                        round.Depth
                    ),
                    SquareCut { Kind: CutKind.BiscuitSlot } slot => slot.Extent,
                    _ => (Extent?)null,
                }
            )
            .OfType<Extent>()
            .Select(part.Place.ToPiece);
}
