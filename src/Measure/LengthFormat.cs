using System.Globalization;

namespace Dryfit.Measure;

/// <summary>
/// How lengths are written for a maker: the unit, and the finest step shown. Rounding happens here, for the eye only;
/// where it hides something a sign says so: <c>14 13/16+</c> is a little over, <c>14 13/16-</c> a little under.
/// </summary>
/// <param name="Unit">Millimetres (decimals) or inches (fractions).</param>
/// <param name="Step">The finest step shown, above zero: 1/32 in or 0.1 mm, say.</param>
public sealed record LengthFormat(LengthUnit Unit, Length Step)
{
    /// <summary>Inches to 1/64.</summary>
    public static LengthFormat Inches { get; } = new(LengthUnit.Inch, Length.FromInches(0, 1, 64));

    /// <summary>Millimetres to 0.1.</summary>
    public static LengthFormat Millimetres { get; } =
        new(LengthUnit.Millimetre, Length.FromMillimetres(new Rational(1, 10)));

    public static LengthFormat For(LengthUnit unit) => unit == LengthUnit.Inch ? Inches : Millimetres;

    /// <summary>The length as a maker writes it, without the unit: <c>14 13/16</c>, <c>590.5</c>.</summary>
    public string Write(Length length)
    {
        var shown = length.RoundTo(Step);
        var mark = shown == length ? "" : Length.Abs(length) > Length.Abs(shown) ? "+" : "-";
        var sign = shown.Sign < 0 ? "-" : "";
        var size = Length.Abs(shown);
        return sign + (Unit == LengthUnit.Inch ? Fraction(size.Inches) : Decimal(size.Millimetres)) + mark;
    }

    /// <summary>The same with its unit: <c>14 13/16 in</c>, <c>590.5 mm</c>.</summary>
    public string WriteWithUnit(Length length) => Write(length) + (Unit == LengthUnit.Inch ? " in" : " mm");

    private static string Fraction(Rational inches)
    {
        var whole = inches.Floor();
        var rest = inches - whole;
        if (rest.Sign == 0)
            return whole.ToString(CultureInfo.InvariantCulture);
        return whole.IsZero ? rest.ToString() : string.Create(CultureInfo.InvariantCulture, $"{whole} {rest}");
    }

    private static string Decimal(Rational millimetres) =>
        // Six decimals are finer than any step a maker asks for; trailing zeros go.
        ((decimal)millimetres.ToDouble()).ToString("0.######", CultureInfo.InvariantCulture);
}
