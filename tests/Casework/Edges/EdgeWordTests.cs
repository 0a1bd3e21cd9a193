using Dryfit.Casework.Tests.Kit;
using Dryfit.Solids;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Edges;

/// <summary>Shapes along the edges of a top of 640 x 420 x 18 and of shelves.</summary>
public sealed class EdgeWordTests
{
    private const double Whole = 640 * 420 * 18;

    private static Piece Top(string edge) =>
        Built.From(Metric($"box: {{ size: [600, 720, 400], top: {{ overhang: 20, edge: {edge} }} }}"));

    private static double TrueVolumeMm3(Piece piece, string part) =>
        piece.Grid.ToCubicMm(Round.Volume(piece.Part(part).Solid));

    [Theory]
    // Front and ends, less the corner that two chamfers share: 4 x 4 x 4 / 3, twice.
    [InlineData("chamfer 4", (8.0 * 640) + (2 * 8.0 * 420) - (2 * 64 / 3.0))]
    [InlineData("{ chamfer: 4, along: front }", 8.0 * 640)]
    [InlineData("{ chamfer: 4, down: 10, along: front }", 20.0 * 640)]
    [InlineData("{ chamfer: 4, along: front, from: both faces }", 2 * 8.0 * 640)]
    [InlineData("{ points: [[4, 0], [0, 4]], along: front }", 8.0 * 640)]
    // A rabbet of 3 x 6 and a quarter hollow of radius 6 behind it.
    [InlineData("{ points: [[9, 0], [3, 6, -6], [0, 6]], along: front }", ((3 * 6) + (Math.PI * 36 / 4)) * 640)]
    // The quarter round by its points is the round by its name.
    [InlineData("{ points: [[6, 0], [0, 6, 6]], along: front }", (36 - (Math.PI * 36 / 4)) * 640)]
    [InlineData("{ round: 6, along: front }", (36 - (Math.PI * 36 / 4)) * 640)]
    public void A_top_loses_what_its_shape_says(string edge, double taken)
    {
        var piece = Top(edge);
        Assert.Equal(Whole - taken, TrueVolumeMm3(piece, "box top"), 0.5);
        piece.MustBeSound();
    }

    [Fact]
    public void A_shelf_in_dados_stays_square_where_it_is_let_in()
    {
        var plain = Built.From(Metric("box: { size: [600, 720, 400], joint: dado, shelves: { fixed: 1 } }"));
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], joint: dado, shelves: { fixed: 1, edge: chamfer 4 } }")
        );
        // 600 - 2 x 18 between the sides.
        Assert.Equal(
            plain.VolumeMm3(plain.Part("box fixed shelf 1")) - (8.0 * 564),
            piece.VolumeMm3(piece.Part("box fixed shelf 1")),
            1e-3
        );
        piece.MustBeSound();
    }

    [Fact]
    public void A_lipping_takes_the_shape_and_a_thin_band_cannot()
    {
        const string Sheets = "ply: birch plywood 18\nlips: oak 8\nbands: oak 2";
        string Box(string band, string edge) =>
            Metric(
                $"box: {{ size: [600, 720, 400], material: ply, edging: {band}, shelves: {{ adjustable: 1, edge: {edge} }} }}",
                materials: Sheets
            );
        var piece = Built.From(Box("lips", "chamfer 5"));
        Assert.Equal(CutKind.Chamfer, Assert.Single(piece.Part("box adjustable shelf 1 front edging").Cuts).Kind);
        piece.MustBeSound();
        Assert.EndsWith(
            "The chamfer 5 on the box adjustable shelf 1 goes through its edging.",
            Built.ErrorOf(Box("bands", "chamfer 5")),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("chamfer 19", "The chamfer 19 on the box top is deeper than the part is thick.")]
    [InlineData("round a", "There is no name 'a'.")]
    [InlineData("ogre 6", "No edge is shaped as 'ogre'.")]
    [InlineData("ogee", "How large the ogee is is missing.")]
    [InlineData("{ along: front }", "The shape of the edge is missing.")]
    [InlineData("{ cove: 3, ogee: 4 }", "An edge cannot be both 'cove' and 'ogee'.")]
    [InlineData("{ points: [[6, 1], [0, 6]] }", "A shape goes from the face to the edge.")]
    [InlineData("{ points: [[6, 0], [0, 0]] }", "The shape takes nothing away.")]
    [InlineData("{ points: [[6, 0], [0, 6, 2]] }", "The points are further apart than twice the radius between them.")]
    [InlineData(
        // Down into a keyhole that is wider below than at its mouth, and back up.
        "{ points: [[4, 0], [4, 2], [8, 2], [8, 9], [2, 9], [2, 5], [0, 5]] }",
        "The shape is undercut: no cutter gets behind it, neither from the face nor from the edge."
    )]
    public void A_shape_that_cannot_be_run_is_refused(string edge, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"box: {{ size: [600, 720, 400], top: {{ overhang: 20, edge: {edge} }} }}")),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(
        "shelves: { fixed: 1, edge: { round: 3, along: all round } }",
        "Which edges get the shape is settled here."
    )]
    [InlineData("front edges: { round: 3, from: below }", "From which face the shape is run is settled here.")]
    [InlineData("head: {}", "What goes round the head is missing.")]
    [InlineData("stands on: { toe space: 90, arch: 20 }", "Nothing here takes 'arch'.")]
    [InlineData("stands on: { legs: 50, set: planted }", "Nothing here takes 'set'.")]
    [InlineData("stands on: { plinth: 90, edge: round 5 }", "Nothing here takes 'edge'.")]
    public void What_plays_no_part_is_refused(string said, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"box: {{ size: [600, 720, 400], {said} }}")),
            StringComparison.Ordinal
        );
}
