namespace Dryfit.Casework;

/// <summary>House rules: what a carcase stands on.</summary>
public static class StandRules
{
    private const string Section = "stand";

    public static Rule StandHeight { get; } =
        new(Section, "height", "6\"", "150 mm", "Height of legs under a carcase.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StandRail { get; } =
        new(Section, "rails", "3\"", "70 mm", "Width of the rails between the legs.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StandRailSetback { get; } =
        new(
            Section,
            "rail setback",
            "1/8\"",
            "3 mm",
            "How far the rails stay behind the faces of the legs.",
            Rule.Practice
        );
    public static Rule ToeHeight { get; } =
        new(Section, "toe height", "4\"", "100 mm", "Height of a toe space.", Rule.Practice) { Shape = Rule.AboveZero };
    public static Rule ToeDepth { get; } =
        new(Section, "toe depth", "3\"", "60 mm", "Depth of a toe space.", Rule.Practice) { Shape = Rule.AboveZero };
    public static Rule PlinthSetback { get; } =
        new(
            Section,
            "plinth setback",
            "0",
            "0",
            "How far a plinth stays behind the front of what it carries.",
            Rule.Practice
        );

    public static Rule Pommel { get; } =
        new(Section, "pommel", "1\"", "25 mm", "What of a turned leg stays square below its rails.", Rule.Practice);

    internal static IReadOnlyList<Rule> All { get; } =
    [StandHeight, StandRail, StandRailSetback, ToeHeight, ToeDepth, PlinthSetback, Pommel];
}
