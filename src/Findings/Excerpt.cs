namespace Dryfit.Findings;

/// <summary>Text of the maker's own inside a message.</summary>
public static class Excerpt
{
    private const int Longest = 48;

    /// <summary>The text in single quotes, on one line, cut where it is too long to read.</summary>
    public static string Quote(string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (line.Length <= Longest)
            return $"'{line}'";
        // A cut may not split a pair of surrogates.
        var end = char.IsHighSurrogate(line[Longest - 2]) ? Longest - 2 : Longest - 1;
        return $"'{line[..end]}…'";
    }
}
