using System.Globalization;
using System.Text;

namespace Dryfit.Measure;

/// <summary>Everything that can be said of a text that is no length, in one place.</summary>
internal static class LengthMessages
{
    private const string ALength = "a length such as 3 1/2, 23 1/4\", 4' 7\" or 590 mm";
    private const string AFraction = "a whole number and a proper fraction, such as 3 1/2 or 3-1/2";
    private const string AUnit = "mm, cm, m, in, ft, or the marks \" and '";

    public static LengthFailure Empty() => new(0, 1, "There is no length here.", ALength);

    public static LengthFailure TextTooLong(int longest) =>
        new(
            longest,
            1,
            string.Create(CultureInfo.InvariantCulture, $"A length is written in at most {longest} characters."),
            ALength
        );

    public static LengthFailure NoNumber(ReadOnlySpan<char> text, int position) =>
        position >= text.Length
            ? new(position, 1, "A number is missing at the end.", ALength)
            : new(position, 1, $"A length does not begin with {Quote(text, position)}.", ALength);

    public static LengthFailure TwoMinuses(int position) =>
        new(position, 1, "Two minus signs follow each other.", "one minus sign before the number");

    public static LengthFailure TooManyDigits(int position, int count, int most) =>
        new(
            position,
            count,
            string.Create(CultureInfo.InvariantCulture, $"A number with {count} digits in a row is no length."),
            string.Create(CultureInfo.InvariantCulture, $"at most {most} digits in a row")
        );

    public static LengthFailure NoDigitAfterPoint(ReadOnlySpan<char> text, int position) =>
        new(
            position,
            1,
            position < text.Length && text[position] == '.'
                ? "Two points follow each other."
                : "A digit is missing after the point.",
            "a digit after the point, as in 3.5"
        );

    public static LengthFailure SecondPoint(int position) =>
        new(position, 1, "A number has only one point.", "a number such as 3.5");

    public static LengthFailure NoDenominator(int position) =>
        new(position, 1, "The number under the fraction is missing.", "a fraction such as 1/2");

    public static LengthFailure ZeroDenominator(int position, int extent) =>
        new(position, extent, "A fraction cannot be of zero parts.", "a number above zero under the fraction");

    public static LengthFailure SecondSlash(int position) =>
        new(
            position,
            1,
            "A fraction has only one slash.",
            "a fraction such as 1/2; to divide it, put spaces around the slash"
        );

    public static LengthFailure ImproperAfterWhole(ReadOnlySpan<char> text, int position, int extent, bool hyphen) =>
        new(
            position,
            extent,
            $"After a whole number the fraction must be less than one, and {text.Slice(position, extent)} is not.",
            hyphen ? AFraction + "; minus needs spaces on both sides" : AFraction
        );

    public static LengthFailure UnknownUnit(ReadOnlySpan<char> text, int position)
    {
        var extent = LengthSigns.WordLength(text, position);
        var word = Shortened(text.Slice(position, extent));
        return new(position, extent, $"'{word}' is no unit of length.", AUnit, UnitWords.Nearest(word));
    }

    public static LengthFailure BrokenFeet(int position, int extent) =>
        new(position, extent, "Feet with inches behind them are whole.", "feet and inches such as 4' 7 1/4\"");

    public static LengthFailure TwelveInches(int position, int extent) =>
        new(position, extent, "After feet, inches are less than 12.", "feet and inches such as 4' 7 1/4\"");

    public static LengthFailure NotInchesAfterFeet(int position, int extent) =>
        new(position, extent, "After feet only inches can follow.", "feet and inches such as 4' 7 1/4\"");

    public static LengthFailure TooLong(int position, int extent) =>
        new(position, extent, "That is more than a kilometre.", "a length up to 1000 m");

    public static LengthFailure DecimalComma(int position) =>
        new(position, 1, "Decimals are written with a point, and thousands without a sign.", "a number such as 3.5");

    public static LengthFailure LooseHyphen(int position) =>
        new(
            position,
            1,
            "This hyphen joins nothing.",
            "a hyphen between a whole number and a proper fraction, as in 3-1/2, or a minus with spaces on both sides"
        );

    public static LengthFailure Unexpected(ReadOnlySpan<char> text, int position) =>
        new(position, 1, $"The length should end before {Quote(text, position)}.", "the end, a fraction or a unit");

    private static string Quote(ReadOnlySpan<char> text, int position)
    {
        Rune.DecodeFromUtf16(text[position..], out var rune, out _);
        var visible = Rune.IsLetter(rune) || Rune.IsNumber(rune) || Rune.IsPunctuation(rune) || Rune.IsSymbol(rune);
        return visible && rune != Rune.ReplacementChar
            ? $"'{rune}'"
            : string.Create(CultureInfo.InvariantCulture, $"the character U+{(int)text[position]:X4}");
    }

    private static string Shortened(ReadOnlySpan<char> word) => word.Length <= 20 ? word.ToString() : $"{word[..20]}…";
}
