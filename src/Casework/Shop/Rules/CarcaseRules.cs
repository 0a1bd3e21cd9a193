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

    internal static IReadOnlyList<Rule> All { get; } = [StretcherWidth, Clearance];
}
