using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>What the recipe may say of the inside of a framed or glazed door.</summary>
internal static class FrameShapes
{
    private static readonly LengthShape Size = new(LengthSign.AboveZero);

    private static RecordShape Rails { get; } =
        new(
            "middle rails",
            "Rails between the top and the bottom rail of a door: so many at equal distances, or at heights.",
            "middle rails: { at: [30], width: 4 }\n",
            () =>
                [
                    new("equal", new CountShape(1, 8), "How many, with equal heights between them."),
                    new(
                        "at",
                        new ListShape(Size, 1, 8),
                        "Heights from the lower edge of the door to the lower edge of each, from the lowest."
                    ),
                    new("width", Size, "Their width.", Default: "as the rails"),
                ]
        );

    private static RecordShape Muntins { get; } =
        new(
            "muntins",
            "Uprights between the rails of a framed door, evenly, so many in each row of panels.",
            "muntins: { count: 1, width: 2 }\n",
            () =>
                [
                    new("count", new CountShape(1, 8), "How many in each row.", Required: true),
                    new("width", Size, "Their width.", Default: "as the stiles"),
                ]
        );

    private static RecordShape Bars { get; } =
        new(
            "bars",
            "Bars that divide the glass of a door into lights of equal size, each with a pane of its own.",
            "bars: { columns: 2, rows: 3 }\n",
            () =>
                [
                    new("columns", new CountShape(1, 12), "Lights side by side.", Default: "1"),
                    new("rows", new CountShape(1, 12), "Lights one above the other.", Default: "1"),
                    new("width", Size, "Width of the bars.", Default: "the shop's bars"),
                ]
        );

    public static Field Arch { get; } =
        new(
            "arch",
            Size,
            "How much an arched top rail rises: its lower edge is part of a circle, so much higher in the middle than at the stiles. The top rail is as wide as said in the middle.",
            Default: "none: a straight rail"
        );

    public static IReadOnlyList<Field> Divisions { get; } =
    [
        new(
            "middle rails",
            new EitherShape(new CountShape(0, 8), Rails),
            "Rails between the top and the bottom one: a two-panel door has one. A number alone spaces them evenly.",
            Default: "none"
        ),
        new(
            "muntins",
            new EitherShape(new CountShape(0, 8), Muntins),
            "Uprights between the panels of a framed door, in each row.",
            Default: "none"
        ),
        new("bars", Bars, "Bars in the glass of a glazed door.", Default: "none"),
    ];

    public static Field Raised { get; } =
        new(
            "raised",
            new EitherShape(
                new BareShape(),
                new RecordShape(
                    "raised",
                    "Raised panels: a bevel rises from the tongue in the groove to a step around the field.",
                    "raised: { bevel: 1 1/2, fillet: 1/16 }\n",
                    () =>
                        [
                            new("bevel", Size, "Width of the bevel.", Default: "the shop's bevel"),
                            new(
                                "fillet",
                                new LengthShape(),
                                "Height of the step around the field; 0 for none.",
                                Default: "the shop's fillet"
                            ),
                        ]
                )
            ),
            "Raised panels, as the word `raised` in the short form; the key alone goes by the shop's habits.",
            Default: "flat panels"
        );

    public static Field HeldBy { get; } =
        new(
            "panes held by",
            new ChoiceShape("beads", "groove"),
            "Beads let a pane be replaced; in a groove it is captive, and a broken one means a new door.",
            Default: "beads"
        );
}
