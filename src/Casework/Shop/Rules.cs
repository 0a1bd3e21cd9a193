using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>All house rules, in the order of the shop file.</summary>
public static class Rules
{
    private static readonly Shape AboveZero = new LengthShape(LengthSign.AboveZero);

    private const string Practice = "common practice";
    private const string InsetSource =
        "3/32 in a side: Woodweb knowledge base, Inset Cabinet Door Clearance (2006); 2 mm: common practice";
    private const string CupSource = "hinge maker's quick reference (hardware literature)";
    private const string RowSource = "32 mm rows: common practice, set down by no standards body";

    public static Rule InsetGap { get; } =
        new("gaps", "inset", "3/32\"", "2 mm", "Gap around an inset front, each side.", InsetSource);
    public static Rule PairGap { get; } =
        new("gaps", "pair", "3/32\"", "3 mm", "Gap between the two doors of a pair.", InsetSource);
    public static Rule StackGap { get; } =
        new(
            "gaps",
            "stack",
            "3/32\"",
            "3 mm",
            "Gap between overlaid fronts that are neighbours.",
            "3 mm between frameless fronts: notes on 32 mm practice"
        );
    public static Rule OverlayGap { get; } =
        new(
            "gaps",
            "overlay edge",
            "1/16\"",
            "1.5 mm",
            "How far an overlaid front stays inside the outside edge of its carcase.",
            Practice
        );
    public static Rule FrameOverlay { get; } =
        new("gaps", "frame overlay", "1/2\"", "12 mm", "How far an overlaid front laps over a face frame.", Practice);
    public static Rule BumperGap { get; } =
        new(
            "gaps",
            "behind overlay",
            "1/16\"",
            "2 mm",
            "Room between an overlaid front and the carcase, for bumpers and hinges.",
            Practice
        );

