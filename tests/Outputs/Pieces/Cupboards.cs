using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Outputs.Tests.Pieces;

/// <summary>Small cupboards of plain boards.</summary>
internal static class Cupboards
{
    /// <summary>A box 600 wide, 700 high, with one slab door inset; the door's gaps are 2 mm but for its right edge.</summary>
    public static Sketch OneDoor(Rational gapAtRight)
    {
        return new Sketch("One-door cupboard")
            .Group("case", GroupKind.Carcase)
            .Group("case/door", GroupKind.Door, "door", "case")
            .Board("case/left-side", Role.Side, (0, 0, 0), (18, 300, 700), group: "case")
            .Board("case/right-side", Role.Side, (582, 0, 0), (600, 300, 700), group: "case")
            .Board("case/bottom", Role.Bottom, (18, 0, 0), (582, 300, 18), group: "case")
            .Board("case/top", Role.Top, (18, 0, 682), (582, 300, 700), group: "case")
            .Board("case/back", Role.Back, (18, 290, 18), (582, 300, 682), group: "case")
            .Board("case/shelf", Role.Shelf, (18, 20, 340), (582, 290, 358), group: "case")
            .Board("case/door/slab", Role.DoorSlab, (20, 0, 20), (582 - gapAtRight, 18, 680), group: "case/door")
            .Opening("case/opening", (18, 0, 18), (582, 290, 682))
            .Front("case/door", "case/opening", FrontMotion.TurnsOnLeftEdge, ["case/door/slab"]);
    }

    public static readonly FindingKind GapTooWide = new(
        "door-gap-too-wide",
        Severity.Stop,
        "Door gap too wide",
        "A door that is too small cannot be made larger."
    );

    /// <summary>What a check would say of <see cref="OneDoor"/> with a wide gap at its right edge.</summary>
    public static Finding TooWide(Rational gap) =>
        new()
        {
            Kind = GapTooWide,
            Message = "The gap on the right of the door is too wide.",
            Parts = ["case/door/slab", "case/right-side"],
            Place = new("cupboard.dryfit.yaml", 12, 5, 8),
            Where = new(new((582 - gap).ToDouble(), 0, 350), new(582, 0, 350)),
            Measured = new MeasuredLength("gap", Sketch.Mm(gap)),
            Wanted = new(Sketch.Mm(1), Sketch.Mm(3)),
            Remedy = new("Make the door 560 wide.", Sure: true),
        };

    public static Report ReportOf(params Finding[] findings) =>
        new(
            findings,
            [
                CheckRun.Over("gaps around inset fronts", 4, "gaps"),
                CheckRun.Left("tip-over", "not part of this tool yet"),
            ]
        );

    /// <summary>Names that a page, a drawing or a terminal could trip over.</summary>
    public static readonly string[] HostileNames =
    [
        "<script>alert('x')</script>",
        "\"&'<>]]>-->",
        "דלת שמאל 3/4",
        "safe \u202Egnp.exe",
        "tab\tline\nbreak\u0000nul\u001b[31m",
        "half \ud800 a pair",
        "{{ 1 + 1 }} {% x %}",
        new string('w', 5000),
    ];
}
