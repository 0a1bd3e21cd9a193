using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Which face of a panel is its show face: habit, and what the recipe asks for.</summary>
public sealed class ShowFaceTests
{
    private const string Size = "size: [600, 700, 300], closed by: panel, front: { columns: [open, open] }";

    [Fact]
    public void By_habit_a_box_shows_its_outside_and_what_lies_in_it_its_upper_face()
    {
        var piece = Built.From(Metric($"case: {{ {Size} }}"));
        Assert.Equal(
            [Direction.Left, Direction.Right, Direction.Up, Direction.Up, Direction.Front, Direction.Left],
            Shown(piece)
        );
    }

    [Theory]
    [InlineData("inside", "Right Left Up Down Front Left")]
    [InlineData("outside", "Left Right Down Up Back Left")]
    [InlineData("{ sides: inside, right side: outside, partitions: right }", "Right Right Up Up Front Right")]
    [InlineData("{ bottom: outside, back: outside }", "Left Right Down Up Back Left")]
    public void A_recipe_says_otherwise(string faces, string shown)
    {
        var piece = Built.From(Metric($"case: {{ {Size}, show faces: {faces} }}"));
        piece.MustBeSound();
        Assert.Equal(shown, string.Join(' ', Shown(piece)));
    }

    [Fact]
    public void The_board_is_the_same_in_the_same_place_with_its_cuts_told_from_the_other_face()
    {
        var habit = Built.From(Metric($"case: {{ {Size}, shelves: {{ adjustable: 2 }} }}"));
        var turned = Built.From(Metric($"case: {{ {Size}, shelves: {{ adjustable: 2 }}, show faces: inside }}"));
        foreach (var part in habit.Parts)
        {
            var other = turned.Parts.Single(p => p.Id == part.Id);
            Assert.Equal(part.Extent, other.Extent);
            Assert.Equal(habit.VolumeMm3(part), turned.VolumeMm3(other), 1e-3);
            Assert.Equal(Corners(part), Corners(other));
        }
        // Pin holes are bored from the inside: by habit into the reverse face, which is now the show face.
        Assert.All(Holes(habit), hole => Assert.Equal(Direction.Up, hole.Into));
        Assert.All(Holes(turned), hole => Assert.Equal(Direction.Down, hole.Into));

        static IEnumerable<RoundCut> Holes(Piece piece) =>
            piece.Part("case left side").Cuts.OfType<RoundCut>().Where(cut => cut.Kind == CutKind.ShelfPinHole);

        static IEnumerable<(double, double, double)> Corners(Part part) =>
            part
                .Solid.Vertices.Select(part.Placed.Frame.ToWorld)
                .Select(v => (Math.Round(v.X, 3), Math.Round(v.Y, 3), Math.Round(v.Z, 3)))
                .Order();
    }

    [Fact]
    public void A_face_that_is_not_there_is_told() =>
        Assert.EndsWith(
            "The case has no back that could show a face.",
            Built.ErrorOf(Metric("case: { size: [600, 700, 300], back: none, show faces: { back: outside } }")),
            StringComparison.Ordinal
        );

    private static IEnumerable<Direction> Shown(Piece piece) =>
        (
            (string[])
                [
                    "case left side",
                    "case right side",
                    "case bottom",
                    "case top panel",
                    "case back",
                    piece.Parts.Single(part => part.Role == Role.Partition).Name,
                ]
        ).Select(name => piece.Part(name).Place.Lie.Shows);
}
