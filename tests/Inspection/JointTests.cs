using Dryfit.Casework;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

public sealed class JointTests
{
    [Theory]
    [InlineData(0.19, null)]
    [InlineData(0.225, "joint-open")]
    [InlineData(8, "joint-open")]
    public void Shoulder_must_close(double open, string? kind)
    {
        var bench = new Cupboard { ShoulderOpen = (decimal)open }.OnBench();
        var report = bench.Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
        if (kind is not null)
        {
            Assert.Equal(Mm((decimal)open), report.Findings[0].Length());
            Assert.Equal(["door-top-rail", "door-right-stile"], report.Findings[0].Parts);
        }
    }

    [Theory]
    [InlineData(9.9, null)]
    [InlineData(9.7, "joint-shallow")]
    [InlineData(5.1, "joint-shallow")]
    [InlineData(4.9, "joint-barely-holds")]
    [InlineData(0, "joint-barely-holds")]
    public void Tenon_must_reach_its_depth(double tenon, string? kind)
    {
        var report = new Cupboard { Tenon = (decimal)tenon }
            .OnBench()
            .Inspect();
        Assert.Equal(
            kind is null ? [] : Enumerable.Repeat(kind, 4),
            report.Findings.Select(finding => finding.Kind.Id)
        );
        if (kind is not null)
            Assert.All(report.Findings, finding => Assert.Equal(Mm((decimal)tenon), finding.Length()));
    }

    [Fact]
    public void Tenon_longer_than_the_groove_is_deep_bottoms_out()
    {
        var report = new Cupboard { Tenon = 10.5m }
            .OnBench()
            .Inspect();
        Assert.Equal(Enumerable.Repeat(JointMeets.BottomsOut, 4), report.Findings.Select(finding => finding.Kind));
        // 0.5 mm deep, 6 mm thick; the tenon is 50 mm wide beside the rail's own groove.
        Assert.All(report.Findings, finding => Assert.Equal(0.5 * 6 * 50, finding.Volume().CubicMm, 1e-6));
        Assert.All(report.Findings, finding => Assert.Equal(Mm(0.5m), finding.Volume().Depth));
    }

    [Fact]
    public void Rail_that_stands_in_the_stile_runs_into_it()
    {
        var bench = Cupboard.Sound();
        bench.Change("top-frame-rail", board => board with { Extent = Box(0, 0, 600, 403, 20, 640) });
        var finding = bench.Inspect().Only(JointMeets.RunsInto);
        Assert.Equal(3.0 * 20 * 40, finding.Volume().CubicMm, 1e-6);
        Assert.Equal(Mm(3), finding.Volume().Depth);
        finding.IsAt((400, 620), (403, 620));
    }

    [Fact]
    public void Board_thicker_than_its_dado_does_not_go_in()
    {
        var bench = Shelf(dado: 18, board: 18.5m);
        var report = bench.Inspect();
        Assert.Equal([JointMeets.TooThick, JointMeets.TooThick], report.Findings.Select(finding => finding.Kind));
        Assert.All(report.Findings, finding => Assert.Equal(Mm(0.5m), finding.Volume().Depth));

        Shelf(dado: 18, board: 18).Inspect().IsClean();
    }

    [Fact]
    public void Part_that_passes_the_other_never_meets_it()
    {
        var bench = Shelf(dado: 18, board: 18);
        bench.Change("left-side", side => side with { Extent = Box(-20, 0, 0, 0, 300, 90), Cuts = [] });
        bench.Inspect().The(JointMeets.Misses);
    }

    [Theory]
    [InlineData(292, null)]
    [InlineData(292.19, null)]
    [InlineData(292.21, "panel-lacks-room")]
    [InlineData(296, "panel-lacks-room")]
    [InlineData(296.3, "panel-too-big-for-its-grooves")]
    [InlineData(301, "panel-too-big-for-its-grooves")]
    [InlineData(291.81, null)]
    [InlineData(291.79, "panel-too-small")]
    [InlineData(286.1, "panel-too-small")]
    [InlineData(285.9, "panel-falls-out")]
    public void Panel_has_room_and_no_more(double width, string? kind)
    {
        // Between the bottoms of the grooves lie 296 mm, between the stiles 276: below 286 the panel can leave a groove.
        var report = new Cupboard { PanelWidth = (decimal)width }
            .OnBench()
            .Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
    }

    [Fact]
    public void Panel_is_judged_wherever_it_lies()
    {
        new Cupboard { PanelOff = 1.5m }
            .OnBench()
            .Inspect()
            .IsClean();
    }

    [Fact]
    public void Panel_too_wide_after_the_rails_were_cut_short_says_by_how_much()
    {
        // Rails 6 mm short: the stiles come 6 mm closer, and the panel is as wide as it was.
        var bench = new Cupboard { DoorWidth = 390 }.OnBench();
        bench.Change("door-top-rail", board => board.AsCut());

        var finding = bench.Inspect().The(LooseFit.TooBig);

        Assert.Equal(Mm(2), finding.Volume().Depth);
        Assert.Equal(2.0 * 6 * 492, finding.Volume().CubicMm, 1e-6);
        Assert.Equal(
            "Look first at the door top rail, cut by your own numbers. Else: Make the door panel 6 mm narrower.",
            finding.Remedy?.Text
        );
        Assert.Equal(["door-top-rail", "door-panel", "door-left-stile", "door-right-stile"], finding.Parts);
        Assert.Equal(700, finding.Place?.Line);
    }

    [Fact]
    public void Panel_thicker_than_its_groove_does_not_go_in()
    {
        var report = new Cupboard { PanelThickness = 6.4m }
            .OnBench()
            .Inspect();
        Assert.Equal(2, report.Findings.Count);
        Assert.All(report.Findings, finding => Assert.Same(LooseFit.TooThick, finding.Kind));
        Assert.All(report.Findings, finding => Assert.Equal(Mm(0.4m), finding.Volume().Depth));
    }

    [Fact]
    public void Pane_that_can_fall_out_concerns_safety()
    {
        var bench = new Cupboard { PanelWidth = 284 }.OnBench();
        bench.Change("door-panel", board => board with { Stuff = MaterialKind.Glass });
        var finding = bench.Inspect().Only(LooseFit.PaneFallsOut);
        Assert.True(finding.Kind.ConcernsSafety);
    }

    /// <summary>A shelf in dados of 6 mm between two sides.</summary>
    private static Bench Shelf(decimal dado, decimal board)
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        bench.Add("left-side", Role.Side, "carcase", Box(-20, 0, 0, 0, 300, 600), Box(-6, 0, 100, 0, 300, 100 + dado));
        bench.Add(
            "right-side",
            Role.Side,
            "carcase",
            Box(400, 0, 0, 420, 300, 600),
            Box(400, 0, 100, 406, 300, 100 + dado)
        );
        bench.Add("shelf", Role.Shelf, "carcase", Box(-6, 0, 100, 406, 300, 100 + board));
        bench.Join(JointKind.Dado, "left-side", "shelf", Direction.Left, 6);
        bench.Join(JointKind.Dado, "right-side", "shelf", Direction.Right, 6);
        return bench;
    }
}
