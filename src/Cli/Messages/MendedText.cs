using System.Globalization;
using Dryfit.Findings;
using Dryfit.Mending;
using Dryfit.Outputs.Findings;

namespace Dryfit.Cli;

/// <summary>What would mend the findings, on a terminal: a diff, and what no number mends.</summary>
internal static class MendedText
{
    /// <param name="before">The files as read.</param>
    /// <param name="after">The same with all edits made.</param>
    /// <param name="written">The files that were written; null where that was not asked.</param>
    public static void Write(
        Mended mended,
        IReadOnlyList<SourceText> before,
        IReadOnlyList<SourceText> after,
        IReadOnlyList<string>? written,
        TextWriter writer
    )
    {
        if (mended.Edits.Count == 0 && mended.Left.Count == 0)
        {
            writer.WriteLine("Nothing to mend.");
            return;
        }
        foreach (var (old, now) in before.Zip(after))
            writer.Write(UnifiedDiff.Write(old.Name, old.Text, now.Text));
        foreach (var left in mended.Left)
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Not mended, {left.Number}: {left.Why}"));
        writer.WriteLine(Sum(mended, written));
    }

    private static string Sum(Mended mended, IReadOnlyList<string>? written)
    {
        var times = mended.Builds == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{mended.Builds} times");
        var builds = mended.Builds == 0 ? "" : $" The piece was built {times} to find out.";
        if (mended.Edits.Count == 0)
            return $"No number mends it.{builds}";
        var edits =
            mended.Edits.Count == 1
                ? "1 edit"
                : string.Create(CultureInfo.InvariantCulture, $"{mended.Edits.Count} edits");
        var then = mended.After.StopsTheSaw ? "something still stops the saw" : "nothing stops the saw";
        return written is null
            ? $"With {(mended.Edits.Count == 1 ? "this edit" : "these edits")} {then}; --apply makes {(mended.Edits.Count == 1 ? "it" : "them")}.{builds}"
            : $"{edits} made in {string.Join(" and ", written)}: now {then}.{builds}";
    }
}
