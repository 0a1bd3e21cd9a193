using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Carcases at an angle in plan: built square, turned as a whole.</summary>
public sealed class TurnedTests
{
    private const string Cupboard =
        "size: [600, 900, 500], stands on: { plinth: 100 }, top: { overhang: { front: 25 } }, shelves: { adjustable: 1 },"
        + " front: { columns: [{ rows: [drawer, { doors: framed }] }, { doors: slab }] }";

    [Theory]
    [InlineData("left: 30")]
    [InlineData("right: 45, about: right rear corner")]
    [InlineData("left: 90, about: middle")]
    [InlineData("right: 22 1/2")]
    [InlineData("right: 180")]
    public void Turned_carcase_has_the_very_parts_of_a_straight_one(string turned)
    {
        var straight = Built.From(Recipes.Metric($"box: {{ {Cupboard} }}"));
        var piece = Built.From(Recipes.Metric($"box: {{ {Cupboard}, turned: {{ {turned} }} }}"));
        piece.MustBeSound();
        Assert.Equal(straight.Parts.Count, piece.Parts.Count);
        foreach (var (a, b) in straight.Parts.Zip(piece.Parts))
        {
            Assert.Equal(a.Name, b.Name);
            Assert.Equal(
                (a.Length.Length, a.Width.Length, a.Thickness.Length),
                (b.Length.Length, b.Width.Length, b.Thickness.Length)
            );
            Assert.Equal(a.Extent, b.Extent);
            Assert.Equal(a.Cuts, b.Cuts);
            Assert.Equal(straight.VolumeMm3(a), piece.VolumeMm3(b), 1e-6);
        }
        Assert.Equal(straight.Joints.Select(j => (j.Kind, j.Into)), piece.Joints.Select(j => (j.Kind, j.Into)));
        Assert.Equal(straight.Openings.Select(o => o.Clear), piece.Openings.Select(o => o.Clear));
    }

    [Fact]
    public void Turned_left_the_front_looks_to_the_left()
    {
        // 500 deep, turned a quarter about its left front corner: its depth now runs to the right, its right end forward.
        var piece = Built.From(Recipes.Metric("box: { size: [600, 900, 500], turned: { left: 90 } }"));
        Reaches(piece, 0, -600, 500, 0);
    }

    [Fact]
    public void Turned_right_the_front_looks_to_the_right()
    {
        var piece = Built.From(Recipes.Metric("box: { size: [600, 900, 500], turned: { right: 90 } }"));
        Reaches(piece, -500, 0, 0, 600);
    }

    [Fact]
    public void Half_a_right_angle_is_the_diagonal()
    {
        // A square of 400 turned by 45 degrees about its middle is 400 times the root of 2 from corner to corner.
        var piece = Built.From(Recipes.Metric("box: { size: [400, 900, 400], turned: { left: 45, about: middle } }"));
        var half = 200 * Math.Sqrt(2);
        Reaches(piece, 200 - half, 200 - half, 200 + half, 200 + half);
    }

    [Theory]
    [InlineData("left", 600, 0)] // the front edges meet, the wedge opens at the wall
    [InlineData("right", 600, 500)] // the backs meet, the wedge opens at the front
    public void Beside_its_neighbour_it_keeps_to_the_corner_that_clears_it(string way, int x, int y)
    {
        var piece = Built.From(
            Recipes.Metric(
                $"one: {{ size: [600, 900, 500] }}\ntwo: {{ right of: one, size: [400, 900, 500], turned: {{ {way}: 30 }} }}"
            )
        );
        piece.MustBeSound();
        var turn = piece.Groups.Single(g => g.Name == "two").Turn!;
        Assert.Equal((x, y), ((int)turn.Pivot.X.Millimetres.Floor(), (int)turn.Pivot.Y.Millimetres.Floor()));
    }

