using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// Chamfers along worktops of 40 over carcases 500 deep. A chamfer of c takes c x c / 2 along an edge; where two meet at an
/// outer corner they share c x c x c / 3, which is taken once.
/// </summary>
public sealed class WorktopEdgeTests
{
    private const string Run = "one: { size: [600, 700, 500] }\ntwo: { size: [800, 700, 500] }\n";

    private const string Corner = """
        one: { size: [800, 700, 500] }
        corner: { size: [1000, 700, 500], blind: { right: 580 } }
        return: { returns from: corner, gap: 60, size: [600, 700, 500] }

        """;

    [Fact]
    public void A_joint_between_two_lengths_keeps_the_shape_of_the_front()
    {
        var square = Piece(Run, "{ over: [one, two], joints: [650] }");
        var shaped = Piece(Run, "{ over: [one, two], joints: [650], edge: chamfer 10 }");
        shaped.MustBeSound();
        // Each along its own front and one end of 500; nothing at the joint.
        Assert.Equal((50 * (650 + 500)) - (1000 / 3.0), Less(square, shaped, "long length 1"), 1.0);
        Assert.Equal((50 * (750 + 500)) - (1000 / 3.0), Less(square, shaped, "long length 2"), 1.0);
    }

    [Fact]
    public void It_runs_where_it_is_asked_for()
    {
        var square = Piece(Run, "{ over: [one, two], joints: [650] }");
        var front = Piece(Run, "{ over: [one, two], joints: [650], edge: { chamfer: 10, along: front } }");
        var island = Piece(
            Run,
            "{ over: [one, two], joints: [650], edge: { chamfer: 10, along: all round, from: both faces } }"
        );
        Assert.Equal(50 * 650, Less(square, front, "long length 1"), 1.0);
        // Above and below: front, back and one end, with two corners.
        Assert.Equal(2 * ((50 * (650 + 650 + 500)) - (2000 / 3.0)), Less(square, island, "long length 1"), 1.0);
    }

    [Fact]
    public void A_butt_joint_in_a_corner_is_let_in_behind_the_shape_with_a_short_mitre()
    {
        var square = Piece(
            Corner,
            "{ over: [one, corner], overhang: { front: 20 } }",
            "{ over: [return], overhang: { front: 20, right: 15 } }"
        );
        var shaped = Piece(
            Corner,
            "{ over: [one, corner], overhang: { front: 20 }, edge: chamfer 12 }",
            "{ over: [return], overhang: { front: 20, right: 15 }, edge: chamfer 12 }"
        );
        shaped.MustBeSound();
        // The return reaches 12 further in than the 655 it has with square edges.
        shaped.Measures("short top", "667 x 520 x 40");
        // Up to the inner corner at 1800 - 520, and over the short mitre: each slice as long as it is far in.
        var main = (72 * 1280) + (12 * 12 * 12 / 6);
        // What is cut out for the return: 520 along the front, 508 behind the shape.
        var notch = (520 + 508) / 2 * 12 * 40;
        var end = (72 * 520) - (12 * 12 * 12 / 3);
        Assert.Equal(main + notch + end, Less(square, shaped, "long top"), 1.0);
        var longer = (12 * 520 * 40) - (12 * 12 / 2 * 40);
        var own = (72 * 655) + (12 * 12 * 12 / 6);
        Assert.Equal(own + end - longer, Less(square, shaped, "short top"), 1.0);
    }

    [Fact]
    public void At_the_left_it_is_the_mirror_image()
    {
        var mirrored = Corner
            .Replace("blind: { right", "blind: { left", StringComparison.Ordinal)
            .Replace("corner: { size", "corner: { left of: one, size", StringComparison.Ordinal)
            .Replace("gap: 60", "across: left, gap: 60", StringComparison.Ordinal);
        var (main, own) = ("{ over: [one, corner], edge: ogee 16 }", "{ over: [return], edge: ogee 16 }");
        var (right, left) = (Piece(Corner, main, own), Piece(mirrored, main, own));
        left.MustBeSound();
        foreach (var name in (string[])["long top", "short top"])
            Assert.Equal(right.VolumeMm3(right.Part(name)), left.VolumeMm3(left.Part(name)), 1.0);
    }

    [Fact]
    public void In_a_whole_mitre_the_shapes_meet_from_the_inner_corner()
    {
        var square = Piece(Corner, "{ over: [one, corner] }", "{ over: [return], corner: mitre }");
        var shaped = Piece(
            Corner,
            "{ over: [one, corner], edge: chamfer 12 }",
            "{ over: [return], corner: mitre, edge: chamfer 12 }"
        );
        shaped.MustBeSound();
        // 1800 less the 500 of the mitre, and the same little wedge; the left end is free, the right one in the corner.
        var end = (72 * 500) - (12 * 12 * 12 / 3);
        Assert.Equal((72 * 1300) + (12 * 12 * 12 / 6) + end, Less(square, shaped, "long top"), 1.0);
    }

    [Theory]
    [InlineData("edge: ogee 12", "", "The front edges of the long and the short are not shaped alike where they meet.")]
    [InlineData(
        "edge: ogee 12",
        "edge: ogee 10",
        "The front edges of the long and the short are not shaped alike where they meet."
    )]
    [InlineData(
        "edge: round 12",
        "edge: round 12, corner: mitre, overhang: { front: 10 }",
        "The long and the short are not equally deep: their mitre is not at 45 degrees, and their shaped edges do not meet in it."
    )]
    [InlineData(
        "edge: round 12",
        "edge: { round: 12, along: front and left }",
        "The left end of the short lies in a corner: no shape is seen there."
    )]
    [InlineData("edge: round 41", "edge: round 41", "The round 41 on the long top is deeper than the part is thick.")]
    public void What_cannot_meet_is_told(string main, string own, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Recipe(Corner, $"{{ over: [one, corner], {main} }}", $"{{ over: [return], {own} }}")),
            StringComparison.Ordinal
        );

    private static double Less(Piece square, Piece shaped, string part) =>
        square.VolumeMm3(square.Part(part)) - shaped.VolumeMm3(shaped.Part(part));

    private static Piece Piece(string carcases, string longOne, string? shortOne = null) =>
        Built.From(Recipe(carcases, longOne, shortOne));

    private static string Recipe(string carcases, string longOne, string? shortOne) =>
        Metric(
            carcases,
            $"worktops:\n  long: {longOne}\n" + (shortOne is null ? "" : $"  short: {shortOne}\n"),
            "tops: european beech 40"
        );
}
