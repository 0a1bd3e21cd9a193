using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>House rules: shelves and their rows of holes.</summary>
public static class ShelfRules
{
    private const string Section = "shelves";
    private const string RowSource = "32 mm rows: common practice, set down by no standards body";
    private const string StripSource = "hardware literature, from memory";

    public static Rule ShelfPlay { get; } =
        new(Section, "play", "1/16\"", "1 mm", "Room at each end of an adjustable shelf.", Rule.Practice);
    public static Rule ShelfSetback { get; } =
        new(
            Section,
            "setback",
            "1/4\"",
            "10 mm",
            "How far shelves stay behind the front of the inside.",
            Rule.Practice
        );
    public static Rule PinDiameter { get; } =
        new(Section, "pin", "5 mm", "5 mm", "Diameter of shelf pin holes.", RowSource) { Shape = Rule.AboveZero };
    public static Rule PinDepth { get; } =
        new(
            Section,
            "pin depth",
            "3/8\"",
            "10 mm",
            "Depth of shelf pin holes; in a partition no deeper than leaves 3 mm between holes from both sides.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PinPitch { get; } =
        new(Section, "pitch", "32 mm", "32 mm", "Spacing of shelf pin holes.", RowSource) { Shape = Rule.AboveZero };
    public static Rule PinSetback { get; } =
        new(
            Section,
            "row setback",
            "37 mm",
            "37 mm",
            "From the front and back edge of the inside to the rows of pin holes.",
            RowSource
        );
    public static Rule PinHoles { get; } =
        new(
            Section,
            "holes",
            "5",
            "5",
            "Holes in a row for each shelf; the middle one carries it as drawn.",
            Rule.Practice
        )
        {
            Shape = new CountShape(1, 60),
        };

    public static Rule StripWidth { get; } =
        new(Section, "strip", "5/8\"", "16 mm", "Width of the metal strips that shelf clips hang in.", StripSource)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StripDepth { get; } =
        new(
            Section,
            "strip depth",
            "3/16\"",
            "5 mm",
            "How thick such a strip is; a let-in one lies in a groove of that depth.",
            StripSource
        )
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [ShelfPlay, ShelfSetback, PinDiameter, PinDepth, PinPitch, PinSetback, PinHoles, StripWidth, StripDepth];
}
