namespace Dryfit.Cli;

/// <summary>Prose broken into lines between words.</summary>
internal static class Wrap
{
    /// <summary>
    /// The lines of a text, none longer than <paramref name="width"/> unless one word is. Line ends of the text stay.
    /// </summary>
    public static IEnumerable<string> Lines(string text, int width)
    {
        foreach (var paragraph in text.Split('\n'))
        {
            var line = "";
            foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (line.Length > 0 && line.Length + 1 + word.Length > width)
                {
                    yield return line;
                    line = "";
                }
                line = line.Length == 0 ? word : line + " " + word;
            }
            yield return line;
        }
    }

    /// <summary>
    /// A text after a heading on its left: the first line beside it, the rest under the first; below the heading where
    /// it is too wide for its column.
    /// </summary>
    public static IEnumerable<string> Beside(string heading, string text, int column, int width)
    {
        var indent = new string(' ', column);
        var left = heading.PadRight(column);
        if (heading.Length + 2 > column)
        {
            yield return heading;
            left = indent;
        }
        foreach (var line in Lines(text, width - column))
        {
            yield return (left + line).TrimEnd();
            left = indent;
        }
    }
}