    public static Rule DadoDepth { get; } =
        new(
            "joints",
            "dado depth",
            "1/4\"",
            "6 mm",
            "Depth of dados that take panels.",
            "a third to half of the thickness: common practice"
        )
        {
            Shape = AboveZero,
        };
    public static Rule RabbetWidth { get; } =
        new("joints", "back rabbet", "3/8\"", "9 mm", "How far a rabbeted back laps into the side.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule BackGrooveDepth { get; } =
        new("joints", "back groove depth", "1/4\"", "6 mm", "Depth of the groove for a slid-in back.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule BackGrooveInset { get; } =
        new(
            "joints",
            "back groove inset",
            "1/2\"",
            "12 mm",
            "From the back edge to the groove for a slid-in back.",
            Practice
        );
    public static Rule BackPlay { get; } =
        new("joints", "back play", "1/32\"", "0.5 mm", "Room at the bottom of a back's groove, each side.", Practice);
    public static Rule DowelDiameter { get; } =
        new(
            "joints",
            "dowel",
            "3/8\"",
            "8 mm",
            "Diameter of dowels.",
            "a third to half of the thinner part: common practice"
        )
        {
            Shape = AboveZero,
        };
    public static Rule DowelLength { get; } =
        new("joints", "dowel length", "2\"", "40 mm", "Length of dowels; half goes into each part.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule DowelRoom { get; } =
        new("joints", "dowel room", "1/16\"", "1 mm", "How much deeper each dowel hole is than its dowel.", Practice);

    public static Rule StileWidth { get; } =
        new(
            "face frame",
            "stiles",
            "1 1/2\"",
            "40 mm",
            "Width of face frame stiles.",
            "1 1/2 in: trade association bulletin on face frames"
        )
        {
            Shape = AboveZero,
        };
    public static Rule FrameRailWidth { get; } =
        new(
            "face frame",
            "rails",
            "1 1/2\"",
            "40 mm",
            "Width of face frame rails.",
            "1 1/2 in: trade association bulletin on face frames"
        )
        {
            Shape = AboveZero,
        };
    public static Rule MullionWidth { get; } =
        new("face frame", "mullions", "1 1/2\"", "40 mm", "Width of the upright members between the stiles.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule FrameJoint { get; } =
        new("face frame", "joint", "pocket screws", "pocket screws", "How face frames are put together.", Practice)
        {
            Shape = new ChoiceShape("pocket screws", "dowels"),
        };

    public static Rule DoorStile { get; } =
        new(
            "doors",
            "stiles",
            "2 1/4\"",
            "60 mm",
            "Width of the stiles of framed and glazed doors.",
            "1 1/2 to 3 in: published shop guide"
        )
        {
            Shape = AboveZero,
        };
    public static Rule DoorRail { get; } =
        new(
            "doors",
            "rails",
            "2 1/4\"",
            "60 mm",
            "Width of the rails of framed and glazed doors.",
            "1 1/2 to 3 in: published shop guide"
        )
        {
            Shape = AboveZero,
        };
    public static Rule DoorGrooveDepth { get; } =
        new(
            "doors",
            "groove depth",
            "3/8\"",
            "10 mm",
            "Depth of the groove in stiles and rails; the stub tenon is as long.",
            "3/8 in: published cope-and-stick rail arithmetic"
        )
        {
            Shape = AboveZero,
        };
    public static Rule DoorGrooveWidth { get; } =
        new("doors", "groove width", "1/4\"", "6 mm", "Width of that groove; the stub tenon is as thick.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule PanelPlaySide { get; } =
        new(
            "doors",
            "panel play across",
            "1/8\"",
            "2 mm",
            "Room for a panel in its groove, each side across its grain.",
            "1/8 in: published raised-panel tutorial"
        );
    public static Rule PanelPlayEnd { get; } =
        new(
            "doors",
            "panel play along",
            "1/16\"",
            "1 mm",
            "Room for a panel in its groove, each end along its grain.",
            "1/16 in: published raised-panel tutorial"
        );
    public static Rule PanelPlaySheet { get; } =
        new(
            "doors",
            "sheet panel play",
            "1/32\"",
            "1 mm",
            "Room for a panel of sheet goods in its groove, each side; it hardly moves.",
            Practice
        );
    public static Rule GlassPlay { get; } =
        new("doors", "glass play", "1/16\"", "1.5 mm", "Room around a pane in its rabbet, each side.", Practice);
    public static Rule DoorLip { get; } =
        new("doors", "lip", "1/4\"", "6 mm", "Thickness of the wood in front of the groove.", Practice);

    public static Rule CupDiameter { get; } =
        new("hinges", "cup", "35 mm", "35 mm", "Diameter of a hinge cup.", CupSource) { Shape = AboveZero };
    public static Rule CupDepth { get; } =
        new("hinges", "cup depth", "13 mm", "13 mm", "Drilling depth of a hinge cup.", CupSource) { Shape = AboveZero };
    public static Rule CupSetback { get; } =
        new(
            "hinges",
            "cup setback",
            "22.5 mm",
            "22.5 mm",
            "From the door's edge to the middle of the cup: 17.5 mm and the boring distance of 5 mm.",
            CupSource
        );
    public static Rule HingeEnd { get; } =
        new(
            "hinges",
            "from end",
            "3 1/2\"",
            "96 mm",
            "From the end of a door to the middle of its first hinge.",
            Practice
        );
    public static Rule HingePlateRow { get; } =
        new(
            "hinges",
            "plate row",
            "37 mm",
            "37 mm",
            "From the front edge of the side to the holes of the hinge plate.",
            RowSource
        );
    public static Rule CupScrew { get; } =
        new("hinges", "cup screw", "8 mm", "8 mm", "Diameter of the two holes beside a hinge cup.", CupSource)
        {
            Shape = AboveZero,
        };
    public static Rule CupScrewSpacing { get; } =
        new("hinges", "cup screw spacing", "45 mm", "45 mm", "Between the two holes beside a hinge cup.", CupSource)
        {
            Shape = AboveZero,
        };
    public static Rule CupScrewOffset { get; } =
        new(
            "hinges",
            "cup screw offset",
            "9.5 mm",
            "9.5 mm",
            "How much further from the door's edge the two holes are than the middle of the cup.",
            CupSource
        );
    public static Rule CupScrewDepth { get; } =
        new("hinges", "cup screw depth", "11 mm", "11 mm", "Depth of the two holes beside a hinge cup.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule PlateHole { get; } =
        new("hinges", "plate hole", "5 mm", "5 mm", "Diameter of the two holes for a hinge plate.", RowSource)
        {
            Shape = AboveZero,
        };
    public static Rule PlateSpacing { get; } =
        new("hinges", "plate spacing", "32 mm", "32 mm", "Between the two holes for a hinge plate.", RowSource)
        {
            Shape = AboveZero,
        };
    public static Rule PlateDepth { get; } =
        new("hinges", "plate depth", "10 mm", "10 mm", "Depth of the holes for a hinge plate.", Practice)
        {
            Shape = AboveZero,
        };

    public static Rule SlideClearance { get; } =
        new(
            "drawers",
            "slide clearance",
            "1/2\"",
            "12.7 mm",
            "Room for a side slide, each side of the box.",
            "1/2 in (12.7 mm): published slide practice"
        );
    public static Rule SlideClearanceOver { get; } =
        new(
            "drawers",
            "slide clearance over",
            "1/32\"",
            "0.8 mm",
            "How much more than that the slide takes up, each side.",
            "hardware literature, from memory"
        );
    public static Rule SlideStep { get; } =
        new("drawers", "slide step", "2\"", "50 mm", "Slides come in lengths of this step.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule SlideBehind { get; } =
        new("drawers", "behind", "1/2\"", "10 mm", "Least room between a drawer and the back.", Practice);
    public static Rule DrawerAbove { get; } =
        new("drawers", "above", "1/2\"", "12 mm", "Room over a drawer box in its opening.", Practice);
    public static Rule DrawerBelow { get; } =
        new("drawers", "below", "1/2\"", "12 mm", "Room under a drawer box in its opening.", Practice);
    public static Rule DrawerHeightStep { get; } =
        new(
            "drawers",
            "height step",
            "1/8\"",
            "5 mm",
            "Heights of drawer boxes are rounded down to this step.",
            Practice
        )
        {
            Shape = AboveZero,
        };
    public static Rule DrawerBottomUp { get; } =
        new(
            "drawers",
            "bottom up",
            "1/2\"",
            "12 mm",
            "From the lower edge of a drawer side to the groove for the bottom.",
            Practice
        );
    public static Rule DrawerGrooveDepth { get; } =
        new("drawers", "groove depth", "1/4\"", "6 mm", "Depth of the groove for a drawer bottom.", Practice)
        {
            Shape = AboveZero,
        };
    public static Rule DrawerBottomPlay { get; } =
        new("drawers", "bottom play", "1/32\"", "0.5 mm", "Room for the bottom in its groove, each side.", Practice);
    public static Rule DrawerJointDepth { get; } =
        new(
            "drawers",
            "joint depth",
            "1/4\"",
            "6 mm",
            "Depth of the rabbets that take a drawer's front and back.",
            Practice
        )
        {
            Shape = AboveZero,
        };
    public static Rule PackerWidth { get; } =
        new(
            "drawers",
            "packers",
            "2\"",
            "50 mm",
            "Width of the packers that bring slides out to the edge of a face frame.",
            Practice
        )
        {
            Shape = AboveZero,
        };

    public static Rule ShelfPlay { get; } =
        new("shelves", "play", "1/16\"", "1 mm", "Room at each end of an adjustable shelf.", Practice);
    public static Rule ShelfSetback { get; } =
        new("shelves", "setback", "1/4\"", "10 mm", "How far shelves stay behind the front of the inside.", Practice);
    public static Rule PinDiameter { get; } =
        new("shelves", "pin", "5 mm", "5 mm", "Diameter of shelf pin holes.", RowSource) { Shape = AboveZero };
    public static Rule PinDepth { get; } =
        new(
            "shelves",
            "pin depth",
            "3/8\"",
            "10 mm",
            "Depth of shelf pin holes; in a partition no deeper than leaves 3 mm between holes from both sides.",
            Practice
        )
        {
            Shape = AboveZero,
        };
    public static Rule PinPitch { get; } =
        new("shelves", "pitch", "32 mm", "32 mm", "Spacing of shelf pin holes.", RowSource) { Shape = AboveZero };
    public static Rule PinSetback { get; } =
        new(
            "shelves",
            "row setback",
            "37 mm",
            "37 mm",
            "From the front and back edge of the inside to the rows of pin holes.",
            RowSource
        );
    public static Rule PinHoles { get; } =
        new(
            "shelves",
            "holes",
            "5",
            "5",
            "Holes in a row for each shelf; the middle one carries it as drawn.",
            Practice
        )
        {
            Shape = new CountShape(1, 60),
        };

    public static Rule StandHeight { get; } =
        new("stand", "height", "6\"", "150 mm", "Height of legs under a carcase.", Practice) { Shape = AboveZero };
    public static Rule StandRail { get; } =
        new("stand", "rails", "3\"", "70 mm", "Width of the rails between the legs.", Practice) { Shape = AboveZero };
    public static Rule StandRailSetback { get; } =
        new("stand", "rail setback", "1/8\"", "3 mm", "How far the rails stay behind the faces of the legs.", Practice);
    public static Rule ToeHeight { get; } =
        new("stand", "toe height", "4\"", "100 mm", "Height of a toe space.", Practice) { Shape = AboveZero };
    public static Rule ToeDepth { get; } =
        new("stand", "toe depth", "3\"", "60 mm", "Depth of a toe space.", Practice) { Shape = AboveZero };
    public static Rule PlinthSetback { get; } =
        new(
            "stand",
            "plinth setback",
            "0",
            "0",
            "How far a plinth stays behind the front of what it carries.",
            Practice
        );

    public static Rule StretcherWidth { get; } =
        new(
            "carcases",
            "stretchers",
            "4\"",
            "100 mm",
            "Width of the two stretchers that close a carcase under its top.",
            Practice
        )
        {
            Shape = AboveZero,
        };
    public static Rule Clearance { get; } =
        new("carcases", "clearance", "1/16\"", "2 mm", "Room between new work and a kept carcase.", Practice);

    /// <summary>Every rule, in the order of the shop file.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        InsetGap,
        PairGap,
        StackGap,
        OverlayGap,
        FrameOverlay,
        BumperGap,
        DadoDepth,
        RabbetWidth,
        BackGrooveDepth,
        BackGrooveInset,
        BackPlay,
        DowelDiameter,
        DowelLength,
        DowelRoom,
        StileWidth,
        FrameRailWidth,
        MullionWidth,
        FrameJoint,
        DoorStile,
        DoorRail,
        DoorGrooveDepth,
        DoorGrooveWidth,
        PanelPlaySide,
        PanelPlayEnd,
        PanelPlaySheet,
        GlassPlay,
        DoorLip,
        CupDiameter,
        CupDepth,
        CupSetback,
        HingeEnd,
        HingePlateRow,
        CupScrew,
        CupScrewSpacing,
        CupScrewOffset,
        CupScrewDepth,
        PlateHole,
        PlateSpacing,
        PlateDepth,
        SlideClearance,
        SlideClearanceOver,
        SlideStep,
        SlideBehind,
        DrawerAbove,
        DrawerBelow,
        DrawerHeightStep,
        DrawerBottomUp,
        DrawerGrooveDepth,
        DrawerBottomPlay,
        DrawerJointDepth,
        PackerWidth,
        ShelfPlay,
        ShelfSetback,
        PinDiameter,
        PinDepth,
        PinPitch,
        PinSetback,
        PinHoles,
        StandHeight,
        StandRail,
        StandRailSetback,
        ToeHeight,
        ToeDepth,
        PlinthSetback,
        StretcherWidth,
        Clearance,
    ];
}
