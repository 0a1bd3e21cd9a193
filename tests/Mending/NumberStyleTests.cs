using Dryfit.Measure;

namespace Dryfit.Mending.Tests;

public sealed class NumberStyleTests
{
    [Theory]
    [InlineData("390", "mm", 397, 1, "397")]
    [InlineData("390.5", "mm", 397, 1, "397")]
    [InlineData("390", "mm", 3971, 10, "397.1")]
    [InlineData("59 cm", "mm", 5971, 10, "59.71 cm")]
    [InlineData("0.4m", "mm", 397, 1, "0.397m")]
    [InlineData("8 1/8", "in", 2286, 10, "9")]
    [InlineData("8 1/8", "in", 1016, 5, "8")]
    [InlineData("8 1/8", "in", 20955, 100, "8 1/4")]
    [InlineData("8-1/8\"", "in", 20955, 100, "8-1/4\"")]
    [InlineData("8⅛ in", "mm", 20955, 100, "8 1/4 in")]
    [InlineData("8.125", "in", 20955, 100, "8.25")]
    [InlineData("1/2", "in", 635, 100, "1/4")]
    [InlineData("4' 7 1/4\"", "mm", 12192, 10, "4' 0\"")]
    [InlineData("4' 7 1/4\"", "mm", 14097, 10, "4' 7 1/2\"")]
    [InlineData("390 mm", "in", 397, 1, "397 mm")]
    public void A_length_is_written_as_the_maker_wrote_the_one_before(
        string before,
        string unit,
        int tenths,
        int per,
        string after
    )
    {
        var bare = unit == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;
        var length = Length.FromMillimetres(new Rational(tenths, per));
        var read = LengthText.ReadPrefix(before, 0, out var end, out _)!.Value;
        Assert.Equal(before.Length, end);

        var written = NumberStyle.Of(before, read, bare).Write(length);

        Assert.Equal(after, written);
        Assert.Equal(length, LengthText.Parse(written!, bare).Length);
    }

    [Fact]
    public void What_a_decimal_cannot_say_is_not_written()
    {
        var style = NumberStyle.Of("390", new WrittenNumber(390, WrittenUnit.None), LengthUnit.Millimetre);
        Assert.Null(style.Write(Length.FromMillimetres(new Rational(1, 3))));
        Assert.Null(style.Write(Length.FromMillimetres(-1)));
    }
}
