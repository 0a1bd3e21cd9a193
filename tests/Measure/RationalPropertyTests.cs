using System.Numerics;
using CsCheck;

namespace Dryfit.Measure.Tests;

/// <summary>The laws of a field, over fractions small enough for 64 bits, too big for them, and around the edge.</summary>
public sealed class RationalPropertyTests
{
    private static readonly Gen<BigInteger> Whole = Gen.OneOf(
        Gen.Int[-1000, 1000].Select(i => (BigInteger)i),
        Gen.Long.Select(i => (BigInteger)i),
        Gen.Select(Gen.Long, Gen.Long).Select(pair => (BigInteger)pair.Item1 * pair.Item2)
    );

    private static readonly Gen<Rational> Fraction = Gen.Select(Whole, Whole.Where(d => !d.IsZero))
        .Select(pair => new Rational(pair.Item1, pair.Item2));

    private static readonly Gen<(Rational A, Rational B, Rational C)> Three = Gen.Select(Fraction, Fraction, Fraction);

    [Fact]
    public void Adding_and_multiplying_obey_the_laws_of_a_field() =>
        Three.Sample(
            (a, b, c) =>
                a + b == b + a
                && a * b == b * a
                && (a + b) + c == a + (b + c)
                && (a * b) * c == a * (b * c)
                && a * (b + c) == (a * b) + (a * c)
                && a + Rational.Zero == a
                && a * Rational.One == a
                && (a - a) == Rational.Zero
                && (a.Sign == 0 || a / a == Rational.One)
        );

    [Fact]
    public void Sums_products_and_quotients_agree_with_big_integers_worked_out_the_long_way() =>
        Three.Sample(
            (a, b, _) =>
                Same(
                    a + b,
                    (a.Numerator * b.Denominator) + (b.Numerator * a.Denominator),
                    a.Denominator * b.Denominator
                )
                && Same(a * b, a.Numerator * b.Numerator, a.Denominator * b.Denominator)
                && (b.Sign == 0 || Same(a / b, a.Numerator * b.Denominator, a.Denominator * b.Numerator))
        );

    [Fact]
    public void A_fraction_is_always_in_lowest_terms_over_a_positive_number() =>
        Three.Sample(
            (a, b, _) =>
            {
                var sum = a + b;
                return sum.Denominator.Sign > 0
                    && (sum.Numerator.IsZero || BigInteger.GreatestCommonDivisor(sum.Numerator, sum.Denominator).IsOne)
                    && (!sum.Numerator.IsZero || sum.Denominator.IsOne);
            }
        );

    [Fact]
    public void Order_agrees_with_subtraction_and_equal_fractions_have_equal_hashes() =>
        Three.Sample(
            (a, b, c) =>
                a.CompareTo(b) == (a - b).Sign
                && ((a + b) - b == a)
                && ((a + b) - b).GetHashCode() == a.GetHashCode()
                && (!(a < b && b < c) || a < c)
        );

    [Fact]
    public void The_nearest_double_is_within_half_a_step_of_the_fraction() =>
        Fraction.Sample(a =>
        {
            var nearest = a.ToDouble();
            var error = Rational.Abs(Exact(nearest) - a);
            return error <= Rational.Abs(Exact(Math.BitIncrement(nearest)) - a)
                && error <= Rational.Abs(Exact(Math.BitDecrement(nearest)) - a);
        });

    private static bool Same(Rational result, BigInteger numerator, BigInteger denominator) =>
        result.Numerator * denominator == numerator * result.Denominator;

    private static Rational Exact(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)((bits >> 52) & 0x7FF);
        var mantissa = (bits & 0xFFFFFFFFFFFFF) | (exponent == 0 ? 0 : 1L << 52);
        var power = Math.Max(exponent, 1) - 1075;
        BigInteger signed = bits < 0 ? -mantissa : mantissa;
        return power >= 0 ? signed << power : new Rational(signed, BigInteger.One << -power);
    }
}
