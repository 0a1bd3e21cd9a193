using Dryfit.Casework.Fronts.Frames;
using Dryfit.Casework.Fronts.Handles;
using Dryfit.Casework.Words;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>What the recipe may say of doors.</summary>
internal static class DoorShapes
{
    private static readonly ChoiceShape Kinds = new("framed", "glazed", "slab");
    private static readonly ChoiceShape Leaves = new("pair", "single");
    private static readonly ChoiceShape Sides = new("left", "right", "outside", "inside");

    /// <summary>The words of the short form.</summary>
    public static PhraseShape Spoken { get; } =
        new(
            Kinds,
            Leaves,
            new ChoiceShape("hinged left", "hinged right", "hinged outside", "hinged inside"),
            FrontShapes.Hangs,
            new ChoiceShape("flat", "raised"),
            new ChoiceShape("lift-up", "drop-front", "sliding")
        );

    private static Field Meeting { get; } =
        new(
            "meeting",
            new EitherShape(
                new ChoiceShape("plain", "rebated"),
                new RecordShape(
                    "meeting",
                    "The rebate in which the doors of a pair meet: the one that closes first runs on behind the other, and is bolted.",
                    "meeting: { rebate: 3/8, closes first: left }\n",
                    () =>
                        [
                            new(
                                "rebate",
                                new LengthShape(LengthSign.AboveZero),
                                "How far they lap.",
                                Default: "the shop's meeting rebate"
                            ),
                            new("closes first", new ChoiceShape("left", "right"), "Which of them.", Default: "left"),
                        ]
                )
            ),
            "How the doors of a pair meet: with a plain gap, or lapping over each other in a rebate.",
            Default: "plain"
        );

    public static RecordShape Written { get; } =
        new(
            "doors",
            "A door or a pair of doors that closes an opening. The short form says the same in words: `framed pair`, "
                + "`glazed, hinged left`, `slab pair, overlaid`.",
            "doors:\n  kind: framed\n  leaves: pair\n  stiles: 2 1/4\n  bottom rail: 3\n  panel: backs\n",
            () =>
                [
                    new("kind", Kinds, "Framed with a panel, glazed, or a single slab.", Default: "framed"),
                    new("leaves", Leaves, "One door, or a pair that meets in the middle.", Default: "single"),
                    new(
                        "hinged",
                        Sides,
                        "The edge a single door turns on; a pair turns on both. Outside is the edge nearer to the end of the carcase, so that a run is the same from both ends; inside the one nearer to its middle.",
                        Default: "left"
                    ),
                    new(
                        "opens",
                        new ChoiceShape("turning", "lift-up", "drop-front", "sliding"),
                        "Turning on its left or right edge; lifted up, hung at its top with stays; dropped, hung at its bottom with stays; or two leaves that slide in grooves below and above, the right one in front.",
                        Default: "turning"
                    ),
                    FrontShapes.Hang,
                    Meeting,
                    FrontShapes.Gap,
                    new(
                        "pair gap",
                        new LengthShape(),
                        "Gap between the doors of a pair.",
                        Default: "the shop's gap for pairs"
                    ),
                    FrontShapes.Overlay,
                    FrontShapes.Material("stiles and rails, or the slab"),
                    new(
                        "stiles",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the stiles.",
                        Default: "the shop's door stiles"
                    ),
                    new(
                        "rails",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of both rails.",
                        Default: "the shop's door rails"
                    ),
                    new(
                        "top rail",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the top rail, where it differs.",
                        Default: "as the rails"
                    ),
                    new(
                        "bottom rail",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the bottom rail, where it differs.",
                        Default: "as the rails"
                    ),
                    new(
                        "panel",
                        new NameShape("material"),
                        "Material of the panel of a framed door.",
                        Default: "the material called `panels`, else that of the door"
                    ),
                    FrameShapes.Arch,
                    .. FrameShapes.Divisions,
                    FrameShapes.Raised,
                    FrameShapes.HeldBy,
                    new(
                        "glass",
                        new NameShape("material"),
                        "Material of the pane of a glazed door.",
                        Default: "the material called `panes`, else `glass`"
                    ),
                    new(
                        "joint",
                        new ChoiceShape(
                            "stub tenons",
                            "mortise and tenon",
                            "through mortise and tenon",
                            "mitre",
                            "splined mitre"
                        ),
                        "How the frame is joined, always glued: stub tenons in the grooves, haunched tenons in mortises deeper than these, haunched tenons whose ends show on the edges of the door, or mitres at the corners, plain or with a spline hidden in each, where middle rails keep their stub tenons. Panels stay free in their grooves.",
                        Default: "stub tenons"
                    ),
                    new(
                        "hinges",
                        new CountShape(2, 12),
                        "Hinges for each door.",
                        Default: "by the height and weight of the door"
                    ),
                    new(
                        "hinge",
                        HardwareWord.Hinge,
                        "Which hinges: cup or butt by the house rules, or a family of the shop file by its name.",
                        Default: "the recipe's hinges, else butt hinges on inset doors in a face frame and cup hinges on all others"
                    ),
                    .. HandleShapes.Fields,
                    FrontShapes.Edging("a slab"),
                ]
        );

    public static Shape Shape { get; } = new EitherShape(Spoken, Written);
}
