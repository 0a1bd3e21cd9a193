namespace Dryfit.Measure;

/// <summary>
/// An exact length, signed. Held in millimetres as a fraction, so that 1/128 in (127/640 mm), 0.1 mm and a third of
/// an opening are all without error. It never rounds by itself.
/// </summary>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>One inch is 25.4 mm exactly (international yard and pound agreement, 1959).</summary>
    private static readonly Rational MillimetresPerInch = new(127, 5);

    private Length(Rational millimetres) => Millimetres = millimetres;

    public static Length Zero => default;

    /// <summary>The length in millimetres, exact.</summary>
    public Rational Millimetres { get; }

    /// <summary>The length in inches, exact.</summary>
    public Rational Inches => Millimetres / MillimetresPerInch;

    public int Sign => Millimetres.Sign;

    /// <summary>The length in a unit, exact.</summary>
    public Rational In(LengthUnit unit) => unit == LengthUnit.Inch ? Inches : Millimetres;

    public static Length FromMillimetres(Rational millimetres) => new(millimetres);

    public static Length FromInches(Rational inches) => new(inches * MillimetresPerInch);

    /// <summary>So many millimetres or inches.</summary>
    public static Length From(Rational magnitude, LengthUnit unit) =>
        unit == LengthUnit.Inch ? FromInches(magnitude) : FromMillimetres(magnitude);

    /// <summary>For tests and shop defaults: <c>FromInches(3, 1, 2)</c> is 3 1/2 in.</summary>
    public static Length FromInches(int whole, int numerator, int denominator) =>
        FromInches(whole + new Rational(numerator, denominator));

    public static Length operator +(Length a, Length b) => new(a.Millimetres + b.Millimetres);

    public static Length operator -(Length a, Length b) => new(a.Millimetres - b.Millimetres);

    public static Length operator -(Length a) => new(-a.Millimetres);

    public static Length operator *(Length a, Rational factor) => new(a.Millimetres * factor);

    public static Length operator *(Rational factor, Length a) => a * factor;

    public static Length operator /(Length a, Rational divisor) => new(a.Millimetres / divisor);

    /// <summary>How many times <paramref name="b"/> goes into <paramref name="a"/>; exact.</summary>
    public static Rational operator /(Length a, Length b) => a.Millimetres / b.Millimetres;

    public static bool operator <(Length a, Length b) => a.CompareTo(b) < 0;

    public static bool operator >(Length a, Length b) => a.CompareTo(b) > 0;

    public static bool operator <=(Length a, Length b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Length a, Length b) => a.CompareTo(b) >= 0;

    public static Length Abs(Length a) => a.Sign < 0 ? -a : a;

    public static Length Min(Length a, Length b) => a <= b ? a : b;

    public static Length Max(Length a, Length b) => a >= b ? a : b;

    /// <summary>The nearest whole multiple of <paramref name="step"/>; a half step goes away from zero.</summary>
    public Length RoundTo(Length step) => step * (this / step).Round();

    /// <summary>The greatest whole multiple of <paramref name="step"/> not above this.</summary>
    public Length FloorTo(Length step) => step * (this / step).Floor();

    /// <summary>The smallest whole multiple of <paramref name="step"/> not below this.</summary>
    public Length CeilingTo(Length step) => step * (this / step).Ceiling();

    /// <summary>Millimetres as the nearest double; for geometry, physics and files that want decimals only.</summary>
    public double ToMillimetres() => Millimetres.ToDouble();

    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    /// <summary>For people reading code and logs; what a maker reads is written by <see cref="LengthFormat"/>.</summary>
    public override string ToString() => $"{Millimetres} mm";
}
