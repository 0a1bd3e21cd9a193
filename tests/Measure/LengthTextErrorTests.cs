namespace Dryfit.Measure.Tests;

/// <summary>What is no length is refused at the offending character, with what was expected there.</summary>
public sealed class LengthTextErrorTests
{
    [Theory]
    [InlineData("", 0, "no length here")]
    [InlineData("   ", 0, "no length here")]
    [InlineData("-", 1, "missing at the end")]
    [InlineData("wide", 0, "does not begin with 'w'")]
    [InlineData("NaN", 0, "does not begin with 'N'")]
    [InlineData("Infinity", 0, "does not begin with 'I'")]
    [InlineData("+3", 0, "does not begin with '+'")]
    [InlineData("\"3\"", 0, "does not begin with '\"'")]
    [InlineData("\u00003", 0, "U+0000")]
    [InlineData("٣", 0, "does not begin with")]
    [InlineData("--3", 1, "Two minus signs")]
    [InlineData("- -3", 2, "Two minus signs")]
    [InlineData("3 1/0", 4, "zero parts")]
    [InlineData("1/0", 2, "zero parts")]
    [InlineData("1/000", 2, "zero parts")]
    [InlineData("3 5/4", 2, "5/4 is not")]
    [InlineData("3 4/4", 2, "4/4 is not")]
    [InlineData("3-5/4", 2, "5/4 is not")]
    [InlineData("1/2/3", 3, "only one slash")]
    [InlineData("3 1/2/3", 5, "only one slash")]
    [InlineData("3..5", 2, "Two points")]
    [InlineData("3.", 2, "missing after the point")]
    [InlineData(".", 1, "missing after the point")]
    [InlineData("3.5.2", 3, "only one point")]
    [InlineData("1.2/3", 3, "should end before '/'")]
    [InlineData("3/4.5", 1, "should end before '/'")]
    [InlineData("3/", 1, "should end before '/'")]
    [InlineData("⅟", 1, "under the fraction is missing")]
    [InlineData("⅟0", 1, "zero parts")]
    [InlineData("1e5", 1, "'e5' is no unit")]
    [InlineData("0x10", 1, "'x10' is no unit")]
    [InlineData("5 furlongs", 2, "'furlongs' is no unit")]
    [InlineData("5mm2", 1, "'mm2' is no unit")]
    [InlineData("5 mm mm", 5, "'mm' is no unit")]
    [InlineData("3 1", 2, "should end before '1'")]
    [InlineData("3.5 1/2", 4, "should end before '1'")]
    [InlineData("½½", 1, "should end before '½'")]
    [InlineData("1/2½", 3, "should end before '½'")]
    [InlineData("4\"7", 2, "should end before '7'")]
    [InlineData("1,5", 1, "written with a point")]
    [InlineData("1,000", 1, "written with a point")]
    [InlineData("3 - 1/2", 2, "joins nothing")]
    [InlineData("3 -1/2", 2, "joins nothing")]
    [InlineData("3-1", 1, "joins nothing")]
    [InlineData("3- 1/2", 1, "joins nothing")]
    [InlineData("3-1/2-1/4", 5, "joins nothing")]
    [InlineData("4 + 1", 2, "should end before '+'")]
    [InlineData("(3)", 0, "does not begin with '('")]
    [InlineData("4' 12\"", 3, "less than 12")]
    [InlineData("4' 590 mm", 3, "only inches")]
    [InlineData("4' 7'", 3, "only inches")]
    [InlineData("4.5' 7\"", 0, "whole")]
    [InlineData("4 1/2' 7\"", 0, "whole")]
    [InlineData("4' 1/0\"", 5, "zero parts")]
    [InlineData("1234567890123", 0, "13 digits")]
    [InlineData("1.1234567890123", 2, "13 digits")]
    [InlineData("1/1234567890123", 2, "13 digits")]
    [InlineData("1001 m", 0, "more than a kilometre")]
    [InlineData("999999999999", 0, "more than a kilometre")]
    [InlineData("-1001 m", 1, "more than a kilometre")]
    [InlineData("4000'", 0, "more than a kilometre")]
    [InlineData("3\n1/2", 1, "U+000A")]
    [InlineData("3 \U0001F600", 2, "😀")]
    public void What_is_no_length_is_refused_where_it_goes_wrong(string text, int position, string says)
    {
        var failure = LengthText.Parse(text, LengthUnit.Millimetre).Failure;

        Assert.NotNull(failure);
        Assert.Contains(says, failure.Message, StringComparison.Ordinal);
        Assert.Equal(position, failure.Position);
        Assert.True(failure.Extent >= 1);
        Assert.NotEmpty(failure.Expected);
    }

    [Theory]
    [InlineData("5 inchs", "inch")]
    [InlineData("5 millimeteres", "millimetre")]
    [InlineData("5 centimetrs", "centimetre")]
    [InlineData("5 feets", "feet")]
    [InlineData("5 q", null)]
    public void A_misspelt_unit_is_answered_with_the_nearest_one(string text, string? suggestion)
    {
        Assert.Equal(suggestion, LengthText.Parse(text, LengthUnit.Millimetre).Failure?.Suggestion);
    }

    [Fact]
    public void Half_a_surrogate_pair_is_named_by_its_code()
    {
        var failure = LengthText.Parse("3 \uD83D", LengthUnit.Inch).Failure!;

        Assert.Equal(2, failure.Position);
        Assert.Contains("U+D83D", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Minus_without_spaces_is_told_that_it_needs_them()
    {
        Assert.Contains(
            "spaces",
            LengthText.Parse("10-3", LengthUnit.Inch).Failure!.Expected,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "spaces",
            LengthText.Parse("10-5/4", LengthUnit.Inch).Failure!.Expected,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Ten_thousand_digits_are_refused_as_a_whole_and_in_a_formula()
    {
        var digits = new string('9', 10_000);

        Assert.Contains(
            "100 characters",
            LengthText.Parse(digits, LengthUnit.Inch).Failure!.Message,
            StringComparison.Ordinal
        );
        Assert.Null(LengthText.ReadPrefix(digits, 0, out var end, out var failure));
        Assert.Equal(0, end);
        Assert.Contains("10000 digits", failure!.Message, StringComparison.Ordinal);
    }
}
