using Dryfit.Casework.Building;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Hinges and what they bore.</summary>
public sealed class HingeTests
{
    /// <summary>
    /// Up to 40 in 2 hinges, 60 in 3, 80 in 4, 100 in 5; up to 15 lb 2, 30 lb 3, 45 lb 4, 60 lb 5 (hinge maker's quick
    /// reference). The board weighs what makes a door of 14 in by 40 in a pound under and over.
    /// </summary>
    [Theory]
    [InlineData("40\"", 100, 2)]
    [InlineData("40 1/4\"", 100, 3)]
    [InlineData("60\"", 100, 3)]
    [InlineData("61\"", 100, 4)]
    [InlineData("80\"", 100, 4)]
    [InlineData("81\"", 100, 5)]
    [InlineData("100\"", 100, 5)]
    [InlineData("40\"", 980, 2)] // 14 x 40 x 3/4 in at 980 kg/m3: 14.9 lb
    [InlineData("40\"", 990, 3)] // 15.02 lb
    [InlineData("40\"", 1970, 3)] // 29.9 lb
    [InlineData("40\"", 1990, 4)] // 30.2 lb
    [InlineData("40\"", 2970, 5)] // 45.1 lb
    public void Hinges_are_counted_by_height_and_weight(string height, double density, int count)
    {
        var board = Stuff("fronts", MaterialKind.Sheet, "3/4\"", density);
        var bench = new FrontBench(LengthUnit.Inch, "14\"", height, materials: board);
        bench.Doors("{ kind: slab, gap: 0 }");
        Assert.Equal(count, bench.Piece.Hardware.Sum(h => h.Count));
    }

    /// <summary>One more for doors wider than 600 mm (hinge maker's notes on the number of hinges).</summary>
    [Theory]
    [InlineData("600 mm", 2)]
    [InlineData("601 mm", 3)]
    public void Wide_doors_get_one_more(string width, int count)
    {
        var bench = new FrontBench(LengthUnit.Millimetre, width, "500 mm");
        bench.Doors("{ kind: slab, gap: 0 }");
        Assert.Equal(count, bench.Piece.Hardware.Count);
    }

