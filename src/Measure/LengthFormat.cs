using System.Globalization;
using System.Numerics;

namespace Dryfit.Measure;

/// <summary>
/// How lengths are written for a maker: the unit, and the finest step shown. Rounding happens here, for the eye only,
/// and where it hides something the rest is written behind: <c>14 13/16 + 0.2/64</c> is a fifth of 1/64 in more than
/// 14 13/16, <c>590.5 - 0.03</c> three hundredths of a millimetre less than 590.5. Where nothing is hidden,
/// <see cref="LengthText"/> reads back exactly what was written.
/// </summary>
public sealed record LengthFormat
{
    private static readonly Rational OneThousandth = new(1, 1000);

    /// <param name="unit">Millimetres (decimals) or inches (fractions).</param>
    /// <param name="step">The finest step shown, above zero: 1/32 in or 0.1 mm, say.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above zero.</exception>
    public LengthFormat(LengthUnit unit, Length step)
    {
        if (step.Sign <= 0)
            throw new ArgumentOutOfRangeException(nameof(step), "Lengths are shown to a step above zero.");
        Unit = unit;
        Step = step;
    }

    /// <summary>What no tape tells apart.</summary>
    private static readonly Length Finest = Length.FromMillimetres(new Rational(1, 100));

    /// <summary>Inches to 1/64.</summary>
    public static LengthFormat Inches { get; } = new(LengthUnit.Inch, Length.FromInches(0, 1, 64));

    /// <summary>Millimetres to 0.1.</summary>
    public static LengthFormat Millimetres { get; } =
        new(LengthUnit.Millimetre, Length.FromMillimetres(new Rational(1, 10)));

    /// <summary>Millimetres (decimals) or inches (fractions).</summary>
    public LengthUnit Unit { get; }

    /// <summary>The finest step shown.</summary>
    public Length Step { get; }

    public static LengthFormat For(LengthUnit unit) => unit == LengthUnit.Inch ? Inches : Millimetres;

    /// <summary>What is shown of a length: the nearest whole multiple of the step, a half going away from zero.</summary>
    public Length Shown(Length length) => length.RoundTo(Step);

    /// <summary>Whether rounding hides a part of the length.</summary>
    public bool Hides(Length length) => Shown(length) != length;

    /// <summary>
    /// A length that was measured on the model, as a tape would give it: it counts as the nearest step where it is less
    /// than 0.01 mm off. Sizes, which are reckoned and exact, are never treated so.
    /// </summary>
    public Length ByTape(Length measured)
    {
        var shown = Shown(measured);
        return shown.Sign != 0 && Length.Abs(measured - shown) < Finest ? shown : measured;
    }

    /// <summary>
    /// The length as a maker writes it, without the unit: <c>14 13/16</c>, <c>590.5</c>; with what is hidden behind it,
    /// to one figure, in the step's own parts of an inch or in millimetres.
    /// </summary>
    public string Write(Length length)
    {
        var shown = Shown(length);
        var hidden = length - shown;
        if (hidden.Sign == 0)
            return Number(shown);
        return Number(shown) + (hidden.Sign < 0 ? " - " : " + ") + Hidden(Length.Abs(hidden));
    }

    /// <summary>The same with its unit: <c>14 13/16 in</c>, <c>590.5 mm</c>.</summary>
    public string WriteWithUnit(Length length) => Write(length) + (Unit == LengthUnit.Inch ? " in" : " mm");

    private string Number(Length shown)
    {
        var magnitude = shown.In(Unit);
        var sign = magnitude.Sign < 0 ? "-" : "";
        magnitude = Rational.Abs(magnitude);
        var written = Unit == LengthUnit.Millimetre ? Decimal(magnitude) : null;
        return sign + (written ?? Fraction(magnitude));
    }

    private string Hidden(Length hidden)
    {
        // Parts of an inch are those of the step: with 3/64 shown, what is hidden is still told in 64ths.
        var parts = Unit == LengthUnit.Inch ? Step.In(Unit).Denominator : BigInteger.One;
        var per = parts.IsOne ? "" : "/" + parts.ToString(CultureInfo.InvariantCulture);
        var least = Step.In(Unit) * parts * OneThousandth;
        var amount = hidden.In(Unit) * parts;
        return amount < least ? $"under {OneFigure(least)}{per}" : OneFigure(amount) + per;
    }

    /// <summary>A number above zero to one figure behind its zeros, a half going up: <c>0.03</c>, <c>2</c>.</summary>
    private static string OneFigure(Rational number)
    {
        var unit = Rational.One;
        while (unit > number)
            unit /= 10;
        return Decimal((number / unit).Round() * unit)!;
    }

    private static string Fraction(Rational number)
    {
        var whole = number.Floor();
        var rest = number - whole;
        if (rest.Sign == 0)
            return whole.ToString(CultureInfo.InvariantCulture);
        return whole.IsZero ? rest.ToString() : string.Create(CultureInfo.InvariantCulture, $"{whole} {rest}");
    }

    /// <summary>A number of zero or above as a decimal, exact; null where its decimals would not end.</summary>
    private static string? Decimal(Rational number)
    {
        var digits = 0;
        var rest = number.Denominator;
        var scale = BigInteger.One;
        while (!(scale % number.Denominator).IsZero)
        {
            // Every factor of ten takes a two and a five out of the denominator; anything else in it never goes.
            var common = BigInteger.GreatestCommonDivisor(rest, 10);
            if (common.IsOne)
                return null;
            rest /= common;
            scale *= 10;
            digits++;
        }
        var figures = (number * scale).Floor().ToString(CultureInfo.InvariantCulture).PadLeft(digits + 1, '0');
        return digits == 0 ? figures : $"{figures[..^digits]}.{figures[^digits..]}";
    }
}
