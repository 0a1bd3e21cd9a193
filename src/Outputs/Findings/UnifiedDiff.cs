using System.Globalization;
using System.Text;
using Dryfit.Findings;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.Findings;

/// <summary>Edits of one file as a diff in the unified format (POSIX.1-2024, <c>diff -U</c>), for people and for <c>patch</c>.</summary>
public static class UnifiedDiff
{
    /// <summary>Lines shown before and behind what changes.</summary>
    private const int Around = 2;

    /// <param name="name">The file as the user named it.</param>
    /// <param name="before">Its text.</param>
    /// <param name="after">Its text with the edits made; it has the same number of lines.</param>
    /// <returns>The diff, its lines ended by LF; "" where nothing changes.</returns>
    public static string Write(string name, string before, string after)
    {
        var (old, now) = (SourceLines.Split(before), SourceLines.Split(after));
        var changed = Enumerable.Range(0, Math.Min(old.Count, now.Count)).Where(n => old[n] != now[n]).ToList();
        if (changed.Count == 0)
            return "";
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"--- {PlainText.Clean(name)}\n+++ {PlainText.Clean(name)}\n");
        for (var at = 0; at < changed.Count; )
        {
            var first = at;
            while (at + 1 < changed.Count && changed[at + 1] - changed[at] <= (2 * Around) + 1)
                at++;
            WriteHunk(text, old, now, Math.Max(0, changed[first] - Around), Last(old, changed[at] + Around));
            at++;
        }
        return text.ToString();
    }

    /// <summary>What stands behind the last line end is no line where it is empty.</summary>
    private static int Last(IReadOnlyList<string> lines, int wish)
    {
        var last = lines[^1].Length == 0 ? lines.Count - 2 : lines.Count - 1;
        return Math.Min(wish, last);
    }

    private static void WriteHunk(
        StringBuilder text,
        IReadOnlyList<string> old,
        IReadOnlyList<string> now,
        int from,
        int to
    )
    {
        var count = to - from + 1;
        text.Append(CultureInfo.InvariantCulture, $"@@ -{from + 1},{count} +{from + 1},{count} @@\n");
        for (var n = from; n <= to; n++)
        {
            if (old[n] == now[n])
            {
                Line(text, ' ', old[n]);
                continue;
            }
            // Lines that change one after the other: first all as they were, then all as they will be.
            var end = n;
            while (end < to && old[end + 1] != now[end + 1])
                end++;
            for (var line = n; line <= end; line++)
                Line(text, '-', old[line]);
            for (var line = n; line <= end; line++)
                Line(text, '+', now[line]);
            n = end;
        }
    }

    private static void Line(StringBuilder text, char sign, string line) =>
        text.Append(sign).Append(PlainText.Clean(line)).Append('\n');
}
