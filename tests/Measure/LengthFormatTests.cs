namespace Dryfit.Measure.Tests;

public sealed class LengthFormatTests
{
    private static readonly LengthFormat Inches = LengthFormat.Inches;
    private static readonly LengthFormat Millimetres = LengthFormat.Millimetres;

    [Theory]
    [InlineData(237, 16, "14 13/16")]
    [InlineData(7, 2, "3 1/2")]
    [InlineData(-7, 2, "-3 1/2")]
    [InlineData(3, 4, "3/4")]
    [InlineData(14, 1, "14")]
    [InlineData(0, 1, "0")]
    [InlineData(1, 64, "1/64")]
    public void Inches_are_written_as_fractions_in_lowest_terms(int numerator, int denominator, string written) =>
        Assert.Equal(written, Inches.Write(Length.FromInches(new Rational(numerator, denominator))));

    [Theory]
    [InlineData(590, 1, "590")]
    [InlineData(1181, 2, "590.5")]
    [InlineData(1, 10, "0.1")]
    [InlineData(-26, 5, "-5.2")]
    [InlineData(0, 1, "0")]
    public void Millimetres_are_written_as_decimals(int numerator, int denominator, string written) =>
        Assert.Equal(written, Millimetres.Write(Length.FromMillimetres(new Rational(numerator, denominator))));

    [Theory]
    // 14 13/16 in and a fifth of 1/64 in: 948.2/64 in
    [InlineData(4741, 320, "14 13/16 + 0.2/64")]
    // a third of an inch is 21.333/64 in
    [InlineData(1, 3, "21/64 + 0.3/64")]
    // two thirds of an inch are 42.667/64 in
    [InlineData(2, 3, "43/64 - 0.3/64")]
    [InlineData(1, 128, "1/64 - 0.5/64")]
    [InlineData(-1, 3, "-21/64 - 0.3/64")]
    [InlineData(-2, 3, "-43/64 + 0.3/64")]
    // 0.25/64 in rounds to nothing and is not lost; a half of the last figure goes up
    [InlineData(1, 256, "0 + 0.3/64")]
    [InlineData(1, 6400, "0 + 0.01/64")]
    [InlineData(1, 6_400_000, "0 + under 0.001/64")]
    public void What_rounding_hides_of_an_inch_is_written_in_parts_of_the_step(
        int numerator,
        int denominator,
        string written
    ) => Assert.Equal(written, Inches.Write(Length.FromInches(new Rational(numerator, denominator))));

    [Theory]
    [InlineData(59053, 100, "590.5 + 0.03")]
    [InlineData(59047, 100, "590.5 - 0.03")]
    [InlineData(1000, 3, "333.3 + 0.03")]
    [InlineData(127, 640, "0.2 - 0.002")]
    [InlineData(1, 1_000_000, "0 + under 0.0001")]
    public void What_rounding_hides_of_a_millimetre_is_written_as_a_decimal(
        int numerator,
        int denominator,
        string written
    ) => Assert.Equal(written, Millimetres.Write(Length.FromMillimetres(new Rational(numerator, denominator))));

    [Fact]
    public void A_millimetre_size_shown_in_inches_tells_how_far_off_the_fraction_is()
    {
        // 19 mm is 47.874/64 in.
        Assert.Equal("3/4 - 0.1/64 in", Inches.WriteWithUnit(Length.FromMillimetres(19)));
        Assert.Equal("19 mm", Millimetres.WriteWithUnit(Length.FromMillimetres(19)));
    }

    [Fact]
    public void The_step_may_be_coarser_or_finer()
    {
        var eighths = new LengthFormat(LengthUnit.Inch, Length.FromInches(0, 1, 8));
        var micrometres = new LengthFormat(LengthUnit.Millimetre, Length.FromMillimetres(new Rational(1, 1000)));
        var wholeInches = new LengthFormat(LengthUnit.Inch, Length.FromInches(1));

        Assert.Equal("14 7/8 - 0.5/8", eighths.Write(Length.FromInches(14, 13, 16)));
        Assert.Equal("0.198", micrometres.Write(micrometres.Step * 198));
        Assert.Equal("3 + 0.3", wholeInches.Write(Length.FromInches(3, 1, 3)));
    }

    [Fact]
    public void A_step_whose_decimals_do_not_end_is_written_as_a_fraction()
    {
        var thirds = new LengthFormat(LengthUnit.Millimetre, Length.FromMillimetres(new Rational(1, 3)));

        Assert.Equal("590 1/3", thirds.Write(Length.FromMillimetres(590 + new Rational(1, 3))));
    }

    [Fact]
    public void Every_digit_of_a_fine_decimal_is_kept()
    {
        // 1/128 in is 0.1984375 mm exactly.
        var format = new LengthFormat(LengthUnit.Millimetre, Length.FromInches(0, 1, 128));

        Assert.Equal("0.1984375", format.Write(Length.FromInches(0, 1, 128)));
        Assert.Equal("1000000.1828125", format.Write(Length.FromInches(0, 1, 128) * 5_039_371));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_step_of_nothing_or_less_is_refused(int step) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new LengthFormat(LengthUnit.Inch, Length.FromMillimetres(step))
        );

    [Theory]
    [InlineData("2002/1000", "2")]
    [InlineData("2998/1000", "3")]
    [InlineData("203/100", "2 + 0.03")]
    [InlineData("4/1000", "0 + 0.004")]
    public void Measured_length_leaves_off_what_no_tape_tells(string millimetres, string written)
    {
        var parts = millimetres.Split('/');
        var measured = Length.FromMillimetres(new Rational(int.Parse(parts[0]), int.Parse(parts[1])));
        var format = LengthFormat.Millimetres;
        Assert.Equal(written, format.Write(format.ByTape(measured)));
    }
}
