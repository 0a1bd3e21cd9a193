using System.Text;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.PartsList;

namespace Dryfit.Numbers.Tests;

public sealed class NumbersCheckTests
{
    [Fact]
    public void Rails_without_their_tongues_are_told_with_what_they_do_in_place()
    {
        // 8 21/32 less twice 3/8.
        var held = Shop.Hold(Shop.Inches, "part,length,quantity\nleft door rails,7 29/32,2\n");

        Assert.Equal(2, held.Differences.Count);
        var rail = held.Differences[0];
        Assert.Equal("low left door top rail", rail.Part);
        Assert.Equal(Length.FromInches(8, 21, 32), rail.Right);
        Assert.Contains("both tongues forgotten", Assert.Single(rail.Guesses), StringComparison.Ordinal);
        Assert.Contains(rail.Findings, finding => finding.Kind.Severity == Severity.Stop);
        Assert.Empty(held.Counts);
        Assert.False(held.IsRight);
    }

    [Theory]
    [InlineData("left door top rail,8 9/32,2", "one tongue forgotten")]
    [InlineData("left door top rail,10 21/32,2", "taken once, not twice")]
    [InlineData("back,,,1/4", "what the stuff is called")]
    [InlineData("left door left stile,,2 1/8", "an eighth misread")]
    [InlineData("left door left stile,2,26 7/8", "swapped")]
    public void A_slip_is_guessed_by_its_sum(string line, string guess)
    {
        var held = Shop.Hold(Shop.Inches, $"part,length,width,thickness\n{line}\n");

        Assert.Contains(guess, Assert.Single(held.Differences[0].Guesses), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("left door slab,,379", "digits of 397 mm swapped")]
    [InlineData("left door slab,,380.5", "= 397 mm - 16.5 mm: overlay")]
    [InlineData("left door slab,,387", "a digit of the tape misread")]
    public void A_slip_in_millimetres_is_guessed(string line, string guess)
    {
        var held = Shop.Hold(Shop.Millimetres, $"part,length,width,thickness\n{line}\n");

        var wrong = Assert.Single(held.Differences);
        Assert.Equal(Length.FromMillimetres(397), wrong.Right);
        Assert.Contains(wrong.Guesses, told => told.Contains(guess, StringComparison.Ordinal));
        Assert.NotEmpty(wrong.Findings);
    }

    [Fact]
    public void A_number_that_no_slip_comes_to_gets_no_guess()
    {
        Assert.Empty(
            Assert.Single(Shop.Hold(Shop.Millimetres, "part,width\nleft door slab,391.3\n").Differences).Guesses
        );
    }

    [Fact]
    public void A_saw_setting_is_no_difference_and_more_is()
    {
        Assert.True(Shop.Hold(Shop.Millimetres, "part,width\nleft door slab,397.1\n").IsRight);
        Assert.False(Shop.Hold(Shop.Millimetres, "part,width\nleft door slab,397.3\n").IsRight);
    }

    [Fact]
    public void A_whole_door_is_a_line_too()
    {
        var held = Shop.Hold(Shop.Inches, "part,width\nleft door,11 29/32\nright door,11 1/2\n");

        Assert.Equal("low right door", Assert.Single(held.Differences).Part);
        Assert.DoesNotContain(held.Missing, name => name.StartsWith("low left door", StringComparison.Ordinal));
    }

    [Fact]
    public void Lines_that_meet_nothing_and_wrong_quantities_are_told_and_what_is_missing_listed()
    {
        var held = Shop.Hold(Shop.Millimetres, "part,length,quantity\nhall botom,764,1\nhall left side,,2\n");

        Assert.Equal("hall bottom", Assert.Single(held.Strange).Nearest);
        Assert.Equal(1, Assert.Single(held.Counts).Right);
        Assert.Contains("hall bottom", held.Missing);
        Assert.DoesNotContain("hall left side", held.Missing);
    }

    [Fact]
    public void The_parts_list_of_every_starter_is_right()
    {
        foreach (
            var file in Directory
                .GetFiles(Path.Combine(AppContext.BaseDirectory, "starters"), "*.dryfit.yaml")
                .Order(StringComparer.Ordinal)
        )
        {
            var built = Shop.Build(File.ReadAllText(file), []);
            Assert.NotNull(built);
            var list = Encoding.UTF8.GetString(PartsCsv.Write(built.Piece).Bytes.Span);

            var read = HandListReader.Read("parts.csv", Encoding.UTF8.GetBytes(list), built.Piece.Format.Unit);
            Assert.Empty(read.Errors);
            var held = NumbersCheck.Hold(read.Value!, built, _ => null);

            Assert.Empty(held.Differences);
            Assert.Empty(held.Strange);
            Assert.Empty(held.Counts);
            Assert.Empty(held.Missing);
        }
    }
}
