using Dryfit.Casework.Building;
using Dryfit.Casework.Tests.Kit;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Hardware by the figures of its maker's sheet, out of the shop file.</summary>
public sealed class HardwareFamilyTests
{
    private const string Shop = """
        shop: Shed
        units: mm
        hardware:
          cup hinges:
            quiet hinge: { cup: 26 mm, cup depth: 11 mm, least overlay: 14, most overlay: 17 }
          side slides:
            slim slide: { clearance: 9.5, lengths: [250, 300, 400], load: 25, called: slim ball slide }
          under slides:
            hidden: { inside: 40, thickest side: 15, behind: 20 }
          shelf pins:
            brass pin: { diameter: 6, depth: 9 }
        """;

    private static readonly Material[] Stock =
    [
        Stuff("boxes", MaterialKind.Solid, "12 mm"),
        Stuff("bottoms", MaterialKind.Sheet, "6 mm"),
    ];

    private static FrontBench Bench(Hang hang = Hang.Overlay, string reach = "15 mm", params Material[] stock) =>
        new(
            LengthUnit.Millimetre,
            "400 mm",
            "150 mm",
            hang: hang,
            reach: reach,
            depth: "460 mm",
            shop: Shop,
            materials: stock.Length > 0 ? stock : Stock
        );

    [Fact]
    public void Slide_of_the_shop_file_sets_width_and_length_of_the_box()
    {
        var bench = Bench();
        var front = bench.Drawer("{ slides: slim slide }");
        var (left, right) = (bench["upper drawer 1 left side"].Extent, bench["upper drawer 1 right side"].Extent);
        // 400 - 2 x 9.5; of 250, 300 and 400 the longest that goes into 460 mm less the room behind.
        Assert.Equal(Exact("381 mm"), right.Max.X - left.Min.X);
        Assert.Equal(Exact("400 mm"), left.Depth);
        Assert.Equal((Exact("9.5 mm"), Exact("10.3 mm")), front.Drawer!.SideClearance);
        var slides = bench.Piece.Hardware.Where(h => h.Kind == "slim ball slide 400 mm").ToList();
        Assert.Equal(2, slides.Count);
        Assert.All(slides, slide => Assert.Equal((Rational?)25, slide.LoadKg));
    }

    [Fact]
    public void Under_slides_take_of_the_inside_what_their_sheet_says()
    {
        var bench = Bench();
        var front = bench.Drawer("{ slides: hidden }");
        var (left, right) = (bench["upper drawer 1 left side"].Extent, bench["upper drawer 1 right side"].Extent);
        // Inside 400 - 40 = 360; with two sides of 12 the box is 384 wide and leaves 8 a side.
        Assert.Equal(Exact("360 mm"), right.Min.X - left.Max.X);
        Assert.Equal(Exact("384 mm"), right.Max.X - left.Min.X);
        Assert.Equal(Exact("8 mm"), front.Drawer!.SideClearance.AtLeast);
        Assert.Equal(Exact("20 mm"), front.Drawer.BehindAtLeast);
    }

