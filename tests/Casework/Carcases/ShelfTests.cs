using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// Shelves in a box of 600 x 720 x 400, 564 x 684 x 381.5 inside. House rules: shelves stay 10 behind the front, those on
/// pins 1 short at each end; pins of 5 in rows 37 from front and back, 32 apart, five for each shelf.
/// </summary>
public sealed class ShelfTests
{
    [Fact]
    public void Fixed_shelves_are_jointed_in_and_spread_evenly()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], shelves: { fixed: 2 } }"));
        // (684 - 2 x 18) / 3 = 216 of air.
        piece.Measures("box fixed shelf 1", "564 x 371.5 x 18");
        piece.StandsAt("box fixed shelf 1", "18, 10, 234");
        piece.StandsAt("box fixed shelf 2", "18, 10, 468");
        piece.MustBeSound();
    }

    [Fact]
    public void Heights_count_from_the_floor_of_the_bay()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], shelves: { fixed: 2, at: [200, 500] } }"));
        piece.StandsAt("box fixed shelf 1", "18, 10, 218");
        piece.StandsAt("box fixed shelf 2", "18, 10, 518");
        piece.MustBeSound();
    }

    [Fact]
    public void Adjustable_shelves_lie_on_pins_in_rows_of_32()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], joint: screws, back: none, shelves: { adjustable: 1 } }")
        );
        // (684 - 18) / 2 = 333 over the bottom; 400 - 10 wide without a back.
        piece.Measures("box adjustable shelf 1", "562 x 390 x 18");
        piece.StandsAt("box adjustable shelf 1", "19, 10, 351");
        foreach (var name in (string[])["box left side", "box right side"])
        {
            var side = piece.Part(name);
            var holes = side.Cuts.OfType<RoundCut>().ToList();
            Assert.All(holes, h => Assert.Equal((piece.Read("5"), piece.Read("10")), (h.Diameter, h.Depth)));
            var at = holes.Select(h => side.Place.ToPiece(h.From)).ToList();
            Assert.Equal(["37", "363"], at.Select(p => piece.Write(p.Y)).Distinct());
            // The pin under the shelf has its middle 2.5 under it; two holes more above and below.
            Assert.Equal(["284.5", "316.5", "348.5", "380.5", "412.5"], at.Select(p => piece.Write(p.Z)).Distinct());
            Assert.Equal(10, holes.Count);
        }
        Assert.Equal(4, piece.Hardware.Where(h => h.Kind == "shelf pin").Sum(h => h.Count));
        piece.MustBeSound();
    }

    [Fact]
    public void Shelves_of_a_carcase_stand_in_every_bay_without_drawers()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [1000, 720, 400], shelves: { adjustable: 1 }, front: { columns: [ drawer, open, { doors: slab, shelves: { fixed: 2 } } ] } }"
            )
        );
        Assert.Equal(
            ["box middle bay adjustable shelf 1", "box right bay fixed shelf 1", "box right bay fixed shelf 2"],
            piece.PartsOf(Role.Shelf).Select(p => p.Name)
        );
        piece.MustBeSound();
    }

    [Fact]
    public void Glass_shelves_are_as_thick_as_their_glass()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], shelves: { adjustable: 1, material: panes } }",
                materials: "panes: float glass 6"
            )
        );
        piece.Measures("box adjustable shelf 1", "562 x 371.5 x 6");
        piece.MustBeSound();
    }

    [Fact]
    public void Edging_is_glued_to_the_front_edges_and_taken_off_the_boards()
    {
        var piece = Built.From(
            """
            piece: Edged
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5, lipping: { solid: birch, thickness: 3 } }
            carcases:
              box: { size: [600, 720, 400], edging: lipping, closed by: stretchers, shelves: { adjustable: 1 }, top: { material: body } }
            """
        );
        var side = piece.Part("box left side");
        piece.Measures("box left side", "702 x 397 x 18");
        piece.StandsAt("box left side", "0, 3, 0");
        Assert.Equal(piece.Read("400"), side.FinishedWidth!.Length);
        Assert.Null(side.FinishedLength);
        piece.Measures("box left side front edging", "702 x 18 x 3");
        piece.StandsAt("box left side front edging", "0, 0, 0");
        // 371.5 as finished, less 3.
        piece.Measures("box adjustable shelf 1", "562 x 368.5 x 18");
        // Nobody sees the front edge of the rear stretcher.
        piece.Measures("box rear stretcher", "564 x 100 x 18");
        Assert.Equal(
            ["left side", "right side", "bottom", "front stretcher", "adjustable shelf 1"],
            piece.PartsOf(Role.Edging).Select(p => p.Name["box ".Length..^" front edging".Length])
        );
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("fixed: 2, at: [200]", "There are 2 shelves and 1 heights for them.")]
    [InlineData("fixed: 1, on: strips", "Fixed shelves lie on nothing but their joints.")]
    [InlineData("adjustable: 1, adjustable at: [200]", "Shelves of one sort have their heights under `at`.")]
    [InlineData("fixed: 1, at: [300], adjustable: 1, adjustable at: [290]", "no room")]
    [InlineData("fixed: 1, at: [300], adjustable: 2, adjustable at: [500, 100]", "The heights of the shelves fall.")]
    [InlineData("fixed: 1, lip: { material: body, height: 12 }", "The lip is lower than the shelf is thick.")]
    [InlineData("fixed: 1, setback: 400", "leave nothing of the shelves")]
    [InlineData("fixed: 1, between stiles: yes", "There is no face frame")]
    [InlineData("at: [200]", "How many shelves is missing.")]
    [InlineData("fixed: 50", "no room")]
    [InlineData("adjustable: 50", "no room")]
    [InlineData("fixed: 1, at: [680]", "no room")]
    [InlineData("fixed: 2, at: [200, 210]", "no room")]
    [InlineData("fixed: 2, at: [400, 200]", "no room")]
    [InlineData("adjustable: 1, material: thick", "no room")]
    public void Shelves_that_find_no_room_are_refused(string shelves, string says)
    {
        Assert.Contains(
            says,
            Built.ErrorOf(
                Metric($"box: {{ size: [600, 720, 400], shelves: {{ {shelves} }} }}", materials: "thick: oak 700")
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Fixed_shelves_part_the_bay_and_loose_ones_go_where_most_room_is()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], shelves: { fixed: 1, at: [200], adjustable: 2 } }")
        );
        // Over the fixed shelf 684 - 218 = 466 are clear, under it 200: the first loose one goes above, (466 - 18) / 2 = 224,
        // and so does the second, since 224 is more than 200: (466 - 2 x 18) / 3 = 143 1/3.
        piece.StandsAt("box fixed shelf 1", "18, 10, 218");
        piece.StandsAt("box adjustable shelf 1", "19, 10, 379 1/3");
        piece.StandsAt("box adjustable shelf 2", "19, 10, 540 2/3");
        piece.MustBeSound();
    }

    [Fact]
    public void Loose_shelves_between_fixed_ones_may_have_heights_of_their_own()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], shelves: { fixed: 1, at: [300], adjustable: 2, adjustable at: [150, 500] } }"
            )
        );
        piece.StandsAt("box adjustable shelf 1", "19, 10, 168");
        piece.StandsAt("box adjustable shelf 2", "19, 10, 518");
        // No hole comes where the fixed shelf is let in or doweled, from 318 to 336.
        var side = piece.Part("box left side");
        Assert.DoesNotContain(
            side.Cuts.Where(c => c.Kind == CutKind.ShelfPinHole).OfType<RoundCut>(),
            hole => side.Place.ToPiece(hole.From).Z is var z && z > piece.Read("315") && z < piece.Read("339")
        );
        piece.MustBeSound();
    }

    [Fact]
    public void Strips_lie_in_grooves_from_the_floor_to_the_ceiling_of_the_bay()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], shelves: { adjustable: 2, on: strips } }"));
        var grooves = piece.Part("box left side").Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Groove);
        var strips = grooves
            .Select(c => piece.Part("box left side").Place.ToPiece(c.Extent))
            .Where(e => e.Depth == piece.Read("16"))
            .ToList();
        // 37 to the middle of the front strip, as far from the back at 381.5 to the middle of the rear one; 5 deep.
        Assert.Equal(["29", "336.5"], strips.Select(e => piece.Write(e.Min.Y)));
        Assert.All(strips, e => Assert.Equal(("5", "684"), (piece.Write(e.Width), piece.Write(e.Height))));
        Assert.DoesNotContain(piece.Part("box left side").Cuts, c => c.Kind == CutKind.ShelfPinHole);
        Assert.Equal(4, piece.Hardware.Where(h => h.Kind == "shelf strip").Sum(h => h.Count));
        Assert.Equal(8, piece.Hardware.Where(h => h.Kind == "shelf clip").Sum(h => h.Count));
        piece.MustBeSound();
    }

    [Fact]
    public void Planted_strips_make_their_shelves_shorter_by_both_of_them()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], shelves: { adjustable: 1, on: planted strips } }")
        );
        // 564 less 2 x (1 + 5).
        piece.Measures("box adjustable shelf 1", "552 x 371.5 x 18");
        piece.MustBeSound();
    }

    [Fact]
    public void A_lip_stands_before_its_shelf_flush_above_and_hangs_down()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], shelves: { adjustable: 1, at: [300], lip: { material: oak, height: 40 } } }",
                materials: "oak: oak 20"
            )
        );
        // 371.5 with the lip, which is 20 thick.
        piece.Measures("box adjustable shelf 1", "562 x 351.5 x 18");
        piece.StandsAt("box adjustable shelf 1", "19, 30, 318");
        piece.Measures("box adjustable shelf 1 lip", "562 x 40 x 20");
        piece.StandsAt("box adjustable shelf 1 lip", "19, 10, 296");
        piece.MustBeSound();
    }

    [Fact]
    public void Setback_and_room_behind_come_off_the_width()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], shelves: { fixed: 1, setback: 60, behind: 15 } }")
        );
        piece.Measures("box fixed shelf 1", "564 x 306.5 x 18");
        piece.StandsAt("box fixed shelf 1", "18, 60, 351");
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("adjustable: 1", "19", "562")]
    [InlineData("fixed: 1", "12", "576")]
    public void A_shelf_between_stiles_is_notched_round_them(string sort, string left, string length)
    {
        var piece = Built.From(
            Metric(
                $"box: {{ size: [600, 720, 400], face frame: {{ stiles: 45 }}, shelves: {{ {sort}, at: [300], setback: 5, between stiles: yes }} }}"
            )
        );
        var shelf = piece.PartsOf(Role.Shelf).Single();
        // Its front stays 5 behind that of the frame.
        Assert.Equal((left, "5"), (piece.Write(shelf.Extent.Min.X), piece.Write(shelf.Extent.Min.Y)));
        Assert.Equal(length, piece.Write(shelf.Length.Length));
        var notches = shelf.Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Notch).ToList();
        Assert.Equal(2, notches.Count);
        // Both stiles of 45 stand 27 before the inside; with 1 of play the nose is 600 - 2 x 46 long.
        var nose = notches.Select(n => shelf.Place.ToPiece(n.Extent)).ToList();
        Assert.Equal(["46", "554"], [piece.Write(nose[0].Max.X), piece.Write(nose[1].Min.X)]);
        Assert.All(nose, n => Assert.Equal("19", piece.Write(n.Max.Y)));
        piece.MustBeSound();
    }

    [Fact]
    public void A_shelf_between_stiles_meets_no_rail()
    {
        Assert.Contains(
            "would meet a rail",
            Built.ErrorOf(
                Metric(
                    "box: { size: [600, 720, 400], face frame: { rails: 60 }, shelves: { fixed: 1, at: [600], between stiles: yes } }"
                )
            ),
            StringComparison.Ordinal
        );
    }
}
