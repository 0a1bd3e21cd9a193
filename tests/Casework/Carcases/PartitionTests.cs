using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Partitions of a frameless box of 1000 x 1000 x 400 in boards of 18: through, and fixed between shelves.</summary>
public sealed class PartitionTests
{
    [Fact]
    public void Partition_between_columns_of_the_front_runs_through_from_bottom_to_top()
    {
        var piece = Built.From(
            Metric("box: { size: [1000, 1000, 400], front: { columns: [{ rows: [open, open] }, { open: }] } }")
        );
        piece.MustBeSound();
        // 1000 less bottom and top; the divider of the rows ends at it.
        Assert.Equal("964", piece.Write(piece.Part("box partition 1").Length.Length));
        Assert.Contains(piece.Joints, j => j.Receives == "box/partition-1" && j.Enters == "box/left-bay-divider-1");
    }

    [Fact]
    public void Partition_between_columns_of_a_row_is_fixed_between_its_shelves()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [1000, 1000, 400], front: { rows: [{ height: 300, open: }, { columns: [open, open] }] } }"
            )
        );
        piece.MustBeSound();
        // 1000 less bottom, top, the row of 300 and the divider between the rows.
        Assert.Equal("646", piece.Write(piece.Part("box partition 1").Length.Length));
        Assert.Contains(piece.Joints, j => j.Receives == "box/divider-1" && j.Enters == "box/partition-1");
    }
}
