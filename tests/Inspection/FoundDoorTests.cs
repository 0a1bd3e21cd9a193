using Dryfit.Findings;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

/// <summary>Doors judged by what was measured of them on the bench.</summary>
public sealed class FoundDoorTests
{
    private static readonly SourcePlace Line = new("bench.dryfit.yaml", 60, 1, 1);

    /// <summary>Hung flush, so that the corner stands off by the warp itself; 1/16 in is 1.5875 mm.</summary>
    [Theory]
    [InlineData(1.5, null)]
    [InlineData(-1.5, null)]
    [InlineData(1.6, "before")]
    [InlineData(-1.6, "behind")]
    public void Warp_shows_at_the_lock_edge_of_an_inset_door(double warp, string? way)
    {
        var bench = Cupboard.Sound();
        bench.Change(front => front with { AsFound = new(Mm((decimal)warp), null, Line) });
        if (way is null)
        {
            bench.Inspect().IsClean();
            return;
        }
        var finding = bench.Inspect().Only(DoorWarp.StandsOff);
        Assert.Equal($"The upper corner of the door's lock edge stands {way} the right frame stile.", finding.Message);
        Assert.Equal(Mm(1.6m), finding.Length());
        Assert.Equal(60, finding.Place!.Line);
        Assert.Equal(finding.Length(), bench.Mirrored().Inspect().Only(DoorWarp.StandsOff).Length());
    }

    /// <summary>Two doors twisted alike meet in one plane; twisted against each other they are off by both.</summary>
    [Theory]
    [InlineData(2, 2, false)]
    [InlineData(1, -0.5, false)]
    [InlineData(1, -1, true)]
    public void Doors_of_a_pair_are_held_against_each_other(double left, double right, bool told)
    {
        var bench = Run.Sound();
        bench.Change(front =>
            front.Group switch
            {
                "left-door" => front with { AsFound = new(Mm((decimal)left), null, Line) },
                "right-door" => front with { AsFound = new(Mm((decimal)right), null, Line) },
                _ => front,
            }
        );
        Assert.Equal(told ? 1 : 0, bench.Inspect().Findings.Count(finding => finding.Kind == DoorWarp.StandsOff));
    }

    /// <summary>
    /// A door of 396 by 596 has diagonals of 715.548. With its hinge edge plumb and the other up by 0.9 they are the roots of
    /// 396^2 + 596.9^2 and 396^2 + 595.1^2, 716.3139 and 714.8147: the gap of 2 at the top is 1.1 at the lock edge, at the bottom 2.9.
    /// </summary>
    [Fact]
    public void Diagonals_make_the_gaps_at_top_and_bottom_taper()
    {
        var bench = Cupboard.Sound();
        bench.Change(front => front with { AsFound = new(null, (Mm(716.3139m), Mm(714.8147m)), Line) });
        var told = bench.Inspect().Findings;
        Assert.Equal([FrontGaps.Tapers, FrontGaps.Tapers], told.Select(finding => finding.Kind));
        var bottom = told.Single(finding => finding.Message.Contains("bottom of the door", StringComparison.Ordinal));
        var top = told.Single(finding => finding.Message.Contains("top of the door", StringComparison.Ordinal));
        Assert.Equal("The gap at the bottom of the door is wider at the right than at its other end.", bottom.Message);
        Assert.Equal("The gap at the top of the door is wider at the left than at its other end.", top.Message);
        var span = Assert.IsType<MeasuredRange>(top.Measured);
        Assert.Equal(1.1, span.Smallest.ToMillimetres(), 2e-3);
        Assert.Equal(2, span.Largest.ToMillimetres(), 2e-3);
    }

    [Fact]
    public void Equal_diagonals_change_nothing()
    {
        var bench = Cupboard.Sound();
        bench.Change(front => front with { AsFound = new(Mm(0), (Mm(715.5m), Mm(715.5m)), Line) });
        bench.Inspect().IsClean();
    }

    [Fact]
    public void Recipe_records_warp_and_diagonals_of_a_door()
    {
        var report = Whole.Recipe(
            """
            piece: Cupboard
            units: mm
            materials: { body: birch plywood 18 mm, backs: birch plywood 6.5 }
            carcases:
              cupboard: { size: [900, 800, 560], front: { doors: slab pair } }
            as measured:
              left door: { warp: 3, diagonals: [914, 914] }

            """
        );
        var finding = report.The(DoorWarp.StandsOff);
        Assert.Equal(
            "The upper corner of the cupboard left door's lock edge stands before the cupboard right door.",
            finding.Message
        );
        Assert.Equal(7, finding.Place!.Line);
    }

    /// <summary>1/32 in is 0.794 mm.</summary>
    [Theory]
    [InlineData(0.7, null)]
    [InlineData(0.85, "overlay-uneven")]
    public void Lap_may_run_out_by_what_nobody_sees(double by, string? kind)
    {
        var bench = Run.Sound();
        // The upper half of the left side stands a little farther in at its front edge.
        bench.Change(
            "left-side",
            board =>
                board with
                {
                    Extent = Box(0, 0, 0, 18 + (decimal)by, 560, 700),
                    Cuts = [Box(18, 0, 0, 18 + (decimal)by, 560, 350)],
                }
        );
        var told = bench
            .Inspect()
            .Findings.Where(finding =>
                new FrontOverlays().Kinds.Contains(finding.Kind) && finding.Parts.Contains("left-slab")
            );
        Assert.Equal(kind is null ? [] : [kind], told.Select(finding => finding.Kind.Id));
    }
}
