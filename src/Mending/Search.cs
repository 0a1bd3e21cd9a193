using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Mending;

/// <summary>Looks for the edits that mend one finding and change least.</summary>
/// <param name="aim">The finding as it stands now, with what was settled before.</param>
/// <param name="asFound">The same finding in the report, whose places are those of the files.</param>
/// <param name="piece">The piece as the files say it, whose sums lead to lines of them.</param>
/// <param name="numbers">The numbers that may be changed.</param>
/// <param name="own">What the maker's own numbers would be by the sum; null where there are none.</param>
internal sealed class Search(
    Aim aim,
    Finding asFound,
    Piece piece,
    IReadOnlyList<WrittenLength> numbers,
    OwnNumbers? own
)
{
    /// <summary>More numbers than these have no say in one finding, or the finding is not theirs.</summary>
    private const int MostNumbers = 20;

    /// <summary>How far inside of a word's key its own numbers stand: the key, what it holds, the number's key, the number.</summary>
    private const int InOneWord = 3;

    private readonly HashSet<SourcePlace> _behindFirst =
    [
        .. Reasons.PlacesBehind(
            piece.Parts.Where(part => asFound.Parts is [var first, ..] && part.Id == first).SelectMany(Reasons.SizesOf)
        ),
    ];

    private int _looked;

    /// <summary>Own numbers first, which are the likeliest slips; then all others that have a say. Null where nothing does it.</summary>
    public Cure? Cure()
    {
        var concerned = Concerned();
        var ownOnes = concerned.Where(number => number.IsAsCut).ToList();
        _looked = ownOnes.Count;
        var reckoned = AsReckoned(ownOnes);
        if (reckoned is not null && ownOnes.Count == 1)
            return reckoned;
        if (Best([reckoned, .. ownOnes.Select(Solve)]) is { } slip)
            return slip;
        var others = concerned.Where(number => !number.IsAsCut).Take(MostNumbers).ToList();
        _looked += others.Count;
        return Best([.. others.Select(Solve)]);
    }

    /// <summary>Why there is no cure, as a sentence.</summary>
    public string WhyNot()
    {
        if (_looked == 0)
            return "No number of the recipe that may be changed has a say in it: it comes from the shop's habits or from what was measured.";
        if (aim.Now is null)
            return "It is no size that is off, so there is no number to solve for.";
        if (aim.IsOver)
            return string.Create(
                CultureInfo.InvariantCulture,
                $"No number that mends it was found before the limit of {aim.Limit} builds."
            );
        if (aim.Spoiled is { } spoiled)
            return $"{Words.Of([spoiled.Edit], asFound.Place?.File ?? spoiled.Edit.Place.File)} would do it, but then: {spoiled.Instead.Message}";
        return _looked == 1
            ? "The one number that has a say in it does not mend it."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"None of the {_looked} numbers that have a say in it mends it alone."
            );
    }

    private Cure? Solve(WrittenLength number) => aim.IsOver ? null : new Solver(aim, number).Solve();

    /// <summary>The maker's own numbers set to what the sum says: one of them where that does it, else as few as do.</summary>
    private Cure? AsReckoned(List<WrittenLength> numbers)
    {
        var slips = new List<(Edit Edit, Length By)>();
        foreach (var number in numbers)
        {
            if (own?.Reckoned(number) is { } wish && number.To(number.Nearest(wish)) is { } edit)
                slips.Add((edit, Length.Abs(wish - number.Value)));
        }
        slips = [.. slips.OrderBy(slip => slip.By)];
        foreach (var slip in slips)
        {
            if (Tried([slip]) is { } cure)
                return cure;
        }
        if (slips.Count < 2 || Tried(slips) is not { } all)
            return null;
        foreach (var slip in slips.ToList())
        {
            var fewer = slips.Where(other => other != slip).ToList();
            if (fewer.Count > 0 && Tried(fewer) is { } enough)
                (slips, all) = (fewer, enough);
        }
        return all;
    }

    private Cure? Tried(IReadOnlyList<(Edit Edit, Length By)> slips)
    {
        var edits = slips.Select(slip => slip.Edit).ToList();
        return aim.Try(edits) is { IsMended: true, Tried: { } tried }
            ? new Cure(edits, slips.Aggregate(Length.Zero, (sum, slip) => sum + slip.By), tried)
            : null;
    }

    /// <summary>
    /// The cure that changes least. Of the maker's own numbers that by the least; of others one in the very line that the
    /// finding names, or behind the sizes of its first part, before all that reach further; then the one that changes the
    /// fewest parts.
    /// </summary>
    private Cure? Best(IEnumerable<Cure?> cures) =>
        cures
            .OfType<Cure>()
            .OrderBy(cure => cure.Edits.All(IsNear) ? 0 : 1)
            .ThenBy(cure => cure.Edits.All(IsOwn) ? 0 : Changes.Count(aim.Before.Piece, cure.Outcome.Piece))
            .ThenBy(cure => cure.By)
            .FirstOrDefault();

    private bool IsOwn(Edit edit) => numbers.Any(number => number.IsAsCut && number.Place == edit.Place);

    private bool IsNear(Edit edit) =>
        IsOwn(edit)
        || numbers.Any(number => number.Place == edit.Place && _behindFirst.Contains(number.Whole))
        || (
            asFound.Place is { } line
            && numbers.Any(number =>
                number.Place == edit.Place && Depth(number, [line with { UsedAt = null }]) is >= 0 and <= InOneWord
            )
        );

    /// <summary>The numbers that have a say: those of the lines the finding names, nearest first, then those of the sums.</summary>
    private IReadOnlyList<WrittenLength> Concerned()
    {
        var lines = ((SourcePlace?[])[asFound.Place, .. asFound.Related])
            .Concat(
                piece
                    .Parts.Where(part => asFound.Parts.Contains(part.Id, StringComparer.Ordinal))
                    .Select(part => part.Source)
            )
            .OfType<SourcePlace>()
            .Select(place => place with { UsedAt = null })
            .ToHashSet();
        var named = numbers
            .Select((number, n) => (Number: number, n, Depth: Depth(number, lines)))
            .Where(number => number.Depth >= 0)
            .OrderBy(number => number.Depth)
            .ThenBy(number => number.n)
            .Select(number => number.Number);
        var sums = Reasons
            .PlacesBehind(asFound, piece)
            .SelectMany(place => numbers.Where(number => number.Whole == place));
        return
        [
            .. named
                .Where(n => n.IsAsCut)
                .Concat(sums.Where(n => n.IsAsCut))
                .Concat(Alternating(named, sums))
                .Distinct(),
        ];
    }

    /// <summary>One of each in turn: a line that is named may hold a whole carcase, and a sum may lead through a whole recipe.</summary>
    private static IEnumerable<WrittenLength> Alternating(IEnumerable<WrittenLength> a, IEnumerable<WrittenLength> b)
    {
        var (first, second) = (a.ToList(), b.ToList());
        for (var n = 0; n < Math.Max(first.Count, second.Count); n++)
        {
            if (n < first.Count)
                yield return first[n];
            if (n < second.Count)
                yield return second[n];
        }
    }

    /// <summary>How far inside of a named line a number stands, counted in keys and what they hold; -1 where it stands in none.</summary>
    private static int Depth(WrittenLength number, HashSet<SourcePlace> lines)
    {
        if (lines.Contains(number.Whole))
            return 0;
        for (var depth = 0; depth < number.Within.Count; depth++)
        {
            if (lines.Contains(number.Within[depth]))
                return depth;
        }
        return -1;
    }
}
