using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// A corner carcase of 900 along both walls and 720 high, 560 deep beside the run, so that 340 are cut off each wall; boards
/// of 18, a frame of 20, backs of 6.5.
/// </summary>
public sealed class DiagonalTests
{
    private const double Line = 340 + (20 * 1.41421356237); // where the back of the frame stands on either wall
    private const double Front = 340 * 1.41421356237;

    private static Piece Corner(string more = "", string corner = "right") =>
        Built.From(
            Metric(
                $"corner: {{ size: [900, 720, 900], face frame: {{ material: frame, stiles: 40, rails: 40 }}, joint: screws, diagonal: {{ corner: {corner}, beside: 560 }}{more} }}",
                materials: "frame: ash 20"
            )
        );

    [Theory]
    [InlineData("right", "left", "right")]
    [InlineData("left", "right", "left")]
    public void Ends_are_bevelled_to_lie_on_the_frame(string corner, string near, string far)
    {
        var piece = Corner(corner: corner);
        piece.MustBeSound();
        // From the wall, less its back, to the bevel that goes past the line by the thickness of the board.
        foreach (var end in (string[])[near, far])
        {
            var part = piece.Part($"corner {end} side");
            Near(900 - 6.5 - Line + 18, part.Width.Length);
            Near(((900 - 6.5 - Line + 18) * 18 - (18 * 18 / 2.0)) * 720, piece.VolumeMm3(part), 50);
        }
        // Five-sided: a square of 900 less back and side, without the corner in front of the frame.
        var edge = 900 - 6.5 - 18;
        var cut = Line - 36;
        foreach (var flat in (string[])["corner bottom", "corner top panel"])
            Near(((edge * edge) - (cut * cut / 2)) * 18, piece.VolumeMm3(piece.Part(flat)), 50);
    }

    [Fact]
    public void Frame_runs_from_corner_to_corner_with_bevelled_stiles()
    {
        var piece = Corner();
        var left = piece.Part("corner front face frame left stile");
        // 40 in front, and at 45 degrees by its thickness of 20 more behind.
        Assert.Equal("60", piece.Write(left.Width.Length));
        Near(((60 * 20) - (20 * 20 / 2.0)) * 720, piece.VolumeMm3(left), 50);
        Near(Front - 80, piece.Part("corner front face frame top rail").Length.Length);
        // The foremost edge at the left is the corner of the end beside the run: 340 from the front, at the very left.
        var points = left.Solid.Vertices.Select(v => left.Placed.Frame.ToWorld(v)).ToList();
        Assert.Equal(0, piece.Grid.ToMm(points.Min(p => p.X)), 0.002);
        var foremost = points.MinBy(p => p.X + p.Y);
        Assert.Equal(340, piece.Grid.ToMm(foremost.X + foremost.Y), 0.002);
    }

    [Theory]
    [InlineData(", front: { doors: framed }")]
    [InlineData(", front: { doors: slab pair }, shelves: { fixed: 2 }")]
    [InlineData(", front: { doors: framed pair }, shelves: { adjustable: 2 }")]
    [InlineData(", stands on: { plinth: 100 }, shelves: { fixed: 1 }")]
    [InlineData(", stands on: { plinth: 100, setback: 0 }, back: none")]
    public void Whatever_closes_it_fits(string more)
    {
        foreach (var corner in (string[])["right", "left"])
            Corner(more, corner).MustBeSound();
    }

    [Fact]
    public void Door_is_as_wide_as_the_diagonal_leaves()
    {
        var piece = Corner(", front: { doors: slab }");
        var opening = piece.Openings.Single();
        Near(Front - 80, opening.Clear.Width);
        // House rule: 2 mm around inset doors.
        Near(Front - 80 - 4, piece.Part("corner front door slab").Width.Length);
    }

    [Fact]
    public void Runs_on_both_sides_are_screwed_to_its_ends()
    {
        var piece = Built.From(
            Metric(
                """
                run: { size: [600, 720, 560], face frame: { material: frame } }
                corner: { right of: run, size: [900, 720, 900], face frame: { material: frame }, diagonal: { beside: 560 } }
                return: { returns from: corner, size: [600, 720, 560], face frame: { material: frame } }
                """,
                materials: "frame: ash 20"
            )
        );
        piece.MustBeSound();
        Assert.Single(piece.Joints, j => j is { Receives: "run/right-side", Enters: "corner/left-side" });
        Assert.Single(piece.Joints, j => j is { Receives: "corner/right-side", Enters: "return/left-side" });
    }

    [Theory]
    [InlineData(
        "face frame: , diagonal: { beside: 560 }, blind: { right: 200 }",
        "A diagonal corner carcase has no 'blind'."
    )]
    [InlineData("diagonal: { beside: 560 }", "A diagonal front hangs its door on a face frame, and there is none.")]
    [InlineData(
        "face frame: , joint: dowels, diagonal: { beside: 560 }",
        "Only dados and screws hold where the corner of a panel is cut off: other joints come out of its edge."
    )]
    [InlineData(
        "face frame: , stands on: { legs: 50 }, diagonal: { beside: 560 }",
        "A diagonal corner carcase stands on its own sides or on a plain plinth."
    )]
    [InlineData(
        "face frame: , diagonal: { beside: 890 }",
        "At 45 degrees that leaves no end on one of its sides, or no front."
    )]
    [InlineData(
        "face frame: , diagonal: { beside: 20 }",
        "At 45 degrees that leaves no end on one of its sides, or no front."
    )]
    [InlineData(
        "face frame: , diagonal: { beside: 560 }, front: { rows: [drawer, drawer] }",
        "A diagonal front is one opening, open or with doors."
    )]
    public void What_cannot_be_is_told(string more, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"corner: {{ size: [900, 720, 900], {more} }}")),
            StringComparison.Ordinal
        );

    private static void Near(double mm, Measure.Length length) => Assert.Equal(mm, length.ToMillimetres(), 0.003);

    private static void Near(double mm3, double found, double within) => Assert.Equal(mm3, found, within);
}
