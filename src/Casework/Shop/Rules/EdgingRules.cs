using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>House rules: bands on the edges of panels.</summary>
public static class EdgingRules
{
    private const string Section = "edging";

    public static Rule First { get; } =
        new(
            Section,
            "first",
            "ends",
            "ends",
            "Which bands go on first where a panel has some on its ends and on its long edges; the others lap over them.",
            "the seams of bands on the ends lie where they are seen least: common practice"
        )
        {
            Shape = new ChoiceShape("ends", "long edges"),
        };

    internal static IReadOnlyList<Rule> All { get; } = [First];
}
