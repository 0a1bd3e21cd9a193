using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>A top 27 thick on a box of 600 x 720 x 400: its thickness counts in the 720, its overhangs in nothing.</summary>
public sealed class TopTests
{
    [Fact]
    public void A_top_takes_its_thickness_from_the_sides_and_closes_over_stretchers()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], top }", materials: "tops: beech 27"));
        piece.Measures("box left side", "693 x 400 x 18");
        piece.Measures("box top", "600 x 400 x 27");
        piece.StandsAt("box top", "0, 0, 693");
        piece.Measures("box front stretcher", "564 x 100 x 18");
        piece.MustBeSound();
    }

    [Fact]
    public void One_overhang_is_for_front_and_ends()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], top: { overhang: 15 } }", materials: "tops: beech 27")
        );
        piece.Measures("box top", "630 x 415 x 27");
        piece.StandsAt("box top", "-15, -15, 693");
        piece.MustBeSound();
    }

    [Fact]
    public void Overhangs_by_side_stand_on_their_sides()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], top: { overhang: { front: 20, ends: 10, right: 0, back: 5 } } }",
                materials: "tops: beech 27"
            )
        );
        // 600 + 10 + 0; 400 + 20 + 5.
        piece.Measures("box top", "610 x 425 x 27");
        piece.StandsAt("box top", "-10, -20, 693");
        piece.MustBeSound();
    }

    [Fact]
    public void A_top_under_which_a_panel_is_asked_for_gets_one()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], top: { material: body }, closed by: panel }"));
        piece.Measures("box top", "600 x 400 x 18");
        piece.Measures("box top panel", "564 x 400 x 18");
        piece.StandsAt("box top panel", "18, 0, 684");
        piece.MustBeSound();
    }
}
