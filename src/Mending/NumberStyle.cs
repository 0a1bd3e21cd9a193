using System.Globalization;
using System.Text;
using Dryfit.Measure;

namespace Dryfit.Mending;

/// <summary>
/// How a maker wrote a length, to write another the same way: <c>23 1/4"</c>, <c>23-1/4"</c>, <c>8.125</c>, <c>59 cm</c>,
/// <c>4' 7 1/4"</c>.
/// </summary>
internal sealed record NumberStyle
{
    private static readonly char[] Hyphens = ['-', '\u2010', '\u2011', '\u2013'];

    /// <summary>The unit of the number itself: a bare one's is what the file says.</summary>
    public required WrittenUnit Unit { get; init; }

    /// <summary>What stands between a whole number and its fraction.</summary>
    public required string Joint { get; init; }

    /// <summary>What stands behind the number: its unit with the space before it.</summary>
    public required string Suffix { get; init; }

    /// <summary>What stands between feet and inches, with the foot mark; null where there are no feet.</summary>
    public required string? Feet { get; init; }

    public required bool IsDecimal { get; init; }

    /// <summary>The finest step in which such a number is written: 1/64 in, or 0.1 mm.</summary>
    public required Length Step { get; init; }

    /// <summary>The style of a written length.</summary>
    /// <param name="written">The number with its unit and nothing else.</param>
    /// <param name="read">The same as read.</param>
    /// <param name="bare">What a number without a unit means there.</param>
    public static NumberStyle Of(string written, WrittenNumber read, LengthUnit bare)
    {
        var end = written.Length;
        while (end > 0 && !IsDigit(written[end - 1]))
            end--;
        var feet = FeetOf(written);
        // Feet alone: 4' stands for a number whose unit is the foot.
        var isFeet = read.Unit == WrittenUnit.Foot || feet is not null;
        var inInches = isFeet || read.Unit == WrittenUnit.Inch || (!read.HasUnit && bare == LengthUnit.Inch);
        var fraction = written.IndexOf('/', StringComparison.Ordinal);
        var hyphen = written.IndexOfAny(Hyphens, feet is null ? 0 : feet.Value.End);
        return new NumberStyle
        {
            Unit = read.HasUnit ? read.Unit : (bare == LengthUnit.Inch ? WrittenUnit.Inch : WrittenUnit.Millimetre),
            Joint = hyphen > 0 && fraction > hyphen ? written[hyphen].ToString() : " ",
            Suffix = written[end..],
            Feet = feet?.Text,
            IsDecimal = !inInches || written.Contains('.', StringComparison.Ordinal),
            Step = inInches ? Length.FromInches(0, 1, 64) : Length.FromMillimetres(new Rational(1, 10)),
        };
    }

    /// <summary>A length in this style; null where it cannot be written so (below zero, or a decimal without end).</summary>
    public string? Write(Length length)
    {
        if (length.Sign < 0)
            return null;
        if (Feet is not null)
        {
            var feet = (length.Inches / 12).Floor();
            var inches = Number(length.Inches - (12 * (Rational)feet));
            return inches is null ? null : string.Create(CultureInfo.InvariantCulture, $"{feet}{Feet}{inches}{Suffix}");
        }
        var number = Number(
            Unit switch
            {
                WrittenUnit.Millimetre => length.Millimetres,
                WrittenUnit.Centimetre => length.Millimetres / 10,
                WrittenUnit.Metre => length.Millimetres / 1000,
                WrittenUnit.Foot => length.Inches / 12,
                _ => length.Inches,
            }
        );
        return number is null ? null : number + Suffix;
    }

    private string? Number(Rational number)
    {
        var whole = number.Floor();
        var rest = number - whole;
        if (rest.Sign == 0)
            return whole.ToString(CultureInfo.InvariantCulture);
        if (IsDecimal)
            return Decimals(rest) is { } digits
                ? string.Create(CultureInfo.InvariantCulture, $"{whole}.{digits}")
                : null;
        return whole.IsZero ? rest.ToString() : string.Create(CultureInfo.InvariantCulture, $"{whole}{Joint}{rest}");
    }

    /// <summary>The digits behind the point, at most nine; null where they do not end so soon.</summary>
    private static string? Decimals(Rational rest)
    {
        var digits = new StringBuilder();
        for (var n = 0; n < 9 && rest.Sign > 0; n++)
        {
            rest *= 10;
            var digit = rest.Floor();
            digits.Append(digit.ToString(CultureInfo.InvariantCulture));
            rest -= digit;
        }
        return rest.Sign == 0 ? digits.ToString() : null;
    }

    private static (string Text, int End)? FeetOf(string written)
    {
        var first = 0;
        while (first < written.Length && char.IsAsciiDigit(written[first]))
            first++;
        var next = first;
        while (next < written.Length && !IsDigit(written[next]))
            next++;
        var between = written[first..next];
        var isFeet =
            between.AsSpan().IndexOfAny("'\u2018\u2019\u2032\u00B4") >= 0
            || between.Contains('f', StringComparison.OrdinalIgnoreCase);
        return next < written.Length && isFeet ? (between, next) : null;
    }

    private static bool IsDigit(char c) => char.IsAsciiDigit(c) || (c != '.' && LengthText.StartsNumber(c));
}
