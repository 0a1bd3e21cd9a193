using System.Globalization;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace Dryfit.Measure;

/// <summary>
/// An exact fraction in lowest terms with a positive denominator. Every count, ratio and length of the house
/// rests on it, so that nothing drifts between the recipe and the cut list.
/// </summary>
/// <remarks>
/// Nearly every fraction of a piece fits two 64-bit numbers and is worked out without allocating; the rare one that
/// does not is kept in big integers. A value has one form only (big where it does not fit, never otherwise), so that
/// equality may compare the fields.
/// </remarks>
public readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    private readonly long _numerator; // never long.MinValue, so that it can be negated
    private readonly long _denominator; // zero only in default(Rational), which reads as 0/1, and where _big is set
    private readonly BigFraction? _big;

    /// <summary>A fraction of two whole numbers, reduced to lowest terms.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
            throw NoDenominator();
        if (denominator.Sign < 0)
            (numerator, denominator) = (-numerator, -denominator);
        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator);
        if (!divisor.IsOne)
            (numerator, denominator) = (numerator / divisor, denominator / divisor);
        if (Fits(numerator) && Fits(denominator))
            (_numerator, _denominator) = ((long)numerator, (long)denominator);
        else
            _big = new BigFraction(numerator, denominator);
    }

    /// <summary>A fraction of two whole numbers, reduced to lowest terms.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Rational(long numerator, long denominator)
        : this(new BigInteger(numerator), new BigInteger(denominator)) { }

    /// <summary>A fraction of two whole numbers, reduced to lowest terms.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Rational(int numerator, int denominator)
    {
        if (denominator == 0)
            throw NoDenominator();
        var divisor = (long)GreatestCommonDivisor(Size(numerator), Size(denominator));
        if (denominator < 0)
            divisor = -divisor;
        _numerator = numerator / divisor;
        _denominator = denominator / divisor;
    }

    private Rational(LowestTerms terms) => (_numerator, _denominator) = (terms.Numerator, terms.Denominator);

    public static Rational Zero => default;

    public static Rational One { get; } = 1;

    /// <summary>The numerator in lowest terms; carries the sign.</summary>
    public BigInteger Numerator => _big?.Numerator ?? _numerator;

    /// <summary>The denominator in lowest terms; always positive.</summary>
    public BigInteger Denominator => _big?.Denominator ?? SmallDenominator;

    /// <summary>-1, 0 or 1.</summary>
    public int Sign => _big?.Numerator.Sign ?? Math.Sign(_numerator);

    public bool IsWhole => _big?.Denominator.IsOne ?? SmallDenominator == 1;

    private long SmallDenominator => _denominator == 0 ? 1 : _denominator;

    public static implicit operator Rational(int whole) => new(new LowestTerms(whole, 1));

    public static implicit operator Rational(long whole) =>
        whole == long.MinValue ? new(whole, BigInteger.One) : new(new LowestTerms(whole, 1));

    public static implicit operator Rational(BigInteger whole) => new(whole, BigInteger.One);

    public static Rational operator +(Rational a, Rational b)
    {
        if (a._big is not null || b._big is not null)
            return AddBig(a, b);
        // D. E. Knuth, The Art of Computer Programming, vol. 2, 4.5.1: the common divisor of the denominators is taken
        // out first, so that the numbers stay small and the result needs only a second, small reduction.
        var (da, db) = (a.SmallDenominator, b.SmallDenominator);
        var common = da == db ? da : (long)GreatestCommonDivisor((ulong)da, (ulong)db);
        var sum = ((Int128)a._numerator * (db / common)) + ((Int128)b._numerator * (da / common));
        if (!Fits(sum))
            return AddBig(a, b);
        var rest = common == 1 ? 1 : (long)GreatestCommonDivisor(Size((long)sum % common), (ulong)common);
        return Small((long)sum / rest, (Int128)(da / common) * (db / rest)) ?? AddBig(a, b);
    }

    public static Rational operator -(Rational a, Rational b) => a + (-b);

    public static Rational operator -(Rational a) =>
        a._big is { } big
            ? new(-big.Numerator, big.Denominator)
            : new(new LowestTerms(-a._numerator, a.SmallDenominator));

    public static Rational operator *(Rational a, Rational b) =>
        a._big is not null || b._big is not null
            ? MultiplyBig(a, b)
            : MultiplySmall(a._numerator, a.SmallDenominator, b._numerator, b.SmallDenominator) ?? MultiplyBig(a, b);

    /// <exception cref="DivideByZeroException"><paramref name="b"/> is zero.</exception>
    public static Rational operator /(Rational a, Rational b)
    {
        if (b.Sign == 0)
            throw new DivideByZeroException("A number cannot be divided by zero.");
        if (a._big is not null || b._big is not null)
            return DivideBig(a, b);
        var turned = b._numerator < 0 ? -b.SmallDenominator : b.SmallDenominator;
        return MultiplySmall(a._numerator, a.SmallDenominator, turned, Math.Abs(b._numerator)) ?? DivideBig(a, b);
    }

    public static bool operator ==(Rational a, Rational b) => a.Equals(b);

    public static bool operator !=(Rational a, Rational b) => !a.Equals(b);

    public static bool operator <(Rational a, Rational b) => a.CompareTo(b) < 0;

    public static bool operator >(Rational a, Rational b) => a.CompareTo(b) > 0;

    public static bool operator <=(Rational a, Rational b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Rational a, Rational b) => a.CompareTo(b) >= 0;

    public static Rational Abs(Rational a) => a.Sign < 0 ? -a : a;

    public static Rational Min(Rational a, Rational b) => a <= b ? a : b;

    public static Rational Max(Rational a, Rational b) => a >= b ? a : b;

    /// <summary>The greatest whole number not above this.</summary>
    public BigInteger Floor()
    {
        var quotient = BigInteger.DivRem(Numerator, Denominator, out var remainder);
        return remainder.Sign < 0 ? quotient - 1 : quotient;
    }

    /// <summary>The smallest whole number not below this.</summary>
    public BigInteger Ceiling() => -(-this).Floor();

    /// <summary>The nearest whole number; a half goes away from zero, as a maker rounds it.</summary>
    public BigInteger Round() => Sign < 0 ? -(-this).Round() : (this + new Rational(1, 2)).Floor();

    /// <summary>
    /// The nearest double, a tie to the even one; infinite beyond the range of a double. For geometry, physics and
    /// display of decimals only.
    /// </summary>
    public double ToDouble()
    {
        const long ExactInDouble = 1L << 53;
        if (_big is null && Math.Abs(_numerator) <= ExactInDouble && SmallDenominator <= ExactInDouble)
            return (double)_numerator / SmallDenominator;

        // 64 bits of the quotient, the last one set where anything was left over: rounding them to a double is then
        // rounding the fraction itself.
        var size = BigInteger.Abs(Numerator);
        var shift = (int)(64 - (size.GetBitLength() - Denominator.GetBitLength()));
        var quotient = BigInteger.DivRem(Shift(size, shift), Shift(Denominator, -shift), out var remainder);
        if (quotient.GetBitLength() > 64)
        {
            remainder += quotient & 1;
            quotient >>= 1;
            shift--;
        }
        var bits = (ulong)quotient | (remainder.IsZero ? 0UL : 1UL);
        return Math.ScaleB(Sign < 0 ? -(double)bits : bits, -shift);
    }

    public int CompareTo(Rational other) =>
        _big is null && other._big is null
            ? ((Int128)_numerator * other.SmallDenominator).CompareTo((Int128)other._numerator * SmallDenominator)
            : (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    public bool Equals(Rational other) =>
        _big is null
            ? other._big is null && _numerator == other._numerator && SmallDenominator == other.SmallDenominator
            : _big.Equals(other._big);

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => _big?.GetHashCode() ?? HashCode.Combine(_numerator, SmallDenominator);

    /// <summary>For people reading code and logs: <c>7</c> or <c>-3/8</c>.</summary>
    public override string ToString() =>
        IsWhole
            ? Numerator.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");

    private static Rational AddBig(Rational a, Rational b) =>
        new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    private static Rational MultiplyBig(Rational a, Rational b) =>
        new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    private static Rational DivideBig(Rational a, Rational b) =>
        new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    /// <summary>The product of two fractions in lowest terms, or null where it does not fit 64 bits.</summary>
    private static Rational? MultiplySmall(long na, long da, long nb, long db)
    {
        // Cancelled crosswise first, the product is in lowest terms already.
        var left = (long)GreatestCommonDivisor(Size(na), (ulong)db);
        var right = (long)GreatestCommonDivisor(Size(nb), (ulong)da);
        return Small((Int128)(na / left) * (nb / right), (Int128)(da / right) * (db / left));
    }

    /// <summary>A fraction known to be in lowest terms, or null where it does not fit 64 bits.</summary>
    private static Rational? Small(Int128 numerator, Int128 denominator) =>
        Fits(numerator) && Fits(denominator) ? new Rational(new LowestTerms((long)numerator, (long)denominator)) : null;

    private static ulong GreatestCommonDivisor(ulong a, ulong b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ulong Size(long number) => (ulong)Math.Abs(number);

    private static bool Fits(Int128 number) => number >= -long.MaxValue && number <= long.MaxValue;

    private static bool Fits(BigInteger number) => number >= -long.MaxValue && number <= long.MaxValue;

    private static BigInteger Shift(BigInteger number, int bits) => bits > 0 ? number << bits : number;

    private static DivideByZeroException NoDenominator() => new("A fraction needs a denominator other than zero.");

    /// <summary>Two numbers already without a common divisor, the second above zero.</summary>
    private readonly record struct LowestTerms(long Numerator, long Denominator);

    /// <summary>A fraction in lowest terms with a side that does not fit 64 bits.</summary>
    private sealed record BigFraction(BigInteger Numerator, BigInteger Denominator);
}
