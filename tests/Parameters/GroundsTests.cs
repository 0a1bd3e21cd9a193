using Dryfit.Measure;

namespace Dryfit.Parameters.Tests;

public sealed class GroundsTests
{
    private static readonly Figure Board = Given("board", 18, new RuleOrigin("board", null));

    [Fact]
    public void The_same_sum_of_two_written_numbers_is_alike() =>
        Assert.True(Grounds.AreAlike(Written("base height", 900) - Board, Written("upper height", 898) - Board));

    [Fact]
    public void Another_sum_is_meant_to_differ()
    {
        var height = Written("base height", 900);
        Assert.False(Grounds.AreAlike(height - Board, height + Board));
        Assert.False(Grounds.AreAlike(height - Board, height - Board - Board));
        Assert.False(Grounds.AreAlike(height, Board));
        Assert.False(Grounds.AreAlike(height / 2, height / 3));
    }

    [Fact]
    public void Rounding_is_known_however_deep_it_lies()
    {
        var rounded = Written("width", 301).RoundTo(Length.FromMillimetres(5)).As("bay") - Board;
        Assert.True(Grounds.Of(rounded).IsRounded);
        Assert.False(Grounds.Of(Board).IsRounded);
    }

    [Fact]
    public void A_figure_that_goes_into_very_many_sums_is_looked_at_once()
    {
        var (one, other) = (Written("width", 1), Written("width", 2));
        for (var n = 0; n < 60; n++)
            (one, other) = (one + one, other + other);
        Assert.True(Grounds.AreAlike(one, other));
        Assert.Empty(Grounds.Of(one).Named);
    }

    private static Figure Written(string name, int mm) =>
        Given(name, mm, new WrittenOrigin(new("piece.yaml", 1, 1, 1)));

    private static Figure Given(string name, int mm, Origin origin) =>
        Figure.Given(name, Length.FromMillimetres(mm), origin);
}
