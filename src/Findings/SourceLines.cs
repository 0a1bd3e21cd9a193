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

    /// <summary>One line without its end, counted from 1; null where the text has fewer. Cheaper than splitting it all.</summary>
    public static string? Line(string text, int number)
    {
        var start = 0;
        for (var line = 1; line < number; line++)
        {
            var end = text.AsSpan(start).IndexOfAny('\n', '\r');
            if (end < 0)
                return null;
            start +=
                end
                + (text[start + end] == '\r' && start + end + 1 < text.Length && text[start + end + 1] == '\n' ? 2 : 1);
        }
        var rest = text.AsSpan(start);
        var length = rest.IndexOfAny('\n', '\r');
        return number < 1 ? null : (length < 0 ? rest : rest[..length]).ToString();
    }
}
