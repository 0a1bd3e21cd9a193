using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// The box itself, 600 x 720 x 400 of 18 mm boards: what is between the sides is 600 - 18 - 18 = 564 wide, and between
/// bottom and top panel 720 - 18 - 18 = 684 high. House rules: dados 6 deep, rabbets for backs 9, grooves for backs 6
/// deep and 12 from the rear edge, with 0.5 of play each side, stretchers 100 wide.
/// </summary>
public sealed class BoxTests
{
    [Fact]
    public void Dowelled_panels_end_at_the_sides()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], back: none, joint: dowels }"));
        piece.Measures("box left side", "720 x 400 x 18");
        piece.Measures("box right side", "720 x 400 x 18");
        piece.Measures("box bottom", "564 x 400 x 18");
        piece.Measures("box top panel", "564 x 400 x 18");
        piece.StandsAt("box left side", "0, 0, 0");
        piece.StandsAt("box right side", "582, 0, 0");
        piece.StandsAt("box bottom", "18, 0, 0");
        piece.StandsAt("box top panel", "18, 0, 702");
        Assert.Equal(4, piece.Parts.Count);
        Assert.Equal(4, piece.Joints.Count(j => j.Kind == JointKind.Dowel));
        piece.MustBeSound();
    }

    [Fact]
    public void Panels_in_dados_are_longer_by_both_depths_and_the_sides_lose_them()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], back: none, joint: dado, shelves: { fixed: 1 } }")
        );
        piece.Measures("box bottom", "576 x 400 x 18");
        piece.StandsAt("box bottom", "12, 0, 0");
        piece.Measures("box fixed shelf 1", "576 x 390 x 18");
        // The blank less two rabbets the whole depth, and a dado that ends with its shelf 10 behind the front.
        piece.Holds("box left side", (720 * 400 * 18) - (2 * 400 * 18 * 6) - (390 * 18 * 6));
        var cuts = piece.Part("box left side").Cuts.Select(c => c.Kind);
        Assert.Equal([CutKind.Rabbet, CutKind.Rabbet, CutKind.Dado], cuts);
        piece.MustBeSound();
    }

    [Fact]
    public void The_depth_of_a_dado_is_the_shops()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], back: none, joint: dado }"),
            shop: "units: mm\njoints: { dado depth: 8.5 }"
        );
        piece.Measures("box bottom", "581 x 400 x 18");
        piece.Holds("box left side", (720 * 400 * 18) - (2 * 400 * 18 * 8.5));
        piece.MustBeSound();
    }

    [Fact]
    public void Screwed_panels_end_at_the_sides_and_nothing_is_cut()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], back: none, joint: screws }"));
        piece.Measures("box bottom", "564 x 400 x 18");
        Assert.All(piece.Parts, p => Assert.Empty(p.Cuts));
        Assert.Equal(4, piece.Joints.Count(j => j.Kind == JointKind.Screwed));
        piece.MustBeSound();
    }

    [Fact]
    public void Grooved_back_reaches_into_all_four_grooves_less_its_play()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], back: grooved }"));
        // 564 + 2 x (6 - 0.5); 684 + 2 x (6 - 0.5). Its front lies 12 + 6.5 from the rear edges.
        piece.Measures("box back", "695 x 575 x 6.5");
        piece.StandsAt("box back", "12.5, 381.5, 12.5");
        // What it hangs in runs the whole depth.
        piece.Measures("box bottom", "564 x 400 x 18");
        Assert.Equal(4, piece.Joints.Count(j => j.Kind == JointKind.Loose && j.Play == piece.Read("0.5")));
        piece.MustBeSound();
    }

    [Fact]
    public void Grooved_back_runs_up_behind_the_rear_stretcher()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], back: grooved, closed by: stretchers }"));
        piece.Measures("box front stretcher", "564 x 100 x 18");
        piece.StandsAt("box front stretcher", "18, 0, 702");
        piece.StandsAt("box rear stretcher", "18, 281.5, 702");
        // From 12.5 to the top of the sides.
        piece.Measures("box back", "707.5 x 575 x 6.5");
        piece.MustBeSound();
    }

    [Fact]
    public void Rabbeted_back_laps_the_sides_and_covers_bottom_and_top()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], back: rabbeted }"));
        // 564 + 2 x 9 wide; 684 + 2 x 18 high; flush with the rear edges.
        piece.Measures("box back", "720 x 582 x 6.5");
        piece.StandsAt("box back", "9, 393.5, 0");
        piece.Measures("box bottom", "564 x 393.5 x 18");
        piece.MustBeSound();
    }

    [Fact]
    public void Planted_back_covers_the_whole_box_and_counts_in_its_depth()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], back: planted }"));
        piece.Measures("box left side", "720 x 393.5 x 18");
        piece.Measures("box bottom", "564 x 393.5 x 18");
        piece.Measures("box back", "720 x 600 x 6.5");
        piece.StandsAt("box back", "0, 393.5, 0");
        piece.MustBeSound();
    }

    [Fact]
    public void A_back_without_a_word_is_grooved_frameless_and_rabbeted_behind_a_face_frame()
    {
        Built.From(Metric("box: { size: [600, 720, 400] }")).Measures("box back", "695 x 575 x 6.5");
        // 582 as above; 720 less the 40 mm rail, the top panel is 18 + 18 more: 720 - 40 + 18.
        Built.From(Metric("box: { size: [600, 720, 400], face frame }")).Measures("box back", "698 x 582 x 6.5");
    }

    [Theory]
    [InlineData("none")]
    [InlineData("grooved")]
    [InlineData("rabbeted")]
    [InlineData("planted")]
    public void Every_joint_goes_with_every_back_and_closing(string back)
    {
        foreach (var joint in (string[])["dado", "dowels", "screws"])
        {
            foreach (var closed in (string[])["panel", "stretchers"])
            {
                foreach (var frame in (string[])["", "face frame, "])
                {
                    Built
                        .From(
                            Metric(
                                $"box: {{ size: [600, 720, 400], {frame}back: {back}, joint: {joint}, closed by: {closed}, shelves: {{ fixed: 1 }} }}"
                            )
                        )
                        .MustBeSound();
                }
            }
        }
    }
}
