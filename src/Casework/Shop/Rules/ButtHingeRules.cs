namespace Dryfit.Casework;

/// <summary>House rules: butt hinges let into the edges.</summary>
public static class ButtHingeRules
{
    private const string Section = "butt hinges";

    public static Rule Length { get; } =
        new(Section, "length", "2 1/2\"", "63 mm", "Length of a butt hinge, along its pin.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Leaf { get; } =
        new(
            Section,
            "leaf",
            "5/8\"",
            "16 mm",
            "Width of one leaf, from the middle of the pin to its outer edge.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule LeafThickness { get; } =
        new(
            Section,
            "leaf thickness",
            "1/16\"",
            "1.5 mm",
            "Thickness of one leaf; it is let in as deep.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Knuckle { get; } =
        new(Section, "knuckle", "1/4\"", "6 mm", "Diameter of the knuckle.", Rule.Practice) { Shape = Rule.AboveZero };
    public static Rule Screws { get; } =
        new(Section, "screws", "3", "3", "Screws in each leaf.", Rule.Practice)
        {
            Shape = new Dryfit.Recipe.CountShape(1, 12),
        };

    public static Rule OpeningAngle { get; } =
        new(
            Section,
            "opening angle",
            "95",
            "95",
            "How far a door on butt hinges is wanted to open, in degrees; nothing in the hinge stops it.",
            Rule.Practice
        )
        {
            Shape = new Dryfit.Recipe.CountShape(30, 180),
        };

    internal static IReadOnlyList<Rule> All { get; } = [Length, Leaf, LeafThickness, Knuckle, Screws, OpeningAngle];
}
