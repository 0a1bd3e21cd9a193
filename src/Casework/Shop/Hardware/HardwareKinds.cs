using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>The kinds of hardware that a shop file may keep families of.</summary>
public static class HardwareKinds
{
    private static readonly Field Lengths = new(
        "lengths",
        new ListShape(new LengthShape(LengthSign.AboveZero), 1, 60),
        "The lengths it is sold in.",
        Default: "every whole step"
    );

    private static readonly Field Load = new(
        "load",
        new NumberShape(),
        "Kilograms that a pair of them carries by its maker's sheet.",
        Default: "not known"
    );

    public static HardwareKind CupHinge { get; } =
        new(
            "cup hinge",
            "A hinge with a cup let into the back of the door, by the figures of its maker's sheet.",
            "cup hinges:\n  quiet hinge: { cup: 35 mm, cup depth: 12.5 mm, cup setback: 23.5 mm, least overlay: 14 mm, most overlay: 19 mm }\n",
            [
                new("cup", HingeRules.CupDiameter),
                new("cup depth", HingeRules.CupDepth),
                new("cup setback", HingeRules.CupSetback),
                new("cup screw", HingeRules.CupScrew),
                new("cup screw spacing", HingeRules.CupScrewSpacing),
                new("cup screw offset", HingeRules.CupScrewOffset),
                new("cup screw depth", HingeRules.CupScrewDepth),
                new("plate row", HingeRules.HingePlateRow),
                new("plate hole", HingeRules.PlateHole),
                new("plate spacing", HingeRules.PlateSpacing),
                new("plate depth", HingeRules.PlateDepth),
                new("opening angle", HingeRules.OpeningAngle),
                new("wander", HingeRules.Wander),
                new("arm height", HingeRules.ArmHeight),
                new("arm reach", HingeRules.ArmReach),
                new("arm aside", HingeRules.ArmAside),
            ],
            new Field(
                "least overlay",
                new LengthShape(),
                "The least overlay on the hinge side that it can be set to.",
                Default: "not known"
            ),
            new Field(
                "most overlay",
                new LengthShape(),
                "The most overlay on the hinge side that it can be set to.",
                Default: "not known"
            )
        );

    public static HardwareKind ButtHinge { get; } =
        new(
            "butt hinge",
            "A hinge of two leaves let into the edge of the door and of what it hangs on.",
            "butt hinges:\n  brass butt: { length: 2 in, leaf: 9/16 in, leaf thickness: 1/16 in, screws: 3 }\n",
            [
                new("length", ButtHingeRules.Length),
                new("leaf", ButtHingeRules.Leaf),
                new("leaf thickness", ButtHingeRules.LeafThickness),
                new("knuckle", ButtHingeRules.Knuckle),
                new("screws", ButtHingeRules.Screws),
                new("opening angle", ButtHingeRules.OpeningAngle),
            ]
        );

    public static HardwareKind SideSlide { get; } =
        new(
            "side slide",
            "A slide between the side of a drawer and the upright beside it, by the figures of its maker's sheet.",
            "side slides:\n  full extension: { clearance: 12.7 mm, lengths: [300, 350, 400, 450, 500], load: 45 }\n",
            [
                new("clearance", DrawerRules.SlideClearance),
                new("clearance over", DrawerRules.SlideClearanceOver),
                new("step", DrawerRules.SlideStep),
                new("behind", DrawerRules.SlideBehind),
                new("above", DrawerRules.DrawerAbove),
                new("below", DrawerRules.DrawerBelow),
                new("extension", DrawerRules.Extension),
            ],
            Lengths,
            Load
        );

    public static HardwareKind UnderSlide { get; } =
        new(
            "under slide",
            "A slide under the bottom of a drawer, hidden between its sides, by the figures of its maker's sheet.",
            "under slides:\n  soft closing: { inside: 42 mm, thickest side: 16 mm, lengths: [250, 300, 350, 400, 450, 500], load: 30 }\n",
            [
                new("inside", UnderSlideRules.Inside),
                new("clearance over", UnderSlideRules.ClearanceOver),
                new("thickest side", UnderSlideRules.ThickestSide),
                new("bottom up", UnderSlideRules.BottomUp),
                new("notch", UnderSlideRules.Notch),
                new("hook hole", UnderSlideRules.HookHole),
                new("hook depth", UnderSlideRules.HookDepth),
                new("hook in", UnderSlideRules.HookIn),
                new("hook up", UnderSlideRules.HookUp),
                new("step", UnderSlideRules.Step),
                new("behind", UnderSlideRules.Behind),
                new("above", UnderSlideRules.Above),
                new("below", UnderSlideRules.Below),
                new("extension", UnderSlideRules.Extension),
            ],
            Lengths,
            Load
        );

    public static HardwareKind Pull { get; } =
        new(
            "pull",
            "A handle on two screws through the front.",
            "pulls:\n  bow pull: { centres: 128 mm, length: 140 mm, stands off: 30 mm }\n",
            [
                new("centres", PullRules.Centres),
                new("length", PullRules.Length),
                new("thickness", PullRules.Thickness),
                new("stands off", PullRules.StandsOff),
                new("hole", PullRules.Hole),
            ]
        );

    public static HardwareKind Knob { get; } =
        new(
            "knob",
            "A handle on one screw through the front.",
            "knobs:\n  turned knob: { diameter: 1 1/2 in, stands off: 1 1/8 in }\n",
            [new("diameter", KnobRules.Diameter), new("stands off", KnobRules.StandsOff), new("hole", KnobRules.Hole)]
        );

    public static HardwareKind ShelfPin { get; } =
        new(
            "shelf pin",
            "A pin in a bored hole that carries a shelf.",
            "shelf pins:\n  brass pin: { diameter: 1/4 in, depth: 3/8 in }\n",
            [new("diameter", ShelfRules.PinDiameter), new("depth", ShelfRules.PinDepth)]
        );

    public static HardwareKind Connector { get; } =
        new(
            "connector",
            "A knock-down fitting: a bolt in the one part, drawn tight by a cam let into the face of the other.",
            "connectors:\n  cam and bolt: { cam: 15 mm, cam depth: 13.5 mm, cam in: 34 mm, bolt: 8 mm }\n",
            [
                new("cam", ConnectorRules.Cam),
                new("cam depth", ConnectorRules.CamDepth),
                new("cam in", ConnectorRules.CamIn),
                new("bolt", ConnectorRules.Bolt),
                new("seat", ConnectorRules.Seat),
                new("seat depth", ConnectorRules.SeatDepth),
            ]
        );

    /// <summary>All kinds, in the order of the shop file.</summary>
    public static IReadOnlyList<HardwareKind> InOrder { get; } =
    [CupHinge, ButtHinge, SideSlide, UnderSlide, Pull, Knob, ShelfPin, Connector];

    internal static IReadOnlyList<HardwareKind> Hinges { get; } = [CupHinge, ButtHinge];

    internal static IReadOnlyList<HardwareKind> Slides { get; } = [SideSlide, UnderSlide];

    internal static IReadOnlyList<HardwareKind> Handles { get; } = [Pull, Knob];
}
