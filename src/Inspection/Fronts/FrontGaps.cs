using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>The gap on each side of every inset front, and between fronts with nothing between them.</summary>
internal sealed class FrontGaps : SideCheck
{
    private const string GapSource =
        "Inset gap of 3/32 in a side: WOODWEB, Inset Cabinet Door Clearance; 3 mm between frameless fronts: common practice";

    public static FindingKind Binds { get; } =
        new(
            "front-binds",
            Severity.Stop,
            "Front binds in its opening",
            "There is no gap left on this side: the door or drawer will not go in, or jams at the first damp week."
        );

    public static FindingKind TooNarrow { get; } =
        new(
            "front-gap-too-narrow",
            Severity.Stop,
            "Gap far too narrow",
            "More than 1 mm is missing, which no plane shaving makes up: a number is wrong.",
            GapSource
        );

    public static FindingKind TooWide { get; } =
        new(
            "front-gap-too-wide",
            Severity.Stop,
            "Gap far too wide",
            "The gap is more than 1 mm wider than wanted: it shows across the room, and wood cannot be put back.",
            GapSource
        );

    public static FindingKind Tapers { get; } =
        new(
            "front-gap-tapers",
            Severity.Warn,
            "Gap tapers",
            "The gap is not the same from end to end, and the eye sees a taper sooner than a width.",
            "common practice"
        );

    public static FindingKind ALittleNarrow { get; } =
        new(
            "front-gap-a-little-narrow",
            Severity.Warn,
            "Gap a little narrow",
            "There is a gap, but less than wanted: it may do, or want a shaving once the front is hung.",
            GapSource
        );

    public static FindingKind ALittleWide { get; } =
        new(
            "front-gap-a-little-wide",
            Severity.Warn,
            "Gap a little wide",
            "The gap is wider than wanted by less than 1 mm: look whether it may stay before cutting.",
            GapSource
        );

    public override string Name => "gaps around inset fronts, in pairs and in stacks";

    public override string Of => "gaps";

    public override string How =>
        "Each side of an inset front is measured against the parts around its opening (or the opening as measured, where "
        + "the recipe gives it), and the doors of a pair or the drawers of a stack against each other: smallest and largest, over the depth they "
        + "have in common. Within 1/128 in (0.2 mm) of what was wanted nothing is said; from 1 mm on the number is "
        + "taken to be wrong and stops the saw, as does a gap of nothing.";

    public override IReadOnlyList<FindingKind> Kinds { get; } =
    [Binds, TooNarrow, TooWide, Tapers, ALittleNarrow, ALittleWide];

    protected override string Measures => "gap";

    protected override bool GrowsWithGap => true;

    protected override bool Concerns(Front front) => front.Hang == Hang.Inset || front.Neighbours.Count > 0;

    protected override bool LooksAt(InspectedPiece piece, FrontSide side) =>
        side.Neighbour is { } neighbour
            // A gap between two fronts belongs to both: it is measured and told once, from the one named first.
            ? IsFirst(piece, side.Front, neighbour)
            : side.Front.Hang == Hang.Inset;

    private static bool IsFirst(InspectedPiece piece, Front front, string neighbour)
    {
        foreach (var one in piece.Piece.Fronts)
        {
            if (one.Group == front.Group)
                return true;
            if (one.Group == neighbour)
                return false;
        }
        return true;
    }

    protected override FindingKind? Judge(Length smallest, Length largest, Length wanted)
    {
        var missing = wanted - smallest;
        var over = largest - wanted;
        if (smallest <= Tolerance.Rounding && wanted > Tolerance.Fitting)
            return Binds;
        if (missing > Tolerance.WrongNumber)
            return TooNarrow;
        // A side that is right at one end is no wrong number but out of square.
        if (smallest - wanted > Tolerance.WrongNumber)
            return TooWide;
        if (missing <= Tolerance.Fitting && over <= Tolerance.Fitting)
            return null;
        if (largest - smallest > Tolerance.Fitting)
            return Tapers;
        return missing > Tolerance.Fitting ? ALittleNarrow : ALittleWide;
    }

    protected override bool IsTooMuch(FindingKind kind) => kind == TooWide;

    protected override bool Runs(FindingKind kind) => kind == Tapers;

    protected override string Says(FindingKind kind, string name, FrontSide side, string place, string larger)
    {
        if (kind == Binds)
            return $"There is no gap {place}: it binds.";
        if (kind == Tapers)
            return $"The gap {place} is wider {larger} than at its other end.";
        if (kind == TooNarrow)
            return $"The gap {place} is far too narrow.";
        if (kind == TooWide)
            return $"The gap {place} is far too wide.";
        return kind == ALittleNarrow ? $"The gap {place} is a little narrow." : $"The gap {place} is a little wide.";
    }
}
