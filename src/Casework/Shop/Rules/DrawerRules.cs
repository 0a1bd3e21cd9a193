namespace Dryfit.Casework;

/// <summary>House rules: drawer boxes and slides.</summary>
public static class DrawerRules
{
    private const string Section = "drawers";

    public static Rule SlideClearance { get; } =
        new(
            Section,
            "slide clearance",
            "1/2\"",
            "12.7 mm",
            "Room for a side slide, each side of the box.",
            "1/2 in (12.7 mm): published slide practice"
        );
    public static Rule SlideClearanceOver { get; } =
        new(
            Section,
            "slide clearance over",
            "1/32\"",
            "0.8 mm",
            "How much more than that the slide takes up, each side.",
            "hardware literature, from memory"
        );
    public static Rule SlideStep { get; } =
        new(Section, "slide step", "2\"", "50 mm", "Slides come in lengths of this step.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule SlideBehind { get; } =
        new(Section, "behind", "1/2\"", "10 mm", "Least room between a drawer and the back.", Rule.Practice);
    public static Rule DrawerAbove { get; } =
        new(Section, "above", "1/2\"", "12 mm", "Room over a drawer box in its opening.", Rule.Practice);
    public static Rule DrawerBelow { get; } =
        new(Section, "below", "1/2\"", "12 mm", "Room under a drawer box in its opening.", Rule.Practice);
    public static Rule DrawerHeightStep { get; } =
        new(
            Section,
            "height step",
            "1/8\"",
            "5 mm",
            "Heights of drawer boxes are rounded down to this step.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DrawerBottomUp { get; } =
        new(
            Section,
            "bottom up",
            "1/2\"",
            "12 mm",
            "From the lower edge of a drawer side to the groove for the bottom.",
            Rule.Practice
        );
    public static Rule DrawerGrooveDepth { get; } =
        new(Section, "groove depth", "1/4\"", "6 mm", "Depth of the groove for a drawer bottom.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DrawerBottomPlay { get; } =
        new(Section, "bottom play", "1/32\"", "0.5 mm", "Room for the bottom in its groove, each side.", Rule.Practice);
    public static Rule DrawerJointDepth { get; } =
        new(
            Section,
            "joint depth",
            "1/4\"",
            "6 mm",
            "Depth of the rabbets that take a drawer's front and back.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BackIn { get; } =
        new(
            Section,
            "back in",
            "1/2\"",
            "12 mm",
            "From the rear ends of a drawer's sides to the dado for its back.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Lap { get; } =
        new(
            Section,
            "lap",
            "1/4\"",
            "6 mm",
            "What is left of the front before the ends of half-blind dovetails, but no more than a third of it.",
            "a third of the front: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DividerDepth { get; } =
        new(
            Section,
            "divider depth",
            "1/8\"",
            "3 mm",
            "Depth of the dados for the dividers of a drawer.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CleatDepth { get; } =
        new(Section, "cleat depth", "2\"", "50 mm", "How far the cleats behind a false front reach in.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CleatThickness { get; } =
        new(Section, "cleat", "3/4\"", "18 mm", "Thickness of the cleats behind a false front.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PullOutIn { get; } =
        new(
            Section,
            "pull-outs in",
            "1\"",
            "25 mm",
            "How far the slides of pull-outs stand in from the opening, clear of open doors and their hinges.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PullOutHeight { get; } =
        new(Section, "pull-out height", "4\"", "100 mm", "Height of the sides of pull-outs.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PackerWidth { get; } =
        new(
            Section,
            "packers",
            "2\"",
            "50 mm",
            "Width of the packers that bring slides out to the edge of a face frame.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };

    public static Rule Extension { get; } =
        new(
            Section,
            "extension",
            "full",
            "full",
            "How far slides come out: as far as they are long, or three quarters of that.",
            Rule.Practice
        )
        {
            Shape = new Dryfit.Recipe.ChoiceShape("full", "three quarters"),
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [
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
        BackIn,
        Lap,
        DividerDepth,
        CleatDepth,
        CleatThickness,
        PullOutIn,
        PullOutHeight,
        PackerWidth,
        Extension,
    ];
}
