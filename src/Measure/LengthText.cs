namespace Dryfit.Measure;

/// <summary>
/// Reads lengths exactly as makers write them: <c>3 1/2</c>, <c>3-1/2</c>, <c>3½</c>, <c>.5</c>, <c>23 1/4"</c>,
/// <c>4' 7 1/4"</c>, <c>4 ft 7 in</c>, <c>590</c>, <c>590 mm</c>, <c>59 cm</c>, <c>0.59 m</c>; straight or curly marks
/// and primes, any Unicode fraction. Nothing is rounded.
/// </summary>
/// <remarks>
/// A hyphen without spaces joins a whole number and a proper fraction, or feet and inches; minus needs spaces. Inches
/// after feet are less than 12 and their mark may be left out. Time and memory are bounded by the text's length, and
/// that is limited.
/// </remarks>
public static class LengthText
{
    /// <summary>The longest text that is read as a length, in UTF-16 units.</summary>
    public const int LongestText = 100;

    /// <summary>The longest length there is, either way from zero: 1 km. No piece comes near it.</summary>
    public static Length Longest { get; } = Length.FromMillimetres(1_000_000);

    /// <summary>Reads a whole text as one length; spaces around it do not matter and a minus may lead it.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="unit">The unit of a number that has none written.</param>
    /// <returns>The exact length, or what is wrong and where.</returns>
    public static LengthResult Parse(string text, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > LongestText)
            return LengthResult.Of(LengthMessages.TextTooLong(LongestText));
        var start = SkipSpaces(text, 0);
        if (start == text.Length)
            return LengthResult.Of(LengthMessages.Empty());

        var negative = LengthSigns.IsMinus(text[start]);
        if (negative)
        {
            start = SkipSpaces(text, start + 1);
            if (start < text.Length && LengthSigns.IsMinus(text[start]))
                return LengthResult.Of(LengthMessages.TwoMinuses(start));
        }

        if (ReadPrefix(text, start, out var end, out var failure) is not { } number)
            return LengthResult.Of(failure!);
        var rest = SkipSpaces(text, end);
        if (rest < text.Length)
            return LengthResult.Of(WhyNotAtEnd(text, rest));
        var length = number.ToLength(unit);
        if (length > Longest)
            return LengthResult.Of(LengthMessages.TooLong(start, end - start));
        return LengthResult.Of(negative ? -length : length);
    }

    /// <summary>
    /// Reads the longest number with its unit that begins at a position inside a longer text, such as
    /// <c>width - 1 1/2</c> or <c>2*3 1/2"</c>. Signs are not read; whoever reads the text around it knows operators.
    /// </summary>
    /// <param name="text">The whole text.</param>
    /// <param name="start">Where the number begins, from 0; no space is skipped.</param>
    /// <param name="end">The first position behind the number; <paramref name="start"/> where it failed.</param>
    /// <param name="failure">What is wrong, its place counted in <paramref name="text"/>; null on success.</param>
    /// <returns>The number and its unit, or null where none could be read.</returns>
    /// <remarks>
    /// A slash without spaces between whole numbers is a fraction; before anything else (<c>12/width</c>,
    /// <c>54/2.5</c>) it is left to the text around. A number with a unit is at most <see cref="Longest"/>; one without
    /// has at most 12 digits before and 12 behind the point.
    /// </remarks>
    public static WrittenNumber? ReadPrefix(ReadOnlySpan<char> text, int start, out int end, out LengthFailure? failure)
    {
        var reader = new LengthReader(text, start);
        var number = reader.Read();
        failure = reader.Failure;
        end = number is null ? start : reader.Position;
        return number;
    }

    /// <summary>Whether a number can begin with this character: a digit, a point, a fraction sign.</summary>
    public static bool StartsNumber(char c) => LengthSigns.StartsNumber(c);

    private static int SkipSpaces(ReadOnlySpan<char> text, int position)
    {
        while (position < text.Length && LengthSigns.IsSpace(text[position]))
            position++;
        return position;
    }

    private static LengthFailure WhyNotAtEnd(ReadOnlySpan<char> text, int position)
    {
        var c = text[position];
        if (c == ',')
            return LengthMessages.DecimalComma(position);
        if (LengthSigns.IsHyphen(c) || LengthSigns.IsMinus(c))
            return LengthMessages.LooseHyphen(position);
        return char.IsLetter(c)
            ? LengthMessages.UnknownUnit(text, position)
            : LengthMessages.Unexpected(text, position);
    }
}
