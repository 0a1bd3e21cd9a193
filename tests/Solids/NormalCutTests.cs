namespace Dryfit.Solids.Tests;

/// <summary>What is normal in timber and special to geometry, worked out by hand: cuts that are flush, coincide, or only touch.</summary>
public sealed class NormalCutTests
{
    private const double Whole = 600 * 300 * 20;

    private static readonly Vec3 Size = new(600, 300, 20);

    // A regular polygon of 24 corners on a radius of 8.
    private static readonly double Round = 12 * 8 * 8 * Math.Sin(2 * Math.PI / 24);

    [Fact]
    public void Groove_as_wide_as_the_board_leaves_a_thinner_board()
    {
        var solid = Build(new BoxCut(new(0, 0, 15), Size));
        Assert.Equal((600 * 300 * 15, 8, 6), (solid.Volume, solid.Vertices.Count, solid.Faces.Count));
    }

    [Fact]
    public void Rabbet_flush_with_three_faces_leaves_an_angle()
    {
        var solid = Build(new BoxCut(new(0, 290, 12), Size));
        Assert.Equal(Whole - (600 * 10 * 8), solid.Volume);
        Assert.Equal((2 * 600 * 300) + (2 * 600 * 20) + (2 * ((300 * 20) - (10 * 8))), solid.Area);
        Assert.Equal((12, 8), (solid.Vertices.Count, solid.Faces.Count));
    }

    [Fact]
    public void Pocket_flush_with_the_far_face_is_a_hole_through()
    {
        var solid = Build(new BoxCut(new(100, 100, 0), new(200, 200, 20)));
        Assert.Equal((Whole - (100 * 100 * 20), 0, 10), (solid.Volume, solid.Euler(), solid.Faces.Count));
    }

    [Fact]
    public void Two_cuts_that_share_a_face_are_one()
    {
        var solid = Build(
            new BoxCut(new(100, 0, 12), new(110, 300, 20)),
            new BoxCut(new(110, 0, 12), new(120, 300, 20))
        );
        Assert.Equal((Whole - (20 * 300 * 8), 16, 10), (solid.Volume, solid.Vertices.Count, solid.Faces.Count));
        Assert.False(solid.TouchesItself);
    }

    [Fact]
    public void Two_cuts_that_share_part_of_a_face_open_into_each_other()
    {
        var solid = Build(
            new BoxCut(new(100, 0, 12), new(110, 300, 20)),
            new BoxCut(new(110, 0, 6), new(120, 300, 16))
        );
        Assert.Equal(Whole - (10 * 300 * 8) - (10 * 300 * 10), solid.Volume);
        Assert.Equal((1, false, 2), (solid.PieceCount, solid.TouchesItself, solid.Euler()));
    }

    // A groove and a tunnel under its corner: the material left and right of that edge meets in it alone.
    [Fact]
    public void Two_cuts_that_share_an_edge_leave_material_that_touches_there()
    {
        var solid = Build(
            new BoxCut(new(100, 0, 12), new(110, 300, 20)),
            new BoxCut(new(110, 0, 4), new(120, 300, 12))
        );
        Assert.Equal(Whole - (2 * 10 * 300 * 8), solid.Volume);
        Assert.Equal((1, true), (solid.PieceCount, solid.TouchesItself));
    }

    // A pocket and a void under its corner.
    [Fact]
    public void Two_cuts_that_share_a_corner_touch_there()
    {
        var solid = Build(
            new BoxCut(new(100, 100, 12), new(110, 110, 20)),
            new BoxCut(new(110, 110, 4), new(120, 120, 12))
        );
        Assert.Equal(Whole - (2 * 10 * 10 * 8), solid.Volume);
        Assert.Equal((1, true, 2), (solid.PieceCount, solid.TouchesItself, solid.Shells()));
    }

    [Fact]
    public void Bore_tangent_to_a_groove_touches_its_wall_along_a_line()
    {
        // Half as deep as the groove: between the two the board is not parted.
        var solid = Build(
            new BoxCut(new(108, 0, 10), new(120, 300, 20)),
            new BoreCut(Frame.Identity with { Origin = new(100, 100, 15) }, 8, 5, 24)
        );
        Assert.Equal(Whole - (12 * 300 * 10) - (Round * 5), solid.Volume, 1e-6);
        Assert.Equal((1, true), (solid.PieceCount, solid.TouchesItself));
    }

    [Fact]
    public void Bore_on_the_edge_of_a_board_takes_a_half_and_on_its_corner_a_quarter()
    {
        var half = Build(new BoreCut(Frame.Identity with { Origin = new(100, 0, 0) }, 8, 20, 24));
        var quarter = Build(new BoreCut(Frame.Identity, 8, 20, 24));
        Assert.Equal(Whole - (Round * 20 / 2), half.Volume, 1e-6);
        Assert.Equal(Whole - (Round * 20 / 4), quarter.Volume, 1e-6);
    }

