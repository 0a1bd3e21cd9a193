using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>A carcase of 800 x 900 x 500 of pine 18 with sides of ash 20: stiles 70, rails 80, panels of plywood 6.5.</summary>
public sealed class FramedSideTests
{
    private static string Recipe(string sides, string more) =>
        Metric(
            $"press: {{ size: [800, 900, 500], sides: {{ {sides} }}{more} }}",
            materials: "ash: ash 20\nthin: ash 12"
        );

    private static Piece Press(string sides = "material: ash, stiles: 70, rails: 80", string more = "") =>
        Built.From(Recipe(sides, more));

    [Fact]
    public void Frame_is_reckoned_from_the_outside_inwards()
    {
        var piece = Press("material: ash, stiles: 70, rails: 80, joint: stub tenons", ", back: planted");
        piece.MustBeSound();
        // The planted back of 6.5 leaves 493.5 for the side.
        piece.Measures("press left side front stile", "900 x 70 x 20");
        piece.StandsAt("press left side front stile", "0, 0, 0");
        piece.StandsAt("press left side rear stile", "0, 423.5, 0");
        piece.StandsAt("press right side front stile", "780, 0, 0");
        // Between stiles 353.5, and a stub tenon of 10 (the shop's groove) at each end.
        piece.Measures("press left side top rail", "373.5 x 80 x 20");
        piece.StandsAt("press left side top rail", "0, 60, 820");
        // Between rails 740; into the grooves by 10 less the play of 1 at each edge.
        piece.Measures("press left side panel", "758 x 371.5 x 6.5");
        // 6 behind the outside: from 6 to 12.5 on the left, from 787.5 to 794 on the right.
        piece.StandsAt("press left side panel", "6, 61, 71");
        piece.StandsAt("press right side panel", "787.5, 61, 71");
    }

    [Fact]
    public void Inside_of_the_carcase_lies_between_the_frames()
    {
        var piece = Press(more: ", joint: screws");
        // 800 less two frames of 20; with the side of pine at one end 800 - 20 - 18.
        Assert.Equal("760", piece.Write(piece.Part("press bottom").Length.Length));
        var one = Press("framed: left, material: ash", ", joint: screws");
        Assert.Equal("762", one.Write(one.Part("press bottom").Length.Length));
        one.Measures("press right side", "900 x 500 x 18");
    }

    [Fact]
    public void Rails_are_tenoned_into_the_stiles()
    {
        var piece = Press();
        // Five times the groove of 6.5 is 32.5, less than two thirds of 70: tenons of 32 to the whole millimetre.
        var rail = piece.Part("press left side bottom rail");
        Assert.Equal("360", piece.Write(rail.ShoulderLength!.Length));
        Assert.Equal("424", piece.Write(rail.Length.Length));
        Assert.Equal(
            8,
            piece.Joints.Count(j =>
                j.Kind == JointKind.MortiseAndTenon && j.Enters.Contains("-side-", StringComparison.Ordinal)
            )
        );
        // 424 x 80 x 20 less the groove along the upper edge, 10 x 6.5 between the cheeks of both tenons as well; less
        // cheeks of 6 and 7.5 on both tenons; less a third of the width (26.7) beyond the haunch of 10.
        var solid = 424.0 * 80 * 20;
        var groove = 424.0 * 10 * 6.5;
        var cheeks = 2 * 32 * 80 * (6 + 7.5);
        var haunches = 2 * 22 * 26.7 * 6.5;
        // The bottom is dowelled on: two holes of 8, 16 deep, in facets; so only the order is compared.
        var left = solid - groove - cheeks - haunches;
        Assert.InRange(piece.VolumeMm3(rail), left - (4 * Math.PI * 16 * 20), left);
    }

    [Fact]
    public void Shelf_is_let_into_the_stiles_and_free_of_the_panel_between()
    {
        var piece = Press(more: ", joint: dado, shelves: { fixed: 1 }");
        piece.MustBeSound();
        // 760 inside and dados of 6.
        var shelf = piece.Part("press fixed shelf 1");
        Assert.Equal("772", piece.Write(shelf.Length.Length));
        // The tongue is cut away over 360 between stiles of 70 and 70, at both ends.
        var width = shelf.Width.Length.ToMillimetres();
        Assert.Equal((772 * width * 18) - (2 * 360 * 6 * 18), piece.VolumeMm3(shelf), 1e-3);
        Assert.Equal(4, piece.Joints.Count(j => j.Kind == JointKind.Dado && j.Enters == shelf.Id));
    }

    [Fact]
    public void Middle_rail_takes_a_shelf_at_its_height()
    {
        // The rail goes from 400 to 480; the floor lies at 18, so a shelf 400 over it is from 418 to 436.
        var piece = Press(
            "material: ash, middle rails: { at: [400], width: 80 }",
            ", joint: dado, shelves: { fixed: 1, at: [400] }"
        );
        piece.MustBeSound();
        var shelf = piece.Part("press fixed shelf 1");
        Assert.DoesNotContain(shelf.Cuts, cut => cut.Kind == CutKind.Shoulder);
        Assert.Equal(6, piece.Joints.Count(j => j.Kind == JointKind.Dado && j.Enters == shelf.Id));
    }

    [Fact]
    public void Bottom_rail_goes_down_as_far_as_the_side()
    {
        // Let in 90 high: the floor lies so much higher, and the rail of 80 is wider by it.
        var piece = Press(more: ", stands on: { plinth: 90, set: let in }");
        piece.MustBeSound();
        Assert.Equal("170", piece.Write(piece.Part("press left side bottom rail").Width.Length));
        // On legs at the left only, 120 high: the right side goes down to the floor.
        var legs = Press(more: ", stands on: { legs: 60, height: 120, at: left end }");
        Assert.Equal("80", legs.Write(legs.Part("press left side bottom rail").Width.Length));
        Assert.Equal("200", legs.Write(legs.Part("press right side bottom rail").Width.Length));
    }

