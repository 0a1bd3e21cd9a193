namespace Dryfit.Casework;

/// <summary>House rules: carcases.</summary>
public static class CarcaseRules
{
    private const string Section = "carcases";

    public static Rule StretcherWidth { get; } =
        new(
            Section,
            "stretchers",
            "4\"",
            "100 mm",
            "Width of the two stretchers that close a carcase under its top.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Clearance { get; } =
        new(Section, "clearance", "1/16\"", "2 mm", "Room between new work and a kept carcase.", Rule.Practice);

    public static Rule Above { get; } =
        new(
            Section,
            "above",
            "18\"",
            "460 mm",
            "Height between a carcase and the one that hangs above it.",
            "Counter to wall cabinet: 18 in, throughthekitchenwindowsf.com"
        );
    public static Rule BoltHole { get; } =
        new(
            Section,
            "bolt hole",
            "5/16\"",
            "8 mm",
            "Diameter of the holes for the bolts that hold two carcases together.",
            "hardware literature, from memory"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BoltIn { get; } =
        new(
            Section,
            "bolt in",
            "3\"",
            "75 mm",
            "From the edges of what two carcases share to the bolts between them; a quarter of it where that is less.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } = [StretcherWidth, Clearance, Above, BoltHole, BoltIn];
}
