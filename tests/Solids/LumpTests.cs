namespace Dryfit.Solids.Tests;

public sealed class LumpTests
{
    private static readonly Vec3 Size = new(600, 300, 20);

    [Fact]
    public void Sound_board_is_one_lump_and_touches_itself_nowhere()
    {
        var solid = Build(new BoxCut(new(100, 0, 12), new(120, 300, 20)));
        var lump = Assert.Single(Lumps.Of(solid));
        Assert.Equal((solid.Volume, solid.Bounds), (lump.Volume, lump.Bounds));
        Assert.Equal([0], lump.Cuts);
        Assert.Empty(Lumps.PartedBy(solid));
        Assert.Empty(Touches.Of(solid));
    }

    [Fact]
    public void Lumps_have_their_volumes_boxes_and_cuts_the_largest_first()
    {
        // The bore is in the smaller lump, the void in the larger one.
        var solid = Build(
            new BoxCut(new(100, 0, 0), new(120, 300, 20)),
            new BoxCut(new(300, 100, 5), new(400, 200, 15)),
            new BoxCut(new(20, 20, 10), new(40, 40, 20))
        );
        var lumps = Lumps.Of(solid);
        Assert.Equal(2, lumps.Count);
        Assert.Equal((480 * 300 * 20) - (100 * 100 * 10), lumps[0].Volume, 1e-6);
        Assert.Equal((100 * 300 * 20) - (20 * 20 * 10), lumps[1].Volume, 1e-6);
        Assert.Equal(new Box(new(120, 0, 0), Size), lumps[0].Bounds);
        Assert.Equal(new Box(default, new(100, 300, 20)), lumps[1].Bounds);
        Assert.Equal([0, 1], lumps[0].Cuts);
        Assert.Equal([0, 2], lumps[1].Cuts);
        Assert.Equal([0], Lumps.PartedBy(solid));
    }

    [Fact]
    public void Cuts_that_part_a_board_only_together_are_all_named()
    {
        var twice = Build(
            new BoxCut(new(100, 0, 0), new(120, 300, 20)),
            new BoxCut(new(100, 0, 0), new(120, 300, 20)),
            new BoxCut(new(300, 0, 15), new(320, 300, 20))
        );
        // Of two in one place the first keeps the faces.
        Assert.Equal([0], Lumps.PartedBy(twice));
        var halves = Build(
            new BoxCut(new(100, 0, 0), new(120, 300, 12)),
            new BoxCut(new(300, 0, 15), new(320, 300, 20)),
            new BoxCut(new(100, 0, 8), new(120, 300, 20))
        );
        Assert.Equal([0, 2], Lumps.PartedBy(halves));
    }

    [Fact]
    public void Touching_along_an_edge_and_in_a_point_are_told_where_they_are()
    {
        // Half lapped from both sides along y for 200, so that beyond it the board is whole.
        var edge = Build(new BoxCut(new(100, 0, 0), new(200, 200, 10)), new BoxCut(new(200, 0, 10), new(300, 200, 20)));
        var touch = Assert.Single(Touches.Of(edge));
        Assert.Equal(200, Math.Abs(touch.To.Y - touch.From.Y));
        Assert.Equal((200.0, 10.0, 200.0, 10.0), (touch.From.X, touch.From.Z, touch.To.X, touch.To.Z));
        Assert.Equal([0, 1], touch.Cuts);

        // Stopped at both ends, the two edges run between the same corners.
        var stopped = Build(
            new BoxCut(new(100, 50, 0), new(200, 200, 10)),
            new BoxCut(new(200, 50, 10), new(300, 200, 20))
        );
        touch = Assert.Single(Touches.Of(stopped));
        Assert.Equal(150, Math.Abs(touch.To.Y - touch.From.Y));

        var corner = Build(new BoxCut(default, new(300, 150, 10)), new BoxCut(new(300, 150, 10), Size));
        var point = Assert.Single(Touches.Of(corner));
        Assert.True(point.IsPoint);
        Assert.Equal(new Vec3(300, 150, 10), point.From);
    }

    [Fact]
    public void Touching_stretches_of_random_square_boards_are_as_many_as_the_solid_says() =>
        RandomBoards.Square.Hold(
            1000,
            board =>
            {
                var solid = SolidBuilder.Build(board.Size, board.Cuts);
                Assert.Equal(solid.TouchesItself, Touches.Of(solid).Count > 0);
                var lumps = Lumps.Of(solid);
                Assert.Equal(solid.PieceCount, lumps.Count);
                Assert.Equal(solid.Volume, lumps.Sum(lump => lump.Volume), 1e-6);
            }
        );

    private static Solid Build(params Cut[] cuts) => SolidBuilder.Build(Size, cuts).Checked();
}
