using System.Text;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Numbers.Tests;

public sealed class HandListTests
{
    [Fact]
    public void Columns_stand_in_any_order_with_comments_quotes_and_a_byte_order_mark()
    {
        var list = Read(
            "\uFEFF# for Tuesday\r\nqty;WIDTH;Part;note;length\r\n\r\n2; 2 1/4 ;\"rails; short\";x;\"23-1/4\"\"\r\n;59 cm;sides\r\n"
        );

        Assert.Equal(2, list.Lines.Count);
        var (rails, sides) = (list.Lines[0], list.Lines[1]);
        Assert.Equal(("rails; short", 2), (rails.Phrase, rails.Quantity));
        Assert.Equal([Length.FromInches(23, 1, 4), Length.FromInches(2, 1, 4)], rails.Sizes.Select(s => s.Value));
        Assert.Equal((4, 4), (rails.Sizes[1].Place.Line, rails.Sizes[1].Place.Column));
        Assert.Null(sides.Quantity);
        Assert.Equal(Length.FromMillimetres(590), Assert.Single(sides.Sizes).Value);
    }

    [Theory]
    [InlineData("part,length\nrail,23 5/4\n", 2, 9, "")]
    [InlineData("part,length\nrail,long\n", 2, 6, "")]
    [InlineData("part,length\n,23\n", 2, 1, "names no part")]
    [InlineData("part,length,qty\nrail,23,two\n", 2, 9, "no number of parts")]
    [InlineData("part,length\nrail,0\n", 2, 6, "above zero")]
    [InlineData("rail,23\n", 1, 1, "no column for the part")]
    [InlineData("part,material\nrail,oak\n", 1, 1, "no column for a size")]
    [InlineData("part,length,l\nrail,2,3\n", 1, 13, "two columns")]
    [InlineData("", 1, 1, "empty")]
    public void What_is_wrong_is_told_at_its_line_and_column(string text, int line, int column, string says)
    {
        var error = Assert.Single(
            HandListReader.Read("list.csv", Encoding.UTF8.GetBytes(text), LengthUnit.Inch).Errors
        );

        Assert.Equal((line, column), (error.Place!.Line, error.Place.Column));
        Assert.Contains(says, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hostile_list_is_refused_and_no_more()
    {
        Assert.Single(Errors(new byte[(1 << 20) + 1]));
        Assert.Single(Errors([0xC3, 0x28]));
        Assert.Single(Errors(Encoding.UTF8.GetBytes(new string('\n', 20_000))));
        Assert.NotEmpty(Errors(Encoding.UTF8.GetBytes(new string(',', 500_000))));
        Assert.InRange(
            Errors(Encoding.UTF8.GetBytes("part,length\n" + string.Concat(Enumerable.Repeat("a,b\n", 9_000)))).Count,
            1,
            201
        );
    }

    [Theory]
    [InlineData("14 13/16 + 0.2/64 in", 14 * 320 + 261)]
    [InlineData("14 13/16 - 0.2/64 in", 14 * 320 + 259)]
    public void What_a_list_of_ours_hides_behind_a_sign_is_read_too(string text, int parts)
    {
        var list = Read($"part,length\nrail,{text}\n");
        Assert.Equal(Length.FromInches(new Rational(parts, 320)), list.Lines[0].Sizes[0].Value);
    }

    private static HandList Read(string text)
    {
        var read = HandListReader.Read("list.csv", Encoding.UTF8.GetBytes(text), LengthUnit.Inch);
        Assert.Empty(read.Errors);
        return read.Value!;
    }

    private static IReadOnlyList<InputError> Errors(byte[] bytes) =>
        HandListReader.Read("l", bytes, LengthUnit.Inch).Errors;
}
