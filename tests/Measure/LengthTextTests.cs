namespace Dryfit.Measure.Tests;

/// <summary>Every written form, with the length it means worked out by hand.</summary>
public sealed class LengthTextTests
{
    [Theory]
    // whole, mixed and broken numbers
    [InlineData("3", 3, 1)]
    [InlineData("3 1/2", 7, 2)]
    [InlineData("3-1/2", 7, 2)]
    [InlineData("3½", 7, 2)]
    [InlineData("3 ½", 7, 2)]
    [InlineData("3-½", 7, 2)]
    [InlineData("3  1/2", 7, 2)]
    [InlineData("3\u00A01/2", 7, 2)]
    [InlineData("3\u20111/2", 7, 2)]
    [InlineData("3\u20131/2", 7, 2)]
    [InlineData("3 1\u20442", 7, 2)]
    [InlineData("3/4", 3, 4)]
    [InlineData("5/4", 5, 4)]
    [InlineData("1\u20448", 1, 8)]
    [InlineData("⅟16", 1, 16)]
    [InlineData("2 ⅟16", 33, 16)]
    [InlineData("127/128", 127, 128)]
    [InlineData("0", 0, 1)]
    [InlineData("007", 7, 1)]
    [InlineData(".5", 1, 2)]
    [InlineData("0.1", 1, 10)]
    [InlineData("14.8125", 237, 16)]
    [InlineData("  3 1/2  ", 7, 2)]
    // inch marks and words
    [InlineData("23 1/4\"", 93, 4)]
    [InlineData("23 1/4 \"", 93, 4)]
    [InlineData("23 1/4\u201D", 93, 4)]
    [InlineData("23 1/4\u201C", 93, 4)]
    [InlineData("23 1/4\u2033", 93, 4)]
    [InlineData("23 1/4''", 93, 4)]
    [InlineData("23 1/4\u2032\u2032", 93, 4)]
    [InlineData("23-1/4 in", 93, 4)]
    [InlineData("23-1/4in.", 93, 4)]
    [InlineData("23.25 inches", 93, 4)]
    [InlineData("1 inch", 1, 1)]
    [InlineData("½\"", 1, 2)]
    // feet and inches
    [InlineData("4' 7 1/4\"", 221, 4)]
    [InlineData("4'7-1/4\"", 221, 4)]
    [InlineData("4'-7 1/4\"", 221, 4)]
    [InlineData("4\u2032 7 1/4\u2033", 221, 4)]
    [InlineData("4\u2019 7 1/4\u201D", 221, 4)]
    [InlineData("4\u2018 7 1/4\u201D", 221, 4)]
    [InlineData("4' 7¼\"", 221, 4)]
    [InlineData("4' 7.25\"", 221, 4)]
    [InlineData("4' 7 1/4", 221, 4)]
    [InlineData("4'7", 55, 1)]
    [InlineData("4 ft 7 in", 55, 1)]
    [InlineData("4ft7in", 55, 1)]
    [InlineData("4 ft. 7 in.", 55, 1)]
    [InlineData("4 feet 7 inches", 55, 1)]
    [InlineData("1 foot", 12, 1)]
    [InlineData("4'", 48, 1)]
    [InlineData("4 1/2'", 54, 1)]
    [InlineData("4' ½\"", 97, 2)]
    [InlineData("0' 11 63/64\"", 767, 64)]
    // minus
    [InlineData("-3 1/2", -7, 2)]
    [InlineData("- 3 1/2", -7, 2)]
    [InlineData("\u22123 1/2", -7, 2)]
    [InlineData("-4' 7\"", -55, 1)]
    public void A_length_in_inches_is_read_as_it_is_written(string text, int numerator, int denominator)
    {
        var result = LengthText.Parse(text, LengthUnit.Inch);

        Assert.True(result.Ok, result.Failure?.Message);
        Assert.Equal(new Rational(numerator, denominator), result.Length.Inches);
    }

    [Theory]
    [InlineData("590", 590, 1)]
    [InlineData("590.5", 1181, 2)]
    [InlineData("590 mm", 590, 1)]
    [InlineData("590mm", 590, 1)]
    [InlineData("590 MM", 590, 1)]
    [InlineData("59 cm", 590, 1)]
    [InlineData("0.59 m", 590, 1)]
    [InlineData(".59m", 590, 1)]
    [InlineData("5.2 mm", 26, 5)]
    [InlineData("0.1", 1, 10)]
    [InlineData("590 millimetres", 590, 1)]
    [InlineData("59 centimeters", 590, 1)]
    [InlineData("1 metre", 1000, 1)]
    [InlineData("1\"", 127, 5)]
    [InlineData("1/128\"", 127, 640)]
    [InlineData("3/4 in", 381, 20)]
    [InlineData("1 ft", 1524, 5)]
    [InlineData("590 1/3", 1771, 3)]
    [InlineData("1 km", 0, 0)]
    [InlineData("1000 m", 1_000_000, 1)]
    public void A_length_in_millimetres_is_read_as_it_is_written(string text, int numerator, int denominator)
    {
        var result = LengthText.Parse(text, LengthUnit.Millimetre);

        Assert.Equal(denominator != 0, result.Ok);
        if (result.Ok)
            Assert.Equal(new Rational(numerator, denominator), result.Length.Millimetres);
    }

    [Theory]
    [InlineData('¼', 1, 4)]
    [InlineData('½', 1, 2)]
    [InlineData('¾', 3, 4)]
    [InlineData('⅐', 1, 7)]
    [InlineData('⅑', 1, 9)]
    [InlineData('⅒', 1, 10)]
    [InlineData('⅓', 1, 3)]
    [InlineData('⅔', 2, 3)]
    [InlineData('⅕', 1, 5)]
    [InlineData('⅖', 2, 5)]
    [InlineData('⅗', 3, 5)]
    [InlineData('⅘', 4, 5)]
    [InlineData('⅙', 1, 6)]
    [InlineData('⅚', 5, 6)]
    [InlineData('⅛', 1, 8)]
    [InlineData('⅜', 3, 8)]
    [InlineData('⅝', 5, 8)]
    [InlineData('⅞', 7, 8)]
    [InlineData('↉', 0, 1)]
    public void Every_fraction_sign_of_Unicode_is_read(char sign, int numerator, int denominator)
    {
        // Values: Unicode Character Database, field 8 of UnicodeData.txt, as the runtime carries it.
        Assert.Equal((double)numerator / denominator, char.GetNumericValue(sign), 15);
        Assert.Equal(
            2 + new Rational(numerator, denominator),
            LengthText.Parse("2" + sign, LengthUnit.Inch).Length.Inches
        );
    }

    [Fact]
    public void The_length_of_a_failed_result_is_not_to_be_had()
    {
        var result = LengthText.Parse("wide", LengthUnit.Inch);

        Assert.False(result.Ok);
        Assert.Throws<InvalidOperationException>(() => result.Length);
    }
}
