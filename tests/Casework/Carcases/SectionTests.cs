using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Carcases on and beside each other: flush, stepped, set in, bolted, hung.</summary>
public sealed class SectionTests
{
    [Fact]
    public void Sections_of_a_tall_carcase_are_bolted_through_top_and_bottom()
    {
        var piece = Built.From(
            Metric("low: { size: [600, 900, 500] }\nhigh: { on: low, bolted: yes, size: [600, 1200, 500] }")
        );
        piece.MustBeSound();
        var bolts = Assert.Single(piece.Hardware, h => h.Kind == "connecting bolt");
        Assert.Equal(4, bolts.Count);
        var joint = Assert.Single(piece.Joints, j => j.Kind == JointKind.Bolted);
        Assert.Equal(("low/top-panel", "high/bottom", false), (joint.Receives, joint.Enters, joint.Glued));
        foreach (var name in (string[])["low top panel", "high bottom"])
        {
            var holes = piece.Part(name).Cuts.OfType<RoundCut>().Where(c => c.Joint == joint.Id).ToList();
            Assert.Equal(4, holes.Count);
            // House rule: 8 mm holes, through the board of 18, 75 from the edges of what the two share (564 x 500).
            Assert.All(holes, c => Assert.Equal(("8", "18"), (piece.Write(c.Diameter), piece.Write(c.Depth))));
        }
    }

    [Fact]
    public void Carcases_side_by_side_may_be_bolted_instead_of_screwed()
    {
        var piece = Built.From(
            Metric("one: { size: [600, 900, 500] }\ntwo: { right of: one, bolted: yes, size: [400, 900, 500] }")
        );
        piece.MustBeSound();
        Assert.Single(
            piece.Joints,
            j => j is { Kind: JointKind.Bolted, Receives: "one/right-side", Enters: "two/left-side" }
        );
        Assert.DoesNotContain(piece.Joints, j => j is { Kind: JointKind.Screwed, Receives: "one/right-side" });
    }

    [Fact]
    public void Section_without_a_bottom_to_lie_on_cannot_be_bolted() =>
        Assert.EndsWith(
            "The high has no bottom that lies on what closes the low: there is nothing to bolt.",
            Built.ErrorOf(
                Metric(
                    "low: { size: [600, 900, 500] }\nhigh: { on: low, bolted: yes, stands on: { plinth: 80 }, size: [600, 1200, 500] }"
                )
            ),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("size: [600, 500, 500]", "0, 0, 900")] // flush all round
    [InlineData("size: [600, 500, 300]", "0, 200, 900")] // stepped: backs in line
    [InlineData("size: [600, 500, 300], line up: fronts", "0, 0, 900")]
    [InlineData("size: [560, 500, 460], line up: middles", "20, 20, 900")] // set in by 20 all round
    [InlineData("size: [400, 500, 500], across: right", "200, 0, 900")]
    public void Stacked_flush_stepped_and_set_in(string upper, string corner)
    {
        var piece = Built.From(Metric($"low: {{ size: [600, 900, 500] }}\nhigh: {{ on: low, {upper} }}"));
        piece.MustBeSound();
        piece.StandsAt("high left side", corner);
    }

    [Fact]
    public void Wall_carcase_hangs_on_rails_behind_its_back()
    {
        var piece = Built.From(
            Metric(
                "low: { size: [600, 900, 500] }\nhigh: { above: low, hangs on: { rails: 80 }, size: [600, 700, 300] }"
            )
        );
        piece.MustBeSound();
        // House rule: 460 over what is below. The rail lies between the sides, under the top, flush with the rear edges.
        piece.StandsAt("high left side", "0, 200, 1360");
        piece.Measures("high hanging rail", "564 x 80 x 18");
        piece.StandsAt("high hanging rail", "18, 482, 1962");
        piece.StandsAt("high lower hanging rail", "18, 482, 1378");
        // The back is slid in just before the rails: 18 and its own 6.5 from the rear.
        Assert.Equal("475.5", piece.Write(piece.Part("high back").Extent.Min.Y));
        var wall = piece.Hardware.Where(h => h.IsInWall).ToList();
        // 564 at no more than 400 apart: two fixings a rail.
        Assert.Equal([2, 2], wall.Select(h => h.Count));
    }

    [Fact]
    public void Cleats_hook_over_each_other_at_45_degrees()
    {
        var piece = Built.From(Metric("high: { at: [0, 0, 1400], hangs on: { cleat: 90 }, size: [600, 700, 300] }"));
        piece.MustBeSound();
        // Under the top of 18 at 2100: from 2082 down by 90; the wall's cleat reaches up by its own thickness in front.
        piece.StandsAt("high cleat", "18, 282, 1992");
        piece.Measures("high wall cleat", "558 x 90 x 18");
        piece.StandsAt("high wall cleat", "21, 282, 1920");
        // Each loses half a square of its thickness along its length.
        piece.Holds("high cleat", 564 * ((90 * 18) - (18 * 18 / 2)));
        piece.Holds("high wall cleat", 558 * ((90 * 18) - (18 * 18 / 2)));
    }

    [Theory]
    [InlineData("{ rails: 80, cleat: 80 }", "It hangs on rails or on a cleat.")]
    [InlineData("{ material: body }", "What it hangs on is missing.")]
    [InlineData("{ rails: 30 }", "That is too narrow to hold a carcase: screws and bevel want wood around them.")]
    [InlineData("{ rails: 400 }", "Two hanging rails take all of the height.")]
    [InlineData("{ cleat: 400 }", "The two cleats take all of the height.")]
    public void What_cannot_hang_is_told(string hangs, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"box: {{ size: [600, 700, 300], hangs on: {hangs} }}")),
            StringComparison.Ordinal
        );

    [Fact]
    public void Cleat_wants_room_behind_the_back() =>
        Assert.EndsWith(
            "There is no room for a cleat between the back and the wall.",
            Built.ErrorOf(Metric("box: { size: [600, 700, 300], back: planted, hangs on: { cleat: 80 } }")),
            StringComparison.Ordinal
        );
}
