using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>The open end of a run, 300 wide, 720 high and 400 deep, of boards of 18 with a back of 6.5.</summary>
public sealed class CantedTests
{
    [Theory]
    [InlineData("right", "left side", "0, 0, 0")]
    [InlineData("left", "right side", "282, 0, 0")]
    public void Boards_are_carried_by_one_side_and_the_back_and_lose_their_corner(
        string end,
        string side,
        string corner
    )
    {
        var piece = Built.From(
            Metric(
                $"end: {{ size: [300, 720, 400], joint: screws, canted: {{ end: {end}, across: 150, deep: 200 }}, shelves: {{ fixed: 2 }} }}"
            )
        );
        piece.MustBeSound();
        piece.StandsAt($"end {side}", corner);
        piece.Measures($"end {side}", "720 x 393.5 x 18");
        piece.Measures("end back", "720 x 300 x 6.5");
        foreach (var board in (string[])["bottom", "top panel", "fixed shelf 1", "fixed shelf 2"])
        {
            piece.Measures($"end {board}", "282 x 393.5 x 18");
            // A triangle of 150 by 200 is gone.
            piece.Holds($"end {board}", ((282 * 393.5) - (150 * 200 / 2)) * 18);
        }
        // Two shelves share the 684 between bottom and top: 648 in three spaces of 216.
        Assert.Equal("234", piece.Write(piece.Part("end fixed shelf 1").Extent.Min.Z));
    }

    [Fact]
    public void It_ends_a_run_and_is_screwed_to_it()
    {
        var piece = Built.From(
            Metric(
                """
                run: { size: [600, 720, 400], front: { doors: slab } }
                end: { right of: run, size: [300, 720, 400], canted: { across: 150 }, shelves: { fixed: 1 } }
                """
            )
        );
        piece.MustBeSound();
        Assert.Single(piece.Joints, j => j is { Receives: "run/right-side", Enters: "end/left-side" });
    }

    [Theory]
    [InlineData("joint: dado")]
    [InlineData("joint: dowels, turned: { right: 30 }")]
    [InlineData("back: { material: body }")]
    public void However_it_is_joined_it_is_sound(string more) =>
        Built
            .From(
                Metric($"end: {{ size: [300, 720, 400], canted: {{ across: 120 }}, shelves: {{ fixed: 2 }}, {more} }}")
            )
            .MustBeSound();

    [Theory]
    [InlineData("canted: { across: 280 }", "The cant takes all of the front or all of the end.")]
    [InlineData("canted: { across: 100, deep: 390 }", "The cant takes all of the front or all of the end.")]
    [InlineData("canted: { across: 100 }, front: { doors: slab }", "An end with a canted corner has no 'front'.")]
    [InlineData(
        "canted: { across: 100 }, back: none",
        "The back carries the shelves of an open end, and there is none."
    )]
    [InlineData(
        "canted: { across: 100 }, shelves: { adjustable: 2 }",
        "Loose shelves want a side at both ends, and the canted end has none."
    )]
    [InlineData(
        "canted: { across: 100 }, shelves: { fixed: 40 }",
        "There is no room for the shelves one above the other."
    )]
    public void What_cannot_be_is_told(string more, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"end: {{ size: [300, 720, 400], {more} }}")),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("right", "left", 150, 200)]
    [InlineData("left", "right", 150, 200)]
    [InlineData("right", "left", 120, 120)]
    public void Closed_cant_has_a_panel_and_a_side_behind_it(string end, string other, int across, int deep)
    {
        var piece = Built.From(
            Metric(
                $"end: {{ size: [300, 720, 400], joint: screws, canted: {{ end: {end}, across: {across}, deep: {deep}, closed: yes }}, shelves: {{ fixed: 1 }} }}"
            )
        );
        piece.MustBeSound();
        piece.Measures($"end {other} side", "720 x 393.5 x 18");
        // The outside of the panel is the long side of the triangle; inside it reaches on to the front and to the end.
        var along = Math.Sqrt((across * across) + (deep * deep));
        var (front, rear) = (18.0 * across / deep, 18.0 * deep / across);
        var panel = piece.Part("end cant panel");
        Assert.Equal(along + front + rear, panel.Width.Length.ToMillimetres(), 0.004);
        Assert.Equal((along + ((front + rear) / 2)) * 18 * 720, piece.VolumeMm3(panel), 60.0);
        // Square to the cant the panel is 18 thick: along the end 18 x the long side / across.
        var behind = deep + (18 * along / across);
        var side = piece.Part($"end {end} side");
        Assert.Equal(393.5 - behind + rear, side.Width.Length.ToMillimetres(), 0.004);
        // All stays within the outside of the carcase.
        foreach (var part in piece.Parts)
        {
            var points = part.Solid.Vertices.Select(v => part.Placed.Frame.ToWorld(v)).ToList();
            Assert.InRange(piece.Grid.ToMm(points.Min(p => p.X)), -0.003, 300);
            Assert.InRange(piece.Grid.ToMm(points.Max(p => p.X)), 0, 300.003);
            Assert.InRange(piece.Grid.ToMm(points.Min(p => p.Y)), -0.003, 400);
        }
    }

    [Theory]
    [InlineData("joint: dado")]
    [InlineData("joint: dowels, turned: { right: 30 }")]
    [InlineData("joint: plugged screws, back: { material: body }")]
    public void Closed_cant_is_sound_however_it_is_joined(string more) =>
        Built
            .From(
                Metric(
                    $"end: {{ size: [320, 720, 400], canted: {{ across: 120, deep: 100, closed: yes }}, shelves: {{ fixed: 2 }}, {more} }}"
                )
            )
            .MustBeSound();

    [Fact]
    public void Closed_cant_leaves_a_side_behind_it() =>
        Assert.EndsWith(
            "The panel along the cant leaves no front, or no side behind it.",
            Built.ErrorOf(Metric("end: { size: [300, 720, 400], canted: { across: 240, closed: yes } }")),
            StringComparison.Ordinal
        );
}
