using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>The words for the cuts of a loose board: each cut is one word with its sizes and where it is.</summary>
internal static class BoardCutWords
{
    private static SpokenShape Offset { get; } = new("a side and how far from it: back 10");

    private static EitherShape Offsets { get; } = new(Offset, new ListShape(Offset, 1, 2));

    private static Field In { get; } = new("in", Sides.Shape, "The side it is cut into.", Required: true);

    private static Field Wide(string meaning) =>
        new("wide", new LengthShape(LengthSign.AboveZero), meaning, Required: true);

    private static Field Deep(string meaning) =>
        new("deep", new LengthShape(LengthSign.AboveZero), meaning, Required: true);

    private static Field Stopped { get; } =
        new("stopped", Offsets, "Where it stops short of an end, or of both.", Default: "from end to end");

    public static RecordShape Straight { get; } =
        new(
            "straight cut",
            "A groove, dado or notch: so wide and so deep, straight across the side it is cut into. A notch in an edge goes through the thickness.",
            "groove: { in: bottom, from: back 10, wide: 6, deep: 8, stopped: left 20 }",
            () =>
                [
                    In,
                    new(
                        "from",
                        Offset,
                        "The side it runs along, and how far from that side it begins: back 10.",
                        Required: true
                    ),
                    Wide("How wide, away from that side."),
                    Deep("How deep, from the side it is cut into."),
                    Stopped,
                ]
        );

    public static RecordShape Corner { get; } =
        new(
            "corner cut",
            "A rabbet or a bevel along the corner where two sides of a board meet.",
            "rabbet: { in: bottom, at: back, wide: 10, deep: 8 }",
            () =>
                [
                    In,
                    new("at", Sides.Shape, "The other side it takes away from.", Required: true),
                    Wide("How wide, over the side it is cut into, from the other."),
                    Deep("How deep, down the other side."),
                    Stopped,
                ]
        );

    public static RecordShape Bore { get; } =
        new(
            "bore",
            "A round hole, or a row of them.",
            "bore: { in: front, at: [left 50, bottom 30], across: 8, deep: 20, times: 5, every: 32, towards: right }",
            () =>
                [
                    In,
                    new(
                        "at",
                        new ListShape(Offset, 2, 2),
                        "Its centre, from two sides: [left 50, bottom 30].",
                        Required: true
                    ),
                    new("across", new LengthShape(LengthSign.AboveZero), "Its diameter.", Required: true),
                    new(
                        "deep",
                        new LengthShape(LengthSign.AboveZero),
                        "How deep, from the side it is bored into.",
                        Default: "right through"
                    ),
                    new("times", new CountShape(1, 200), "How many in a row.", Default: "1"),
                    new("every", new LengthShape(LengthSign.AboveZero), "From centre to centre in the row."),
                    new(
                        "towards",
                        Sides.Shape,
                        "Which way the row goes on.",
                        Default: "away from the first side named"
                    ),
                ]
        );

    public static RecordShape Taper { get; } =
        new(
            "taper cut",
            "A side that leans in towards one end.",
            "taper: { in: right, towards: bottom, over: 400, by: 12 }",
            () =>
                [
                    new("in", Sides.Shape, "The side that leans in.", Required: true),
                    new("towards", Sides.Shape, "The end towards which it gets thinner.", Required: true),
                    new(
                        "over",
                        new LengthShape(LengthSign.AboveZero),
                        "How long the tapered stretch is, from that end.",
                        Default: "from end to end"
                    ),
                    new("by", new LengthShape(LengthSign.AboveZero), "How much is off at that end.", Required: true),
                ]
        );

    public static RecordShape Arch { get; } =
        new(
            "arch cut",
            "A hollow in an edge, round as a part of a circle.",
            "arch: { in: bottom, from: left 60, to: right 60, rise: 40 }",
            () =>
                [
                    new("in", Sides.Shape, "The edge it is cut into.", Required: true),
                    new("from", Offset, "Where it begins: left 60.", Required: true),
                    new("to", Offset, "Where it ends: right 60.", Required: true),
                    new("rise", new LengthShape(LengthSign.AboveZero), "How high it is in the middle.", Required: true),
                ]
        );

    public static RecordShape Outline { get; } =
        new(
            "sawn outline",
            "A piece of any straight-sided outline that is sawn out, right through.",
            "outline: { from: [left, top], corners: [[0, 0], [80, 0], [0, 120]] }",
            () =>
                [
                    new(
                        "from",
                        new ListShape(Sides.Shape, 2, 2),
                        "The two sides the corners are measured from.",
                        Required: true
                    ),
                    new(
                        "corners",
                        new ListShape(new ListShape(new LengthShape(LengthSign.Any), 2, 2), 3, 100),
                        "Its corners one after the other, each from the two sides.",
                        Required: true
                    ),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "board cut",
            "One cut of a loose board, with its sizes and where it is, measured on the board as it lies.",
            "cuts:\n  - groove: { in: bottom, from: back 10, wide: 6, deep: 8 }\n",
            () =>
                [
                    new("groove", Straight, "A straight cut along the grain."),
                    new("dado", Straight, "A straight cut across the grain."),
                    new("notch", Straight, "A piece taken out of an edge or a corner."),
                    new("rabbet", Corner, "A step along an edge."),
                    new("bevel", Corner, "A corner taken off at a slant."),
                    new("taper", Taper, "A side that leans in towards one end."),
                    new("arch", Arch, "A round hollow in an edge."),
                    new("outline", Outline, "A piece of any outline, sawn out."),
                    new("bore", Bore, "A round hole, or a row of them."),
                ]
        );
}
