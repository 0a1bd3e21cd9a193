using System.Numerics;

namespace Dryfit.Measure.Tests;

public sealed class RationalTests
{
    private static readonly BigInteger Huge = BigInteger.Pow(10, 40);

    [Fact]
    public void A_fraction_is_kept_in_lowest_terms_with_the_sign_above()
    {
        var fraction = new Rational(6, -8);

        Assert.Equal(-3, fraction.Numerator);
        Assert.Equal(4, fraction.Denominator);
        Assert.Equal("-3/4", fraction.ToString());
    }

    [Fact]
    public void A_fraction_of_zero_parts_is_refused()
    {
        Assert.Throws<DivideByZeroException>(() => new Rational(1, 0));
        Assert.Throws<DivideByZeroException>(() => new Rational(Huge, 0));
        Assert.Throws<DivideByZeroException>(() => Rational.One / Rational.Zero);
        Assert.Throws<DivideByZeroException>(() => new Rational(Huge, 7) / 0);
    }

    [Fact]
    public void An_unset_fraction_is_zero()
    {
        Rational unset = default;

        Assert.Equal(Rational.Zero, unset);
        Assert.Equal(new Rational(0, 5), unset);
        Assert.Equal(new Rational(0, 5).GetHashCode(), unset.GetHashCode());
        Assert.Equal(3, unset + 3);
        Assert.Equal("0", unset.ToString());
    }

    [Theory]
    [InlineData(7, 2, 3, 4, 4)]
    [InlineData(-7, 2, -4, -3, -4)]
    [InlineData(1, 3, 0, 1, 0)]
    [InlineData(-1, 3, -1, 0, 0)]
    [InlineData(5, 1, 5, 5, 5)]
    public void Rounding_goes_to_the_floor_the_ceiling_or_the_nearest_with_halves_away_from_zero(
        int numerator,
        int denominator,
        int floor,
        int ceiling,
        int nearest
    )
    {
        var fraction = new Rational(numerator, denominator);

        Assert.Equal(floor, fraction.Floor());
        Assert.Equal(ceiling, fraction.Ceiling());
        Assert.Equal(nearest, fraction.Round());
    }

    [Fact]
    public void Numbers_beyond_64_bits_stay_exact_and_come_back_small()
    {
        var big = new Rational(Huge, 3);

        Assert.Equal(Huge, (big * 3).Numerator);
        Assert.Equal(1, (big + 1) - big);
        Assert.Equal(Rational.One, big / big);
        Assert.Equal(Rational.One.GetHashCode(), (big / big).GetHashCode());
        Assert.True(big > long.MaxValue);
        Assert.True(-big < long.MinValue);
    }

    [Fact]
    public void The_ends_of_64_bits_do_not_overflow()
    {
        Rational most = long.MaxValue;
        Rational least = long.MinValue;

        Assert.Equal(BigInteger.Pow(2, 64), (most - least + 1).Numerator);
        Assert.Equal(-((BigInteger)long.MinValue), (-least).Numerator);
        Assert.Equal(least, -(-least));
        Assert.Equal((BigInteger)long.MaxValue * long.MaxValue, (most * most).Numerator);
        Assert.Equal(new Rational(2, long.MaxValue), (1 / most) + (1 / most));
        Assert.Equal(1, new Rational(int.MinValue, int.MinValue));
    }

    [Theory]
    [InlineData(1, 3)]
    [InlineData(-127, 640)]
    [InlineData(0, 1)]
    [InlineData(int.MaxValue, 7)]
    public void The_nearest_double_of_a_small_fraction_is_its_quotient(int numerator, int denominator) =>
        Assert.Equal((double)numerator / denominator, new Rational(numerator, denominator).ToDouble());

    [Fact]
    public void The_nearest_double_of_a_big_fraction_is_rounded_once()
    {
        Assert.Equal(1e40, new Rational(Huge, 1).ToDouble());
        Assert.Equal(-1e-40, new Rational(-1, Huge).ToDouble());
        Assert.Equal(1.0, new Rational(Huge, Huge + 1).ToDouble());
        // Half way between 2^53 and 2^53 + 2 goes to the even one, anything above half way up.
        Assert.Equal(Math.Pow(2, 53), new Rational((BigInteger.One << 53) + 1, 1).ToDouble());
        Assert.Equal(Math.Pow(2, 53) + 2, new Rational((((BigInteger.One << 53) + 1) * Huge) + 1, Huge).ToDouble());
        Assert.Equal(double.PositiveInfinity, new Rational(BigInteger.Pow(10, 400), 1).ToDouble());
    }
}
