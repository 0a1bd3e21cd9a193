namespace Dryfit.Casework;

/// <summary>House rules: sliding doors in grooves.</summary>
public static class SlidingRules
{
    private const string Section = "sliding doors";

    public static Rule Overlap { get; } =
        new(Section, "overlap", "1\"", "25 mm", "How far the two leaves pass one another when shut.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule GrooveDepth { get; } =
        new(
            Section,
            "groove depth",
            "3/16\"",
            "5 mm",
            "Depth of the grooves below; above, a shut leaf reaches as deep into grooves that are deeper.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule LiftRoom { get; } =
        new(
            Section,
            "lift room",
            "1/16\"",
            "1.5 mm",
            "Room that is left over a leaf lifted out of its lower groove.",
            "upper groove twice as deep as the lower and a little more: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Tongue { get; } =
        new(
            Section,
            "tongue",
            "1/4\"",
            "6 mm",
            "Thickness of what runs in the groove; thinner leaves run in it whole.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule GroovePlay { get; } =
        new(Section, "groove play", "1/32\"", "1 mm", "How much wider the groove is than the tongue.", Rule.Practice);
    public static Rule Setback { get; } =
        new(
            Section,
            "setback",
            "3/16\"",
            "5 mm",
            "How far the face of the leaf in front stays behind the front edge.",
            Rule.Practice
        );
    public static Rule Between { get; } =
        new(Section, "between", "1/8\"", "3 mm", "Room between the two leaves, front to back.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule EndPlay { get; } =
        new(Section, "end play", "1/32\"", "1 mm", "Room between a shut leaf and the side.", Rule.Practice);

    internal static IReadOnlyList<Rule> All { get; } =
    [Overlap, GrooveDepth, LiftRoom, Tongue, GroovePlay, Setback, Between, EndPlay];
}
