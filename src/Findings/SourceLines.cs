namespace Dryfit.Findings;

/// <summary>The lines of a text as places count them: ended by LF, CR LF or CR.</summary>
public static class SourceLines
{
    /// <summary>The lines without their ends; a text without any end is one line.</summary>
    public static IReadOnlyList<string> Split(string text)
    {
        var lines = new List<string>();
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is not ('\n' or '\r'))
                continue;
            lines.Add(text[start..i]);
            if (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n')
                i++;
            start = i + 1;
        }
        lines.Add(text[start..]);
        return lines;
    }
}
