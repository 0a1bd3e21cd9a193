using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>A frameless box of 1000 x 800 x 400 of 18 mm boards: 964 between the sides, 764 between bottom and top.</summary>
public sealed class FramelessTests
{
    private static Piece Divided(string front) =>
        Built.From(Metric($"box: {{ size: [1000, 800, 400], front: {{ {front} }} }}"));

    [Fact]
    public void Columns_are_divided_by_partitions()
    {
        var piece = Divided("columns: [ { width: 300, open }, open, open ]");
        // 964 - 300 - 2 x 18 = 628, in two.
        piece.Opens("box left bay opening", "300 x 764");
        piece.Opens("box middle bay opening", "314 x 764");
        piece.Opens("box right bay opening", "314 x 764");
        piece.Measures("box partition 1", "764 x 381.5 x 18");
        piece.StandsAt("box partition 1", "318, 0, 18");
        piece.StandsAt("box partition 2", "650, 0, 18");
        piece.MustBeSound();
    }

    [Fact]
    public void Drawers_in_a_stack_have_gaps_between_and_nothing_else()
    {
        var piece = Divided("rows: [ { height: 164, drawer }, drawer, drawer ]");
        piece.Opens("box opening", "964 x 164");
        piece.Opens("box opening 2", "964 x 300");
        Assert.Empty(piece.PartsOf(Role.Partition));
        Assert.DoesNotContain(piece.Parts, p => p.Name.Contains("divider", StringComparison.Ordinal));
        // Overlaid: 18 less 1.5 at the ends; half of 3 from each other.
        piece.Measures("box drawer 1 front", "997 x 179 x 18");
        piece.Measures("box drawer 2 front", "997 x 297 x 18");
        piece.Measures("box drawer 3 front", "997 x 315 x 18");
        piece.StandsAt("box drawer 3 front", "1.5, -20, 1.5");
        piece.StandsAt("box drawer 2 front", "1.5, -20, 319.5");
        piece.StandsAt("box drawer 1 front", "1.5, -20, 619.5");
        piece.MustBeSound();
    }

    [Fact]
    public void Between_doors_and_an_open_row_stands_a_shelf()
    {
        var piece = Divided("rows: [ { height: 200, open }, { doors: slab pair } ]");
        piece.Measures("box divider 1", "964 x 381.5 x 18");
        // 800 - 18 - 200 - 18.
        piece.StandsAt("box divider 1", "18, 0, 564");
        piece.Opens("box opening", "964 x 200");
        piece.Opens("box opening 2", "964 x 546");
        // The doors lap the divider by half of what its edge leaves beside a gap of 3: (18 - 3) / 2 = 7.5.
        piece.Measures("box left door slab", "570 x 497 x 18");
        piece.StandsAt("box left door slab", "1.5, -20, 1.5");
        piece.MustBeSound();
    }

    [Fact]
    public void Doors_that_share_a_partition_lap_half_of_it_each()
    {
        var piece = Divided("columns: [ { doors: slab }, { doors: slab } ]");
        // (964 - 18) / 2 = 473 clear; 16.5 over the side, 7.5 over the partition.
        piece.Measures("box left bay door slab", "797 x 497 x 18");
        piece.Measures("box right bay door slab", "797 x 497 x 18");
        piece.StandsAt("box left bay door slab", "1.5, -20, 1.5");
        piece.StandsAt("box right bay door slab", "501.5, -20, 1.5");
        piece.MustBeSound();
    }

    [Fact]
    public void Columns_of_rows_of_columns_are_divided_to_the_end()
    {
        var piece = Divided(
            "columns: [ { rows: [ open, { columns: [ open, { doors: slab } ] } ] }, { rows: { equal: 2, of: drawer } } ]"
        );
        Assert.Equal(5, piece.Openings.Count);
        piece.MustBeSound();
    }
}
