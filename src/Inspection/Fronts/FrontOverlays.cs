using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>How far every front that hangs before its opening laps over the edges of it.</summary>
internal sealed class FrontOverlays : SideCheck
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

    public override string Name => "overlays of fronts that hang before their openings";

    public override string Of => "overlays";

    public override string How =>
        "The outermost edge of the front is measured against the edge of its opening at the front of the carcase, over "
        + "their common course: smallest and largest lap. The limits are those of the gaps, but that a lap may run out by 1/32 in (0.8 mm) from "
        + "one end to the other while it is right somewhere between: nothing lies beside it that shows it to the eye.";

    public override IReadOnlyList<FindingKind> Kinds { get; } = [Misses, TooSmall, TooLarge, Uneven, ALittleOff];

    protected override string Measures => "overlay";

    protected override bool GrowsWithGap => false;

    protected override bool Concerns(Front front) => front.Hang == Hang.Overlay;

    protected override bool LooksAt(InspectedPiece piece, FrontSide side) => side.Neighbour is null;

    protected override FindingKind? Judge(Length smallest, Length largest, Length wanted)
    {
        if (smallest < -Tolerance.Rounding && wanted.Sign >= 0)
            return Misses;
        if (wanted - largest > Tolerance.WrongNumber)
            return TooSmall;
        if (smallest - wanted > Tolerance.WrongNumber)
            return TooLarge;
        if (largest - smallest > Tolerance.SeenLap)
            return Uneven;
        return wanted - largest > Tolerance.Fitting || smallest - wanted > Tolerance.Fitting ? ALittleOff : null;
    }

    protected override bool IsTooMuch(FindingKind kind) => kind == TooLarge;

    protected override bool Runs(FindingKind kind) => false;

    protected override string Says(FindingKind kind, string name, FrontSide side, string place, string larger)
    {
        if (kind == Misses)
            return $"The {name} does not reach the edge of its opening at the {side.Word}.";
        if (kind == Uneven)
            return $"The {name} laps over more {larger} of its {side.Word} side than at the other end.";
        if (kind == TooSmall)
            return $"The {name} laps over far too little at the {side.Word}.";
        if (kind == TooLarge)
            return $"The {name} laps over far too much at the {side.Word}.";
        return $"The {name} laps over a little too much or too little at the {side.Word}.";
    }
}