    [Fact]
    public void What_stands_beside_a_turned_carcase_goes_on_in_its_line()
    {
        var piece = Built.From(
            Recipes.Metric(
                """
                one: { size: [600, 900, 500] }
                two: { right of: one, size: [400, 900, 500], turned: { left: 90 } }
                three: { right of: two, size: [300, 900, 500] }
                four: { on: three, size: [300, 500, 300] }
                """
            )
        );
        piece.MustBeSound();
        // From the right end of one, two runs 400 forward and three another 300; four lines up with the back of three.
        Box(piece, "three", 600, -700, 1100, -400);
        Box(piece, "four", 800, -700, 1100, -400);
        // Their sides lie against each other and are screwed, as in a straight run.
        Assert.Contains(piece.Joints, j => j.Receives == "two/right-side" && j.Enters == "three/left-side");
    }

    [Fact]
    public void Turns_add_up_along_a_run()
    {
        var piece = Built.From(
            Recipes.Metric(
                """
                one: { size: [600, 900, 500] }
                two: { right of: one, size: [400, 900, 500], turned: { left: 45 } }
                three: { right of: two, size: [300, 900, 500], turned: { left: 45 } }
                """
            )
        );
        piece.MustBeSound();
        // 400 at half a right angle takes it 400 / root 2 to the right and as much forward.
        var run = 400 / Math.Sqrt(2);
        Box(piece, "three", 600 + run, -run - 300, 600 + run + 500, -run);
    }

    [Fact]
    public void What_stands_on_another_at_an_angle_rests_on_it()
    {
        var piece = Built.From(
            Recipes.Metric(
                "low: { size: [800, 400, 800] }\nhigh: { on: low, size: [400, 300, 400], turned: { left: 45 } }"
            )
        );
        piece.MustBeSound();
        Assert.Contains(
            piece.Joints,
            j => j.Kind == JointKind.Resting && j.Receives.StartsWith("low/", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("{ left: 0 }", "That is no angle to turn a carcase by.")]
    [InlineData("{ right: 181 }", "That is no angle to turn a carcase by.")]
    [InlineData("{ right: 10, left: 10 }", "It cannot be turned both ways.")]
    [InlineData("{ about: middle }", "How far it is turned is missing.")]
    public void What_is_no_angle_is_told(string turned, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Recipes.Metric($"box: {{ size: [600, 900, 500], turned: {turned} }}")),
            StringComparison.Ordinal
        );

    [Fact]
    public void Run_that_turns_without_end_is_refused()
    {
        var run = string.Concat(
            Enumerable.Range(0, 60).Select(n => $"c{n}: {{ size: [300, 400, 200], turned: {{ left: 1 }} }}\n")
        );
        Assert.EndsWith(
            "The run turns more than 40 times, one carcase after the other.",
            Built.ErrorOf(Recipes.Metric(run)),
            StringComparison.Ordinal
        );
    }

    private static void Reaches(Piece piece, double left, double front, double right, double back) =>
        Reaches(piece, piece.Parts, left, front, right, back);

    private static void Box(Piece piece, string group, double left, double front, double right, double back) =>
        Reaches(piece, [.. piece.Parts.Where(p => p.Group == group)], left, front, right, back);

    private static void Reaches(
        Piece piece,
        IReadOnlyList<Part> parts,
        double left,
        double front,
        double right,
        double back
    )
    {
        var points = parts.SelectMany(p => p.Solid.Vertices.Select(v => p.Placed.Frame.ToWorld(v))).ToList();
        Assert.Equal(left, piece.Grid.ToMm(points.Min(p => p.X)), 1e-6);
        Assert.Equal(front, piece.Grid.ToMm(points.Min(p => p.Y)), 1e-6);
        Assert.Equal(right, piece.Grid.ToMm(points.Max(p => p.X)), 1e-6);
        Assert.Equal(back, piece.Grid.ToMm(points.Max(p => p.Y)), 1e-6);
    }
}
