using System.Buffers;
using System.Text;

namespace Dryfit.Outputs.Text;

/// <summary>
/// Names and sentences out of a recipe made fit for any file or screen: no control characters, no halves of surrogate
/// pairs, nothing that turns the direction of the text around it.
/// </summary>
internal static class PlainText
{
    /// <summary>Marks that reorder text (Unicode annex 9): in a name they could make one number read as another.</summary>
    private static readonly SearchValues<char> Reordering = SearchValues.Create(
        "\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069"
    );

    private const char Isolate = '\u2068';
    private const char EndIsolate = '\u2069';

    /// <summary>The text on one line: control characters become spaces, broken characters U+FFFD.</summary>
    public static string Clean(string text)
    {
        if (IsClean(text))
            return text;
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes()) // half a surrogate pair comes out as U+FFFD
        {
            if (Rune.IsControl(rune) || rune.Value is 0x2028 or 0x2029)
                clean.Append(' ');
            else if (rune.Value is 0xFFFE or 0xFFFF) // no characters, and not allowed in XML
                clean.Append('\uFFFD');
            else if (!rune.IsBmp || !Reordering.Contains((char)rune.Value))
                clean.Append(rune.ToString());
        }
        return clean.ToString();
    }

    /// <summary>A cleaned name set apart from the text around it, where it is written from right to left.</summary>
    public static string Apart(string name)
    {
        var clean = Clean(name);
        return clean.Any(IsRightToLeft) ? $"{Isolate}{clean}{EndIsolate}" : clean;
    }

    /// <summary>At most so many characters, the last one an ellipsis where something was left out.</summary>
    public static string Shortened(string text, int most)
    {
        if (text.Length <= most)
            return text;
        var end = most - 1;
        if (char.IsHighSurrogate(text[end - 1]))
            end--;
        return text[..end].TrimEnd() + "…";
    }

    private static bool IsClean(string text)
    {
        foreach (var character in text)
        {
            if (character is < ' ' or (>= '\u007F' and <= '\u009F') or '\u2028' or '\u2029' or >= '\uFFFE')
                return false;
            if (char.IsSurrogate(character) || Reordering.Contains(character))
                return false;
        }
        return true;
    }

    /// <summary>Hebrew, Arabic and their neighbours, with their presentation forms.</summary>
    private static bool IsRightToLeft(char character) =>
        character is (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFC');
}
