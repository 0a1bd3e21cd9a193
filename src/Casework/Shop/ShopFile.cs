using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>What a shop file may say: its name, its unit, and any of the house rules by section.</summary>
public static class ShopFile
{
    private static RecordShape Hardware { get; } =
        new(
            "shop: hardware",
            "Families of what is bought, each under a name of your choosing, by which recipes ask for it. What a family does not say follows the house rules. The sheet of the hardware in hand has the last word.",
            "hardware:\n  side slides:\n    full extension: { clearance: 12.7 mm, lengths: [300, 350, 400, 450], load: 45 }\n",
            () =>
                [
                    .. HardwareKinds.InOrder.Select(kind => new Field(
                        kind.Section,
                        new NamedShape(kind.Shape, kind.Name),
                        $"Families of {kind.Section}."
                    )),
                ]
        );

    public static RecordShape Shape { get; } =
        new(
            "shop file",
            "The shop's own facts, shared by all recipes. Every rule left out keeps its default.",
            "shop: The shed behind the house\nunits: mm\ngaps:\n  inset: 2.5\n",
            () =>
                [
                    new("shop", new TextShape(), "The name of the shop, for the papers."),
                    new("units", new ChoiceShape("in", "mm"), "The unit of bare numbers in this file.", Default: "mm"),
                    .. AllRules.InOrder.Select(r => r.Section).Distinct(StringComparer.Ordinal).Select(Section),
                    new(
                        "hardware",
                        Hardware,
                        "Families of hinges, slides, pulls and fittings by the figures on their makers' sheets."
                    ),
                ]
        );

    private static Field Section(string section) =>
        new(
            section,
            new RecordShape(
                $"shop: {section}",
                $"House rules for {section}.",
                "",
                () =>
                    [
                        .. AllRules
                            .InOrder.Where(r => string.Equals(r.Section, section, StringComparison.Ordinal))
                            .Select(r => new Field(r.Key, r.Shape, r.Doc, Default: DefaultText(r))),
                    ]
            ),
            $"House rules for {section}."
        );

    private static string DefaultText(Rule rule) =>
        string.Equals(rule.Inch, rule.Metric, StringComparison.Ordinal)
            ? rule.Inch
            : $"{rule.Inch} for a recipe in inches, {rule.Metric} for one in millimetres";
}
