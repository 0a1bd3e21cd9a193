using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>House rules: panes of clear plastics.</summary>
public static class PlasticRules
{
    private const string Section = "plastics";

    public static Rule TemperatureRange { get; } =
        new(
            Section,
            "temperature range",
            "40",
            "40",
            "Degrees (K) between the coldest and the warmest day where the piece stands; a pane gets room for what it grows by.",
            "heated room with sun on the pane: common practice"
        )
        {
            Shape = new CountShape(0, 100),
        };

    internal static IReadOnlyList<Rule> All { get; } = [TemperatureRange];
}
