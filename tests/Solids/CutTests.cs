namespace Dryfit.Solids.Tests;

/// <summary>Cuts whose result can be worked out by hand: volume from width times height times length, surface likewise.</summary>
public sealed class CutTests
{
    private static readonly Vec3 Size = new(600, 300, 20);

    [Fact]
    public void Plain_board_is_its_blank()
    {
        var solid = Build();
        Assert.Equal(600 * 300 * 20, solid.Volume);
        Assert.Equal(2 * ((600 * 300) + (600 * 20) + (300 * 20)), solid.Area);
        Assert.Equal(
            (8, 12, 6, 1),
            (solid.Vertices.Count, solid.Triangles.Count / 3, solid.Faces.Count, solid.PieceCount)
        );
        Assert.Equal(new Vec3(300, 150, 10), solid.Centroid);
        Assert.All(solid.Faces, face => Assert.Equal(-1, face.Cut));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-7)]
    public void Dado_as_wide_as_the_board_is_the_same_flush_or_overshot(double start)
    {
        var solid = Build(new BoxCut(new(100, start, 12), new(120, 300 - start, 20 - start)));
        Assert.Equal((600 * 300 * 20) - (20 * 300 * 8), solid.Volume);
        Assert.Equal((2 * ((600 * 300) + (600 * 20) + (300 * 20))) + (2 * 8 * 300) - (2 * 20 * 8), solid.Area);
        Assert.Equal((16, 28, 10), (solid.Vertices.Count, solid.Triangles.Count / 3, solid.Faces.Count));
        Assert.Equal(3, solid.Faces.Count(face => face.Cut == 0));
    }

    [Fact]
    public void Two_cuts_side_by_side_are_one_wide_one()
    {
        var two = Build(new BoxCut(new(100, 0, 12), new(110, 300, 20)), new BoxCut(new(110, 0, 12), new(120, 300, 20)));
        var one = Build(new BoxCut(new(100, 0, 12), new(120, 300, 20)));
        Assert.Equal(one.Volume, two.Volume);
        Assert.Equal(one.Area, two.Area);
        Assert.Equal(one.Triangles.Count, two.Triangles.Count);
        Assert.Equal(one.Faces.Count, two.Faces.Count);
    }

    [Fact]
    public void Cut_that_takes_everything_leaves_nothing()
    {
        var solid = Build(new BoxCut(default, Size));
        Assert.Equal((0, 0, 0.0, 0.0), (solid.PieceCount, solid.Faces.Count, solid.Volume, solid.Area));
    }

    [Fact]
    public void Cut_that_only_touches_takes_nothing()
    {
        var solid = Build(new BoxCut(new(600, 0, 0), new(700, 300, 20)), new BoxCut(new(0, 0, 20), new(600, 300, 30)));
        Assert.Equal(600 * 300 * 20, solid.Volume);
        Assert.Equal(12, solid.Triangles.Count / 3);
    }

    [Fact]
    public void Cut_through_makes_two_pieces()
    {
        var solid = Build(new BoxCut(new(100, 0, 0), new(120, 300, 20)));
        Assert.Equal(2, solid.PieceCount);
        Assert.Equal(580 * 300 * 20, solid.Volume);
    }

    [Fact]
    public void Cut_inside_leaves_a_void_and_one_piece()
    {
        var solid = Build(new BoxCut(new(100, 100, 5), new(200, 200, 15)));
        Assert.Equal(1, solid.PieceCount);
        Assert.Equal((600 * 300 * 20) - (100 * 100 * 10), solid.Volume);
        Assert.Equal(4, solid.Euler());
    }

    [Fact]
    public void Quarters_that_meet_in_an_edge_are_two_pieces_with_their_own_corners()
    {
        var solid = Build(new BoxCut(default, new(300, 150, 20)), new BoxCut(new(300, 150, 0), Size));
        Assert.Equal(2, solid.PieceCount);
        Assert.Equal(16, solid.Vertices.Count);
        Assert.Equal(300 * 300 * 20, solid.Volume);
    }

    [Fact]
    public void Cuts_that_meet_in_a_corner_keep_the_surface_two_sided()
    {
        var solid = Build(new BoxCut(default, new(300, 150, 10)), new BoxCut(new(300, 150, 10), Size));
        Assert.Equal(1, solid.PieceCount);
        Assert.Equal((600 * 300 * 20) - (2 * 300 * 150 * 10), solid.Volume);
    }

    [Fact]
    public void Bore_is_a_prism_on_its_radius_with_a_round_wall()
    {
        var solid = Build(new BoreCut(Frame.Identity with { Origin = new(100, 100, 5) }, 8, 30, 24));
        var polygon = 12 * 8 * 8 * Math.Sin(2 * Math.PI / 24);
        Assert.Equal((600 * 300 * 20) - (polygon * 15), solid.Volume, 1e-6);
        var walls = solid.Faces.Where(face => face.Surface is CylinderSurface).ToList();
        Assert.Equal(24, walls.Count);
        Assert.All(walls, wall => Assert.Equal(new CylinderSurface(new(100, 100, 5), new(0, 0, 1), 8), wall.Surface));
        Assert.Equal(24 + 1 + 6, solid.Faces.Count);
    }

    [Fact]
    public void Bore_through_is_a_tunnel()
    {
        Assert.Equal(0, Build(new BoreCut(Frame.Identity with { Origin = new(100, 100, 0) }, 8, 20, 24)).Euler());
    }

    [Fact]
    public void Bore_tangent_to_a_groove_only_touches_it()
    {
        // The bore's first corner lies on U, exactly on the groove's wall.
        var groove = new BoxCut(new(108, 0, 0), new(120, 300, 20));
        var solid = Build(groove, new BoreCut(Frame.Identity with { Origin = new(100, 100, 0) }, 8, 20, 24));
        var polygon = 12 * 8 * 8 * Math.Sin(2 * Math.PI / 24);
        Assert.Equal((588 * 300 * 20) - (polygon * 20), solid.Volume, 1e-6);
        Assert.Equal(2, solid.PieceCount);
    }

    [Fact]
    public void Bore_on_the_edge_of_the_board_takes_a_half()
    {
        var solid = Build(new BoreCut(Frame.Identity with { Origin = new(100, 0, 0) }, 8, 20, 24));
        var polygon = 12 * 8 * 8 * Math.Sin(2 * Math.PI / 24);
        Assert.Equal((600 * 300 * 20) - (polygon * 20 / 2), solid.Volume, 1e-6);
    }

    [Fact]
    public void Two_bores_in_one_place_are_one()
    {
        var bore = new BoreCut(Frame.Identity with { Origin = new(100, 100, 5) }, 8, 30, 24);
        Assert.Equal(Build(bore).Triangles.Count, Build(bore, bore).Triangles.Count);
        Assert.Equal(Build(bore).Volume, Build(bore, bore).Volume, 1e-9);
    }

    [Fact]
    public void Mitre_through_the_edge_of_the_blank_leaves_a_sharp_edge()
    {
        var frame = new Frame(default, new(0, 0, 1), new(1, 0, 0), new(0, 1, 0));
        var solid = Build(new PrismCut(frame, [new(-2, -2), new(22, -2), new(-2, 22)], 300));
        Assert.Equal((600 * 300 * 20) - (20 * 20 / 2.0 * 300), solid.Volume);
        Assert.Equal((8, 12), (solid.Vertices.Count, solid.Triangles.Count / 3));
    }

    [Fact]
    public void Moulding_with_hollow_outline_takes_its_area_times_its_length()
    {
        var frame = new Frame(new(0, 0, 20), new(0, 1, 0), new(0, 0, 1), new(1, 0, 0));
        var solid = Build(new PrismCut(frame, [new(0, 0), new(0, -10), new(4, -6), new(8, -6), new(12, 0)], 600));
        // Shoelace: 60 + 4 * 6 / ... worked by strips: 0..4 falls from 10 to 6, 4..8 is 6, 8..12 falls from 6 to 0.
        Assert.Equal((600 * 300 * 20) - (((4 * 8) + (4 * 6) + (4 * 3)) * 600), solid.Volume);
    }

    [Fact]
    public void Tilted_bore_takes_its_length_within_the_board()
    {
        // Straight through from face to face at 30 degrees to the normal: the axis within is thickness / cos 30.
        var (sin, cos) = (Math.Sin(Math.PI / 6), Math.Cos(Math.PI / 6));
        var frame = new Frame(
            new Vec3(300, 150, 10) - (new Vec3(0, sin, cos) * 40),
            new(1, 0, 0),
            new(0, cos, -sin),
            new(0, sin, cos)
        );
        var solid = Build(new BoreCut(frame, 5, 80, 24));
        var polygon = 12 * 5 * 5 * Math.Sin(2 * Math.PI / 24);
        Assert.Equal((600 * 300 * 20) - (polygon * 20 / cos), solid.Volume, 1e-6);
        Assert.Equal(0, solid.Euler());
    }

    [Fact]
    public void Blank_without_thickness_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SolidBuilder.Build(new(600, 300, 0), []));
        Assert.Throws<ArgumentOutOfRangeException>(() => SolidBuilder.Build(new(double.NaN, 300, 20), []));
    }

    [Fact]
    public void Cut_that_is_no_shape_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Build(new BoxCut(default, new(10, double.NaN, 10))));
        Assert.Throws<ArgumentException>(() => Build(new BoreCut(Frame.Identity, double.PositiveInfinity, 10, 24)));
        Assert.Throws<ArgumentException>(() => Build(new BoreCut(Frame.Identity with { W = default }, 5, 10, 24)));
        Assert.Throws<ArgumentException>(() => Build(new BoreCut(Frame.Identity, 50, 10, 2)));
        Vec2[] bowTie = [new(10, 10), new(50, 50), new(50, 10), new(10, 50)];
        Assert.Throws<ArgumentException>(() => Build(new PrismCut(Frame.Identity, bowTie, 10)));
    }

    [Fact]
    public void Built_on_two_cores_in_any_order_the_solids_are_the_same_to_the_last_bit()
    {
        var boards = RandomBoards.Any.Take(300).ToList();
        var alone = boards.ConvertAll(board => SolidBuilder.Build(board.Size, board.Cuts));
        var together = new Solid[boards.Count];
        Parallel.For(
            0,
            boards.Count,
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            i => together[i] = SolidBuilder.Build(boards[i].Size, boards[i].Cuts)
        );
        for (var i = 0; i < boards.Count; i++)
        {
            Assert.Equal(alone[i].Vertices, together[i].Vertices);
            Assert.Equal(alone[i].Triangles, together[i].Triangles);
            Assert.Equal(alone[i].Volume, together[i].Volume);
        }
    }

    private static Solid Build(params Cut[] cuts) => SolidBuilder.Build(Size, cuts).Checked();
}
