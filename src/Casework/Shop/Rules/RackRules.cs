namespace Dryfit.Casework;

/// <summary>House rules: racks for bottles, glasses, plates and jars, and rails for clothes.</summary>
public static class RackRules
{
    private const string Section = "racks";
    private const string Bottles = "wine bottles of 0.75 l, from memory; measure yours";
    private const string Poles =
        "pole of wood 1 1/4 in, of metal 1 1/16 in at least, supports at most 48 in apart: Architectural Woodwork Standards, 1st ed. (2009), 10 4.4.16.1";

    public static Rule BottlePitch { get; } =
        new(Section, "bottle pitch", "4\"", "100 mm", "From bottle to bottle, sideways and from row to row.", Bottles)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BottleDiameter { get; } =
        new(Section, "bottle", "3\"", "76 mm", "Diameter of a bottle.", Bottles) { Shape = Rule.AboveZero };
    public static Rule NeckDiameter { get; } =
        new(Section, "neck", "1 1/4\"", "30 mm", "Diameter of its neck.", Bottles) { Shape = Rule.AboveZero };
    public static Rule BottleLength { get; } =
        new(Section, "bottle length", "12\"", "305 mm", "Length of a bottle.", Bottles) { Shape = Rule.AboveZero };
    public static Rule CradleHeight { get; } =
        new(Section, "cradle", "1 3/4\"", "45 mm", "Height of the rails that bottles lie in.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CradleSpacing { get; } =
        new(
            Section,
            "cradle spacing",
            "6 1/2\"",
            "165 mm",
            "From the rail under the necks to the rail under the bottles, between their fronts.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StemPitch { get; } =
        new(Section, "stem pitch", "4\"", "100 mm", "From slot to slot of a rack that glasses hang in.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StemSlot { get; } =
        new(Section, "stem slot", "1\"", "25 mm", "Width of the slot that a stem slides in.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StemFoot { get; } =
        new(
            Section,
            "stem foot",
            "3 1/4\"",
            "80 mm",
            "Room for the foot of a glass between the webs of two hangers.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StemFlange { get; } =
        new(Section, "stem flange", "3/8\"", "9 mm", "Thickness of the edges that a foot hangs on.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlatePitch { get; } =
        new(Section, "plate pitch", "1 1/2\"", "40 mm", "From rod to rod of a plate rack.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlateHeight { get; } =
        new(Section, "plate", "11\"", "280 mm", "Diameter of the largest plate.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlateRail { get; } =
        new(Section, "plate rail", "1 1/4\"", "30 mm", "Width of the rails that the rods stand in.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlateRod { get; } =
        new(Section, "plate rod", "3/8\"", "10 mm", "Diameter of the rods.", Rule.Practice) { Shape = Rule.AboveZero };
    public static Rule GuardHeight { get; } =
        new(
            Section,
            "guard",
            "3/4\"",
            "20 mm",
            "How far the strip before a shelf for jars stands above it.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PoleDiameter { get; } =
        new(Section, "clothes rail", "1 5/16\"", "32 mm", "Diameter of a rail for clothes.", Poles)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PoleSpan { get; } =
        new(Section, "clothes rail span", "48\"", "1200 mm", "The most between supports of a rail for clothes.", Poles)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PoleDown { get; } =
        new(
            Section,
            "clothes rail down",
            "2 1/2\"",
            "60 mm",
            "From what is above it to the middle of a rail for clothes: room to lift a hanger.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Reach { get; } =
        new(
            Section,
            "reach",
            "75\"",
            "1900 mm",
            "The highest place that a person standing on the floor takes things from with ease.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [
        BottlePitch,
        BottleDiameter,
        NeckDiameter,
        BottleLength,
        CradleHeight,
        CradleSpacing,
        StemPitch,
        StemSlot,
        StemFoot,
        StemFlange,
        PlatePitch,
        PlateHeight,
        PlateRail,
        PlateRod,
        GuardHeight,
        PoleDiameter,
        PoleSpan,
        PoleDown,
        Reach,
    ];
}
