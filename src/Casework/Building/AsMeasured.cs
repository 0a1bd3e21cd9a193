using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Building;

/// <summary>What came out on the bench or stands in the room: measured sizes that stand in place of reckoned ones.</summary>
internal sealed class AsMeasured
{
    private readonly List<Entry> _entries = [];

    private sealed class Entry
    {
        public required string Phrase { get; init; }

        public required Namesake Means { get; init; }

        public required SourcePlace Place { get; init; }

        public required MeasuredSizes Sizes { get; init; }

        /// <summary>True where the phrase is the name of a carcase: then it does not mean its openings.</summary>
        public bool IsCarcase { get; set; }

        public bool Used { get; set; }
    }

    /// <summary>Tells which carcases there are.</summary>
    public void Know(IReadOnlyCollection<string> carcases)
    {
        foreach (var entry in _entries)
            entry.IsCarcase = carcases.Any(entry.Means.IsWhole);
    }

    public void Add(string phrase, SourcePlace place, MeasuredSizes sizes) =>
        _entries.Add(
            new Entry
            {
                Phrase = phrase,
                Means = new Namesake(phrase),
                Place = place,
                Sizes = sizes,
            }
        );

    /// <summary>Phrases that met nothing in the piece.</summary>
    public IEnumerable<(string Phrase, SourcePlace Place)> Unused =>
        _entries.Where(e => !e.Used).Select(e => (e.Phrase, e.Place));

    /// <summary>The measured sizes of a carcase, by its name; null where it was not measured.</summary>
    public MeasuredSizes? Carcase(string name)
    {
        var entry = _entries.LastOrDefault(e => e.IsCarcase && e.Means.IsWhole(name));
        if (entry is null)
            return null;
        entry.Used = true;
        return entry.Sizes;
    }

    /// <summary>An opening as measured: its four sides, and the clear size a front must pass (the smaller of two).</summary>
    public (MeasuredOpening Sides, Figure Width, Figure Height)? Opening(string name, Figure width, Figure height)
    {
        var entry = _entries.LastOrDefault(e => !e.IsCarcase && e.Means.IsIn(name));
        if (entry is null)
            return null;
        entry.Used = true;
        var sizes = entry.Sizes;
        var (bottom, top) = (sizes.Width ?? width, sizes.WidthAtTop ?? sizes.Width ?? width);
        var (left, right) = (sizes.Height ?? height, sizes.HeightAtRight ?? sizes.Height ?? height);
        return (
            new MeasuredOpening(bottom.Length, top.Length, left.Length, right.Length),
            Smaller(bottom, top).As("opening width"),
            Smaller(left, right).As("opening height")
        );
    }

    private static Figure Smaller(Figure a, Figure b) => a.Quantity == b.Quantity ? a : Figure.Min(a, b);
}

/// <summary>Measured sizes; null where not measured. Width is at the bottom, height at the left where two are given.</summary>
internal sealed record MeasuredSizes(
    Figure? Width,
    Figure? WidthAtTop,
    Figure? Height,
    Figure? HeightAtRight,
    Figure? Depth
);
