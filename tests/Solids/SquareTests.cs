using CsCheck;

namespace Dryfit.Solids.Tests;

/// <summary>
/// Boards with square cuts only go a short way of their own. A box given as a prism with a square outline sends the same board
/// the general way, which must give the same solid.
/// </summary>
public sealed class SquareTests
{
    [Fact]
    public void Square_cuts_give_the_same_solid_as_the_same_cuts_given_as_prisms() =>
        RandomBoards.Square.Hold(5000, board => AreAlike(board.Size, board.Cuts));

    [Fact]
    public void Square_cuts_and_lone_bores_give_the_same_solid_as_cuts_given_as_prisms() =>
        Gen.Select(RandomBoards.Square, SmallBores.Array[1, 6])
            .Hold(3000, sample => AreAlike(sample.Item1.Size, [.. sample.Item1.Cuts, .. sample.Item2]));

    // A tray: its bottom is a face within the cut's walls, its rim one with a hole.
    [Fact]
    public void Pocket_in_the_middle_of_a_face_leaves_a_rim_with_a_hole()
    {
        var tray = SolidBuilder.Build(new(100, 60, 20), [new BoxCut(new(10, 10, 5), new(90, 50, 25))]).Checked();
        Assert.Equal((100 * 60 * 20) - (80 * 40 * 15), tray.Volume);
        Assert.Equal((2 * 100 * 60) + (2 * 160 * 20) + (2 * 120 * 15), tray.Area);
        Assert.Equal(11, tray.Faces.Count);
        Assert.Equal(2, tray.Euler());
    }

    [Fact]
    public void Hollow_within_a_board_is_no_second_piece()
    {
        var hollow = SolidBuilder.Build(new(30, 30, 30), [new BoxCut(new(10, 10, 10), new(20, 20, 20))]).Checked();
        Assert.Equal(26000, hollow.Volume);
        Assert.Equal(1, hollow.PieceCount);
        Assert.Equal(2, hollow.Shells());
    }

    [Fact]
    public void Two_shelves_worth_of_board_parted_by_a_saw_are_two_pieces() =>
        Assert.Equal(
            2,
            SolidBuilder.Build(new(30, 30, 30), [new BoxCut(new(10, -1, -1), new(13, 31, 31))]).Checked().PieceCount
        );

    private static Gen<Cut> SmallBores { get; } =
        Gen.Select(
            RandomBoards.UprightFrames,
            Gen.Int[1, 3],
            Gen.Int[1, 30],
            Gen.Int[1, 3],
            (frame, radius, depth, size) => (Cut)new BoreCut(frame, radius, depth, 8 * size)
        );

    private static void AreAlike(Vec3 size, Cut[] cuts) =>
        Alike.Check(
            SolidBuilder.Build(size, cuts).Checked(),
            SolidBuilder.Build(size, [.. cuts.Select(AsPrism)]).Checked(),
            withSides: false
        );

    private static Cut AsPrism(Cut cut) =>
        cut is BoxCut box
            ? new PrismCut(
                new(new(box.Min.X, box.Min.Y, box.Min.Z), new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)),
                [
                    new(0, 0),
                    new(box.Max.X - box.Min.X, 0),
                    new(box.Max.X - box.Min.X, box.Max.Y - box.Min.Y),
                    new(0, box.Max.Y - box.Min.Y),
                ],
                box.Max.Z - box.Min.Z
            )
            : cut;
}
