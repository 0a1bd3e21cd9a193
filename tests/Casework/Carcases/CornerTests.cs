using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Runs round a corner: a blind corner carcase, the return before it, the filler between.</summary>
public sealed class CornerTests
{
    private const string Corner = """
        corner: { size: [1000, 700, 500], blind: { right: 580 }, shelves: { adjustable: 1 }, front: { doors: slab } }
        return: { returns from: corner, gap: 60, filler: , size: [600, 700, 500], front: { doors: slab } }
        """;

    [Fact]
    public void Blind_end_is_closed_by_a_panel_between_floor_and_ceiling()
    {
        var piece = Built.From(Metric(Corner));
        piece.MustBeSound();
        // 580 less the side of 18; between the two boards of 18 there are 664.
        piece.Measures("corner blind panel", "664 x 562 x 18");
        piece.StandsAt("corner blind panel", "420, 0, 18");
        // The opening is what is left of the 1000 between the left side and the panel.
        piece.Opens("corner opening", "402 x 664");
        // The inside goes on behind the panel: the shelf is as long as the carcase is wide, and stays behind the panel.
        var shelf = piece.Part("corner adjustable shelf 1");
        Assert.Equal("962", piece.Write(shelf.Length.Length));
        Assert.True(shelf.Extent.Min.Y >= piece.Part("corner blind panel").Extent.Max.Y);
    }

    [Fact]
    public void Blind_end_may_be_at_the_left()
    {
        var piece = Built.From(
            Metric("corner: { size: [1000, 700, 500], blind: { left: 580 }, front: { doors: slab } }")
        );
        piece.MustBeSound();
        piece.StandsAt("corner blind panel", "18, 0, 18");
        piece.Opens("corner opening", "402 x 664");
    }

    [Fact]
    public void Before_a_blind_end_the_face_frame_stops()
    {
        var piece = Built.From(
            Metric(
                "corner: { size: [1000, 700, 500], face frame: { stiles: 40, rails: 40 }, blind: { right: 580 }, front: { doors: slab } }"
            )
        );
        piece.MustBeSound();
        piece.StandsAt("corner face frame right stile", "420, 0, 0");
        // From the left stile to the edge of the blind end.
        piece.Opens("corner opening", "380 x 620");
        Assert.Contains(
            piece.Joints,
            j => j.Receives == "corner/blind-panel" && j.Enters == "corner/face-frame/right-stile"
        );
    }

    [Fact]
    public void Return_stands_before_the_corner_with_its_back_against_the_same_wall()
    {
        var piece = Built.From(Metric(Corner));
        // The right-hand wall is at 1000; the return is 500 deep and begins 60 before the front of the corner.
        InPlan(piece, "return", 500, -660, 1000, -60, but: Role.Filler);
        var filler = piece.Part("return left filler");
        Assert.Equal(("700", "60"), (piece.Write(filler.Length.Length), piece.Write(filler.Width.Length)));
        // The strip closes the gap from the return to the blind panel.
        Assert.Contains(piece.Joints, j => j.Receives == "corner/blind-panel" && j.Enters == "return/left-filler");
    }

    [Fact]
    public void Return_at_the_left_is_the_mirror_image()
    {
        var piece = Built.From(
            Metric(
                """
                corner: { size: [1000, 700, 500], blind: { left: 580 }, front: { doors: slab } }
                return: { returns from: corner, across: left, gap: 60, filler: , size: [600, 700, 500] }
                """
            )
        );
        piece.MustBeSound();
        InPlan(piece, "return", 0, -660, 500, -60, but: Role.Filler);
        Assert.Contains(piece.Joints, j => j.Receives == "corner/blind-panel" && j.Enters == "return/right-filler");
    }

    [Fact]
    public void Filler_in_a_straight_run_is_screwed_to_both_sides()
    {
        var piece = Built.From(
            Metric("one: { size: [600, 700, 500] }\ntwo: { right of: one, gap: 30, filler: , size: [600, 700, 500] }")
        );
        piece.MustBeSound();
        piece.Measures("two left filler", "700 x 30 x 18");
        piece.StandsAt("two left filler", "600, 0, 0");
        Assert.Equal(2, piece.Joints.Count(j => j.Enters == "two/left-filler" || j.Receives == "two/left-filler"));
    }

    [Theory]
    [InlineData(
        "box: { size: [600, 700, 500], filler: }",
        "A filler closes the gap to the carcase beside, and there is none."
    )]
    [InlineData(
        "box: { size: [600, 700, 500], blind: { right: 15 } }",
        "The blind end takes all of the front, or nothing of it."
    )]
    [InlineData(
        "box: { size: [600, 700, 500], blind: { right: 600 } }",
        "The blind end takes all of the front, or nothing of it."
    )]
    [InlineData(
        "box: { size: [600, 700, 500], blind: { right: 200, left: 200 } }",
        "A carcase stands blind at one end, not at both."
    )]
    [InlineData(
        "box: { size: [600, 700, 500], blind: { material: body } }",
        "How much of the front is blind is missing."
    )]
    [InlineData(
        "box: { size: [900, 700, 500], blind: { right: 400 }, front: { rows: [drawer] } }",
        "A drawer beside a blind end has nothing to run on: the side is far behind the panel."
    )]
    public void What_cannot_be_is_told(string carcase, string message) =>
        Assert.EndsWith(message, Built.ErrorOf(Metric(carcase)), StringComparison.Ordinal);

    private static void InPlan(
        Piece piece,
        string group,
        double left,
        double front,
        double right,
        double back,
        Role but
    )
    {
        var points = piece
            .Parts.Where(p => p.Group == group && p.Role != but)
            .SelectMany(p => p.Solid.Vertices.Select(v => p.Placed.Frame.ToWorld(v)))
            .ToList();
        Assert.Equal(left, piece.Grid.ToMm(points.Min(p => p.X)), 1e-6);
        Assert.Equal(front, piece.Grid.ToMm(points.Min(p => p.Y)), 1e-6);
        Assert.Equal(right, piece.Grid.ToMm(points.Max(p => p.X)), 1e-6);
        Assert.Equal(back, piece.Grid.ToMm(points.Max(p => p.Y)), 1e-6);
    }
}
