using Dryfit.Findings;

namespace Dryfit.Mending.Tests;

public sealed class MenderTests
{
    [Fact]
    public void A_door_cut_too_narrow_gets_the_width_that_closes_its_gap()
    {
        var report = Shop.Mend(Shop.Cupboard + "as cut:\n  left door: { width: 390 }\n");

        Assert.Equal(["11: 390 -> 397"], report.Said());
        var remedy = Assert.Single(report.Findings).Remedy!;
        Assert.Equal("In line 11: 390 -> 397.", remedy.Text);
        Assert.True(remedy.Sure);
        Assert.Equal(report.Mended!.Edits, remedy.Edits);
        Assert.Empty(report.Mended.Left);
        Assert.Empty(report.Mended.After.Findings);
    }

    [Fact]
    public void Two_wrong_doors_of_a_pair_are_both_set_right_not_one_to_make_up_for_the_other()
    {
        var report = Shop.Mend(Shop.Cupboard + "as cut:\n  left door: { width: 390 }\n  right door: { width: 395 }\n");

        Assert.Equal(["11: 390 -> 397", "12: 395 -> 397"], report.Said());
    }

    [Fact]
    public void A_number_of_the_makers_own_that_is_right_is_left_alone()
    {
        // (564 + 16.5 - 3 + 16.5) / 2 = 297.
        var recipe = Shop.Drawers("h: 160", "190") + "as cut:\n  left door: { width: 297 }\n";

        Assert.Equal(["12: 190 -> 136"], Shop.Mend(recipe).Said());
    }

    [Fact]
    public void One_slip_that_shows_in_many_places_is_one_edit()
    {
        var studio = File.ReadAllText(
            Path.Combine(AppContext.BaseDirectory, "starters", "studio-cupboard.dryfit.yaml")
        );
        var lines = SourceLines.Split(studio).Count;
        var report = Shop.Mend(studio + "as cut:\n  left upper door rails: { length: 7-3/8\" }\n");

        Assert.True(report.Findings.Count(f => f.Kind.Severity > Severity.Note) > 1);
        var edit = Assert.Single(report.Mended!.Edits);
        Assert.Equal((lines + 1, "7-3/8\"", "8-7/64\""), (edit.Place.Line, edit.OldText, edit.NewText));
        Assert.DoesNotContain(report.Mended.After.Findings, f => f.Kind.Severity > Severity.Note);
    }

    [Fact]
    public void A_size_typed_by_hand_is_solved_for()
    {
        // 160 less 12 over the box and 12 under it.
        Assert.Equal(["12: 190 -> 136"], Shop.Mend(Shop.Drawers("h: 160", "190")).Said());
    }

    [Fact]
    public void A_parameter_keeps_to_its_step()
    {
        Assert.Equal(
            ["5: 190 -> 135"],
            Shop.Mend(Shop.Drawers("box: { default: 190, from: 100, step: 5 }", "box")).Said()
        );
    }

    [Fact]
    public void A_parameter_is_not_set_outside_its_limits()
    {
        var report = Shop.Mend(Shop.Drawers("box: { default: 190, from: 150 }", "box"));

        Assert.DoesNotContain(report.Said(), said => said.StartsWith("5:", StringComparison.Ordinal));
    }

    [Fact]
    public void A_number_in_a_formula_is_changed_where_it_stands()
    {
        // 136 = 100 + 36.
        Assert.Equal(["12: 90 -> 36"], Shop.Mend(Shop.Drawers("base: 100", "base + 90")).Said().Take(1));
    }

    [Fact]
    public void What_was_measured_is_never_changed()
    {
        var report = Shop.Mend(
            Shop.Cupboard.Replace("slab pair", "\"slab pair, inset\"", StringComparison.Ordinal)
                + "as measured:\n  cupboard opening: { width: [764, 758] }\n"
        );

        Assert.NotEmpty(report.Mended!.Left);
        Assert.DoesNotContain(report.Mended.Edits, edit => edit.Place.Line > 10);
    }

    [Fact]
    public void An_edit_of_a_word_of_the_makers_own_goes_into_its_file()
    {
        const string Recipe = """
            piece: Tower
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5, boxes: birch plywood 12 }
            words: { tower: tower.dryfit-word.yaml }
            carcases: { first: { use: tower }, second: { use: tower, right of: first } }
            """;
        const string Word = """
            word: tower
            units: in
            carcases:
              low:
                size: [24, 36, 20]
                front: { rows: [ { height: 6 1/4, drawer: { box height: 7-1/2" } }, { doors: slab pair } ] }
            """;
        var report = Shop.Mend(Recipe, ("tower.dryfit-word.yaml", Word));

        var edit = Assert.Single(report.Mended!.Edits);
        Assert.Equal(("tower.dryfit-word.yaml", 6, "7-1/2\""), (edit.Place.File, edit.Place.Line, edit.OldText));
        // 6 1/4 in are 158.75 mm; less 24 mm that is 134.75, and the next sixty-fourth below is 5 19/64 in.
        Assert.Equal("5-19/64\"", edit.NewText);
        Assert.StartsWith(
            "In line 6 of tower.dryfit-word.yaml: ",
            report.Findings[0].Remedy!.Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_accepted_finding_is_not_mended()
    {
        var report = Shop.Mend(
            Shop.Cupboard
                + "as cut:\n  left door: { width: 390 }\naccept:\n  - { finding: front-gap-too-wide, because: a strip goes there }\n"
        );

        Assert.Empty(report.Mended!.Edits);
        Assert.Equal(0, report.Mended.Builds);
    }

    [Fact]
    public void It_stops_at_the_limit_and_says_so()
    {
        var report = Shop.Mend(Shop.Drawers("h: 160", "190"), mostBuilds: 1);

        Assert.Empty(report.Mended!.Edits);
        Assert.NotEmpty(report.Mended.Left);
        Assert.All(
            report.Mended.Left,
            left => Assert.Contains("limit of 1 builds", left.Why, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void It_says_the_same_every_time()
    {
        var recipe = Shop.Drawers("box: 190", "box") + "as cut:\n  left door: { width: 290 }\n";

        var (first, second) = (Shop.Mend(recipe), Shop.Mend(recipe));

        Assert.Equal(first.Said(), second.Said());
        Assert.Equal(first.Mended!.Builds, second.Mended!.Builds);
        Assert.Equal(2, first.Mended.Edits.Count);
    }

    [Fact]
    public void A_sound_piece_needs_no_build()
    {
        var report = Shop.Mend(Shop.Cupboard);

        Assert.Empty(report.Mended!.Edits);
        Assert.Equal(0, report.Mended.Builds);
    }
}
