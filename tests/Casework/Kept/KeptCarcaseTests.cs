using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Kept;

/// <summary>An old chest as measured: its left side plumb, its foot level, the rest as the tape found it.</summary>
public sealed class KeptCarcaseTests
{
    private static string Recipe(
        string chest,
        string more = "",
        string carcases = "wing: { right of: chest, size: [300, 700, 380] }"
    ) =>
        $$"""
            piece: Beside the old chest
            units: mm
            materials: { body: pine 18, old pine: pine 20, backs: birch plywood 6.5 }
            kept:
              chest:
                material: old pine
                {{chest}}
            {{more}}
            carcases:
              {{carcases}}
            """;

    private const string Inside = "inside: { width: 760, height: 620, depth: 380, from left: 20, from foot: 40 }";

    [Fact]
    public void A_square_chest_is_its_outside_less_its_hollow()
    {
        var piece = Built.From(Recipe("outside: { width: 800, height: 700, depth: 400 }", "    " + Inside));
        piece.Measures("chest body", "700 x 800 x 400");
        piece.Holds("chest body", (800.0 * 700 * 400) - (760.0 * 620 * 380));
        Assert.True(piece.Part("chest body").IsKept);
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("width: 800, width at top: 790", (800 + 790) / 2.0 * 700, "700 x 800 x 400")]
    [InlineData("width: 800, width at top: 812", (800 + 812) / 2.0 * 700, "700 x 812 x 400")]
    [InlineData("width: 800, height at right: 710", 800 * (700 + 710) / 2.0, "710 x 800 x 400")]
    [InlineData("width: 800, height at right: 694", 800 * (700 + 694) / 2.0, "700 x 800 x 400")]
    public void A_chest_out_of_square_loses_its_wedge_on_the_right_or_above(string outside, double face, string blank)
    {
        var piece = Built.From(Recipe($"outside: {{ {outside}, height: 700, depth: 400 }}", "    " + Inside));
        piece.Measures("chest body", blank);
        piece.Holds("chest body", (face * 400) - (760.0 * 620 * 380));
        piece.MustBeSound();
    }

    [Fact]
    public void New_work_clears_the_widest_of_a_leaning_chest()
    {
        var piece = Built.From(
            Recipe("outside: { width: 800, width at top: 812, height: 700, depth: 400 }", "    " + Inside)
        );
        // The shop's clearance of 2 mm past 812; backs in line at 400.
        piece.StandsAt("wing left side", "814, 20, 0");
        piece.MustBeSound();
    }

    [Fact]
    public void Old_doors_stay_as_found_and_hang_on_the_body()
    {
        var piece = Built.From(
            Recipe(
                "outside: { width: 800, height: 700, depth: 400 }",
                $"    {Inside}\n    doors: {{ leaves: 2, thickness: 20, lap: 10, gap: 4 }}"
            )
        );
        // (760 + 2 x 10 - 4) / 2 wide, 620 + 2 x 10 high.
        piece.Measures("chest left door leaf", "640 x 388 x 20");
        piece.StandsAt("chest left door leaf", "10, -20, 30");
        piece.StandsAt("chest right door leaf", "402, -20, 30");
        Assert.All(piece.Groups.Where(g => g.Kind == GroupKind.Door), g => Assert.Equal("chest", g.Parent));
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("left end", 690.0 * 380 * 19, "10, 0, 240")]
    [InlineData("right end", 690.0 * 380 * 19, "10, 0, 240")]
    public void An_old_shelf_is_cut_down_at_a_named_end(string end, double volume, string _)
    {
        var piece = WithShelf($"cut down: {end}, to: 690");
        // It lies in the middle, 740 of 760, at the back: 20 + 10, 380 - 380, 40 + 200.
        piece.Measures("chest lower shelf", "740 x 380 x 19");
        piece.StandsAt("chest lower shelf", "30, 0, 240");
        piece.Holds("chest lower shelf", volume);
        var shelf = piece.Part("chest lower shelf");
        var left = end == "left end" ? 50 : 0;
        Assert.Equal(left, piece.Grid.ToMm(shelf.Solid.Bounds.Min.X), 1e-9);
        Assert.Equal(left + 690, piece.Grid.ToMm(shelf.Solid.Bounds.Max.X), 1e-9);
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("front edge", 80.0)]
    [InlineData("back edge", 0.0)]
    public void An_old_shelf_is_cut_down_at_a_named_edge(string edge, double from)
    {
        var piece = WithShelf($"cut down: {edge}, to: 300");
        piece.Holds("chest lower shelf", 740.0 * 300 * 19);
        Assert.Equal(from, piece.Grid.ToMm(piece.Part("chest lower shelf").Solid.Bounds.Min.Y), 1e-9);
        piece.MustBeSound();
    }

    [Fact]
    public void A_new_plinth_lifts_the_chest_and_takes_its_widest()
    {
        var piece = Built.From(
            Recipe(
                "outside: { width: 800, width at top: 790, height: 700, depth: 400 }",
                $"    {Inside}\n    stands on: {{ plinth: 90 }}"
            )
        );
        piece.StandsAt("chest body", "0, 0, 90");
        piece.Measures("chest plinth front", "800 x 90 x 18");
        piece.Measures("chest plinth left end", "364 x 90 x 18");
        Assert.Contains(piece.Joints, j => j.Kind == JointKind.Resting && j.Enters == "chest/body");
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("outside: { width: 800, height: 700, depth: 400 }", "stands on: { legs: 50 }", "is not cut for legs")]
    [InlineData(
        "outside: { width: 800, height: 700, depth: 400 }",
        "stands on: { toe space: 50 }",
        "is not cut for legs"
    )]
    [InlineData("outside: { width: 780, height: 700, depth: 400 }", "", "reaches out of its outside")]
    [InlineData("outside: { width: 800, height: 660, depth: 400 }", "", "reaches out of its outside")]
    [InlineData("outside: { width: 800, height: 700, depth: 370 }", "", "reaches out of its outside")]
    [InlineData(
        "outside: { width: 800, width at top: 700, height: 700, depth: 400 }",
        "",
        "reaches out of its outside"
    )]
    [InlineData(
        "outside: { width: 800, height: 700, height at right: 600, depth: 400 }",
        "",
        "reaches out of its outside"
    )]
    public void What_cannot_be_so_is_refused(string outside, string more, string says)
    {
        Assert.Contains(says, Built.ErrorOf(Recipe(outside, $"    {Inside}\n    {more}")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cut down: left end, to: 740")]
    [InlineData("cut down: left end, to: 800")]
    [InlineData("cut down: left end")]
    public void A_cut_that_takes_nothing_off_is_refused(string cut)
    {
        Assert.Contains("must come out smaller than it was found", Built.ErrorOf(Shelf(cut)), StringComparison.Ordinal);
    }

    private static Piece WithShelf(string cut) => Built.From(Shelf(cut));

    private static string Shelf(string cut) =>
        Recipe(
            "outside: { width: 800, height: 700, depth: 400 }",
            $"    {Inside}\n    shelves: {{ lower shelf: {{ length: 740, width: 380, thickness: 19, height: 200, {cut} }} }}"
        );
}
