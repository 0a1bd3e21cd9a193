using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Worktops over a run of carcases 500 deep and 700 high, of boards 40 thick.</summary>
public sealed class WorktopTests
{
    private const string Tops = "tops: european beech 40";

    private const string Run =
        "one: { size: [600, 700, 500] }\ntwo: { size: [800, 700, 500], front: { doors: slab pair } }\n";

    private const string Corner = """
        one: { size: [800, 700, 500] }
        corner: { size: [1000, 700, 500], blind: { right: 580 } }
        return: { returns from: corner, gap: 60, size: [600, 700, 500] }

        """;

    [Fact]
    public void Worktop_reaches_over_its_carcases_and_lies_on_them()
    {
        var piece = Piece(Run, "{ over: [two, one], overhang: { front: 20, ends: 10 } }");
        piece.MustBeSound();
        piece.Measures("long top", "1420 x 520 x 40");
        piece.StandsAt("long top", "-10, -20, 700");
        // Stretchers close the carcases under it, and hold it by screws.
        Assert.Equal(4, piece.Joints.Count(j => j is { Kind: JointKind.Screwed, Enters: "long/top" }));
        // Fronts keep the gap of a stack (3) from it instead of that of an edge (1.5): 700 less 3 and 1.5.
        piece.Measures("two left door slab", "695.5 x 397 x 18");
    }

    [Fact]
    public void Lengths_are_bolted_together_from_below()
    {
        var piece = Piece(Run, "{ over: [one, two], joints: [650] }");
        piece.MustBeSound();
        piece.Measures("long length 1", "650 x 500 x 40");
        piece.Measures("long length 2", "750 x 500 x 40");
        piece.StandsAt("long length 2", "650, 0, 700");
        Assert.Single(
            piece.Joints,
            j => j is { Kind: JointKind.Bolted, Receives: "long/length-1", Enters: "long/length-2" }
        );
        // 500 across takes three bolts: pockets of 25, channels of 10 over 65 to the joint, both 25 deep (half of 40 and 5).
        Assert.Equal(3, Assert.Single(piece.Hardware, h => h.Kind == "worktop bolt").Count);
        // The channel and the round pocket share a half circle of the pocket and what is 10 wide of it.
        foreach (var (name, length) in (ReadOnlySpan<(string, int)>)[("long length 1", 650), ("long length 2", 750)])
        {
            var gone = (length * 500 * 40) - piece.VolumeMm3(piece.Part(name));
            var channel = 65 * 10;
            var pocket = Math.PI * 12.5 * 12.5;
            // Of the pocket the channel takes the strip up to its middle: a piece of circle, 10 wide.
            var strip = (12.5 * 12.5 * Math.Asin(5 / 12.5)) + (5 * Math.Sqrt((12.5 * 12.5) - 25));
            var expected = 3 * 25 * (channel + pocket - strip);
            Assert.Equal(expected, gone, expected * 0.01); // the pocket is cut as a polygon
        }
    }

    [Fact]
    public void Cut_out_lies_in_the_middle_of_its_carcase_with_round_corners()
    {
        var piece = Piece(
            Run,
            "{ over: [one, two], cut outs: { sink: { over: two, size: [560, 400], from front: 60, corners: 20 } } }"
        );
        piece.MustBeSound();
        // A rectangle less four corners, each a square of 20 less a quarter of a circle.
        var hole = (560 * 400) - ((4 - Math.PI) * 20 * 20);
        var left = (1400.0 * 500 * 40) - (hole * 40);
        Assert.Equal(left, piece.VolumeMm3(piece.Part("long top")), 0.0005 * left);
        var cut = Assert.IsType<OutlineCut>(Assert.Single(piece.Part("long top").Cuts, c => c.Kind == CutKind.CutOut));
        // Two begins at 600 and is 800 wide: 600 + (800 - 560) / 2.
        Assert.Equal("720", piece.Write(cut.Outline.Select(c => c.A).Min()));
        Assert.Equal("60", piece.Write(cut.Outline.Select(c => c.B).Min()));
    }

    [Fact]
    public void Return_butts_against_the_worktop_over_the_corner()
    {
        var piece = Piece(
            Corner,
            "{ over: [one, corner], overhang: { front: 20 } }",
            "{ over: [return], overhang: { front: 20, right: 15 } }"
        );
        piece.MustBeSound();
        piece.Measures("long top", "1800 x 520 x 40");
        // From the front edge of the long one: the gap of 60 less its overhang of 20, the return's 600, and 15 over its end.
        piece.Measures("short top", "655 x 520 x 40");
        Assert.Single(piece.Joints, j => j is { Kind: JointKind.Bolted, Receives: "long/top", Enters: "short/top" });
    }