    [Fact]
    public void Door_beyond_the_chart_asks_for_the_maker_of_the_hinges()
    {
        var board = Stuff("fronts", MaterialKind.Sheet, "3/4\"", 700);
        var bench = new FrontBench(LengthUnit.Inch, "14\"", "101\"", materials: board);
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors("slab"));
        Assert.Contains("hinges", fault.Error.Expected!, StringComparison.Ordinal);
        bench = new FrontBench(LengthUnit.Inch, "14\"", "101\"", materials: board);
        bench.Doors("{ kind: slab, hinges: 6 }");
        Assert.Equal(6, bench.Piece.Hardware.Count);
    }

    /// <summary>
    /// Cup 35 mm wide and 13 mm deep, its middle 22.5 mm from the edge; two 8 mm holes 45 mm apart, 9.5 mm further in
    /// (hinge maker's quick reference).
    /// </summary>
    [Fact]
    public void Cups_are_bored_by_the_hinge_makers_reference()
    {
        var bench = new FrontBench(LengthUnit.Millimetre, "400 mm", "600 mm", hang: Hang.Overlay, reach: "16 mm");
        var front = Assert.Single(bench.Doors("slab"));
        var slab = bench["upper door slab"];
        var door = bench.Around(front);
        var cups = Bores(slab, CutKind.HingeCup);
        Assert.Equal(2, cups.Count);
        Assert.All(cups, cup => Assert.Equal((Exact("35 mm"), Exact("13 mm")), (cup.Cut.Diameter, cup.Cut.Depth)));
        Assert.All(cups, cup => Assert.Equal(Exact("22.5 mm"), cup.At.X - door.Min.X));
        Assert.All(cups, cup => Assert.Equal(door.Max.Y, cup.At.Y));
        Assert.Equal([Exact("96 mm"), Exact("632 mm") - Exact("96 mm")], cups.Select(c => c.At.Z - door.Min.Z));
        var screws = Bores(slab, CutKind.Bore);
        Assert.Equal(4, screws.Count);
        Assert.All(screws, screw => Assert.Equal(Exact("32 mm"), screw.At.X - door.Min.X));
        Assert.Equal(Exact("45 mm"), screws[1].At.Z - screws[0].At.Z);
        Assert.Equal(Exact("8 mm"), screws[0].Cut.Diameter);
    }

    /// <summary>
    /// Plate holes 5 mm at 32 mm, 37 mm from the front edge; for an inset door its thickness more (published notes on
    /// 32 mm practice).
    /// </summary>
    [Theory]
    [InlineData(Hang.Overlay, "37 mm")]
    [InlineData(Hang.Inset, "56 mm")]
    public void Plate_holes_stand_on_the_row_at_the_height_of_their_cup(Hang hang, string setback)
    {
        var bench = new FrontBench(LengthUnit.Millimetre, "400 mm", "600 mm", hang: hang, reach: "16 mm");
        bench.Doors("slab, hinged right");
        var side = bench["upper right side"];
        var holes = Bores(side, CutKind.Bore);
        var cups = Bores(bench["upper door slab"], CutKind.HingeCup);
        Assert.Equal(4, holes.Count);
        Assert.All(holes, hole => Assert.Equal(Exact(setback), hole.At.Y));
        Assert.All(holes, hole => Assert.Equal(side.Extent.Min.X, hole.At.X));
        Assert.Equal(Exact("32 mm"), holes[1].At.Z - holes[0].At.Z);
        Assert.Equal(cups[0].At.Z, (holes[0].At.Z + holes[1].At.Z) / 2);
        Assert.Equal(Exact("5 mm"), holes[0].Cut.Diameter);
        Assert.All(bench.Piece.Hardware, h => Assert.Equal(["upper/door/slab", "upper/right-side"], h.Ties));
    }

    [Fact]
    public void Inset_door_in_a_face_frame_hangs_on_butt_hinges_and_bores_nothing()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", faceFrame: true);
        bench.Doors("framed");
        Assert.Equal(["butt hinge", "butt hinge"], bench.Piece.Hardware.Select(h => h.Kind));
        Assert.All(
            bench.Piece.Hardware,
            h => Assert.Equal(["upper/door/left-stile", "upper/left-frame-stile"], h.Ties)
        );
        Assert.DoesNotContain(bench.Piece.Parts.SelectMany(p => p.Cuts), c => c is RoundCut);
    }

    [Fact]
    public void Side_is_bored_for_the_door_as_reckoned_and_the_door_as_it_is()
    {
        var bench = new FrontBench(
            LengthUnit.Millimetre,
            "400 mm",
            "600 mm",
            hang: Hang.Overlay,
            reach: "16 mm",
            asCut: "upper door: { height: 600 }"
        );
        var door = bench.Around(Assert.Single(bench.Doors("slab")));
        var cups = Bores(bench["upper door slab"], CutKind.HingeCup);
        var holes = Bores(bench["upper left side"], CutKind.Bore);
        Assert.Equal(Exact("96 mm"), door.Max.Z - cups[1].At.Z);
        Assert.Equal(Exact("616 mm") - Exact("96 mm"), (holes[2].At.Z + holes[3].At.Z) / 2);
    }

    [Fact]
    public void Door_too_thin_for_its_cups_is_refused()
    {
        var bench = new FrontBench(
            LengthUnit.Millimetre,
            "400 mm",
            "600 mm",
            materials: Stuff("fronts", MaterialKind.Sheet, "12 mm")
        );
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors("slab"));
        Assert.Contains("come through", fault.Error.Message, StringComparison.Ordinal);
    }

    private static List<(RoundCut Cut, Point At)> Bores(PartDraft part, CutKind kind) =>
        [
            .. part
                .Cuts.OfType<RoundCut>()
                .Where(c => c.Kind == kind)
                .Select(c => (c, part.Place.ToPiece(c.From)))
                .OrderBy(c => c.Item2.Z),
        ];
}