    [Fact]
    public void Pins_and_hinges_go_into_the_stiles()
    {
        var piece = Press(more: ", shelves: { adjustable: 2 }, front: { doors: slab pair }");
        piece.MustBeSound();
        foreach (var stile in (string[])["front stile", "rear stile"])
            Assert.Contains(piece.Part($"press left side {stile}").Cuts, cut => cut.Kind == CutKind.ShelfPinHole);
        // Two plates with two holes each.
        Assert.True(piece.Part("press left side front stile").Cuts.Count(cut => cut.Kind == CutKind.Bore) >= 4);
        Assert.DoesNotContain(
            piece.Part("press left side panel").Cuts,
            cut => cut.Kind is CutKind.Bore or CutKind.ShelfPinHole
        );
    }

    [Theory]
    [InlineData("dado")]
    [InlineData("dowels")]
    [InlineData("biscuits")]
    [InlineData("loose tongue")]
    [InlineData("screws")]
    [InlineData("plugged screws")]
    [InlineData("connectors")]
    public void Flat_panels_meet_it_by_any_joint(string joint) =>
        Press("material: ash, stiles: 90", $", joint: {joint}, shelves: {{ fixed: 1, adjustable: 1 }}").MustBeSound();

    [Theory]
    [InlineData("framed: right, muntins: 1", ", face frame: , front: { doors: framed pair }, top: { overhang: 20 }")]
    [InlineData("middle rails: 2, muntins: { count: 2, width: 50 }", ", stands on: { plinth: 100 }, back: grooved")]
    [InlineData("raised: , panel: ash", ", stands on: { legs: 60 }, faced: { back: framed }")]
    [InlineData("raised: , panel: thin, joint: stub tenons", ", face frame: , stands on: { plinth: 80, set: planted }")]
    [InlineData(
        "framed: left, stiles: 80",
        ", face frame: , front: { columns: [{ doors: framed }, { rows: [drawer, drawer] }] }"
    )]
    [InlineData(
        "",
        ", face frame: , front: { rows: [{ height: 150, drawer: }, { doors: framed pair, pull outs: 2 }] }"
    )]
    [InlineData(
        "stiles: 90",
        ", front: { rows: [{ drawer: { slides: runners } }, { drawer: { slides: side hung } }] }"
    )]
    [InlineData("", ", hangs on: { rails: 80 }, front: { doors: slab pair }")]
    [InlineData("top rail: 160", ", front: { clothes rail: }")]
    [InlineData("", ", front: { doors: { kind: slab, opens: sliding } }")]
    [InlineData("stiles: 90", ", shelves: { adjustable: 2, on: strips }, top: , head: { cornice: 60 }")]
    public void Whatever_it_carries_holds_together(string sides, string more) =>
        Press($"material: ash{(sides.Length == 0 ? "" : ", ")}{sides}", more).MustBeSound();

    [Fact]
    public void Neighbours_are_screwed_together_through_stiles_and_rails()
    {
        var piece = Built.From(
            Metric("left: { size: [400, 700, 400], sides: framed }\nright: { size: [400, 700, 400], right of: left }")
        );
        piece.MustBeSound();
        Assert.Equal(
            4,
            piece.Joints.Count(j =>
                j.Kind == JointKind.Screwed
                && j.Receives.StartsWith("left/right-side", StringComparison.Ordinal)
                && j.Enters == "right/left-side"
            )
        );
    }

    [Theory]
    [InlineData(
        "material: ash",
        ", stands on: { toe space: 100 }",
        "A toe space would cut the feet off the stiles of a framed side."
    )]
    [InlineData("material: ash", ", faced: { ends: slab }", "A side that is a frame itself is not faced as well.")]
    [InlineData("material: ash", ", joint: shouldered dado", "Panels go into a framed side in plain dados.")]
    [InlineData(
        "material: ash, bottom rail: 30",
        ", face frame: { rails: 60 }",
        "The press bottom would end on the panels of the press left side."
    )]
    [InlineData(
        "material: ash",
        ", front: { clothes rail: }",
        "A socket in the press left side would lie on one of its panels, or on the edge of one."
    )]
    [InlineData(
        "material: ash, stiles: 30",
        ", shelves: { adjustable: 1 }",
        "A hole in the press left side would lie on one of its panels, or on the edge of one."
    )]
    [InlineData(
        "material: ash",
        ", front: { drawer: { slide length: 400 } }",
        "The slide of the press drawer 1 would be fixed to a panel of the press left side, which is thin and must stay free to move."
    )]
    [InlineData("material: thin", "", "Lip and panel take all of the thickness of the side.")]
    [InlineData("material: ash, stiles: 260", "", "Stiles and rails of a side leave nothing between them.")]
    public void What_cannot_be_is_told(string sides, string more, string message) =>
        Assert.EndsWith(message, Built.ErrorOf(Recipe(sides, more)), StringComparison.Ordinal);

    [Fact]
    public void Groove_gives_way_to_dados()
    {
        // 3/4 in: a panel of 1/4 and a dado of 1/4, with 1.5 mm between them, leave a lip of 4.85 mm and not of 1/4 in.
        var piece = Built.From(Inch("press: { size: [30, 34, 18], joint: dado, sides: framed }"));
        piece.MustBeSound();
        var groove = piece.Part("press left side panel").Extent;
        Assert.Equal(4.85, groove.Min.X.ToMillimetres(), 1e-9);
    }
}
