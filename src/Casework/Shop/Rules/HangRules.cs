namespace Dryfit.Casework;

/// <summary>House rules: carcases that hang on walls.</summary>
public static class HangRules
{
    private const string Section = "hanging";

    public static Rule Spacing { get; } =
        new(
            Section,
            "fixings",
            "16\"",
            "400 mm",
            "How far apart a hanging rail is screwed to the wall, at most; where the studs are, and what the wall bears, goes before.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CleatPlay { get; } =
        new(
            Section,
            "cleat play",
            "1/8\"",
            "3 mm",
            "Room at each end of the wall's cleat, so that the carcase can be shifted sideways.",
            Rule.Practice
        );

    internal static IReadOnlyList<Rule> All { get; } = [Spacing, CleatPlay];
}
