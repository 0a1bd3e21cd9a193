using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Boards;

/// <summary>What is said of a loose board that cannot be.</summary>
public sealed class BoardErrorTests
{
    [Theory]
    [InlineData("left: at 0, front: at 0", "rail: {", "Nothing says where the rail is up and down.")]
    [InlineData(
        "left: at 0, front: at 0, bottom: over there",
        "over there",
        "'over there' does not say where the bottom is."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: 3 left of box",
        "left of box",
        "The bottom of a board cannot stand left of something: that is another way."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: 3 above bix",
        "bix",
        "There is no part, board or carcase called 'bix'."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: 3 above side",
        "side",
        "'side' may be several parts: box left side, box right side."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: 3 above front of box",
        "box }",
        "The bottom of the rail is not told from the front of something."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: glued to bottom of box",
        "box }",
        "The bottom of the rail cannot meet the bottom of the box: it looks the same way or another."
    )]
    [InlineData(
        "left: at 0, right: at 500, front: at 0, bottom: glued to box",
        "at 500",
        "The length of the rail is said, and so are both its sides from left to right."
    )]
    [InlineData(
        "left: at 2000, front: at 0, bottom: glued to box",
        "glued to box",
        "The rail does not meet the box with its bottom."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: dadoed 18 into box top panel",
        "dadoed 18",
        "The rail would go right through the box top panel."
    )]
    [InlineData("left: at 0, front: at 0, bottom: dadoed 8", "dadoed 8", "What it goes into is missing.")]
    [InlineData(
        "left: at 0, front: at 0, bottom: 3 mm mm above box",
        "mm above",
        "Something is missing between '3 mm' and 'mm'."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: glued to box, joined: [3 above box]",
        "3 above box]",
        "This says no joint."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: glued to box, joined: [glued to box back]",
        "glued to box back",
        "The rail does not meet the box back."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: glued to box, lies: 'flat, facing front'",
        "'flat, facing front'",
        "What lies flat faces up or down."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: glued to rail",
        "rail }",
        "The boards lean on each other in a circle: rail -> rail."
    )]
    [InlineData(
        "front: at 0, bottom: glued to box, repeat: { times: 3, every: 5 }, left: glued to box left side",
        "glued to box left side",
        "Only the first of a row could meet the box left side; the others stand farther on."
    )]
    [InlineData(
        "front: at 0, bottom: glued to box, repeat: { times: 30, evenly between: [box left side, box right side] }",
        "{ times",
        "There is no room for 30 of the boards between the box left side and the box right side."
    )]
    [InlineData(
        "left: at 0, front: at 0, bottom: glued to box, mirrored: yes, right: at 100",
        "yes",
        "Which end the rail is at cannot be told, so neither can its fellow's."
    )]
    public void Board_that_cannot_be_is_refused_at_its_words(string said, string at, string error)
    {
        var line = Recipe(said).Split('\n')[5];

        Assert.Equal($"6:{line.LastIndexOf(at, StringComparison.Ordinal) + 1}: {error}", Said(said));
    }

    [Theory]
    [InlineData(
        "groove: { in: front, from: back 10, wide: 6, deep: 8 }",
        "What is cut into the front is not placed from the back."
    )]
    [InlineData(
        "groove: { in: top, from: back 28, wide: 6, deep: 8 }",
        "The groove runs off the rail from front to back."
    )]
    [InlineData("groove: { in: top, from: back 2, wide: 6, deep: 18 }", "The groove goes right through the rail.")]
    [InlineData("groove: { in: top, from: sideways 2, wide: 6, deep: 8 }", "'sideways' is no side of a board.")]
    [InlineData(
        "groove: { in: top, from: back 2, wide: 6, deep: 8, stopped: front 5 }",
        "The cut runs from left to right; it has no end at the front."
    )]
    [InlineData(
        "groove: { in: top, from: back 2, wide: 6, deep: 8, stopped: [left 50, right 60] }",
        "The cut stops before it begins."
    )]
    [InlineData(
        "notch: { in: front, from: top 2, wide: 6, deep: 8 }",
        "A notch goes through the thickness; this one would run along the rail."
    )]
    [InlineData(
        "bore: { in: top, at: [left 2, right 6], across: 6 }",
        "A hole in the top has its place from two sides that stand square to each other."
    )]
    [InlineData(
        "bore: { in: top, at: [left 2, front 6], across: 6 }",
        "The hole runs off the rail from left to right."
    )]
    [InlineData(
        "bore: { in: top, at: [left 12, front 6], across: 6, times: 5, every: 32 }",
        "Hole 4 of the row runs off the rail from left to right."
    )]
    [InlineData(
        "bore: { in: top, at: [left 12, front 6], across: 6, times: 5 }",
        "How far apart the holes are is missing."
    )]
    [InlineData("bore: { in: top, at: [left 12, front 6], across: 6, deep: 20 }", "The hole is deeper than the rail.")]
    [InlineData("taper: { in: left, towards: right, by: 5 }", "The left cannot lean in towards the right.")]
    [InlineData("taper: { in: front, towards: right, by: 30 }", "The taper leaves nothing of the rail at its end.")]
    [InlineData("taper: { in: front, towards: right, over: 101, by: 3 }", "The taper is longer than the rail.")]
    [InlineData("arch: { in: front, from: left 10, to: right 10, rise: 30 }", "The arch goes right through the rail.")]
    [InlineData(
        "arch: { in: front, from: left 40, to: right 50, rise: 10 }",
        "The arch is higher than half of a circle."
    )]
    [InlineData("arch: { in: front, from: left 40, to: right 60, rise: 10 }", "The arch has no room along the rail.")]
    [InlineData(
        "outline: { from: [left, right], corners: [[0, 0], [1, 1], [0, 1]] }",
        "The two sides face each other."
    )]
    [InlineData(
        "outline: { from: [left, front], corners: [[0, 0], [10, 10], [10, 0], [0, 10]] }",
        "The outline crosses itself."
    )]
    [InlineData(
        "outline: { from: [left, front], corners: [[0, 0], [10, 10], [20, 20]] }",
        "There is nothing within the outline."
    )]
    public void Cut_that_cannot_be_is_refused(string cut, string error) =>
        Assert.EndsWith(
            ": " + error,
            Said($"left: at 0, front: at 0, bottom: glued to box, cuts: [ {{ {cut} }} ]"),
            StringComparison.Ordinal
        );

    [Fact]
    public void Two_cuts_in_one_item_are_refused() =>
        Assert.EndsWith(
            ": A groove and a dado are two cuts.",
            Said(
                "left: at 0, front: at 0, bottom: glued to box, cuts: [ { groove: { in: top, from: back 2, wide: 6, deep: 8 }, dado: { in: top, from: left 2, wide: 6, deep: 8 } } ]"
            ),
            StringComparison.Ordinal
        );

    private static string Said(string board) => Built.ErrorOf(Recipe(board));

    private static string Recipe(string board) =>
        $$"""
            piece: Board
            units: mm
            materials: { body: pine 18 }
            carcases: { box: { size: [600, 400, 300], back: planted } }
            boards:
              rail: { length: 100, width: 30, {{board}} }
            """;
}
