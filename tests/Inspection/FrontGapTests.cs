using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

public sealed class FrontGapTests
{
    [Fact]
    public void Sound_cupboard_raises_nothing_and_says_what_was_looked_at()
    {
        var report = Cupboard.Sound().Inspect();
        report.IsClean();
        Assert.Equal(
            4,
            report.Checks.Single(check => check.Name.StartsWith("gaps around", StringComparison.Ordinal)).Covered
        );
    }

    [Fact]
    public void Door_three_sixteenths_too_narrow_is_far_too_wide_a_gap_on_the_free_side()
    {
        // 3/16 in is 4.7625 mm; the door keeps its hinge edge, so all of it shows at the right.
        var bench = new Cupboard { DoorWidth = 396 - 4.7625m, PanelWidth = 292 - 4.7625m }.OnBench();
        bench.Format = LengthFormat.Inches;

        var finding = bench.Inspect().Only(FrontGaps.TooWide);

        Assert.Equal(Mm(6.7625m), finding.Length());
        Assert.Equal(Wanted.Exactly(Mm(2)), finding.Wanted);
        Assert.Equal(new Remedy("Make the door 3/16 in wider.", true), finding.Remedy);
        Assert.Equal("door-left-stile", finding.Parts[0]);
        finding.IsAt((400, 300), (393.2375, 300));
    }

    [Fact]
    public void Part_cut_to_the_makers_own_number_is_the_one_to_change()
    {
        var bench = new Cupboard { DoorWidth = 392, PanelWidth = 288 }.OnBench();
        bench.Change("door-top-rail", board => board.AsCut());

        var finding = bench.Inspect().Only(FrontGaps.TooWide);

        Assert.Equal("door-top-rail", finding.Parts[0]);
        Assert.Equal(bench["door-top-rail"].Source, finding.Place);
        Assert.Equal("Make the door 4 mm wider: the door top rail 4 mm longer.", finding.Remedy?.Text);
    }

    [Theory]
    [InlineData(0.19, null)]
    [InlineData(-0.19, null)]
    [InlineData(0.21, "front-gap-a-little-wide")]
    [InlineData(0.99, "front-gap-a-little-wide")]
    [InlineData(1.01, "front-gap-too-wide")]
    [InlineData(-0.21, "front-gap-a-little-narrow")]
    [InlineData(-0.99, "front-gap-a-little-narrow")]
    [InlineData(-1.01, "front-gap-too-narrow")]
    [InlineData(-1.98, "front-gap-too-narrow")]
    [InlineData(-2, "front-binds")]
    [InlineData(-5, "front-binds")]
    public void Gap_is_judged_by_how_far_it_is_off(double off, string? kind)
    {
        var by = (decimal)off;
        var report = new Cupboard { DoorWidth = 396 - by, PanelWidth = 292 - by }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
    }

    [Fact]
    public void Door_that_overlaps_its_frame_is_told_once_with_what_it_lacks()
    {
        var finding = new Cupboard { DoorHeight = 603, PanelHeight = 499 }
            .OnBench()
            .Inspect()
            .Only(FrontGaps.Binds);
        Assert.Equal(Mm(-5), finding.Length());
        Assert.Equal("Make the door 7 mm shorter.", finding.Remedy?.Text);
    }

    [Fact]
    public void Door_hung_out_of_the_middle_is_to_be_moved_not_recut()
    {
        var report = new Cupboard { DoorLeft = 3.5m }
            .OnBench()
            .Inspect();
        Assert.Equal(
            [FrontGaps.TooNarrow.Id, FrontGaps.TooWide.Id],
            report.Findings.Select(finding => finding.Kind.Id).Order(StringComparer.Ordinal)
        );
        Assert.All(report.Findings, f => Assert.Equal(new Remedy("Move the door 1.5 mm to the left.", true), f.Remedy));
    }

    [Fact]
    public void Edge_planed_to_a_taper_is_measured_at_both_ends()
    {
        var bench = Cupboard.Sound();
        // Board coordinates of the upright stile: x up, y to the left, from its right edge. A wedge of nothing at the
        // bottom and 0.8 mm at the top.
        var wedge = new PrismCut(
            new(new(0, 0, -6400), new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)),
            [new(0, 0), new(596 * 640, 0), new(596 * 640, 512)],
            640 * 40
        );
        bench.Change("door-right-stile", board => board with { Wedges = [wedge] });

        var finding = bench.Inspect().Only(FrontGaps.Tapers);

        Assert.Equal(new MeasuredRange("gap", Mm(2), Mm(2.8m)), finding.Measured);
        finding.IsAt((400, 598), (397.2, 598));
    }

    [Fact]
    public void Notch_in_the_edge_shows_as_the_largest_gap()
    {
        var bench = Cupboard.Sound();
        bench.Change(
            "door-right-stile",
            board => board with { Cuts = [.. board.Cuts, Box(397, -5, 100, 400, 25, 120)] }
        );
        var finding = bench.Inspect().Only(FrontGaps.Tapers);
        Assert.Equal(new MeasuredRange("gap", Mm(2), Mm(3)), finding.Measured);
    }

    [Fact]
    public void Stop_behind_the_door_takes_no_gap_away()
    {
        var bench = Cupboard.Sound();
        bench.Change(
            "right-frame-stile",
            board => board with { Extent = Box(385, 0, -40, 440, 60, 640), Cuts = [Box(385, 0, -40, 400, 20, 640)] }
        );
        bench.Unjoin("bottom-frame-rail", "right-frame-stile");
        bench.Unjoin("top-frame-rail", "right-frame-stile");
        bench.Join(JointKind.PocketScrewed, "right-frame-stile", "bottom-frame-rail", Direction.Right);
        bench.Inspect().IsClean();
    }

    [Fact]
    public void Opening_as_measured_takes_the_place_of_the_one_drawn()
    {
        var bench = Cupboard.Sound();
        bench.Change((Opening opening) => opening with { AsMeasured = new(Mm(400), Mm(398.5m), Mm(600), Mm(600)) });

        var finding = bench.Inspect().Only(FrontGaps.TooNarrow);

        // At the door's top the opening is 400 - 1.5 x 598/600 mm wide, and the door ends at 398 mm.
        var range = Assert.IsType<MeasuredRange>(finding.Measured);
        Assert.Equal(0.505, range.Smallest.ToMillimetres(), 1e-3);
        Assert.Equal(1.995, range.Largest.ToMillimetres(), 1e-3);
        Assert.Single(finding.Assumptions);
        Assert.False(finding.Remedy?.Sure);
    }

    [Fact]
    public void Opening_a_little_out_of_square_makes_a_taper()
    {
        var bench = Cupboard.Sound();
        bench.Change((Opening opening) => opening with { AsMeasured = new(Mm(400), Mm(400.5m), Mm(600), Mm(600)) });
        bench.Inspect().Only(FrontGaps.Tapers);

        bench.Change((Opening opening) => opening with { AsMeasured = new(Mm(400), Mm(400.1m), Mm(600), Mm(600)) });
        bench.Inspect().IsClean();
    }

    [Theory]
    [InlineData(-0.1, null)]
    [InlineData(-1, "front-proud")]
    [InlineData(0.15, null)]
    [InlineData(0.3, "front-shy")]
    public void Inset_door_is_flush_proud_or_shy(double y, string? kind)
    {
        var report = new Cupboard { DoorY = (decimal)y }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
        if (kind is not null)
            Assert.Equal(Mm((decimal)Math.Abs(y)), report.Findings[0].Length());
    }
}