    // A dowel's hole from one board into the next, each seeing it from its own side.
    [Fact]
    public void Bore_through_the_shared_face_of_two_boards_takes_its_part_of_each()
    {
        var bore = new BoreCut(new(new(580, 150, 10), new(0, 1, 0), new(0, 0, 1), new(1, 0, 0)), 8, 50, 24);
        var left = Build(bore);
        var right = Build(bore with { Frame = bore.Frame with { Origin = new(-20, 150, 10) } });
        Assert.Equal(Whole - (Round * 20), left.Volume, 1e-6);
        Assert.Equal(Whole - (Round * 30), right.Volume, 1e-6);
        var (a, b) = (
            new Placed(left, Frame.Identity),
            new Placed(right, Frame.Identity with { Origin = new(600, 0, 0) })
        );
        Assert.Null(Pair.Overlap(a, b));
        Assert.Equal(0, Pair.Gap(a, b, 1)!.Distance);
    }

    // Along the shared face each board has half of it.
    [Fact]
    public void Bore_along_the_shared_face_of_two_boards_takes_half_of_each()
    {
        var bore = new BoreCut(new(new(600, -5, 10), new(1, 0, 0), new(0, 0, -1), new(0, 1, 0)), 8, 400, 24);
        Assert.Equal(Whole - (Round * 300 / 2), Build(bore).Volume, 1e-6);
        Assert.Equal(
            Whole - (Round * 300 / 2),
            Build(bore with { Frame = bore.Frame with { Origin = new(0, -5, 10) } }).Volume,
            1e-6
        );
    }

    [Fact]
    public void Cut_that_removes_everything_leaves_nothing_flush_or_overshot()
    {
        foreach (var cut in (BoxCut[])[new(default, Size), new(new(-1, -1, -1), Size + new Vec3(1, 1, 1))])
        {
            var solid = Build(cut);
            Assert.Equal((0, 0, 0.0), (solid.PieceCount, solid.Triangles.Count, solid.Volume));
        }
    }

    [Fact]
    public void Cut_that_removes_nothing_leaves_the_blank()
    {
        Cut[] cuts =
        [
            new BoxCut(new(700, 0, 0), new(800, 300, 20)),
            new BoxCut(new(600, 300, 0), new(700, 400, 20)),
            new BoxCut(new(600, 300, 20), new(700, 400, 40)),
            new BoxCut(new(100, 0, 20), new(200, 300, 40)),
            new BoxCut(new(100, 0, 10), new(100, 300, 20)),
        ];
        var solid = Build(cuts);
        Assert.Equal((Whole, 8, 12), (solid.Volume, solid.Vertices.Count, solid.Triangles.Count / 3));
        Assert.False(solid.TouchesItself);
    }

    [Fact]
    public void Cut_that_splits_a_board_leaves_two_pieces()
    {
        var solid = Build(new BoxCut(new(200, 0, 0), new(203, 300, 20)));
        Assert.Equal((2, Whole - (3 * 300 * 20), 2), (solid.PieceCount, solid.Volume, solid.Shells()));
    }

    // Two cuts that only together part the board.
    [Fact]
    public void Two_cuts_from_both_sides_that_meet_in_one_plane_split_a_board()
    {
        var solid = Build(new BoxCut(new(200, 0, 0), new(203, 300, 8)), new BoxCut(new(200, 0, 8), new(203, 300, 20)));
        Assert.Equal(2, solid.PieceCount);
    }

    [Fact]
    public void Wall_of_a_bore_is_shaded_towards_its_axis_at_each_corner()
    {
        var (sin, cos) = Math.SinCos(Math.PI / 12);
        Cut[] bores =
        [
            new BoreCut(Frame.Identity with { Origin = new(100, 100, 5) }, 8, 30, 24),
            new BoreCut(new(new(300, 150, -10), new(1, 0, 0), new(0, cos, -sin), new(0, sin, cos)), 8, 60, 24),
            // Through the edge of the board: no lone bore.
            new BoreCut(Frame.Identity with { Origin = new(500, 0, 5) }, 8, 30, 24),
        ];
        var solid = Build(bores);
        var count = 0;
        foreach (var face in solid.Faces.Where(face => face.Surface is CylinderSurface))
        {
            var frame = ((BoreCut)bores[face.Cut]).Frame;
            for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i++)
            {
                var p = solid.Vertices[solid.Triangles[i]];
                var arm = p - frame.Origin;
                var across = arm - (frame.W * Vec3.Dot(arm, frame.W));
                var inwards = across * (-1 / Math.Sqrt(Vec3.Dot(across, across)));
                Assert.Equal(1, Vec3.Dot(inwards, face.Surface.NormalAt(p, face.Normal)), 1e-12);
                count++;
            }
        }

        Assert.True(count >= (24 + 24 + 12) * 6);
    }

    private static Solid Build(params Cut[] cuts) => SolidBuilder.Build(Size, cuts).Checked();
}
