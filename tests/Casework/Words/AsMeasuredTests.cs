using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Words;

/// <summary>What was measured stands in place of what was reckoned.</summary>
public sealed class AsMeasuredTests
{
    [Fact]
    public void A_carcase_is_built_to_its_measured_size()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400] }", "as measured: { box: { width: 603, depth: 398 } }")
        );
        piece.Measures("box left side", "720 x 398 x 18");
        piece.Measures("box bottom", "567 x 398 x 18");
        piece.MustBeSound();
    }

    [Fact]
    public void A_tapered_opening_gets_an_inset_door_for_its_narrow_end()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], face frame, front: { doors: slab } }",
                "as measured: { box opening: { width: [519, 517], height: [640, 641] } }"
            )
        );
        var sides = piece.Openings.Single().AsMeasured!;
        Assert.Equal(
            ("519", "517", "640", "641"),
            (
                piece.Write(sides.WidthAtBottom),
                piece.Write(sides.WidthAtTop),
                piece.Write(sides.HeightAtLeft),
                piece.Write(sides.HeightAtRight)
            )
        );
        // 517 - 2 x 2 and 640 - 2 x 2.
        piece.Measures("box door slab", "636 x 513 x 18");
    }

    [Fact]
    public void An_opening_that_is_not_there_is_told_with_the_nearest_name()
    {
        var error = Assert.Single(
            Built.ErrorsOf(Metric("box: { size: [600, 720, 400] }", "as measured: { box openning: { width: 500 } }"))
        );
        Assert.Equal("8:16: No opening or carcase of the piece is called 'box openning'.", Built.Said(error));
        Assert.Equal("box opening", error.Suggestion);
    }

    [Fact]
    public void A_door_keeps_its_measured_warp_and_diagonals_and_its_sizes()
    {
        const string Box = "box: { size: [900, 720, 400], front: { doors: slab pair } }";
        var piece = Built.From(
            Metric(Box, "as measured: { right door: { warp: -1.5, diagonals: [840, 841] }, left door: { warp: 2 } }")
        );
        var (left, right) = (piece.Fronts[0].AsFound!, piece.Fronts[1].AsFound!);
        Assert.Equal("2", piece.Write(left.Warp!.Value));
        Assert.Null(left.Diagonals);
        Assert.Equal("-1.5", piece.Write(right.Warp!.Value));
        Assert.Equal(
            ("840", "841"),
            (piece.Write(right.Diagonals!.Value.Rising), piece.Write(right.Diagonals.Value.Falling))
        );
        // 900 - 1.5 - 1.5 - 3 in two, and 720 - 1.5 - 1.5.
        piece.Measures("box right door slab", "717 x 447 x 18");
    }

    [Fact]
    public void A_door_that_is_not_there_or_is_given_a_size_is_refused()
    {
        const string Box = "box: { size: [900, 720, 400], front: { doors: slab pair } }";
        var unknown = Assert.Single(Built.ErrorsOf(Metric(Box, "as measured: { middle door: { warp: 2 } }")));
        Assert.Equal("8:16: No hinged door of the piece is called 'middle door'.", Built.Said(unknown));
        var sized = Assert.Single(Built.ErrorsOf(Metric(Box, "as measured: { left door: { warp: 2, width: 400 } }")));
        Assert.StartsWith("8:", Built.Said(sized), StringComparison.Ordinal);
    }
}
