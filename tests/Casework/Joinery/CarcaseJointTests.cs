using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Joinery;

/// <summary>How flat panels of a carcase meet its uprights.</summary>
public sealed class CarcaseJointTests
{
    private static Piece Of(string joint, string front = "{ columns: [ { open, shelves: { fixed: 1 } }, open ] }") =>
        Built.From(
            $$"""
            piece: Cabinet
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5 }
            carcases:
              box: { size: [818, 600, 400], joint: {{joint}}, front: {{front}} }
            """
        );

    [Theory]
    [InlineData("dado")]
    [InlineData("shouldered dado")]
    [InlineData("dowels")]
    [InlineData("biscuits")]
    [InlineData("loose tongue")]
    [InlineData("screws")]
    [InlineData("plugged screws")]
    [InlineData("connectors")]
    public void Whatever_joins_a_carcase_joins_it_soundly(string joint) => Of(joint).MustBeSound();

    /// <summary>Under a top the box is closed by two stretchers: what ties a partition to one of them lies within it.</summary>
    [Theory]
    [InlineData("dowels")]
    [InlineData("biscuits")]
    [InlineData("loose tongue")]
    [InlineData("plugged screws")]
    [InlineData("connectors")]
    public void A_partition_under_stretchers_is_tied_within_each_of_them(string joint)
    {
        var piece = Built.From(
            $$"""
            piece: Cabinet
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5 }
            carcases:
              box: { size: [818, 600, 500], joint: {{joint}}, top: , front: { columns: [ open, open ] } }
            """
        );
        piece.MustBeSound();
        var stretchers = piece.Parts.Where(p => p.Name.EndsWith(" stretcher", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, stretchers.Count);
        // No hole and no slot of the partition is cut twice, and those of a stretcher lie on it.
        var cuts = piece.Part("box partition 1").Cuts.Select(c => c with { Id = "", Joint = null }).ToList();
        Assert.Equal(cuts.Count, cuts.Distinct().Count());
        Assert.All(
            stretchers,
            stretcher =>
            {
                var width = stretcher.Width.Length;
                Assert.All(
                    stretcher.Cuts.OfType<RoundCut>(),
                    c => Assert.True(c.From.Y > c.Diameter / 2 && c.From.Y < width - (c.Diameter / 2), $"{c.From.Y}")
                );
                Assert.All(
                    stretcher.Cuts.OfType<SquareCut>(),
                    c => Assert.True(c.Extent.Max.Y <= width, $"{c.Extent.Max.Y}")
                );
            }
        );
    }

    /// <summary>818 - 2 x 18 = 782 mm inside; a dado of 6 mm takes 794 mm, of which half of the thickness goes in.</summary>
    [Fact]
    public void Shouldered_dado_takes_half_of_the_panel()
    {
        var piece = Of("shouldered dado");
        var bottom = piece.Part("box bottom");
        Assert.Equal(Exact("794 mm"), bottom.Length.Length);
        var dado = piece.Part("box left side").Cuts.OfType<SquareCut>().First(c => c.Kind == CutKind.Dado);
        Assert.Equal(Exact("9 mm"), dado.Extent.Width);
        Assert.Equal(Exact("6 mm"), dado.Extent.Height);
    }

    [Fact]
    public void Biscuits_have_a_slot_in_both_parts()
    {
        var piece = Of("biscuits", "{ open }");
        var (side, bottom) = (piece.Part("box left side"), piece.Part("box bottom"));
        // Every 150 mm or so of the width to the back: three, at each end of the bottom.
        Assert.Equal(6, bottom.Cuts.Count(c => c.Kind == CutKind.BiscuitSlot));
        Assert.Equal(6, side.Cuts.Count(c => c.Kind == CutKind.BiscuitSlot));
        var slot = side.Cuts.OfType<SquareCut>().First(c => c.Kind == CutKind.BiscuitSlot);
        Assert.Equal(Exact("12.5 mm"), slot.Extent.Height);
        Assert.All(piece.Joints.Where(j => j.Kind == JointKind.Biscuit), j => Assert.True(j.Glued));
    }

    [Fact]
    public void Loose_tongues_are_parts_that_stand_in_both()
    {
        var piece = Of("loose tongue", "{ open }");
        var tongue = piece.Part("box bottom left tongue");
        // 9 mm into each, 25 mm short of both ends.
        Assert.Equal(Exact("18 mm"), tongue.Extent.Width);
        Assert.Equal(piece.Part("box bottom").Extent.Depth - Exact("50 mm"), tongue.Length.Length);
        Assert.Equal(piece.Part("box left side").Extent.Max.X - Exact("9 mm"), tongue.Extent.Min.X);
    }

    [Fact]
    public void Tongues_from_both_sides_of_a_partition_keep_apart()
    {
        var piece = Of(
            "loose tongue",
            "{ columns: [ { open, shelves: { fixed: 1 } }, { open, shelves: { fixed: 1 } } ] }"
        );
        piece.MustBeSound();
        var (left, right) = (
            piece.Part("box left bay fixed shelf 1 right tongue"),
            piece.Part("box right bay fixed shelf 1 left tongue")
        );
        // 18 / 2 - 2 x 0.5 into the partition from each side.
        Assert.Equal(Exact("2 mm"), right.Extent.Min.X - left.Extent.Max.X);
    }

    [Fact]
    public void Connectors_draw_the_parts_together_and_nothing_is_glued()
    {
        var piece = Of("connectors", "{ open }");
        var (side, bottom) = (piece.Part("box left side"), piece.Part("box bottom"));
        var cams = bottom.Cuts.OfType<RoundCut>().Where(c => c.Diameter == Exact("15 mm")).ToList();
        Assert.Equal(4, cams.Count);
        Assert.All(
            cams,
            cam => Assert.True(cam.From.X == Exact("34 mm") || cam.From.X == bottom.Length.Length - Exact("34 mm"))
        );
        Assert.Equal(4, side.Cuts.OfType<RoundCut>().Count(c => c.Diameter == Exact("5 mm")));
        var joint = piece.Joints.First(j => j.Kind == JointKind.Connector);
        Assert.False(joint.Glued);
        Assert.Contains(piece.Hardware, h => h.Kind == "connector" && h.Count == 2);
    }

    [Fact]
    public void Plugs_are_counted_with_their_screws()
    {
        var piece = Of("plugged screws", "{ open }");
        var plugs = piece.Hardware.Where(h => h.Kind == "wooden plug").Sum(h => h.Count);
        var holes = piece.Parts.SelectMany(p => p.Cuts.OfType<RoundCut>()).Count(c => c.Diameter == Exact("10 mm"));
        Assert.Equal(holes, plugs);
        Assert.True(plugs > 0);
    }

    [Fact]
    public void Board_too_thin_for_its_connector_is_refused()
    {
        var error = Built.ErrorOf(
            """
            piece: Cabinet
            units: mm
            materials: { body: birch plywood 12 }
            carcases:
              box: { size: [818, 600, 400], joint: connectors }
            """
        );
        Assert.Contains("There is no room for a connector", error, StringComparison.Ordinal);
    }
}
