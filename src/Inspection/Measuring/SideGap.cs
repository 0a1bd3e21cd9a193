using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// The room between two edges that face each other: smallest and largest over their common course, in grid units; below
/// zero where they overlap. Smallest and largest are taken at every corner of either edge, on both sides of a step, so
/// that they are exact for straight edges, tapers and notches.
/// </summary>
internal sealed record SideGap(GapAt Smallest, GapAt Largest, double From, double To)
{
    /// <summary>Whether the two edges run alike to within a length.</summary>
    public bool IsEven(double within) => Largest.Gap - Smallest.Gap <= within;

    /// <summary>Where to draw the dimension: midway where the gap is even, else where it is asked for.</summary>
    public GapAt Shown(GapAt at, double even)
    {
        if (!IsEven(even))
            return at;
        return at with { Course = (From + To) / 2 };
    }

    /// <summary>
    /// Measures from <paramref name="own"/> (what reaches farthest) to <paramref name="other"/> (what is met first).
    /// </summary>
    /// <param name="own">Drawn by <see cref="Outline.Facing"/>.</param>
    /// <param name="other">Drawn by <see cref="Outline.Against"/>, in the same direction and along the same axis.</param>
    /// <param name="band">How far behind the outermost an edge may still lie; what lies deeper is no edge but a hole, such as
    /// an open joint leaves.</param>
    /// <param name="ahead">Only what lies farther that way than this is met: the middle of what is measured from.</param>
    /// <returns>Null where the two have no course in common.</returns>
    public static SideGap? Measure(Outline own, Outline other, double ahead, double band)
    {
        var theirs = other.Lines.Where(line => line.Farthest > ahead).ToList();
        if (own.Lines.Count == 0 || theirs.Count == 0)
            return null;
        var from = Math.Max(own.Lines.Min(l => l.From), theirs.Min(l => l.From));
        var to = Math.Min(own.Lines.Max(l => l.To), theirs.Max(l => l.To));
        var mine = own.Lines.Where(l => l.From < to && l.To > from).ToList();
        theirs = [.. theirs.Where(l => l.From < to && l.To > from)];
        if (mine.Count == 0 || theirs.Count == 0)
            return null;

        var outermost = mine.Max(l => l.Farthest);
        mine.RemoveAll(l => l.Farthest < outermost - band);
        var nearest = theirs.Where(l => l.Nearest > ahead).Select(l => l.Nearest).DefaultIfEmpty(ahead).Min();
        theirs.RemoveAll(l => l.Nearest > nearest + band);
        var stations = new SortedSet<double> { from, to };
        foreach (var line in mine.Concat(theirs))
        {
            if (line.From > from && line.From < to)
                stations.Add(line.From);
            if (line.To > from && line.To < to)
                stations.Add(line.To);
        }

        GapAt? smallest = null;
        GapAt? largest = null;
        double? previous = null;
        foreach (var station in stations)
        {
            // Between two stations nothing begins or ends: what spans them is judged at both, from within.
            if (previous is { } start)
            {
                foreach (var at in (ReadOnlySpan<double>)[start, station])
                {
                    if (Between(mine, theirs, start, station, at, ahead) is not { } gap)
                        continue;
                    if (smallest is null || gap.Gap < smallest.Gap)
                        smallest = gap;
                    if (largest is null || gap.Gap > largest.Gap)
                        largest = gap;
                }
            }
            previous = station;
        }
        return smallest is null || largest is null ? null : new(smallest, largest, from, to);
    }

    private static GapAt? Between(
        List<OutlineLine> mine,
        List<OutlineLine> theirs,
        double start,
        double end,
        double at,
        double ahead
    )
    {
        var reach = double.MinValue;
        foreach (var line in mine)
        {
            if (line.From <= start && line.To >= end)
                reach = Math.Max(reach, line.ReachAt(at));
        }
        var met = double.MaxValue;
        foreach (var line in theirs)
        {
            if (line.From <= start && line.To >= end && line.ReachAt(at) is var there && there > ahead)
                met = Math.Min(met, there);
        }
        return reach == double.MinValue || met == double.MaxValue ? null : new(met - reach, at, reach, met);
    }
}

/// <summary>The gap at one place of its course.</summary>
/// <param name="Gap">Grid units; below zero where the two overlap.</param>
/// <param name="Course">Where along the edge.</param>
/// <param name="Own">How far the one reaches.</param>
/// <param name="Other">Where the other is met.</param>
internal sealed record GapAt(double Gap, double Course, double Own, double Other)
{
    /// <summary>The two ends of the gap as points of the piece.</summary>
    public (Vec3 Own, Vec3 Other) Ends(Direction direction, Axis along, double third) =>
        (Point(direction, along, third, Own), Point(direction, along, third, Other));

    private Vec3 Point(Direction direction, Axis along, double third, double reach)
    {
        Span<double> at = stackalloc double[3];
        at[(int)direction.Axis()] = reach * direction.Sign();
        at[(int)along] = Course;
        at[(int)Outline.Third(direction.Axis(), along)] = third;
        return new(at[0], at[1], at[2]);
    }
}
