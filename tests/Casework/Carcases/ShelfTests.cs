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
    [InlineData("fixed: 1, adjustable: 1", "Shelves are fixed or adjustable, not both.")]
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
}
