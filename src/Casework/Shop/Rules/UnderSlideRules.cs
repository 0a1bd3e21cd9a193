namespace Dryfit.Casework;

/// <summary>House rules: slides under the bottom of a drawer.</summary>
public static class UnderSlideRules
{
    private const string Section = "under slides";
    private const string InsideSource =
        "sides of 5/8 in 3/8 in less than the opening, of 1/2 in 5/8 in less: drawer-box supplier's page on under slides; 42 mm: from memory";
    private const string Memory = "hardware literature, from memory";

    public static Rule Inside { get; } =
        new(
            Section,
            "inside",
            "1 5/8\"",
            "42 mm",
            "How much narrower the inside of the box is than its opening.",
            InsideSource
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule ClearanceOver { get; } =
        new(Section, "clearance over", "1/32\"", "0.8 mm", "How much more room the slide takes up, each side.", Memory);
    public static Rule ThickestSide { get; } =
        new(
            Section,
            "thickest side",
            "5/8\"",
            "16 mm",
            "The thickest drawer side it takes.",
            "5/8 in: drawer-box supplier's page on under slides; 16 mm: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BottomUp { get; } =
        new(
            Section,
            "bottom up",
            "1/2\"",
            "13 mm",
            "From the lower edge of a drawer side to the underside of the bottom: the slide lies there.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Notch { get; } =
        new(
            Section,
            "notch",
            "1 3/8\"",
            "35 mm",
            "Width of the notch for the slide at each end of the back, from the inside of the box.",
            Memory
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule HookHole { get; } =
        new(Section, "hook hole", "6 mm", "6 mm", "Diameter of the hole in the back for the hook of the slide.", Memory)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule HookDepth { get; } =
        new(Section, "hook depth", "10 mm", "10 mm", "Depth of that hole.", Memory) { Shape = Rule.AboveZero };
    public static Rule HookIn { get; } =
        new(Section, "hook in", "7 mm", "7 mm", "From the inside of the side to the middle of that hole.", Memory)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule HookUp { get; } =
        new(
            Section,
            "hook up",
            "11 mm",
            "11 mm",
            "From the underside of the bottom up to the middle of that hole.",
            Memory
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Step { get; } =
        new(Section, "step", "3\"", "50 mm", "Under slides come in lengths of this step.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Behind { get; } =
        new(
            Section,
            "behind",
            "1/2\"",
            "13 mm",
            "Least room between the box and the back: the slide is longer than its box by that.",
            "1/2 in over the nominal length: drawer-box supplier's page on under slides"
        );
    public static Rule Above { get; } =
        new(Section, "above", "1/4\"", "6 mm", "Room over a drawer box in its opening.", Rule.Practice);
    public static Rule Below { get; } =
        new(Section, "below", "9/16\"", "14 mm", "Room under a drawer box in its opening.", Rule.Practice);

    public static Rule Extension { get; } =
        new(
            Section,
            "extension",
            "full",
            "full",
            "How far under slides come out: as far as they are long, or three quarters of that.",
            Rule.Practice
        )
        {
            Shape = new Dryfit.Recipe.ChoiceShape("full", "three quarters"),
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [
        Inside,
        ClearanceOver,
        ThickestSide,
        BottomUp,
        Notch,
        HookHole,
        HookDepth,
        HookIn,
        HookUp,
        Step,
        Behind,
        Above,
        Below,
        Extension,
    ];
}
