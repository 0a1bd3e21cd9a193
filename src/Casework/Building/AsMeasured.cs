using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Building;

/// <summary>What came out on the bench or stands in the room: measured sizes that stand in place of reckoned ones.</summary>
internal sealed class AsMeasured
{
    private readonly List<Phrase<MeasuredSizes>> _phrases = [];
    private readonly List<Phrase<DoorAsFound>> _doors = [];

    public void Add(string phrase, SourcePlace place, MeasuredSizes sizes) =>
        _phrases.Add(new Phrase<MeasuredSizes>(phrase, place, sizes));

    /// <summary>What was measured of doors.</summary>
    public void Add(string phrase, SourcePlace place, DoorAsFound door) =>
        _doors.Add(new Phrase<DoorAsFound>(phrase, place, door));

    /// <summary>The front with what was measured of it, by its name; only doors that turn on their left or right edge are.</summary>
    public Front Found(Front front, string name)
    {
        if (
            front.Motion is not (FrontMotion.TurnsOnLeftEdge or FrontMotion.TurnsOnRightEdge)
            || _doors.FindLast(phrase => phrase.Means(name)) is not { } phrase
        )
            return front;
        phrase.Used = true;
        return front with { AsFound = phrase.Said };
    }

    /// <summary>Phrases of doors that met none.</summary>
    public IEnumerable<(string Phrase, SourcePlace Place)> UnusedOfDoors =>
        _doors.Where(phrase => !phrase.Used).Select(phrase => (phrase.Text, phrase.Place));

    /// <summary>Tells which carcases there are: a phrase that names one does not mean its openings.</summary>
    public void Know(IReadOnlyCollection<string> carcases)
    {
        foreach (var phrase in _phrases)
            phrase.Know(carcases);
    }

    /// <summary>Phrases that met nothing in the piece.</summary>
    public IEnumerable<(string Phrase, SourcePlace Place)> Unused =>
        _phrases.Where(phrase => !phrase.Used).Select(phrase => (phrase.Text, phrase.Place));

    /// <summary>The measured sizes of a carcase, by its name; null where it was not measured.</summary>
    public MeasuredSizes? Carcase(string name) =>
        Use(_phrases.FindLast(phrase => phrase.IsWholeName && phrase.Means(name)));

    /// <summary>An opening as measured: its four sides, and the clear size a front must pass (the smaller of two).</summary>
    public (MeasuredOpening Sides, Figure Width, Figure Height)? Opening(string name, Figure width, Figure height)
    {
        if (Use(_phrases.FindLast(phrase => !phrase.IsWholeName && phrase.Means(name))) is not { } sizes)
            return null;
        var (bottom, top) = (sizes.Width ?? width, sizes.WidthAtTop ?? sizes.Width ?? width);
        var (left, right) = (sizes.Height ?? height, sizes.HeightAtRight ?? sizes.Height ?? height);
        return (
            new MeasuredOpening(bottom.Length, top.Length, left.Length, right.Length),
            Smaller(bottom, top).As("opening width"),
            Smaller(left, right).As("opening height")
        );
    }

    private static MeasuredSizes? Use(Phrase<MeasuredSizes>? phrase)
    {
        if (phrase is not null)
            phrase.Used = true;
        return phrase?.Said;
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
