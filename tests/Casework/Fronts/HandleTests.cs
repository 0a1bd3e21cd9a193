using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Where pulls and knobs go; all distances are common practice.</summary>
public sealed class HandleTests
{
    /// <summary>Door 716 x 616 in an opening from 40 up, gap 2: the middle of a stile of 60 is 30 in, and 65 down from the top.</summary>
    [Fact]
    public void Knob_sits_in_the_middle_of_the_stile_near_the_top_of_a_low_door()
    {
        var piece = Framed("doors: { kind: framed, pull: knob }");
        var knob = Assert.Single(piece.Hardware, h => h.Handle is not null);
        Assert.Equal(new Point(piece.Read("728"), piece.Read("0"), piece.Read("593")), knob.At);
        var hole = Assert.Single(piece.Part("base door right stile").Cuts.OfType<RoundCut>(), c => c.Joint == knob.Id);
        Assert.Equal((piece.Read("5"), piece.Read("18")), (hole.Diameter, hole.Depth));
    }

    [Theory]
    [InlineData("bottom", "107")]
    [InlineData("middle", "350")]
    [InlineData("top", "593")]
    public void Knob_goes_where_it_is_said(string at, string height)
    {
        var piece = Framed($"doors: {{ kind: framed, pull: knob, pull at: {at} }}");
        Assert.Equal(piece.Read(height), piece.Hardware.Single(h => h.Handle is not null).At.Z);
    }

    [Fact]
    public void Tall_door_has_its_pull_at_the_height_of_the_hand()
    {
        var piece = Built.From(
            Metric("tall: { size: [600, 2000, 400], front: { doors: { kind: slab, pull: pull } } }")
        );
        var pull = piece.Hardware.Single(h => h.Handle is not null);
        Assert.Equal(piece.Read("1000"), pull.At.Z);
        // Two screws 96 apart, 35 in from the edge of the slab.
        var holes = piece.Part("tall door slab").Cuts.OfType<RoundCut>().Where(c => c.Joint == pull.Id).ToList();
        Assert.Equal(2, holes.Count);
        Assert.Equal(piece.Read("96"), Measure.Length.Abs(holes[0].From.X - holes[1].From.X));
        Assert.Equal(piece.Part("tall door slab").Extent.Max.X - piece.Read("35"), pull.At.X);
    }

    [Fact]
    public void Door_of_a_carcase_that_hangs_has_its_knob_at_the_bottom()
    {
        var piece = Built.From(
            Metric(
                "wall: { size: [600, 700, 300], hangs on: { rails: 80 }, front: { doors: { kind: slab, pull: knob } } }"
            )
        );
        Assert.Equal(
            piece.Part("wall door slab").Extent.Min.Z + piece.Read("65"),
            piece.Hardware.Single(h => h.Handle is not null).At.Z
        );
    }

    [Fact]
    public void Drawer_has_its_pull_in_the_middle_and_a_wide_one_has_two()
    {
        var piece = Framed("rows: [ drawer, drawer ]", "hardware: { pulls: pull }");
        // Fronts of 716, over 700 wide: at a quarter and at three quarters.
        var handles = piece.Hardware.Where(h => h.Handle is not null).ToList();
        Assert.Equal(4, handles.Count);
        var front = piece.Part("base drawer 1 front").Extent;
        Assert.Equal(front.Min.X + piece.Read("179"), handles[0].At.X);
        Assert.Equal((front.Min.Z + front.Max.Z) / 2, handles[0].At.Z);
        // The screws go through the front and the box behind it.
        Assert.Equal(4, piece.Part("base drawer 1 front").Cuts.OfType<RoundCut>().Count());
        Assert.Equal(4, piece.Part("base drawer 1 box front").Cuts.OfType<RoundCut>().Count());
    }

    [Fact]
    public void A_front_may_go_without()
    {
        var piece = Framed("doors: { kind: framed, pull: none }", "hardware: { pulls: knob }");
        Assert.DoesNotContain(piece.Hardware, h => h.Handle is not null);
    }

    [Fact]
    public void Pull_too_long_for_its_front_is_refused()
    {
        var recipe = Metric(
            "base: { size: [800, 700, 400], front: { rows: [ { height: 60, doors: { kind: slab, pull: pull } }, { open } ] } }"
        );
        Assert.Contains("too small", Built.ErrorOf(recipe), StringComparison.Ordinal);
    }

    private static Piece Framed(string front, string rest = "") =>
        Built.From(
            Metric(
                $"base: {{ size: [800, 700, 400], face frame: {{ stiles: 40, rails: 40 }}, front: {{ {front} }} }}",
                rest
            )
        );
}