    /// <summary>Opening 15 in: box 14 5/8 in with sides of 5/8 in, 14 3/8 in with sides of 1/2 in (drawer-box supplier's page).</summary>
    [Theory]
    [InlineData("5/8\"", "14 5/8\"")]
    [InlineData("1/2\"", "14 3/8\"")]
    public void Usual_under_slides_leave_the_box_its_published_width(string side, string box)
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "6\"",
            materials: [Stuff("boxes", MaterialKind.Solid, side), Stuff("bottoms", MaterialKind.Sheet, "1/4\"")]
        );
        bench.Drawer("{ slides: under }");
        var (left, right) = (bench["upper drawer 1 left side"].Extent, bench["upper drawer 1 right side"].Extent);
        Assert.Equal(Exact(box), right.Max.X - left.Min.X);
    }

    [Fact]
    public void Under_slides_pass_through_notches_of_the_back_and_hook_into_it()
    {
        var bench = Bench();
        bench.Drawer("{ slides: under }");
        var back = bench["upper drawer 1 back"];
        var notches = back.Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Notch).ToList();
        Assert.Equal(2, notches.Count);
        // From the inside of the side; the end that is let into the side stays.
        Assert.Equal(Exact("35 mm"), notches[0].Extent.Width);
        Assert.Equal(Exact("13 mm"), notches[0].Extent.Depth);
        Assert.Equal(2, back.Cuts.OfType<RoundCut>().Count(c => c.Diameter == Exact("6 mm")));
    }

    [Fact]
    public void Side_too_thick_for_its_under_slides_is_refused()
    {
        var bench = Bench(
            stock: [Stuff("boxes", MaterialKind.Solid, "16 mm"), Stuff("bottoms", MaterialKind.Sheet, "6 mm")]
        );
        var fault = Assert.Throws<CannotBuildException>(() => bench.Drawer("{ slides: hidden }"));
        Assert.Contains("takes no more than", fault.Error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Hinge_of_the_shop_file_bores_its_own_cup()
    {
        var bench = Bench();
        bench.Doors("{ kind: slab, hinge: quiet hinge }");
        var cups = bench["upper door slab"].Cuts.OfType<RoundCut>().Where(c => c.Kind == CutKind.HingeCup).ToList();
        Assert.Equal(2, cups.Count);
        Assert.All(cups, cup => Assert.Equal((Exact("26 mm"), Exact("11 mm")), (cup.Diameter, cup.Depth)));
        Assert.Contains(bench.Piece.Hardware, h => h.Kind == "quiet hinge 26 mm, overlaid");
    }

    [Theory]
    [InlineData("14 mm", true)]
    [InlineData("17 mm", true)]
    [InlineData("13.9 mm", false)]
    [InlineData("17.1 mm", false)]
    public void Hinge_is_refused_outside_the_overlays_of_its_sheet(string reach, bool takes)
    {
        var bench = Bench(reach: reach);
        if (takes)
        {
            Assert.Single(bench.Doors("{ kind: slab, hinge: quiet hinge }"));
            return;
        }
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors("{ kind: slab, hinge: quiet hinge }"));
        Assert.Contains("cannot be set to that", fault.Error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Butt_hinges_are_refused_on_a_door_in_front_of_its_opening()
    {
        var fault = Assert.Throws<CannotBuildException>(() => Bench().Doors("{ kind: slab, hinge: butt }"));
        Assert.Contains("butt hinges", fault.Error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Recipe_chooses_for_the_whole_piece_and_a_drawer_for_itself()
    {
        var piece = Built.From(
            """
            piece: Pottery tool chest
            units: mm
            materials: { body: birch plywood 18, boxes: birch plywood 12, bottoms: birch plywood 6.5 }
            hardware: { slides: slim slide, shelf pins: brass pin }
            carcases:
              chest:
                size: [900, 700, 450]
                front:
                  columns:
                    - rows: [ drawer, { drawer: { slides: under } } ]
                    - { open, shelves: { adjustable: 1 } }
            """,
            Shop
        );
        Assert.Contains(piece.Hardware, h => h.Kind == "slim ball slide 400 mm");
        Assert.Contains(piece.Hardware, h => h.Kind.StartsWith("under slide", StringComparison.Ordinal));
        Assert.Contains(piece.Hardware, h => h.Kind == "brass pin");
        var pins = piece.Parts.SelectMany(p => p.Cuts.OfType<RoundCut>()).Where(c => c.Kind == CutKind.ShelfPinHole);
        Assert.All(pins, pin => Assert.Equal(Exact("6 mm"), pin.Diameter));
    }

    [Fact]
    public void Name_the_shop_file_does_not_have_is_told_with_the_nearest_it_has()
    {
        var tried = Built.Try(
            """
            piece: Box
            units: mm
            materials: { body: birch plywood 18 }
            carcases: { box: { size: [600, 300, 400], front: { drawer: { slides: slim slid } } } }
            """,
            Shop
        );
        var error = Assert.Single(tried.Errors);
        Assert.Equal("There is no slide called 'slim slid'.", error.Message);
        Assert.Equal("slim slide", error.Suggestion);
    }
}
