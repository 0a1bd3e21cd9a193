namespace Dryfit.Solids.Tests;

public sealed class PairTests
{
    private static readonly Solid Cube = SolidBuilder.Build(new(10, 10, 10), []);

    [Fact]
    public void Parts_that_touch_have_no_gap_and_no_overlap()
    {
        var (a, b) = (At(Cube, 0, 0, 0), At(Cube, 10, 3, 4));
        Assert.Null(Pair.Overlap(a, b));
        Assert.Equal(0, Pair.Gap(a, b, 5)!.Distance);
    }

    [Theory]
    [InlineData(10, 10, 10)]
    [InlineData(10, 10, 0)]
    public void Parts_that_touch_in_an_edge_or_corner_have_no_gap_and_no_overlap(double x, double y, double z)
    {
        var (a, b) = (At(Cube, 0, 0, 0), At(Cube, x, y, z));
        Assert.Null(Pair.Overlap(a, b));
        Assert.Equal(0, Pair.Gap(a, b, 5)!.Distance);
    }

    [Fact]
    public void Overlap_has_volume_depth_and_box()
    {
        var overlap = Pair.Overlap(At(Cube, 0, 0, 0), At(Cube, 8, 3, 4))!;
        Assert.Equal(2 * 7 * 6, overlap.Volume);
        Assert.Equal(2, overlap.Depth);
        Assert.Equal(new Box(new(8, 3, 4), new(10, 10, 10)), overlap.Bounds);
        Assert.Equal(0, Pair.Gap(At(Cube, 0, 0, 0), At(Cube, 8, 3, 4), 5)!.Distance);
    }

    [Fact]
    public void Part_inside_another_has_no_gap()
    {
        var small = SolidBuilder.Build(new(2, 2, 2), []);
        Assert.Equal(0, Pair.Gap(At(Cube, 0, 0, 0), At(small, 4, 4, 4), 5)!.Distance);
        Assert.Equal(8, Pair.Overlap(At(Cube, 0, 0, 0), At(small, 4, 4, 4))!.Volume);
    }

    [Fact]
    public void Part_in_a_pocket_of_another_has_a_gap_and_no_overlap()
    {
        var hollow = SolidBuilder.Build(new(10, 10, 10), [new BoxCut(new(2, 2, 2), new(8, 8, 10))]);
        var small = SolidBuilder.Build(new(3, 3, 3), []);
        Assert.Null(Pair.Overlap(At(hollow, 0, 0, 0), At(small, 3, 3, 3)));
        Assert.Equal(1, Pair.Gap(At(hollow, 0, 0, 0), At(small, 3, 3, 3), 5)!.Distance);
    }

    [Fact]
    public void Gap_beyond_the_cap_is_not_told()
    {
        Assert.Null(Pair.Gap(At(Cube, 0, 0, 0), At(Cube, 13, 0, 0), 2.5));
        Assert.Equal(3, Pair.Gap(At(Cube, 0, 0, 0), At(Cube, 13, 0, 0), 3)!.Distance);
    }

    [Fact]
    public void Gap_to_an_edge_turned_by_45_degrees_is_the_distance_of_the_edge()
    {
        var half = Math.Sqrt(0.5);
        var turned = new Placed(
            Cube,
            new(new(20, 5 - (10 * half), 0), new(half, half, 0), new(-half, half, 0), new(0, 0, 1))
        );
        Assert.Equal(20 - (10 * half) - 10, Pair.Gap(At(Cube, 0, 0, 0), turned, 5)!.Distance, 1e-12);
        Assert.Null(Pair.Overlap(At(Cube, 0, 0, 0), turned));
    }

    [Fact]
    public void Overlap_of_turned_parts_is_that_of_their_outlines()
    {
        // A cube turned by 45 degrees about its own middle: the two squares share a regular octagon of width 10.
        var half = Math.Sqrt(0.5);
        var turned = new Placed(
            Cube,
            new(new(5, 5 - (10 * half), 0), new(half, half, 0), new(-half, half, 0), new(0, 0, 1))
        );
        var octagon = 2 * (Math.Sqrt(2) - 1) * 10 * 10;
        Assert.Equal(octagon * 10, Pair.Overlap(At(Cube, 0, 0, 0), turned)!.Volume, 1e-9);
    }

    [Fact]
    public void Way_along_a_direction_is_the_first_meeting_and_sliding_past_is_none()
    {
        var (a, b) = (At(Cube, 0, 0, 0), At(Cube, 13, 5, 0));
        Assert.Equal(3, Pair.GapAlong(a, b, new(1, 0, 0), 100)!.Distance);
        Assert.Null(Pair.GapAlong(a, b, new(-1, 0, 0), 100));
        Assert.Null(Pair.GapAlong(a, b, new(1, 0, 0), 2));
        Assert.Null(Pair.GapAlong(a, At(Cube, 13, 10, 0), new(1, 0, 0), 100));
        Assert.Equal(0, Pair.GapAlong(a, At(Cube, 10, 0, 0), new(1, 0, 0), 100)!.Distance);
        Assert.Null(Pair.GapAlong(a, At(Cube, 10, 0, 0), new(0, 1, 0), 100));
        Assert.Equal(0, Pair.GapAlong(a, At(Cube, 9, 0, 0), new(0, 1, 0), 100)!.Distance);
        // The two meet in the plane x = 0, where no coordinate gives a size to compare with.
        Assert.Equal(0, Pair.GapAlong(a, At(Cube, -10, 0, 0), new(-1, 0, 0), 100)!.Distance);
    }

    private static Placed At(Solid solid, double x, double y, double z) =>
        new(solid, Frame.Identity with { Origin = new(x, y, z) });
}
