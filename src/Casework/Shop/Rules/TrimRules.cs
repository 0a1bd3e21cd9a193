namespace Dryfit.Casework;

/// <summary>House rules: strips that cover gaps.</summary>
public static class TrimRules
{
    private const string Section = "trim";

    public static Rule Lap { get; } =
        new(
            Section,
            "lap",
            "1/2\"",
            "12 mm",
            "How far a cover strip laps over what is on each side of its gap.",
            "more than the gap can open and close with the seasons: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } = [Lap];
}
