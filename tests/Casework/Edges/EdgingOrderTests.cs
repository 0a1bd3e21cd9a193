using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Edges;

/// <summary>Bands of 2 round panels: which go on first, and what a shape makes of them.</summary>
public sealed class EdgingOrderTests
{
    private const string Sheets = "ply: birch plywood 18\nbands: oak 2\nlips: oak 10";

    private static readonly string Slab = Metric(
        "box: { size: [600, 720, 400], front: { doors: { kind: slab, material: ply, edging: bands } } }",
        materials: Sheets
    );

    [Fact]
    public void By_habit_the_long_bands_lap_over_those_on_the_ends()
    {
        var piece = Built.From(Slab);
        var slab = piece.Part("box door slab");
        Assert.Equal(slab.Length.Length + Mm(4), piece.Part("box door slab left edging").Length.Length);
        Assert.Equal(slab.Width.Length, piece.Part("box door slab top edging").Length.Length);
        piece.MustBeSound();
    }

    [Fact]
    public void A_shop_that_bands_long_edges_first_laps_the_ends_over_them()
    {
        var piece = Built.From(Slab, "units: mm\nedging:\n  first: long edges\n");
        var slab = piece.Part("box door slab");
        Assert.Equal(slab.Length.Length, piece.Part("box door slab left edging").Length.Length);
        Assert.Equal(slab.Width.Length + Mm(4), piece.Part("box door slab top edging").Length.Length);
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("ends")]
    [InlineData("long edges")]
    public void A_lipped_top_is_moulded_right_round_its_corners(string first)
    {
        string Top(string edge) =>
            Metric(
                $"box: {{ size: [600, 720, 400], top: {{ material: ply, edging: lips, overhang: 20{edge} }} }}",
                materials: Sheets
            );
        var shop = $"units: mm\nedging:\n  first: {first}\n";
        var (plain, piece) = (Built.From(Top(""), shop), Built.From(Top(", edge: chamfer 6"), shop));
        // 640 x 420 over all; lips of 10 in front and at both ends.
        piece.Measures("box top", "620 x 410 x 18");
        Assert.Equal(Mm(640), piece.Part("box top").FinishedLength!.Length);
        string[] parts = ["box top", "box top front edging", "box top left edging", "box top right edging"];
        var taken = parts.Sum(part => plain.VolumeMm3(plain.Part(part)) - piece.VolumeMm3(piece.Part(part)));
        // Prisms of 6 x 6 / 2 along front and ends, less the pyramids of 6 x 6 x 6 / 3 at the two corners.
        Assert.Equal((18.0 * 640) + (2 * 18.0 * 420) - (2 * 72), taken, 1e-3);
        piece.MustBeSound();
    }

    private static Measure.Length Mm(int mm) => Measure.Length.FromMillimetres(mm);
}
