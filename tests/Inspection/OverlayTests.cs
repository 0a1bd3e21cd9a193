using Dryfit.Findings;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

public sealed class OverlayTests
{
    [Fact]
    public void Sound_run_raises_nothing()
    {
        var report = Run.Sound().Inspect();
        report.IsClean();
        Assert.Equal(3, report.Checks[0].Covered);
        Assert.Equal(7, report.Checks[1].Covered);
    }

    [Theory]
    [InlineData(0.15, null)]
    [InlineData(-0.15, null)]
    [InlineData(0.3, "overlay-a-little-off")]
    [InlineData(-0.3, "overlay-a-little-off")]
    [InlineData(1.1, "overlay-too-small")]
    [InlineData(-1.1, "overlay-too-large")]
    [InlineData(16.4, "overlay-too-small")]
    [InlineData(16.6, "front-misses-its-edge")]
    public void Lap_over_the_side_is_judged_by_how_far_it_is_off(double off, string? kind)
    {
        var report = new Run { LeftDoorLeft = 1.5m + (decimal)off }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
        if (kind is not null)
        {
            Assert.Equal(Mm(16.5m - (decimal)off), report.Findings[0].Length());
            Assert.Equal(Wanted.Exactly(Mm(16.5m)), report.Findings[0].Wanted);
        }
    }

    [Fact]
    public void Gap_between_the_doors_of_a_pair_is_told_once()
    {
        var finding = new Run { LeftDoorRight = 294 }
            .OnBench()
            .Inspect()
            .Only(FrontGaps.TooWide);
        Assert.Equal(Mm(7.5m), finding.Length());
        Assert.Equal("The gap between the left door and the right door is far too wide.", finding.Message);
        finding.IsAt((301.5, 250.75), (294, 250.75));
    }

    [Fact]
    public void Gap_to_the_front_above_is_judged_too()
    {
        var finding = new Run { DoorTop = 501.5m }
            .OnBench()
            .Inspect()
            .Only(FrontGaps.TooNarrow);
        Assert.Equal(Mm(1.5m), finding.Length());
        Assert.Equal("The gap between the left door and the drawer is far too narrow.", finding.Message);
    }

    [Theory]
    [InlineData(501.9, null)]
    [InlineData(502.2, "fronts-close")]
    [InlineData(503, "fronts-touch")]
    [InlineData(505, "fronts-touch")]
    public void Fronts_of_different_openings_stay_apart(double top, string? kind)
    {
        var report = new Run { NamesNeighbours = false, DoorTop = (decimal)top }
            .OnBench()
            .Inspect();
        var told = report.Findings.Where(finding => new FrontNeighbours().Kinds.Contains(finding.Kind));
        Assert.Equal(kind is null ? [] : [kind], told.Select(finding => finding.Kind.Id));
    }

    [Fact]
    public void Carcase_out_of_square_makes_the_lap_uneven()
    {
        var bench = Run.Sound();
        // The lower half of the left side stands 0.9 mm farther in at its front edge than the upper half.
        bench.Change(
            "left-side",
            board =>
                board with
                {
                    Extent = Box(0, 0, 0, 18.9m, 560, 700),
                    Cuts = [Box(18, -1, 250, 19, 561, 701), Box(18, -1, -1, 19, 561, 19)],
                }
        );
        var finding = bench.Inspect().Only(FrontOverlays.Uneven);
        Assert.Equal(new MeasuredRange("overlay", Mm(16.5m), Mm(17.4m)), finding.Measured);
    }
}
