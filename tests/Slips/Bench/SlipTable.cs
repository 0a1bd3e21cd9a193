using System.Globalization;
using System.Text;

namespace Dryfit.Slips;

/// <summary>Slips by kind: made, counted, found, told wrongly; and those of no weight that were raised.</summary>
internal static class SlipTable
{
    public static string Write(IReadOnlyList<SlipResult> results)
    {
        var text = new StringBuilder();
        text.Append("| kind | made | count | found | told wrongly | inside | raised |\n");
        text.Append("| --- | ---: | ---: | ---: | ---: | ---: | ---: |\n");
        foreach (var kind in results.GroupBy(r => r.Slip.Kind, StringComparer.Ordinal))
            Row(text, kind.Key, [.. kind]);
        Row(text, "**all**", results);
        return text.ToString();
    }

    private static void Row(StringBuilder text, string name, IReadOnlyList<SlipResult> results)
    {
        var counting = results.Where(r => r.Counts).ToList();
        var found = counting.Where(r => r.IsFound).ToList();
        text.Append(
            CultureInfo.InvariantCulture,
            $"| {name} | {results.Count} | {counting.Count} | {found.Count} | {found.Count(r => !r.IsToldRightly)} | {results.Count(r => r.Verdict == Verdict.Inside)} | {results.Count(r => r.IsFalse)} |\n"
        );
    }
}
