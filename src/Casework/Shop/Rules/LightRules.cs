namespace Dryfit.Casework;

/// <summary>House rules: lights let into panels, and the way of their cables.</summary>
public static class LightRules
{
    private const string Section = "lights";
    private const string Memory = "hardware literature, from memory; measure what you buy";

    public static Rule StripWidth { get; } =
        new(Section, "strip", "11/16\"", "17 mm", "Width of the groove for the profile of a strip.", Memory)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StripDepth { get; } =
        new(Section, "strip depth", "5/16\"", "8 mm", "Depth of that groove.", Memory) { Shape = Rule.AboveZero };
    public static Rule StripEnds { get; } =
        new(
            Section,
            "strip ends",
            "1 1/4\"",
            "32 mm",
            "From the uprights to the ends of a strip: clear of what joins the panel to them.",
            Rule.Practice
        );
    public static Rule FromFront { get; } =
        new(
            Section,
            "from front",
            "1 1/2\"",
            "40 mm",
            "From the front of the inside to the front of a strip or a puck.",
            Rule.Practice
        );
    public static Rule PuckDiameter { get; } =
        new(Section, "puck", "58 mm", "58 mm", "Diameter of the recess for a puck.", Memory) { Shape = Rule.AboveZero };
    public static Rule PuckDepth { get; } =
        new(Section, "puck depth", "13 mm", "13 mm", "Depth of that recess.", Memory) { Shape = Rule.AboveZero };
    public static Rule CableWidth { get; } =
        new(Section, "cable", "1/4\"", "6 mm", "Width and depth of the groove for a low-voltage cable.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CableHole { get; } =
        new(Section, "cable hole", "1/2\"", "12 mm", "Diameter of the hole that a cable leaves by.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule VentHole { get; } =
        new(Section, "vent", "1\"", "25 mm", "Diameter of the holes that give a driver air.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule VentHoles { get; } =
        new(Section, "vents", "4", "4", "How many such holes a driver gets.", Rule.Practice)
        {
            Shape = new Recipe.CountShape(1, 20),
        };
    public static Rule WattsPerMetre { get; } =
        new(Section, "watts per metre", "10", "10", "What a metre of strip takes.", Memory)
        {
            Shape = new Recipe.CountShape(1, 100),
        };
    public static Rule WattsPerPuck { get; } =
        new(Section, "watts per puck", "3", "3", "What a puck takes.", Memory)
        {
            Shape = new Recipe.CountShape(1, 100),
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [
        StripWidth,
        StripDepth,
        StripEnds,
        FromFront,
        PuckDiameter,
        PuckDepth,
        CableWidth,
        CableHole,
        VentHole,
        VentHoles,
        WattsPerMetre,
        WattsPerPuck,
    ];
}
