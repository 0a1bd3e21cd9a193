namespace Dryfit.Recipe;

/// <summary>Whether a text may be meant as a length or formula rather than as speech: <c>3 1/2</c> but not <c>maple 3/4</c>.</summary>
internal static class FormulaLook
{
    private static readonly string[] Joining = ["if", "then", "else", "and", "or", "not", "round", "up", "down"];
    private static readonly string[] Units = ["mm", "cm", "m", "in", "ft", "inch", "inches", "feet", "foot"];

    /// <summary>
    /// A formula has an operator between any two words; speech sets them side by side. Only the look is judged here,
    /// the grammar itself lives with the formulas.
    /// </summary>
    public static bool Fits(string text)
    {
        if (
            text.Contains(" if ", StringComparison.Ordinal)
            || text.TrimStart().StartsWith("if ", StringComparison.Ordinal)
        )
            return true;
        var wordBefore = false;
        var i = 0;
        while (i < text.Length)
        {
            var c = text[i];
            if (char.IsLetter(c) || c == '_')
            {
                var start = i;
                while (i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] is '_' or '.'))
                    i++;
                var word = text[start..i];
                if (Joining.Contains(word, StringComparer.Ordinal))
                    wordBefore = false;
                else if (wordBefore)
                    return false;
                else if (!Units.Contains(word, StringComparer.Ordinal))
                    wordBefore = true;
                continue;
            }
            if (char.IsDigit(c) && wordBefore)
                return false;
            if (!char.IsWhiteSpace(c))
                wordBefore = false;
            if (c is ':' or ';' or '#' or '@')
                return false;
            i++;
        }
        return true;
    }
}
