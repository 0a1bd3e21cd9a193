using Dryfit.Findings;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

public sealed class DrawerTests
{
    [Fact]
    public void Sound_drawer_raises_nothing() => Chest.Sound().Inspect().IsClean();

    [Theory]
    [InlineData(12.7, null)]
    [InlineData(12.6, "drawer-too-wide-for-its-slides")]
    [InlineData(13.5, null)]
    [InlineData(13.6, "drawer-too-narrow-for-its-slides")]
    public void Room_at_the_side_keeps_to_the_slides_own_window(double room, string? kind)
    {
        var report = new Chest { BoxLeft = (decimal)room }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
        if (kind is not null)
        {
            Assert.Equal(Mm((decimal)room), report.Findings[0].Length());
            Assert.Equal(new Wanted(Mm(12.7m), Mm(13.5m)), report.Findings[0].Wanted);
        }
    }

    [Fact]
    public void Box_too_wide_is_to_be_narrower_by_what_both_slides_lack()
    {
        var report = new Chest { BoxLeft = 10.7m, BoxRight = 389.3m }
            .OnBench()
            .Inspect();
        Assert.Equal(2, report.Findings.Count);
        Assert.All(
            report.Findings,
            f => Assert.Equal(new Remedy("Make the box of the drawer at least 4 mm narrower.", true), f.Remedy)
        );
    }

    [Fact]
    public void Box_out_of_the_middle_is_to_be_moved()
    {
        var report = new Chest { BoxLeft = 12, BoxRight = 386 }
            .OnBench()
            .Inspect();
        Assert.Equal(
            [DrawerRuns.TooSlack.Id, DrawerRuns.TooTight.Id],
            report.Findings.Select(finding => finding.Kind.Id).Order(StringComparer.Ordinal)
        );
        Assert.Contains(report.Findings, f => f.Remedy?.Text == "Move the box 0.7 mm to the right on its front.");
        Assert.Contains(report.Findings, f => f.Remedy?.Text == "Move the box 0.5 mm to the right on its front.");
    }

    [Theory]
    [InlineData(188, null)]
    [InlineData(188.1, "drawer-lacks-room-above")]
    [InlineData(201, "drawer-lacks-room-above")]
    public void Box_has_room_above(double top, string? kind)
    {
        var report = new Chest { BoxTop = (decimal)top }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
        if (kind is not null)
            Assert.Equal(Mm(200 - (decimal)top), report.Findings[0].Length());
    }

    [Theory]
    [InlineData(12, null)]
    [InlineData(11.9, "drawer-lacks-room-below")]
    public void Box_has_room_below(double bottom, string? kind)
    {
        var report = new Chest { BoxBottom = (decimal)bottom }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
    }

    [Theory]
    [InlineData(290, null)]
    [InlineData(290.1, "drawer-lacks-room-behind")]
    [InlineData(270, null)]
    [InlineData(269.9, "drawer-shorter-than-its-slides")]
    public void Box_is_as_long_as_its_slides_and_clear_of_the_back(double back, string? kind)
    {
        var report = new Chest { BoxBack = (decimal)back }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
    }

    [Fact]
    public void One_side_too_short_for_its_slide_is_named()
    {
        var bench = Chest.Sound();
        bench.Change("box-right", board => board with { Extent = Box(375, 20, 20, 387, 262, 180) });
        var finding = bench.Inspect().The(DrawerRuns.ShorterThanSlide);
        Assert.Equal(Mm(242), finding.Length());
        Assert.StartsWith("Make the box right 8 mm longer", finding.Remedy?.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Shelf_over_the_box_counts_as_what_is_above_it()
    {
        var bench = Chest.Sound();
        bench.Add("light-shelf", Casework.Role.Shelf, "carcase", Box(0, 100, 185, 400, 300, 190));
        bench.Join(Casework.JointKind.Screwed, "left-side", "light-shelf", Casework.Direction.Left);
        var finding = bench.Inspect().Only(DrawerRuns.NoRoomAbove);
        Assert.Equal(Mm(5), finding.Length());
        Assert.Contains("light-shelf", finding.Parts);
    }

    [Fact]
    public void Rail_that_the_box_passes_counts_though_it_is_not_over_it()
    {
        var bench = new Chest { BoxTop = 185 }.OnBench();
        bench.Add("rail", Casework.Role.FrameRail, "carcase", Box(0, 0, 195, 400, 5, 200));
        bench.Join(Casework.JointKind.Screwed, "left-side", "rail", Casework.Direction.Left);
        bench.Change("drawer-front", board => board with { Extent = Box(2, 5, 2, 398, 20, 198) });
        bench.Change((Casework.Opening o) => o with { Bounds = o.Bounds with { Top = ["rail"] } });
        Assert.Equal(Mm(10), bench.Inspect().The(DrawerRuns.NoRoomAbove).Length());
    }

    [Fact]
    public void Side_that_ends_before_the_box_gives_the_slide_nothing_to_hold()
    {
        var bench = Chest.Sound();
        bench.Change("left-side", board => board with { Extent = Box(-20, 0, -20, 0, 306, 10) });
        bench.Inspect().The(DrawerRuns.NothingBeside);
    }

    [Fact]
    public void Front_that_nothing_holds_is_told_once()
    {
        var bench = Chest.Sound();
        bench.Unjoin("drawer-front", "box-front");
        bench.Inspect().Only(DrawerRuns.FrontOff);
    }
}
