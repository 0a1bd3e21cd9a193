using System.Collections.Frozen;

namespace Dryfit.Measure;

/// <summary>The signs lengths are written with, plain and typographic (Unicode 16, Number Forms and General Punctuation).</summary>
internal static class LengthSigns
{
    /// <summary>U+215F, a one with its fraction slash, waiting for the number under it.</summary>
    public const char OneOver = '\u215F';

    private static readonly FrozenDictionary<char, Rational> VulgarFractions = new Dictionary<char, Rational>
    {
        ['¼'] = new(1, 4),
        ['½'] = new(1, 2),
        ['¾'] = new(3, 4),
        ['⅐'] = new(1, 7),
        ['⅑'] = new(1, 9),
        ['⅒'] = new(1, 10),
        ['⅓'] = new(1, 3),
        ['⅔'] = new(2, 3),
        ['⅕'] = new(1, 5),
        ['⅖'] = new(2, 5),
        ['⅗'] = new(3, 5),
        ['⅘'] = new(4, 5),
        ['⅙'] = new(1, 6),
        ['⅚'] = new(5, 6),
        ['⅛'] = new(1, 8),
        ['⅜'] = new(3, 8),
        ['⅝'] = new(5, 8),
        ['⅞'] = new(7, 8),
        ['↉'] = Rational.Zero,
    }.ToFrozenDictionary();

    public static bool IsVulgarFraction(char c) => c > '\u007F' && VulgarFractions.ContainsKey(c);

    public static Rational VulgarFraction(char c) => VulgarFractions[c];

    /// <summary>Whether a number can begin with this character.</summary>
    public static bool StartsNumber(char c) => char.IsAsciiDigit(c) || c is '.' or OneOver || IsVulgarFraction(c);

    /// <summary>Spaces within a line: plain, tab, no-break, figure, thin, narrow no-break.</summary>
    public static bool IsSpace(char c) => c is ' ' or '\t' or '\u00A0' or '\u2007' or '\u2009' or '\u202F';

    /// <summary>Plain slash, fraction slash, division slash.</summary>
    public static bool IsSlash(char c) => c is '/' or '\u2044' or '\u2215';

    /// <summary>Hyphen-minus, hyphen, no-break hyphen, en dash.</summary>
    public static bool IsHyphen(char c) => c is '-' or '\u2010' or '\u2011' or '\u2013';

    /// <summary>Hyphen-minus, minus sign.</summary>
    public static bool IsMinus(char c) => c is '-' or '\u2212';

    /// <summary>Apostrophe, curly quotes, prime, acute accent.</summary>
    public static bool IsFootMark(char c) => c is '\'' or '\u2018' or '\u2019' or '\u2032' or '\u00B4';

    /// <summary>Quotation mark, curly quotes, double prime.</summary>
    public static bool IsInchMark(char c) => c is '"' or '\u201C' or '\u201D' or '\u2033';

    /// <summary>Whether a name or word could go on with this character.</summary>
    public static bool IsWordCharacter(char c) => char.IsLetterOrDigit(c) || c == '_';

    /// <summary>How many characters the word at a position has; at least 1.</summary>
    public static int WordLength(ReadOnlySpan<char> text, int position)
    {
        var end = position;
        while (end < text.Length && IsWordCharacter(text[end]))
            end++;
        return Math.Max(1, end - position);
    }
}
