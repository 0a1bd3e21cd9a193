using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>The gap on each side of every inset front, and between fronts with nothing between them.</summary>
internal sealed class FrontGaps : ICheck
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

    public string Name => "gaps around inset fronts, in pairs and in stacks";

    public string Of => "gaps";

    public string How =>
        "Each side of an inset front is measured against the parts around its opening (or the opening as measured, where "
        + "the recipe gives it), and the doors of a pair or the drawers of a stack against each other: smallest and largest, over the depth they "
        + "have in common. Within 1/128 in (0.2 mm) of what was wanted nothing is said; from 1 mm on the number is "
        + "taken to be wrong and stops the saw, as does a gap of nothing.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Binds, TooNarrow, TooWide, Tapers, ALittleNarrow, ALittleWide];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var front in piece.Piece.Fronts)
        {
            var seen = piece.From(front);
            var sides = FrontSides.Of(seen, front).ToList();
            foreach (var side in sides)
            {
                var isGap = front.Hang == Hang.Inset || side.Neighbour is not null;
                // A gap between two fronts belongs to both: it is measured and told once, from the one named first.
                if (
                    !isGap
                    || side.Gap is not { } gap
                    || (side.Neighbour is { } neighbour && !IsFirst(piece, front, neighbour))
                )
                    continue;
                covered++;
                if (Judge(seen, gap, side.Wanted) is { } kind)
                    findings.Add(Tell(seen, kind, side, gap, sides.Find(s => s.Side == side.Side.Opposite())));
            }
        }
        return new(covered, findings);
    }

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

    private static FindingKind? Judge(InspectedPiece piece, SideGap gap, Length wanted)
    {
        var smallest = piece.ToLength(gap.Smallest.Gap);
        var largest = piece.ToLength(gap.Largest.Gap);
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

    private static Finding Tell(
        InspectedPiece piece,
        FindingKind kind,
        FrontSide side,
        SideGap gap,
        FrontSide? opposite
    )
    {
        var even = gap.IsEven(piece.ToUnits(Tolerance.Fitting));
        var worst = kind == TooWide || (kind == Tapers && Leans(piece, gap, side.Wanted)) ? gap.Largest : gap.Smallest;
        var (own, other) = side.Ends(gap.Shown(worst, piece.ToUnits(Tolerance.Fitting)));
        var name = piece.GroupName(side.Front.Group);
        var place = side.Neighbour is { } neighbour
            ? $"between the {name} and the {piece.GroupName(neighbour)}"
            : $"at the {side.Word} of the {name}";
        var doubted = Doubted(piece, side).ToList();
        var first = doubted.Count > 0 ? doubted : [piece.Shape(side.Front.Face[0]).Part];
        return new()
        {
            Kind = kind,
            Message = Says(kind, place),
            Parts = PartIds.Together(first.Select(part => part.Id), side.Front.Face, side.Faces),
            Place = first[0].Source,
            Related = [piece.Opening(side.Front.Opening).Source],
            Where = piece.ToSpace(other, own),
            Measured = even
                ? new MeasuredLength("gap", piece.ToLength(worst.Gap))
                : new MeasuredRange("gap", piece.ToLength(gap.Smallest.Gap), piece.ToLength(gap.Largest.Gap)),
            Wanted = Wanted.Exactly(side.Wanted),
            Remedy = FrontRemedy.For(piece, side, opposite),
            Assumptions = IsAsFound(piece, side) ? [FoundOpening.Assumption] : [],
        };
    }

    private static bool IsAsFound(InspectedPiece piece, FrontSide side) =>
        side.Neighbour is null && piece.Opening(side.Front.Opening).AsMeasured is not null;

    private static bool Leans(InspectedPiece piece, SideGap gap, Length wanted) =>
        piece.ToLength(gap.Largest.Gap) - wanted > wanted - piece.ToLength(gap.Smallest.Gap);

    private static IEnumerable<Part> Doubted(InspectedPiece piece, FrontSide side)
    {
        var own = FrontRemedy.Doubted(piece, side.Front, side.Side.Axis());
        return side.Neighbour is { } neighbour && piece.Front(neighbour) is { } other
            ? own.Concat(FrontRemedy.Doubted(piece, other, side.Side.Axis()))
            : own;
    }

    private static string Says(FindingKind kind, string place)
    {
        if (kind == Binds)
            return $"There is no gap {place}: it binds.";
        if (kind == Tapers)
            return $"The gap {place} is wider at one end than at the other.";
        if (kind == TooNarrow)
            return $"The gap {place} is far too narrow.";
        if (kind == TooWide)
            return $"The gap {place} is far too wide.";
        return kind == ALittleNarrow ? $"The gap {place} is a little narrow." : $"The gap {place} is a little wide.";
    }
}
