using Dryfit.Casework.Building;

namespace Dryfit.Casework.Tests;

public sealed class NamesakeTests
{
    [Theory]
    [InlineData("left upper door rails", "upper left door top rail")]
    [InlineData("left upper door rails", "upper left door bottom rail")]
    [InlineData("shelves", "base right bay adjustable shelf 1")]
    [InlineData("upper left stile", "upper face frame left stile")]
    [InlineData("Base Drawer 2 Front", "base drawer 2 front")]
    [InlineData("left bay left door stiles", "sideboard left bay left door right stile")]
    public void Phrase_means_a_part_whose_name_holds_its_words(string phrase, string name) =>
        Assert.True(new Namesake(phrase).IsIn(name));

    [Theory]
    [InlineData("upper left door stiles", "upper right door left stile")]
    [InlineData("left bay left door stiles", "sideboard left bay right door left stile")]
    [InlineData("left door", "left wing right door panel")]
    [InlineData("top rail", "upper left door bottom rail")]
    [InlineData("drawer 2 front", "base drawer 1 front")]
    [InlineData("glass", "upper left door panel")]
    [InlineData("", "base bottom")]
    public void Phrase_does_not_mean_a_part_that_is_somewhere_else(string phrase, string name) =>
        Assert.False(new Namesake(phrase).IsIn(name));

    [Fact]
    public void Whole_name_is_told_from_a_part_of_one()
    {
        Assert.True(new Namesake("bottom upper").IsWhole("upper bottom"));
        Assert.False(new Namesake("upper bottom").IsWhole("upper left door bottom rail"));
    }
}
