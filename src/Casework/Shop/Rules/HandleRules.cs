namespace Dryfit.Casework;

/// <summary>House rules: where pulls and knobs go.</summary>
public static class HandleRules
{
    private const string Section = "handles";

    public static Rule FromEdge { get; } =
        new(
            Section,
            "from edge",
            "1 1/4\"",
            "35 mm",
            "From the edge of a slab to the middle of its pull or knob; on a framed door it is in the middle of the stile or rail.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule FromEnd { get; } =
        new(
            Section,
            "from end",
            "2 1/2\"",
            "65 mm",
            "From the end of a door to the nearest screw of its pull or knob.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Height { get; } =
        new(
            Section,
            "height",
            "40\"",
            "1000 mm",
            "The height over the floor to which pulls and knobs of doors keep as near as they can: at the top of low doors, at the bottom of high ones and of those in a carcase that hangs.",
            "about where a hand hangs ready: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule TwoFrom { get; } =
        new(
            Section,
            "two from",
            "28\"",
            "700 mm",
            "Drawers and flaps as wide as this get two, each in the middle of its half.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } = [FromEdge, FromEnd, Height, TwoFrom];
}
