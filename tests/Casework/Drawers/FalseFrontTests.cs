using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Drawers;

/// <summary>Fronts with no drawer behind them.</summary>
public sealed class FalseFrontTests
{
    private static Piece Of(string rows, string frame = "") =>
        Built.From(
            $$"""
            piece: Sink base
            units: mm
            materials: { body: birch plywood 18, fronts: oak 20, boxes: birch plywood 12, bottoms: birch plywood 6.5 }
            carcases:
              base: { size: [636, 800, 500]{{frame}}, front: { rows: [ {{rows}} ] } }
            """
        );

    [Theory]
    [InlineData("false front, { doors: slab }", "")]
    [InlineData("{ false front: inset }, { doors: slab }", "")]
    [InlineData("false front, drawer", ", face frame: { stiles: 40, rails: 36 }")]
    [InlineData("{ false front: overlaid }, drawer", ", face frame: { stiles: 40, rails: 36 }")]
    [InlineData("{ columns: [ false front, drawer ] }, { doors: slab }", "")]
    public void False_front_hangs_soundly_on_its_cleats(string rows, string frame)
    {
        var piece = Of(rows, frame);
        piece.MustBeSound();
        var front = Assert.Single(piece.Fronts, f => f.Motion == FrontMotion.Fixed);
        Assert.Null(front.Drawer);
        Assert.Equal(
            2,
            piece.Joints.Count(j =>
                j.Kind == JointKind.Screwed && front.Face.Contains(j.Enters) && j.Into == Direction.Back
            )
        );
    }

    [Fact]
    public void False_front_is_as_large_as_the_front_of_a_drawer()
    {
        var piece = Of("{ height: 150, columns: [ false front, drawer ] }, { doors: slab }");
        var (false_, drawer) = (piece.Part("base false front front"), piece.Part("base drawer 1 front"));
        Assert.Equal(drawer.Length.Length, false_.Length.Length);
        Assert.Equal(drawer.Width.Length, false_.Width.Length);
        Assert.Equal(drawer.Extent.Min.Y, false_.Extent.Min.Y);
    }

    [Fact]
    public void Its_cleats_stand_beside_the_opening_behind_it()
    {
        var piece = Of("false front, { doors: slab }");
        var cleat = piece.Part("base false front left cleat");
        Assert.Equal(piece.Part("base left side").Extent.Max.X, cleat.Extent.Min.X);
        Assert.Equal(piece.Part("base false front front").Extent.Max.Y, cleat.Extent.Min.Y);
        Assert.Equal(Exact("18 mm"), cleat.Extent.Width);
    }
}
