using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Heads;

/// <summary>
/// Strips of pine 18 on a bookcase 940 wide and 1400 high. The left wall comes in by 10 over 2000 of height, the right one as
/// well; the ceiling falls by 10 over 1000 from left to right. At 1400 the walls stand at 7 and 993, so that the bookcase
/// begins at 30 and ends at 970. The shop laps 12.
/// </summary>
public sealed class WallTrimTests
{
    private const string Walls =
        "room:\n  alcove:\n    widths: [[0, 1000], [2000, 980]]\n    left wall: [[0, 0], [2000, 10]]\n";

    private const string Room = Walls + "    ceiling: [[0, 1500], [1000, 1490]]\n";

    [Fact]
    public void A_strip_at_a_wall_is_as_wide_as_its_widest_gap_and_a_lap_and_sawn_to_the_wall()
    {
        var piece = Build("left: { hides: [case, left wall] }\n  right: { hides: [right wall, case] }");
        piece.MustBeSound();
        // 30 at the floor, 23 at the top.
        piece.Measures("left", "1400 x 42 x 18");
        piece.StandsAt("left", "0, -18, 0");
        piece.Measures("right", "1400 x 42 x 18");
        piece.StandsAt("right", "958, -18, 0");
        // A wedge comes off: nothing at the floor, 7 at the top.
        foreach (var name in (string[])["left", "right"])
            Assert.Equal(((42 * 1400) - (7 * 1400 / 2)) * 18.0, piece.VolumeMm3(piece.Part(name)), 1.0);
        var cover = Assert.Single(piece.Covers, cover => cover.Strip == piece.Part("left").Id);
        Assert.Equal(Direction.Left, cover.Towards);
        Assert.Equal("alcove left wall", cover.Wall);
        Assert.Equal([piece.Part("case face frame left stile").Id], cover.One);
    }

    [Fact]
    public void A_strip_under_the_ceiling_is_sawn_to_it()
    {
        var piece = Build("head: { hides: [case, ceiling] }");
        piece.MustBeSound();
        // At 30 the ceiling hangs at 1499.7: 99.7 over the case, 100 as it is marked.
        piece.Measures("head", "940 x 112 x 18");
        piece.StandsAt("head", "30, -18, 1388");
        // In the middle, at 500, the ceiling hangs at 1495.
        Assert.Equal(940 * (1495 - 1388) * 18.0, piece.VolumeMm3(piece.Part("head")), 1.0);
    }

    [Fact]
    public void Strips_at_the_walls_stand_under_the_one_that_runs_from_wall_to_wall()
    {
        var piece = Build(
            "left: { hides: [case, left wall] }\n  right: { hides: [case, right wall] }\n  head: { hides: [case, ceiling] }"
        );
        piece.MustBeSound();
        // At 1388 the walls stand at 6.94 and 993.06: 986.12 between them, up to a whole mark.
        piece.Measures("head", "987 x 112 x 18");
        piece.Measures("left", "1388 x 42 x 18");
        Assert.Equal(((42 * 1388) - (6.94 * 1388 / 2)) * 18.0, piece.VolumeMm3(piece.Part("left")), 1.0);
        Assert.Single(
            piece.Joints,
            joint =>
                joint is { Kind: JointKind.Resting }
                && joint.Enters == piece.Part("left").Id
                && joint.Receives == piece.Part("head").Id
        );
    }

    [Fact]
    public void Its_own_edge_is_shaped_and_not_the_one_at_the_wall()
    {
        var square = Build("left: { hides: [case, left wall] }");
        var shaped = Build("left: { hides: [case, left wall], edge: chamfer 4 }");
        Assert.Equal(
            4 * 4 / 2 * 1400,
            square.VolumeMm3(square.Part("left")) - shaped.VolumeMm3(shaped.Part("left")),
            1.0
        );
    }

    [Theory]
    [InlineData(
        "left: { hides: [case, left wall], width: 30 }",
        "wide, and its gap is up to 1 3/16 - 0.4/64 in (30 mm)."
    )]
    [InlineData("left: { hides: [case, left wal] }", "There is no carcase or wall called 'left wal'.")]
    [InlineData(
        "left: { hides: [case, left wall] }\n  head: { hides: [case, ceiling], edge: round 4 }",
        "The left would end against the shaped edge of the head, and leave a hole there."
    )]
    public void What_leaves_a_gap_is_told(string trim, string message) =>
        Assert.EndsWith(message, Built.ErrorOf(Recipe(trim, Room, "between: alcove")), StringComparison.Ordinal);

    [Theory]
    [InlineData("", Walls, "The case stands square in no space between walls: nothing was measured for a strip.")]
    [InlineData("between: alcove", Walls, "The ceiling of the alcove is missing.")]
    public void What_was_not_measured_is_told(string place, string room, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Recipe("head: { hides: [case, ceiling] }", room, place)),
            StringComparison.Ordinal
        );

    private static Piece Build(string trim) => Built.From(Recipe(trim, Room, "between: alcove"));

    private static string Recipe(string trim, string room, string place) =>
        Metric($"case: {{ size: [940, 1400, 300], face frame, {place} }}\n", $"{room}trim:\n  {trim}\n");
}