    [Fact]
    public void Mitre_runs_from_the_inner_to_the_outer_corner()
    {
        var piece = Piece(
            Corner,
            "{ over: [one, corner], overhang: { front: 20 } }",
            "{ over: [return], corner: mitre, overhang: { front: 30 } }"
        );
        piece.MustBeSound();
        // On to the wall behind the corner: 500 and the gap of 60 before the return's own 600.
        piece.Measures("short top", "1160 x 530 x 40");
        // Each loses a triangle: as long as the other is wide, across its own width; and what the bolts take.
        foreach (
            var (name, length, width, run) in (ReadOnlySpan<(string, int, int, int)>)
                [("long top", 1800, 520, 530), ("short top", 1160, 530, 520)]
        )
        {
            var mitred = ((length * width) - (run * width / 2)) * 40;
            Assert.InRange(piece.VolumeMm3(piece.Part(name)), mitred - 120_000, mitred - 60_000);
        }
        Assert.Single(piece.Joints, j => j is { Kind: JointKind.Mitre, Receives: "long/top", Enters: "short/top" });
    }

    [Fact]
    public void Mitre_at_the_left_is_the_mirror_image()
    {
        var right = Piece(Corner, "{ over: [one, corner] }", "{ over: [return], corner: mitre }");
        var left = Piece(
            Corner
                .Replace("blind: { right", "blind: { left", StringComparison.Ordinal)
                .Replace("corner: { size", "corner: { left of: one, size", StringComparison.Ordinal)
                .Replace("gap: 60", "across: left, gap: 60", StringComparison.Ordinal),
            "{ over: [one, corner] }",
            "{ over: [return], corner: mitre }"
        );
        left.MustBeSound();
        foreach (var name in (string[])["long top", "short top"])
            Assert.Equal(right.VolumeMm3(right.Part(name)), left.VolumeMm3(left.Part(name)), 1.0);
    }

    [Theory]
    [InlineData(
        "{ over: [one, two], joints: [1500] }",
        "The joints of the worktop do not lie one after the other within its length."
    )]
    [InlineData(
        "{ over: [one, two], joints: [600, 500] }",
        "The joints of the worktop do not lie one after the other within its length."
    )]
    [InlineData(
        "{ over: [one], cut outs: { hob: { over: two, size: [300, 300] } } }",
        "The worktop does not lie on the two."
    )]
    [InlineData("{ over: [one], cut outs: { hob: { size: [300, 300] } } }", "Where the hob cut-out lies is missing.")]
    [InlineData(
        "{ over: [one], cut outs: { hob: { over: one, from left: 9, size: [300, 300] } } }",
        "The hob cut-out lies over a carcase or so far from the left."
    )]
    [InlineData(
        "{ over: [one], cut outs: { hob: { over: one, size: [700, 300] } } }",
        "The hob cut-out does not lie within one length of the worktop."
    )]
    [InlineData(
        "{ over: [one, two], joints: [300], cut outs: { hob: { over: one, size: [300, 300] } } }",
        "The hob cut-out does not lie within one length of the worktop."
    )]
    [InlineData(
        "{ over: [one], cut outs: { hob: { over: one, size: [300, 300], corners: 200 } } }",
        "The corners of the hob cut-out are rounder than it is wide."
    )]
    public void What_cannot_be_is_told(string worktop, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric(Run, $"worktops:\n  long: {worktop}\n", Tops)),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(
        "one: { size: [600, 700, 500] }\ntwo: { size: [800, 720, 500] }\n",
        "The two is not as high as the one."
    )]
    [InlineData(
        "one: { size: [600, 700, 500] }\ntwo: { size: [800, 700, 500], turned: { left: 30 } }\n",
        "The two stands at an angle to the one: one worktop does not lie on both."
    )]
    [InlineData(
        "one: { size: [600, 700, 500], top: }\ntwo: { size: [800, 700, 500] }\n",
        "The one has a top of its own and lies under a worktop."
    )]
    public void Carcases_that_take_no_worktop_are_told(string carcases, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric(carcases, "worktops:\n  long: { over: [one, two] }\n", Tops)),
            StringComparison.Ordinal
        );

    private static Piece Piece(string carcases, string longOne, string? shortOne = null) =>
        Built.From(
            Metric(
                carcases,
                $"worktops:\n  long: {longOne}\n" + (shortOne is null ? "" : $"  short: {shortOne}\n"),
                Tops
            )
        );
}
