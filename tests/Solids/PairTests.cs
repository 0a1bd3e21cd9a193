using CsCheck;

namespace Dryfit.Solids.Tests;

public sealed class PairTests
{
    private static readonly Gen<Vec3> Places = Whole(-5, 5);

    private static readonly Gen<(Vec3 Size, BoxCut[] Cuts)> SquareBoards = Gen.Select(
        Whole(2, 6),
        Gen.Select(Whole(-1, 5), Whole(1, 4), (low, size) => new BoxCut(low, low + size)).Array[0, 4]
    );

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

    // Two combs teeth to teeth, one to the side: they share 1 and 2 of their teeth, 5 high, and come apart sideways by 2.
    [Fact]
    public void Overlap_in_two_lumps_is_as_deep_as_the_thicker_of_them()
    {
        var below = SolidBuilder.Build(new(10, 10, 10), [new BoxCut(new(2, 0, 5), new(7, 10, 10))]);
        var above = SolidBuilder.Build(new(10, 10, 10), [new BoxCut(new(2, 0, 0), new(7, 10, 5))]);
        var overlap = Pair.Overlap(At(below, 0, 0, 0), At(above, 1, 0, 5))!;
        Assert.Equal((1 + 2) * 10 * 5, overlap.Volume);
        Assert.Equal(2, overlap.Depth);
        Assert.Equal(new Box(new(1, 0, 5), new(10, 10, 10)), overlap.Bounds);
    }

    // A rod right through a thick plate: sideways it would have to leave the plate, lengthwise it goes on into nothing.
    [Fact]
    public void Overlap_tells_which_way_is_the_way_out_and_moved_that_far_they_only_touch()
    {
        var plate = SolidBuilder.Build(new(40, 40, 10), []);
        var rod = SolidBuilder.Build(new(6, 6, 30), []);
        var (a, b) = (At(rod, 17, 17, -4), At(plate, 0, 0, 0));
        var overlap = Pair.Overlap(a, b)!;
        // Down by 26 would do, up by 14 does it sooner; sideways by 23.
        Assert.Equal((14.0, new Vec3(0, 0, 1)), (overlap.Depth, overlap.Way));
        Assert.Null(Pair.Overlap(At(rod, 17, 17, 10), b));
        var back = Pair.Overlap(b, a)!;
        Assert.Equal((14.0, new Vec3(0, 0, -1)), (back.Depth, back.Way));
    }

    // A cube that stands with its edge down in another: the edge dips 2 below the top, so 2 upwards is the way out along the
    // axes of the lower one; along its own faces the upper one would have to go further.
    [Fact]
    public void Overlap_of_a_cube_on_its_edge_is_as_deep_as_the_edge_dips()
    {
        var half = Math.Sqrt(0.5);
        var onEdge = new Placed(Cube, new(new(5, 0, 8), new(half, 0, half), new(0, 1, 0), new(-half, 0, half)));
        var overlap = Pair.Overlap(onEdge, At(Cube, 0, 0, 0))!;
        Assert.Equal(2 * 2 * 10, overlap.Volume, 1e-9);
        Assert.Equal(2, overlap.Depth, 1e-12);
        Assert.Equal(new Vec3(0, 0, 1), overlap.Way);
    }

