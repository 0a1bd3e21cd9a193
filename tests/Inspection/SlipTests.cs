using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection.Tests;

/// <summary>Wrong numbers in whole recipes: each shows where it should, by what a maker works out on paper.</summary>
public sealed class SlipTests
{
    /// <summary>
    /// A face frame 36 1/2 wide with stiles of 1 3/4 leaves 33. Less three gaps of 3/32 that makes two doors of 16 23/64;
    /// less two stiles of 2 1/4 there are 11 55/64 between them; with two tenons of 3/8 the rails are 12 39/64 long, and a
    /// panel of sheet goods, with 1/32 of room at each side of its grooves, is 12 35/64 wide.
    /// </summary>
    private const string Framed = """
        piece: Cupboard
        units: in
        materials:
          body: hard maple 3/4
          panels: { sheet: birch plywood, called: 1/4, actual: 5.2 mm }
          backs: { sheet: birch plywood, called: 1/4, actual: 5.2 mm }
        carcases:
          base:
            size: [36 1/2, 30, 19]
            shelves: { fixed: 1 }
            face frame: { stiles: 1 3/4, rails: 1 1/2 }
            front: { doors: framed pair }

        """;

    /// <summary>A carcase of 900 by 800 mm: less 1.5 mm at each side and 3 mm between, two doors of 447 by 797 mm that lap
    /// 16.5 mm over boards of 18 mm.</summary>
    private const string Frameless = """
        piece: Cupboard
        units: mm
        materials:
          body: birch plywood 18 mm
          backs: birch plywood 6.5
        carcases:
          cupboard:
            size: [900, 800, 560]
            front: { doors: slab pair }

        """;

    [Fact]
    public void Door_cut_to_a_wrong_width_shows_as_its_gap()
    {
        var finding = Whole
            .Recipe(Frameless + "as cut:\n  cupboard left door: { width: 440 }\n")
            .Only(FrontGaps.TooWide);
        Assert.Equal(Bench.Mm(10), finding.Length());
        Assert.Equal(Wanted.Exactly(Bench.Mm(3)), finding.Wanted);
        Assert.Equal("Make the cupboard left door 7 mm wider.", finding.Remedy?.Text);
    }

    [Fact]
    public void Door_cut_to_a_wrong_height_shows_as_its_overlay()
    {
        var finding = Whole
            .Recipe(Frameless + "as cut:\n  cupboard left door: { height: 790 }\n")
            .Only(FrontOverlays.TooSmall);
        Assert.Equal(Bench.Mm(9.5m), finding.Length());
    }

    [Fact]
    public void Rails_cut_short_show_as_a_gap_and_as_a_panel_too_wide()
    {
        // Cut to 12 the rails lack 39/64.
        var report = Whole.Recipe(Framed + "as cut:\n  base left door rails: { length: 12 }\n");

        Assert.Equal(2, report.Findings.Count);
        Assert.True(report.StopsTheSaw);
        var gap = report.The(FrontGaps.TooWide);
        Assert.Equal(Length.FromInches(0, 45, 64), gap.Length());
        Assert.Contains(" wider: the base left door", gap.Remedy?.Text, StringComparison.Ordinal);
        // The panel had 1/32 in at each side and now lacks 39/64 less that.
        var panel = report.The(LooseFit.TooBig);
        Assert.Equal(Length.FromInches(0, 35, 64), panel.Volume().Depth);
        Assert.All(report.Findings, finding => Assert.Equal(report.Findings[0].Place, finding.Place));
    }

    [Fact]
    public void One_rail_cut_short_shows_as_an_open_joint()
    {
        var finding = Whole
            .Recipe(Framed + "as cut:\n  base left door top rail: { length: 12 }\n")
            .Only(JointMeets.Open);
        Assert.Equal(Length.FromInches(0, 39, 64), finding.Length());
    }

    [Fact]
    public void Panel_cut_too_wide_says_by_how_much()
    {
        // It is 29/64 too wide; 4/64 of that is the room it should have had.
        var finding = Whole.Recipe(Framed + "as cut:\n  base left door panel: { width: 13 }\n").Only(LooseFit.TooBig);
        Assert.Equal(Length.FromInches(0, 25, 64), finding.Volume().Depth);
        Assert.True(finding.Remedy?.Sure);
    }

    [Fact]
    public void Shelf_cut_short_stands_off_its_side()
    {
        var finding = Whole.Recipe(Framed + "as cut:\n  base shelf 1: { length: 30 }\n").Only(JointMeets.Open);
        Assert.StartsWith("The base fixed shelf", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Opening_measured_out_of_square_tapers_and_does_not_overlap_what_is_drawn()
    {
        var report = Whole.Recipe(Framed + "as measured:\n  base opening: { width: [33 1/2, 33 7/16] }\n");
        // The doors are made to 33 7/16; the 1/16 more at the bottom is shared by both sides.
        Assert.Equal([FrontGaps.Tapers, FrontGaps.Tapers], report.Findings.Select(finding => finding.Kind));
    }
}
