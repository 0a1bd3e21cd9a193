using System.Globalization;
using System.Numerics;

namespace Dryfit.Measure;

/// <summary>
/// An exact fraction in lowest terms with a positive denominator. Every count, ratio and length of the house
/// rests on it, so that nothing drifts between the recipe and the cut list.
/// </summary>
public readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    private readonly BigInteger _numerator;
    private readonly BigInteger _denominator; // zero only in default(Rational), which reads as 0/1

    /// <summary>A fraction of two whole numbers, reduced to lowest terms.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
            throw new DivideByZeroException("A fraction needs a denominator other than zero.");
        if (denominator.Sign < 0)
            (numerator, denominator) = (-numerator, -denominator);
        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator);
        _numerator = numerator / divisor;
        _denominator = denominator / divisor;
    }

    private Rational(BigInteger whole)
    {
        _numerator = whole;
        _denominator = BigInteger.One;
    }

    public static Rational Zero => default;

    public static Rational One { get; } = new(BigInteger.One);

    /// <summary>The numerator in lowest terms; carries the sign.</summary>
    public BigInteger Numerator => _numerator;

    /// <summary>The denominator in lowest terms; always positive.</summary>
    public BigInteger Denominator => _denominator.IsZero ? BigInteger.One : _denominator;

    public int Sign => _numerator.Sign;

    public bool IsWhole => Denominator.IsOne;

    public static implicit operator Rational(int whole) => new(new BigInteger(whole));

    public static implicit operator Rational(long whole) => new(new BigInteger(whole));

    public static implicit operator Rational(BigInteger whole) => new(whole);

    public static Rational operator +(Rational a, Rational b) =>
        a.Denominator == b.Denominator
            ? new(a._numerator + b._numerator, a.Denominator)
            : new((a._numerator * b.Denominator) + (b._numerator * a.Denominator), a.Denominator * b.Denominator);

    public static Rational operator -(Rational a, Rational b) => a + (-b);

    public static Rational operator -(Rational a) => new(-a._numerator, a.Denominator);

    public static Rational operator *(Rational a, Rational b) =>
        new(a._numerator * b._numerator, a.Denominator * b.Denominator);

    /// <exception cref="DivideByZeroException"><paramref name="b"/> is zero.</exception>
    public static Rational operator /(Rational a, Rational b) =>
        new(a._numerator * b.Denominator, a.Denominator * b._numerator);

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
        var quotient = BigInteger.DivRem(_numerator, Denominator, out var remainder);
        return remainder.Sign < 0 ? quotient - 1 : quotient;
    }

    /// <summary>The smallest whole number not below this.</summary>
    public BigInteger Ceiling() => -(-this).Floor();

    /// <summary>The nearest whole number; a half goes away from zero, as a maker rounds it.</summary>
    public BigInteger Round() =>
        Sign < 0 ? -(-this).Round() : (this + new Rational(BigInteger.One, 2)).Floor();

    /// <summary>The nearest double. For geometry, physics and display of decimals only.</summary>
    public double ToDouble()
    {
        // Both sides fit a double exactly up to 2^53; beyond that scale down together so that neither overflows.
        var excess = Math.Max(_numerator.GetBitLength(), Denominator.GetBitLength()) - 1000;
        if (excess <= 0)
            return (double)_numerator / (double)Denominator;
        return (double)(_numerator >> (int)excess) / (double)(Denominator >> (int)excess);
    }

    public int CompareTo(Rational other) =>
        (_numerator * other.Denominator).CompareTo(other._numerator * Denominator);

    public bool Equals(Rational other) => _numerator == other._numerator && Denominator == other.Denominator;

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(_numerator, Denominator);

    /// <summary>For people reading code and logs: <c>7</c> or <c>-3/8</c>.</summary>
    public override string ToString() =>
        IsWhole
            ? _numerator.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{_numerator}/{Denominator}");
}