    // Whole coordinates, so that unit cubes can be counted; faces coincide on purpose.
    [Fact]
    public void Square_boards_share_what_counted_cubes_say_whether_cut_by_boxes_or_by_outlines() =>
        Gen.Select(SquareBoards, SquareBoards, Places)
            .Hold(
                1000,
                sample =>
                {
                    var (a, b, place) = sample;
                    var cubes = Cubes(a, default).Intersect(Cubes(b, place)).ToList();
                    var frame = Frame.Identity with { Origin = place };
                    var square = Pair.Overlap(At(a, Frame.Identity, AsIs), At(b, frame, AsIs));
                    var outlined = Pair.Overlap(At(a, Frame.Identity, Outlined), At(b, frame, Outlined));
                    Assert.Equal(cubes.Count, square?.Volume ?? 0);
                    Assert.Equal(cubes.Count, outlined?.Volume ?? 0, 1e-9);
                    if (square is not null)
                    {
                        Assert.Equal(LeastWay(a, b, place), square.Depth);
                        Assert.True(outlined!.Depth >= square.Depth);
                        Assert.Equal(outlined.Bounds, square.Bounds);
                        Assert.Equal(
                            new(
                                new(cubes.Min(cube => cube.X), cubes.Min(cube => cube.Y), cubes.Min(cube => cube.Z)),
                                new(
                                    cubes.Max(cube => cube.X) + 1,
                                    cubes.Max(cube => cube.Y) + 1,
                                    cubes.Max(cube => cube.Z) + 1
                                )
                            ),
                            square.Bounds
                        );
                    }
                }
            );

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
    public void Closest_points_of_skew_edges_are_the_feet_of_their_common_perpendicular()
    {
        // An edge along y at x = 10, z = 10 below; one along (1, 0, 0) turned to stand edge down 4 above it.
        var half = Math.Sqrt(0.5);
        var above = new Placed(Cube, new(new(5, 5, 14), new(1, 0, 0), new(0, half, half), new(0, -half, half)));
        var gap = Pair.Gap(At(Cube, 0, 0, 0), above, 10)!;
        Assert.Equal(4, gap.Distance, 1e-12);
        Assert.Equal(10, gap.OnA.Z, 1e-12);
        Assert.Equal(14, gap.OnB.Z, 1e-12);
        Assert.Equal(5, gap.OnA.Y, 1e-12);
        Assert.Equal((gap.OnA.X, gap.OnA.Y), (gap.OnB.X, gap.OnB.Y));
        Assert.InRange(gap.OnA.X, 5, 10);
    }

    [Fact]
    public void Way_at_a_slant_is_as_long_as_the_slant_makes_it()
    {
        // 3 ahead along x; along (3, 4) / 5 that takes 5, in which it moves 4 along y.
        var gap = Pair.GapAlong(At(Cube, 0, 0, 0), At(Cube, 13, 0, 0), new(0.6, 0.8, 0), 100)!;
        Assert.Equal(5, gap.Distance, 1e-12);
        Assert.Equal(4, gap.OnB.Y - gap.OnA.Y, 1e-12);
        Assert.Null(Pair.GapAlong(At(Cube, 0, 0, 0), At(Cube, 13, -8, 0), new(0.6, 0.8, 0), 100));
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

    private static Gen<Vec3> Whole(int low, int high) =>
        Gen.Select(Gen.Int[low, high], Gen.Int[low, high], Gen.Int[low, high], (x, y, z) => new Vec3(x, y, z));

    private static Placed At((Vec3 Size, BoxCut[] Cuts) board, Frame frame, Func<BoxCut, Cut> told) =>
        new(SolidBuilder.Build(board.Size, [.. board.Cuts.Select(told)]), frame);

    private static Cut AsIs(BoxCut cut) => cut;

    private static Cut Outlined(BoxCut cut)
    {
        var size = cut.Max - cut.Min;
        return new PrismCut(
            Frame.Identity with
            {
                Origin = cut.Min,
            },
            [new(0, 0), new(size.X, 0), new(size.X, size.Y), new(0, size.Y)],
            size.Z
        );
    }

    // The low corners of the unit cubes that a board fills.
    private static IEnumerable<Vec3> Cubes((Vec3 Size, BoxCut[] Cuts) board, Vec3 place) =>
        from x in Enumerable.Range(0, (int)board.Size.X)
        from y in Enumerable.Range(0, (int)board.Size.Y)
        from z in Enumerable.Range(0, (int)board.Size.Z)
        where !board.Cuts.Any(cut => Holds(cut, x, y, z))
        select place + new Vec3(x, y, z);

    // How many whole steps along an axis, there or back, take a's cubes out of b's: what two sets of cubes share changes
    // its kind only at whole steps.
    private static double LeastWay((Vec3 Size, BoxCut[] Cuts) a, (Vec3 Size, BoxCut[] Cuts) b, Vec3 place)
    {
        var (own, other) = (Cubes(a, default).ToList(), Cubes(b, place).ToHashSet());
        Vec3[] ways = [new(1, 0, 0), new(-1, 0, 0), new(0, 1, 0), new(0, -1, 0), new(0, 0, 1), new(0, 0, -1)];
        return ways.Min(way =>
            Enumerable.Range(1, 20).First(steps => !own.Exists(cube => other.Contains(cube + (way * steps))))
        );
    }

    private static bool Holds(BoxCut cut, int x, int y, int z) =>
        cut.Min.X <= x && x < cut.Max.X && cut.Min.Y <= y && y < cut.Max.Y && cut.Min.Z <= z && z < cut.Max.Z;
}
