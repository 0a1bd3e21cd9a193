using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Boards;

/// <summary>
/// The cuts a loose board has of its own, judged by what is left of a board of 400 x 100 x 20 on edge, facing front: 800,000
/// cubic millimetres.
/// </summary>
public sealed class BoardCutTests
{
    private const double Whole = 400 * 100 * 20;

    [Theory]
    // 400 long, 6 wide, 8 deep.
    [InlineData("groove: { in: front, from: bottom 10, wide: 6, deep: 8 }", 400 * 6 * 8)]
    [InlineData("groove: { in: front, from: bottom 10, wide: 6, deep: 8, stopped: [left 50, right 30] }", 320 * 6 * 8)]
    [InlineData("groove: { in: bottom, from: back 5, wide: 6, deep: 8 }", 400 * 6 * 8)]
    // Across the width of 100.
    [InlineData("dado: { in: back, from: left 120, wide: 18, deep: 6 }", 100 * 18 * 6)]
    [InlineData("dado: { in: back, from: left 120, wide: 18, deep: 6, stopped: top 15 }", 85 * 18 * 6)]
    // Through the thickness of 20, at the corner and within.
    [InlineData("notch: { in: bottom, from: left 0, wide: 30, deep: 40 }", 30 * 40 * 20)]
    [InlineData("notch: { in: left, from: top 25, wide: 50, deep: 40 }", 50 * 40 * 20)]
    [InlineData("rabbet: { in: back, at: bottom, wide: 10, deep: 8 }", 400 * 10 * 8)]
    [InlineData("rabbet: { in: back, at: bottom, wide: 10, deep: 8, stopped: left 100 }", 300 * 10 * 8)]
    // Half of what is square.
    [InlineData("bevel: { in: front, at: top, wide: 12, deep: 6 }", 400 * 12 * 6 / 2.0)]
    [InlineData("bevel: { in: front, at: top, wide: 12, deep: 6, stopped: right 100 }", 300 * 12 * 6 / 2.0)]
    [InlineData("taper: { in: bottom, towards: right, over: 300, by: 40 }", 300 * 40 * 20 / 2.0)]
    [InlineData("taper: { in: bottom, towards: left, by: 40 }", 400 * 40 * 20 / 2.0)]
    [InlineData("outline: { from: [left, top], corners: [[0, 0], [80, 0], [0, 60]] }", 80 * 60 * 20 / 2.0)]
    [InlineData("outline: { from: [right, bottom], corners: [[10, 10], [60, 10], [60, 60], [10, 60]] }", 50 * 50 * 20)]
    public void Cut_takes_away_just_what_it_says(string cut, double gone) =>
        Assert.Equal(Whole - gone, Left(cut), 1e-3);

    [Fact]
    public void Arch_is_a_part_of_a_circle()
    {
        // Chord c = 300, rise h = 50: r = c^2 / 8h + h / 2 = 250; angle 2 asin(c / 2r) = 2 asin(0.6);
        // area r^2 (angle - sin angle) / 2 = 62500 x (1.2870022 - 0.96) / 2 = 10218.8 (formulas for the circular segment).
        var angle = 2 * Math.Asin(0.6);
        var area = 250.0 * 250.0 * (angle - Math.Sin(angle)) / 2;

        // The solid's arc is of chords: less than a hundredth is missing.
        Assert.InRange(
            Whole - Left("arch: { in: bottom, from: left 40, to: right 60, rise: 50 }"),
            area * 20 * 0.99,
            area * 20
        );
    }

    [Fact]
    public void Row_of_bores_goes_through_where_no_depth_is_said()
    {
        var piece = Build("bore: { in: front, at: [left 50, bottom 30], across: 8, times: 5, every: 32 }");

        var holes = piece.Part("test board").Cuts.OfType<RoundCut>().ToList();
        Assert.Equal(5, holes.Count);
        // Board coordinates: x along, y across from below.
        Assert.Equal([50, 82, 114, 146, 178], holes.Select(h => (int)h.From.X.ToMillimetres()));
        Assert.All(holes, h => Assert.Equal(30, h.From.Y.ToMillimetres()));
        Assert.All(holes, h => Assert.Equal(20, h.Depth.ToMillimetres()));
    }

    [Fact]
    public void Row_of_bores_goes_the_way_it_is_told()
    {
        var holes = Build(
                "bore: { in: back, at: [right 50, bottom 10], across: 5, deep: 12, times: 3, every: 32, towards: top }"
            )
            .Part("test board")
            .Cuts.OfType<RoundCut>()
            .ToList();

        Assert.Equal(
            [(350.0, 10.0), (350, 42), (350, 74)],
            holes.Select(h => (h.From.X.ToMillimetres(), h.From.Y.ToMillimetres()))
        );
    }

    private static double Left(string cut)
    {
        var piece = Build(cut);
        piece.MustBeSound();
        return piece.VolumeMm3(piece.Part("test board"));
    }

    private static Piece Build(string cut) =>
        Built.From(
            $$"""
            piece: Board
            units: mm
            materials: { body: pine 20 }
            boards:
              test board:
                lies: on edge
                length: 400
                width: 100
                left: at 0
                front: at 0
                bottom: at 0
                cuts:
                  - {{cut}}
            """
        );
}
