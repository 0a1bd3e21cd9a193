using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Panels with bands on their edges.</summary>
public sealed class EdgingTests
{
    private static readonly Material Board = Stuff("fronts", MaterialKind.Sheet, "18 mm");
    private static readonly Material Band = Stuff("edging", MaterialKind.Solid, "2 mm");

    [Fact]
    public void Slab_is_cut_smaller_by_its_bands_and_finishes_to_the_size_asked_for()
    {
        var bench = new FrontBench(LengthUnit.Millimetre, "404 mm", "604 mm", materials: [Board, Band]);
        var front = Assert.Single(bench.Doors("slab"));
        var slab = bench["upper door slab"];
        Assert.Equal(Exact("596 mm"), slab.Length.Length);
        Assert.Equal(Exact("396 mm"), slab.Width.Length);
        Assert.Equal(Exact("600 mm"), slab.FinishedLength!.Length);
        Assert.Equal(Exact("400 mm"), slab.FinishedWidth!.Length);
        Assert.Equal("cut width = door width - edging - edging", Sums.Of(slab.Width));
        var door = bench.Around(front);
        Assert.Equal((Exact("400 mm"), Exact("600 mm")), (door.Width, door.Height));
    }

    [Fact]
    public void Long_bands_cover_the_ends_of_the_short_ones()
    {
        var bench = new FrontBench(LengthUnit.Millimetre, "404 mm", "604 mm", materials: [Board, Band]);
        var parts = bench.PartsOf(Assert.Single(bench.Doors("slab"))).ToList();
        Assert.Equal(Exact("600 mm"), bench["upper door slab left edging"].Length.Length);
        Assert.Equal(Exact("396 mm"), bench["upper door slab top edging"].Length.Length);
        Assert.Equal(Exact("18 mm"), bench["upper door slab top edging"].Width.Length);
        Assert.Equal(Exact("2 mm"), bench["upper door slab top edging"].Thickness.Length);
        Assert.Empty(SquareFit.Overlaps(parts));
        Assert.Empty(SquareFit.Strangers(parts, bench.Piece.Joints));
        Assert.Equal(4, bench.Piece.Joints.Count(j => j.Kind == JointKind.Edged));
        Assert.All(
            bench.Piece.Joints,
            joint => Assert.Equal(Length.Zero, SquareFit.Gap(Part(joint.Receives), Part(joint.Enters), joint.Into))
        );

        Building.PartDraft Part(string id) => bench.Piece.Parts.Single(p => p.Id == id);
    }

    [Fact]
    public void Panel_with_one_band_is_cut_smaller_on_that_side_only()
    {
        var bench = new FrontBench(LengthUnit.Millimetre, "400 mm", "600 mm", materials: [Board, Band]);
        var side = Edging.Panel(
            bench.Piece,
            bench.Site.Carcase,
            "shelf",
            Role.Shelf,
            Board,
            Lie.Of(Direction.Right, Direction.Up),
            Parameters.Figure.Given("length", Exact("400 mm"), new Parameters.TradeOrigin("test")),
            Parameters.Figure.Given("depth", Exact("300 mm"), new Parameters.TradeOrigin("test")),
            new(Length.Zero, Exact("20 mm"), Length.Zero),
            new Bands(Band, Direction.Front)
        );
        Assert.Equal(Exact("298 mm"), side.Panel.Width.Length);
        Assert.Equal(Exact("22 mm"), side.Panel.Extent.Min.Y);
        Assert.Equal(Exact("320 mm"), side.Panel.Extent.Max.Y);
        Assert.Null(side.Panel.FinishedLength);
        Assert.Equal(Exact("20 mm"), side.Extent.Min.Y);
        Assert.Equal(Exact("400 mm"), Assert.Single(side.Bands).Length.Length);
    }

    [Fact]
    public void Slab_says_no_to_bands_where_the_recipe_does()
    {
        var bench = new FrontBench(LengthUnit.Millimetre, "404 mm", "604 mm", materials: [Board, Band]);
        var front = Assert.Single(bench.Doors("{ kind: slab, edging: none }"));
        Assert.Single(bench.PartsOf(front));
    }
}
