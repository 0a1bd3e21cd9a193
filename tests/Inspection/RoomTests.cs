using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

/// <summary>The hand-made cupboard, whose frame begins at -40, in a room of blocks.</summary>
public sealed class RoomTests
{
    [Fact]
    public void A_part_in_a_wall_is_found_with_how_deep()
    {
        var bench = Cupboard.Sound();
        bench.AddRoom("left wall", Box(-140, -300, -40, -39.5m, 1000, 2000));
        var finding = bench.Inspect().Findings.First(f => f.Kind == MeetsRoom.InTheWall);
        Assert.Equal(Mm(0.5m), finding.Volume().Depth);
        Assert.Contains("the left wall is", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Standing_against_a_wall_is_no_matter()
    {
        var bench = Cupboard.Sound();
        bench.AddRoom("left wall", Box(-140, -300, -40, -40, 1000, 2000));
        bench.AddRoom("floor", Box(-100, -300, -100, 1000, 1000, -40), isUnderfoot: true);
        Assert.DoesNotContain(
            bench.Inspect().Findings,
            f => f.Kind == MeetsRoom.InTheWall || f.Kind == MeetsRoom.BlockedOnTheWay
        );
    }

    [Fact]
    public void A_pipe_before_the_carcase_blocks_its_way_in_and_one_beside_it_does_not()
    {
        var bench = Cupboard.Sound();
        bench.AddRoom("pipe", Box(-60, -80, 100, -39, -50, 400));
        var finding = bench.Inspect().Findings.First(f => f.Kind == MeetsRoom.BlockedOnTheWay);
        Assert.Contains("meets the pipe when it is slid in", finding.Message, StringComparison.Ordinal);

        var free = Cupboard.Sound();
        free.AddRoom("pipe", Box(-60, -80, 100, -40, -50, 400));
        Assert.DoesNotContain(free.Inspect().Findings, f => f.Kind == MeetsRoom.BlockedOnTheWay);
    }

    [Fact]
    public void What_is_behind_the_carcase_does_not_block_it()
    {
        var bench = Cupboard.Sound();
        bench.AddRoom("socket", Box(100, 900, 100, 200, 950, 200));
        Assert.DoesNotContain(bench.Inspect().Findings, f => f.Kind == MeetsRoom.BlockedOnTheWay);
    }
}
