namespace Dryfit.Outputs.FrontView;

/// <summary>
/// How wide a text comes out in the usual sans-serif faces, near enough to lay labels out. Widths are those of
/// Helvetica by groups of letters (Adobe core font metrics, from memory); other letters are
/// taken as wide ones.
/// </summary>
internal static class TextWidth
{
    private const string Narrow = "fijlrtI !'()*,-./:;[\\]`{|}";
    private const double DigitWidth = 0.556;
    private const double Bolder = 1.07;

    /// <summary>Width of a text at a type size, in the unit of the size.</summary>
    public static double Of(string text, double size, bool bold = false)
    {
        var width = 0.0;
        foreach (var character in text)
            width += Of(character);
        return width * size * (bold ? Bolder : 1);
    }

    /// <summary>The text broken into lines no wider than a width; the last one shortened where there are too many.</summary>
    public static List<string> Wrapped(string text, double size, double width, int mostLines, bool bold = false)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Of(longer, size, bold) > width)
            {
                lines.Add(Fitted(line, size, width, bold));
                if (lines.Count > mostLines)
                    break;
                line = word;
            }
            else
            {
                line = longer;
            }
        }
        if (line.Length > 0)
            lines.Add(Fitted(line, size, width, bold));
        if (lines.Count <= mostLines)
            return lines;
        lines[mostLines - 1] = Fitted(lines[mostLines - 1] + " …", size, width, bold);
        return lines[..mostLines];
    }

    /// <summary>The text, or as much of it as fits with an ellipsis.</summary>
    public static string Fitted(string text, double size, double width, bool bold = false)
    {
        if (Of(text, size, bold) <= width)
            return text;
        var room = width - Of("…", size, bold);
        var used = 0.0;
        for (var i = 0; i < text.Length; i++)
        {
            used += Of(text[i]) * size * (bold ? Bolder : 1);
            if (used > room)
                return text[..(i > 0 && char.IsHighSurrogate(text[i - 1]) ? i - 1 : i)].TrimEnd() + "…";
        }
        return text;
    }

    private static double Of(char character) =>
        character switch
        {
            >= '0' and <= '9' => DigitWidth,
            'm' or 'M' or 'w' or 'W' or '@' or '%' => 0.9,
            _ when Narrow.Contains(character, StringComparison.Ordinal) => 0.3,
            >= 'a' and <= 'z' => 0.54,
            >= 'A' and <= 'Z' => 0.7,
            < '\u0080' => 0.584,
            >= '\u1100' => 1.0,
            _ => 0.6,
        };
}
