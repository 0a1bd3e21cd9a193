using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>House rules: how far stock differs from the thickness said for it, thicker or thinner.</summary>
public static class StockRules
{
    private const string Section = "stock";

    public static Rule Measured { get; } =
        Of("measured", "1/256\"", "0.1 mm", "Stock that was measured (`actual:`), from place to place.", Rule.Practice);

    public static Rule Timber { get; } = Of("timber", "1/256\"", "0.1 mm", "Timber planed in the shop.", Rule.Practice);

    public static Rule Plywood { get; } =
        Of(
            "plywood",
            "1/64\"",
            "0.4 mm",
            "Plywood, as sold.",
            "1/64 in, sanded, up to 3/4 in: PS 1 as quoted by APA, extremehowto.com"
        );

    public static Rule Particleboard { get; } =
        Of(
            "particleboard",
            "0.3 mm",
            "0.3 mm",
            "Particleboard and melamine board, as sold.",
            "0.3 mm: EN 324-1, particle-board technical data, EN 312 type P2"
        );

    public static Rule Fibreboard { get; } =
        Of("fibreboard", "0.2 mm", "0.2 mm", "MDF and hardboard, as sold.", "EN 622, from memory");

    public static Rule Clear { get; } =
        Of(
            "clear sheet",
            "0.25 mm",
            "0.25 mm",
            "Glass and clear plastics, as sold.",
            "2.92 to 3.40 mm for 1/8 in, 4.57 to 5.05 for 3/16: ASTM C1036, Table 2, from memory"
        );

    internal static IReadOnlyList<Rule> All { get; } = [Measured, Timber, Plywood, Particleboard, Fibreboard, Clear];

    /// <summary>The rule for a stuff, by its kind and its name.</summary>
    internal static Rule For(MaterialKind kind, string stuff) =>
        kind switch
        {
            MaterialKind.Solid => Timber,
            MaterialKind.Glass or MaterialKind.Plastic => Clear,
            _ when Says(stuff, "particleboard") || Says(stuff, "melamine") => Particleboard,
            _ when Says(stuff, "mdf") || Says(stuff, "hardboard") => Fibreboard,
            _ => Plywood,
        };

    private static bool Says(string stuff, string word) => stuff.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static Rule Of(string key, string inch, string metric, string doc, string source) =>
        new(Section, key, inch, metric, doc, source) { Shape = new LengthShape(LengthSign.ZeroOrMore) };
}
