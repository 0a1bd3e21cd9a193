using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// Tops over a corner carcase of 900 along both walls, 560 deep beside the run, so that 340 are cut off each wall: its own,
/// and worktops that follow the corner.
/// </summary>
public sealed class DiagonalTopTests
{
    private const string Stuff = "frame: ash 20\ntops: european beech 40";

    private static string Run(string corner, string tops) =>
        Metric(
            $$"""
            run: { size: [600, 720, 560], face frame: { material: frame } }
            corner: { {{(
                corner == "right" ? "right" : "left"
            )}} of: run, size: [900, 720, 900], face frame: { material: frame }, diagonal: { corner: {{corner}}, beside: 560 } }
            return: { returns from: corner, size: [500, 720, 560], face frame: { material: frame } }
            """,
            $"worktops:\n{tops}\n",
            Stuff
        );

    [Fact]
    public void Own_top_has_its_overhang_square_to_the_diagonal()
    {
        var piece = Built.From(
            Metric(
                "corner: { size: [900, 760, 900], face frame: { material: frame }, diagonal: { beside: 560 }, top: { overhang: { front: 20, left: 10 } } }",
                materials: Stuff
            )
        );
        piece.MustBeSound();
        // The sides are as much shorter as the top is thick.
        Assert.Equal("720", piece.Write(piece.Part("corner left side").Length.Length));
        var top = piece.Part("corner top");
        piece.Measures("corner top", "910 x 900 x 40");
        piece.StandsAt("corner top", "-10, 0, 720");
        // Along a wall 20 square to 45 degrees are 20 roots of two; the end adds its 10.
        var leg = 340 + 10 - (20 * Math.Sqrt(2));
        Assert.Equal(((910 * 900) - (leg * leg / 2)) * 40, piece.VolumeMm3(top), 100.0);
        // Its foremost corner along the diagonal lies 20 before the frame, which is where x + y = 340.
        var foremost = top.Solid.Vertices.Select(v => top.Placed.Frame.ToWorld(v)).Min(p => p.X + p.Y);
        Assert.Equal(340 - (20 * Math.Sqrt(2)), piece.Grid.ToMm(foremost), 0.003);
    }

    [Theory]
    [InlineData("right")]
    [InlineData("left")]
    public void Worktop_runs_from_the_one_front_to_the_other(string corner)
    {
        var piece = Built.From(
            Run(
                corner,
                """
                  run top: { over: [run], overhang: { front: 20 } }
                  corner top: { over: [corner], overhang: 20 }
                  return top: { over: [return], overhang: { front: 20 } }
                """
            )
        );
        piece.MustBeSound();
        piece.Measures("run top top", "600 x 580 x 40");
        piece.Measures("corner top top", "900 x 900 x 40");
        // The return's begins where the corner's ends.
        piece.Measures("return top top", "500 x 580 x 40");
        // The tops of both runs stand 20 before their carcases: 320 of 340 are cut off each wall.
        var cut = piece.Part("corner top top").Cuts.OfType<OutlineCut>().First(c => c.Kind == CutKind.Mitre);
        Assert.Equal(320 * 320 / 2.0, CutOutlines.AreaMm2(cut.Outline), 1e-6);
        // Two joints of three bolts each (580 across).
        Assert.Equal(2, piece.Joints.Count(j => j.Kind == JointKind.Bolted));
        Assert.Equal(6, piece.Hardware.Where(h => h.Kind == "worktop bolt").Sum(h => h.Count));
    }

    [Theory]
    [InlineData(
        "  long: { over: [run, corner] }",
        "The corner has its front across the corner: its worktop is a board by itself."
    )]
    [InlineData(
        "  one: { over: [corner], joints: [300] }",
        "The worktop over a diagonal corner is one whole board: it has no joints."
    )]
    [InlineData(
        "  one: { over: [corner], edge: round 5 }",
        "The edge of a top across a corner takes no shape: shapes run along square edges."
    )]
    [InlineData(
        "  one: { over: [corner], overhang: { front: 20, ends: 10 } }",
        "The worktop over a diagonal corner has no overhang at its ends: there the worktops of the runs begin."
    )]
    [InlineData("  one: { over: [corner], overhang: 340 }", "The worktop reaches over all of the diagonal.")]
    [InlineData(
        "  one: { over: [corner] }\n  two: { over: [return], corner: mitre }",
        "The worktop over the corner ends square before the return."
    )]
    public void What_cannot_be_is_told(string tops, string message) =>
        Assert.EndsWith(message, Built.ErrorOf(Run("right", tops)), StringComparison.Ordinal);
}
