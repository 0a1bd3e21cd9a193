using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>How far every front that hangs before its opening laps over the edges of it.</summary>
internal sealed class FrontOverlays : ICheck
{
    private const string LapSource =
        "Door = opening + 2 overlays: cabinet door supplier's how-to guide, p. 3; the limits are common practice";

    public static FindingKind Misses { get; } =
        new(
            "front-misses-its-edge",
            Severity.Stop,
            "Front does not cover its opening",
            "The front ends short of the opening's edge, and one looks past it into the carcase."
        );

    public static FindingKind TooSmall { get; } =
        new(
            "overlay-too-small",
            Severity.Stop,
            "Overlay far too small",
            "The front laps over by more than 1 mm less than wanted: the hinge's own overlay no longer fits, and the line of the fronts breaks.",
            LapSource
        );

    public static FindingKind TooLarge { get; } =
        new(
            "overlay-too-large",
            Severity.Stop,
            "Overlay far too large",
            "The front laps over by more than 1 mm more than wanted: it takes its neighbour's room, or stands past the carcase.",
            LapSource
        );

    public static FindingKind Uneven { get; } =
        new(
            "overlay-uneven",
            Severity.Warn,
            "Overlay uneven",
            "The front laps over more at one end than at the other: front or carcase is out of square.",
            "common practice"
        );

    public static FindingKind ALittleOff { get; } =
        new(
            "overlay-a-little-off",
            Severity.Warn,
            "Overlay a little off",
            "The overlay differs from what was wanted by less than 1 mm: hinges can be set that far, drawer fronts can be shifted.",
            LapSource
        );

    public string Name => "overlays of fronts that hang before their openings";

    public string Of => "overlays";

    public string How =>
        "The outermost edge of the front is measured against the edge of its opening at the front of the carcase, over "
        + "their common course: smallest and largest lap. The limits are those of the gaps.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Misses, TooSmall, TooLarge, Uneven, ALittleOff];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var front in piece.Piece.Fronts.Where(front => front.Hang == Hang.Overlay))
        {
            var seen = piece.From(front);
            var sides = FrontSides.Of(seen, front).ToList();
            foreach (var side in sides)
            {
                if (side.Neighbour is not null || side.Gap is not { } gap)
                    continue;
                covered++;
                if (Judge(seen, gap, side.Wanted) is { } kind)
                    findings.Add(Tell(seen, kind, side, gap, sides.Find(s => s.Side == side.Side.Opposite())));
            }
        }
        return new(covered, findings);
    }

    private static FindingKind? Judge(InspectedPiece piece, SideGap gap, Length wanted)
    {
        // A lap is a gap below zero.
        var smallest = -piece.ToLength(gap.Largest.Gap);
        var largest = -piece.ToLength(gap.Smallest.Gap);
        if (smallest < -Tolerance.Rounding && wanted.Sign >= 0)
            return Misses;
        if (wanted - largest > Tolerance.WrongNumber)
            return TooSmall;
        if (smallest - wanted > Tolerance.WrongNumber)
            return TooLarge;
        if (wanted - smallest <= Tolerance.Fitting && largest - wanted <= Tolerance.Fitting)
            return null;
        return largest - smallest > Tolerance.Fitting ? Uneven : ALittleOff;
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
        var worst = kind == TooLarge ? gap.Smallest : gap.Largest;
        var (own, other) = side.Ends(gap.Shown(worst, piece.ToUnits(Tolerance.Fitting)));
        var name = piece.GroupName(side.Front.Group);
        var doubted = FrontRemedy.Doubted(piece, side.Front, side.Side.Axis()).ToList();
        var first = doubted.Count > 0 ? doubted : [piece.Shape(side.Front.Face[0]).Part];
        return new()
        {
            Kind = kind,
            Message = Says(kind, side.Word, name),
            Parts = PartIds.Together(first.Select(part => part.Id), side.Front.Face, side.Faces),
            Place = first[0].Source,
            Related = [piece.Opening(side.Front.Opening).Source],
            Where = piece.ToSpace(other, own),
            Measured = even
                ? new MeasuredLength("overlay", -piece.ToLength(worst.Gap))
                : new MeasuredRange("overlay", -piece.ToLength(gap.Largest.Gap), -piece.ToLength(gap.Smallest.Gap)),
            Wanted = Wanted.Exactly(side.Wanted),
            Remedy = FrontRemedy.For(piece, side, opposite),
            Assumptions = piece.Opening(side.Front.Opening).AsMeasured is null ? [] : [FoundOpening.Assumption],
        };
    }

    private static string Says(FindingKind kind, string word, string name)
    {
        if (kind == Misses)
            return $"The {name} does not reach the edge of its opening at the {word}.";
        if (kind == Uneven)
            return $"The {name} laps over more at one end of its {word} side than at the other.";
        if (kind == TooSmall)
            return $"The {name} laps over far too little at the {word}.";
        if (kind == TooLarge)
            return $"The {name} laps over far too much at the {word}.";
        return $"The {name} laps over a little too much or too little at the {word}.";
    }
}
