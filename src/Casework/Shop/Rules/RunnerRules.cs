namespace Dryfit.Casework;

/// <summary>House rules: wooden runners of drawers.</summary>
public static class RunnerRules
{
    private const string Section = "runners";

    public static Rule Play { get; } =
        new(Section, "play", "1/32\"", "0.8 mm", "Room beside a drawer that runs on wood, each side.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlayOver { get; } =
        new(Section, "play over", "1/32\"", "0.8 mm", "How much more than that is still no rattle.", Rule.Practice);
    public static Rule Above { get; } =
        new(
            Section,
            "above",
            "1/16\"",
            "1.5 mm",
            "Room over a drawer that runs on wood, under what keeps it from tipping.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Proud { get; } =
        new(
            Section,
            "proud",
            "1/8\"",
            "3 mm",
            "How far runners stand above the lower edge of the opening; the slips on a floor are as thick.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Thickness { get; } =
        new(Section, "thickness", "3/4\"", "18 mm", "Thickness of runners.", Rule.Practice) { Shape = Rule.AboveZero };
    public static Rule Width { get; } =
        new(
            Section,
            "width",
            "1 1/4\"",
            "32 mm",
            "How far runners reach in from the edge of the opening.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Kicker { get; } =
        new(
            Section,
            "kicker",
            "1/2\"",
            "12 mm",
            "Thickness of the kickers that keep a drawn drawer from tipping.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Strip { get; } =
        new(Section, "strip", "1/2\"", "12 mm", "Height of the strips that a side-hung drawer runs on.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StripGroove { get; } =
        new(
            Section,
            "strip groove",
            "3/16\"",
            "5 mm",
            "Depth of the grooves for those strips in the sides of the drawer.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Step { get; } =
        new(
            Section,
            "step",
            "1/4\"",
            "5 mm",
            "Drawers that run on wood are made to this step in length.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [Play, PlayOver, Above, Proud, Thickness, Width, Kicker, Strip, StripGroove, Step];
}
