using System.Text;
using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// Writes the starter shop file: every house rule with its default, commented, so that a maker edits rather than looks
/// up. Rules stand as comments: what is not touched keeps following the tool's default.
/// </summary>
public static class ShopFileText
{
    /// <param name="unit">Whose habits to write down.</param>
    public static string Write(LengthUnit unit)
    {
        var inches = unit == LengthUnit.Inch;
        var text = new StringBuilder();
        text.Append("# yaml-language-server: $schema=../schema/shop.schema.json\n");
        text.Append(
            "# The shop's own facts, shared by all recipes. Every rule stands below with its default, as a comment.\n"
        );
        text.Append(
            "# Take the # away and change what your shop does otherwise; what stays a comment keeps its default.\n"
        );
        text.Append("shop: My shop\n");
        text.Append(inches ? "units: in\n" : "units: mm\n");
        foreach (var section in AllRules.InOrder.GroupBy(r => r.Section, StringComparer.Ordinal))
        {
            text.Append($"\n# {section.Key}:\n");
            foreach (var rule in section)
                text.Append(
                    $"#   # {rule.Doc} ({rule.Source})\n#   {rule.Key}: {Quoted(inches ? rule.Inch : rule.Metric)}\n"
                );
        }
        text.Append("\n# hardware:\n");
        text.Append(
            "#   # Families by the figures on their makers' sheets, each under a name of your choosing; recipes ask for it.\n"
        );
        foreach (var kind in HardwareKinds.InOrder)
        {
            foreach (var line in kind.Shape.Example.TrimEnd().Split('\n'))
                text.Append($"#   {line}\n");
        }
        return text.ToString();
    }

    // A foot or inch mark at the end of a plain YAML value is fine; a value that begins with one is not.
    private static string Quoted(string value) => value[0] is '"' or '\'' ? $"'{value}'" : value;
}
