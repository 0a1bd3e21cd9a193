namespace Dryfit.Casework;

/// <summary>House rules: gaps between fronts and around them.</summary>
public static class GapRules
{
    private const string Section = "gaps";
    private const string InsetSource =
        "3/32 in a side: Woodweb knowledge base, Inset Cabinet Door Clearance (2006); 2 mm: common practice";

    public static Rule InsetGap { get; } =
        new(Section, "inset", "3/32\"", "2 mm", "Gap around an inset front, each side.", InsetSource);
    public static Rule PairGap { get; } =
        new(Section, "pair", "3/32\"", "3 mm", "Gap between the two doors of a pair.", InsetSource);
    public static Rule StackGap { get; } =
        new(
            Section,
            "stack",
            "3/32\"",
            "3 mm",
            "Gap between overlaid fronts that are neighbours.",
            "3 mm between frameless fronts: notes on 32 mm practice"
        );
    public static Rule OverlayGap { get; } =
        new(
            Section,
            "overlay edge",
            "1/16\"",
            "1.5 mm",
            "How far an overlaid front stays inside the outside edge of its carcase.",
            Rule.Practice
        );
    public static Rule FrameOverlay { get; } =
        new(
            Section,
            "frame overlay",
            "1/2\"",
            "12 mm",
            "How far an overlaid front laps over a face frame.",
            Rule.Practice
        );
    public static Rule BumperGap { get; } =
        new(
            Section,
            "behind overlay",
            "1/16\"",
            "2 mm",
            "Room between an overlaid front and the carcase, for bumpers and hinges.",
            Rule.Practice
        );

    public static Rule LipOverlay { get; } =
        new(
            Section,
            "lip overlay",
            "1/4\"",
            "6 mm",
            "How far the lip of a rebated front laps over the edge of its opening.",
            "a lip of 3/8 in with its gap: common practice"
        );

    internal static IReadOnlyList<Rule> All { get; } =
    [InsetGap, PairGap, StackGap, OverlayGap, FrameOverlay, BumperGap, LipOverlay];
}
