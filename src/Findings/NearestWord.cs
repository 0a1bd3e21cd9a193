namespace Dryfit.Findings;

/// <summary>Finds the word a maker probably meant: a slip of the finger, a plural, a hyphen where a space belongs.</summary>
public static class NearestWord
{
    /// <summary>Longer words are names run together or not words at all; comparing them would only cost time.</summary>
    private const int LongestWord = 60;

    /// <summary>No maker has more names than this; a file that does gets its suggestions from the first of them.</summary>
    private const int MostWords = 1000;

    /// <summary>
    /// The nearest of the right words, or null where none is near: at most one slip in three letters. The first wins
    /// where several are equally near.
    /// </summary>
    public static string? To(string written, IEnumerable<string> words)
    {
        if (written.Length is 0 or > LongestWord)
            return null;
        var plain = Plain(written);
        string? best = null;
        var bestSlips = int.MaxValue;
        foreach (var word in words.Take(MostWords))
        {
            if (word.Length > LongestWord)
                continue;
            var other = Plain(word);
            var slips = SameButForNumber(plain, other) ? 0 : Slips(plain, other);
            var allowed = Math.Max(1, Math.Min(plain.Length, other.Length) / 3);
            if (slips <= allowed && slips < bestSlips && slips < Math.Max(plain.Length, other.Length))
                (best, bestSlips) = (word, slips);
        }
        return best;
    }

    private static string Plain(string word) =>
        string.Join(
            ' ',
            word.ToLowerInvariant()
                .Replace('-', ' ')
                .Replace('_', ' ')
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
        );

    private static bool SameButForNumber(string a, string b) =>
        Singular(a).Equals(Singular(b), StringComparison.Ordinal);

    private static string Singular(string word) =>
        word.EndsWith("es", StringComparison.Ordinal) && word.Length > 4 ? word[..^2]
        : word.EndsWith('s') || (word.EndsWith('e') && word.Length > 4) ? word[..^1]
        : word;

    /// <summary>
    /// Letters left out, put in, changed or swapped with their neighbour (optimal string alignment distance; Damerau,
    /// "A technique for computer detection and correction of spelling errors", CACM 7(3), 1964).
    /// </summary>
    private static int Slips(string a, string b)
    {
        var (before, last, now) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++)
            last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var changed = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                now[j] = Math.Min(changed, Math.Min(last[j], now[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    now[j] = Math.Min(now[j], before[j - 2] + 1);
            }
            (before, last, now) = (last, now, before);
        }
        return last[b.Length];
    }
}
