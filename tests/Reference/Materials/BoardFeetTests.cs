using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Materials;

/// <summary>Sources: published guides to ordering lumber, worked examples; named in each row of <c>board-feet.csv</c>.</summary>
public sealed class BoardFeetTests
{
    // Sizes as the examples give them: thickness and width in inches, length in inches.
    private static readonly (string Id, int Thickness, int Width, int Length)[] Examples =
    [
        ("08-028", 3, 8, 120),
        ("08-029", 1, 3, 96),
        ("08-030", 1, 4, 72),
        ("08-031", 1, 12, 144),
        ("08-032", 2, 6, 144),
        ("08-033", 1, 12, 12),
    ];

    private static IEnumerable<TestCaseData> Cases =>
        Examples.Select(e => new TestCaseData(
            PublishedTable.Row("board-feet.csv", e.Id),
            e.Thickness,
            e.Width,
            e.Length
        ));

    [TestCaseSource(nameof(Cases))]
    public void A_board_counts_as_many_board_feet_as_the_worked_example(
        PublishedRow row,
        int thickness,
        int width,
        int length
    )
    {
        var boardFeet = BoardFeet.Of(Length.FromInches(thickness), Length.FromInches(width), Length.FromInches(length));

        Assert.That(boardFeet, Is.EqualTo((Rational)(int)Printed.Number(row.Value)), row.Source);
    }

    /// <summary>Source: the sum of the examples, worked out by hand.</summary>
    [Test]
    public void A_stack_counts_the_sum_of_its_boards()
    {
        var row = PublishedTable.Row("board-feet.csv", "08-034");
        var sum = Examples.Aggregate(
            Rational.Zero,
            (total, e) =>
                total
                + BoardFeet.Of(Length.FromInches(e.Thickness), Length.FromInches(e.Width), Length.FromInches(e.Length))
        );

        Assert.That(sum, Is.EqualTo((Rational)(int)Printed.Number(row.Value)), row.Status);
    }

    /// <summary>Common practice, from memory: rough hardwood thinner than 4/4 is charged as one inch.</summary>
    [Test]
    public void Thin_hardwood_is_charged_as_one_inch()
    {
        var (half, foot) = (Length.FromInches(0, 1, 2), Length.FromInches(12));

        Assert.That(BoardFeet.Of(half, foot, foot), Is.EqualTo(new Rational(1, 2)));
        Assert.That(BoardFeet.OfRoughHardwood(half, foot, foot), Is.EqualTo(Rational.One));
        Assert.That(BoardFeet.OfRoughHardwood(half * 4, foot, foot), Is.EqualTo((Rational)2));
    }

    /// <summary>Common practice: an order is rounded up, so that the stock is not short.</summary>
    [Test]
    public void An_order_is_rounded_up_to_whole_board_feet()
    {
        Assert.That(BoardFeet.ToBuy(new Rational(49, 4)), Is.EqualTo((Rational)13));
        Assert.That(BoardFeet.ToBuy(12), Is.EqualTo((Rational)12));
    }
}
