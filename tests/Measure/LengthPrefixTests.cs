namespace Dryfit.Measure.Tests;

/// <summary>Numbers inside formulas: how far each reaches, and whether it carries a unit.</summary>
public sealed class LengthPrefixTests
{
    [Theory]
    // text, where the number begins, what is read, the number, its unit
    [InlineData("width - 1 1/2", 8, "1 1/2", 3, 2, WrittenUnit.None)]
    [InlineData("(4' 7 1/4\" - 3-1/2)/2", 1, "4' 7 1/4\"", 221, 4, WrittenUnit.Inch)]
    [InlineData("(4' 7 1/4\" - 3-1/2)/2", 13, "3-1/2", 7, 2, WrittenUnit.None)]
    [InlineData("(4' 7 1/4\" - 3-1/2)/2", 20, "2", 2, 1, WrittenUnit.None)]
    [InlineData("2*3 1/2\"", 0, "2", 2, 1, WrittenUnit.None)]
    [InlineData("2*3 1/2\"", 2, "3 1/2\"", 7, 2, WrittenUnit.Inch)]
    [InlineData("2 * 3", 0, "2", 2, 1, WrittenUnit.None)]
    [InlineData("59 cm - gap", 0, "59 cm", 59, 1, WrittenUnit.Centimetre)]
    [InlineData("0.59 m", 0, "0.59 m", 59, 100, WrittenUnit.Metre)]
    [InlineData("590mm/2", 0, "590mm", 590, 1, WrittenUnit.Millimetre)]
    [InlineData("4'", 0, "4'", 4, 1, WrittenUnit.Foot)]
    [InlineData("4' - 7\"", 0, "4'", 4, 1, WrittenUnit.Foot)]
    [InlineData("4'*2", 0, "4'", 4, 1, WrittenUnit.Foot)]
    // a hyphen with a space is left alone
    [InlineData("10 - 1/2", 0, "10", 10, 1, WrittenUnit.None)]
    [InlineData("10 -1/2", 0, "10", 10, 1, WrittenUnit.None)]
    [InlineData("10-width", 0, "10", 10, 1, WrittenUnit.None)]
    [InlineData("10-3", 0, "10", 10, 1, WrittenUnit.None)]
    [InlineData("1/2-1/4", 0, "1/2", 1, 2, WrittenUnit.None)]
    [InlineData("7-1/4-1/2", 0, "7-1/4", 29, 4, WrittenUnit.None)]
    // a slash that makes no fraction is left alone
    [InlineData("12/width", 0, "12", 12, 1, WrittenUnit.None)]
    [InlineData("12/(1 + 1)", 0, "12", 12, 1, WrittenUnit.None)]
    [InlineData("54/2.5", 0, "54", 54, 1, WrittenUnit.None)]
    [InlineData("2.5/2", 0, "2.5", 5, 2, WrittenUnit.None)]
    [InlineData("3 / 4", 0, "3", 3, 1, WrittenUnit.None)]
    [InlineData("10 1/width", 0, "10", 10, 1, WrittenUnit.None)]
    [InlineData("½/2", 0, "½", 1, 2, WrittenUnit.None)]
    // so is what belongs to the formula around
    [InlineData("min(1,5)", 4, "1", 1, 1, WrittenUnit.None)]
    [InlineData("3 if wide", 0, "3", 3, 1, WrittenUnit.None)]
    [InlineData("3 in_use", 0, "3", 3, 1, WrittenUnit.None)]
    [InlineData("3 1", 0, "3", 3, 1, WrittenUnit.None)]
    [InlineData("3>=2", 0, "3", 3, 1, WrittenUnit.None)]
    [InlineData("3 mm", 0, "3 mm", 3, 1, WrittenUnit.Millimetre)]
    [InlineData("3 ", 0, "3", 3, 1, WrittenUnit.None)]
    public void The_longest_number_with_its_unit_is_read(
        string text,
        int start,
        string read,
        int numerator,
        int denominator,
        WrittenUnit unit
    )
    {
        var number = LengthText.ReadPrefix(text, start, out var end, out var failure);

        Assert.Null(failure);
        Assert.Equal(read, text[start..end]);
        Assert.Equal(new WrittenNumber(new Rational(numerator, denominator), unit), number);
    }

    [Theory]
    [InlineData("2 * 3 1/0", 4, 8)]
    [InlineData("2 * 3 5/4", 4, 6)]
    [InlineData("2 * 1/2/3", 4, 7)]
    [InlineData("2 * 3..5", 4, 6)]
    [InlineData("2 * 1e5", 4, 5)]
    [InlineData("2 * x", 4, 4)]
    [InlineData("2 *", 3, 3)]
    [InlineData("2 * 1001 m", 4, 4)]
    public void A_failure_counts_its_place_in_the_whole_text(string text, int start, int position)
    {
        Assert.Null(LengthText.ReadPrefix(text, start, out var end, out var failure));
        Assert.Equal(start, end);
        Assert.Equal(position, failure!.Position);
    }

    [Fact]
    public void A_bare_number_takes_the_unit_it_is_given()
    {
        var number = LengthText.ReadPrefix("3 1/2", 0, out _, out _)!.Value;

        Assert.False(number.HasUnit);
        Assert.Equal(Length.FromInches(3, 1, 2), number.ToLength(LengthUnit.Inch));
        Assert.Equal(Length.FromMillimetres(new Rational(7, 2)), number.ToLength(LengthUnit.Millimetre));
    }

    [Fact]
    public void A_number_with_a_unit_keeps_it()
    {
        var number = LengthText.ReadPrefix("3 1/2\"", 0, out _, out _)!.Value;

        Assert.True(number.HasUnit);
        Assert.Equal(Length.FromInches(3, 1, 2), number.ToLength(LengthUnit.Millimetre));
    }

    [Theory]
    [InlineData('7', true)]
    [InlineData('.', true)]
    [InlineData('½', true)]
    [InlineData('⅟', true)]
    [InlineData('-', false)]
    [InlineData('a', false)]
    [InlineData('\'', false)]
    [InlineData('٣', false)]
    public void Numbers_begin_with_digits_points_and_fraction_signs(char c, bool starts) =>
        Assert.Equal(starts, LengthText.StartsNumber(c));
}
