using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>What a piece says of bays that belong together.</summary>
public sealed class BankTests
{
    [Fact]
    public void Bays_with_the_same_share_or_the_same_number_are_asked_to_be_alike()
    {
        var bank = Assert.Single(
            Built
                .From(
                    Metric(
                        "box: { size: [900, 720, 400], front: { columns: [ { width: 200, open }, open, open, { width: 200, open } ] } }"
                    )
                )
                .Banks
        );
        Assert.Equal(Axis.X, bank.Axis);
        Assert.Equal([0, 1, 1, 0], bank.Bays.Select(bay => bay.Alike));
        Assert.Equal(
            ["box/left-side", "box/partition-1", "box/partition-2", "box/partition-3"],
            bank.Bays.Select(bay => bay.From)
        );
        Assert.Equal("box/right-side", bank.Bays[^1].To);
    }

    [Fact]
    public void Rows_between_which_only_a_gap_lies_have_no_parts_to_measure() =>
        Assert.Empty(
            Built.From(Metric("box: { size: [600, 720, 400], front: { rows: { equal: 3, of: drawer } } }")).Banks
        );

    [Fact]
    public void Graduated_rows_are_no_two_of_them_alike()
    {
        var bank = Assert.Single(
            Built
                .From(
                    Metric(
                        "box: { size: [600, 720, 400], face frame: {}, front: { rows: { graduated: 3, ratio: 1.2, of: drawer } } }"
                    )
                )
                .Banks
        );
        Assert.Equal([0, 1, 2], bank.Bays.Select(bay => bay.Alike));
        Assert.All(bank.Bays, bay => Assert.True(bay.IsGraduated));
    }
}
