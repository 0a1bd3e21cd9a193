namespace Dryfit.Solids.Tests;

/// <summary>Profiles with arcs and curves, held against circle geometry (any handbook: sectors, segments, chord and rise).</summary>
public sealed class ProfileTests
{
    private static readonly Frame AlongX = new(default, new(0, 1, 0), new(0, 0, 1), new(1, 0, 0));

    [Fact]
    public void Corners_alone_make_a_profile_of_straight_sides()
    {
        Profile triangle = [new(0, 0), new(30, 0), new(0, 40)];
        Assert.True(triangle.IsStraight);
        Assert.Equal([0, 1, 2], Enumerable.Range(0, 3).Select(triangle.SideOf));
        Assert.Equal(600, triangle.Area);
        Assert.Equal(triangle, Profile.From(0, 0).LineTo(30, 0).LineTo(0, 40).Close());
        Assert.Equal(triangle, Profile.From(0, 0).LineTo(30, 0).LineTo(0, 40).LineTo(0, 0).Close());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(12)]
    public void Quarter_of_a_disc_has_a_quarter_of_its_area_however_many_chords(int chords)
    {
        var quarter = Profile.From(0, 0).LineTo(40, 0).ArcTo(new(0, 40), 40, Bend.Left, chords).Close();
        Assert.Equal(Math.PI * 400, quarter.Area, 1e-9);
        Assert.Equal(chords + 2, quarter.Count);
        var arc = Assert.IsType<ArcSide>(quarter.Sides[1]);
        Assert.Equal(Math.PI / 2, arc.Angle, 1e-14);
        Assert.Equal(0, arc.Centre.X, 1e-13);
        Assert.Equal(0, arc.Centre.Y, 1e-13);
        Assert.All(
            quarter.Skip(1).Take(chords + 1),
            p => Assert.Equal(40, Math.Sqrt((p.X * p.X) + (p.Y * p.Y)), 1e-12)
        );
        Assert.Contains(new Vec2(40, 0), quarter);
        Assert.Contains(new Vec2(0, 40), quarter);
    }

    [Fact]
    public void Longer_arc_of_a_radius_is_the_rest_of_the_circle()
    {
        var three = Profile.From(40, 0).ArcTo(new(0, -40), 40, Bend.Left, 9, isLonger: true).LineTo(0, 0).Close();
        Assert.Equal(Math.PI * 1200, three.Area, 1e-9);
        Assert.Equal(3 * Math.PI / 2, ((ArcSide)three.Sides[0]).Angle, 1e-13);
    }

    [Fact]
    public void Whole_circle_is_two_half_arcs()
    {
        var disc = Profile
            .From(10, 0)
            .ArcTo(new(-10, 0), 10, Bend.Left, 8)
            .ArcAround(new(0, 0), new(10, 0), Bend.Left, 8)
            .Close();
        Assert.Equal(100 * Math.PI, disc.Area, 1e-10);
        Assert.Equal(16, disc.Count);
    }

    [Fact]
    public void Arch_by_its_rise_has_the_radius_of_chord_and_rise()
    {
        // Chord 8, rise 2: half x half = rise x (2 r - rise) gives r = 5; the centre lies 3 below the chord.
        var arch = Profile.From(4, 0).ArchTo(new(-4, 0), 2, Bend.Left, 10).Close();
        var arc = (ArcSide)arch.Sides[0];
        Assert.Equal((5.0, 0.0, -3.0), (arc.Radius, arc.Centre.X, arc.Centre.Y));
        Assert.Equal(new Vec2(0, 2), arch[5]);
        // Segment: r^2 acos((r - h) / r) - (r - h) sqrt(2 r h - h^2).
        Assert.Equal((25 * Math.Acos(0.6)) - (3 * 4), arch.Area, 1e-12);
    }

    [Fact]
    public void Arcs_that_mirror_each_other_have_corners_that_do()
    {
        var one = Profile.From(3, 1).ArcTo(new(47, 29), 31, Bend.Left, 11).LineTo(3, 29).Close();
        var other = Profile.From(-3, 1).ArcTo(new(-47, 29), 31, Bend.Right, 11).LineTo(-3, 29).Close();
        var back = Profile.From(47, 29).ArcTo(new(3, 1), 31, Bend.Right, 11).LineTo(3, 29).Close();
        Assert.Equal(one.Select(p => new Vec2(-p.X, p.Y)), other);
        Assert.Equal(one.Take(12), back.Take(12).Reverse());
    }

    [Fact]
    public void Arcs_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Profile.From(0, 0).ArcTo(new(10, 0), 4.99, Bend.Left, 8));
        Assert.Throws<ArgumentException>(() => Profile.From(0, 0).ArcTo(new(0, 0), 5, Bend.Left, 8));
        Assert.Throws<ArgumentException>(() => Profile.From(0, 0).ArcTo(new(10, 0), double.NaN, Bend.Left, 8));
        Assert.Throws<ArgumentException>(() => Profile.From(0, 0).ArchTo(new(10, 0), 0, Bend.Left, 8));
        Assert.Throws<ArgumentException>(() => Profile.From(0, 0).ArcAround(new(0, 9), new(10, 0), Bend.Left, 8));
        Assert.Throws<ArgumentException>(() => Profile.From(0, 0).LineTo(double.PositiveInfinity, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Profile.From(0, 0).ArcTo(new(10, 0), 6, Bend.Left, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Profile.From(0, 0).ArcTo(new(10, 0), 6, Bend.Left, 1 << 20));
    }

    [Fact]
    public void Arc_so_flat_that_it_is_a_line_does_no_harm()
    {
        var flat = Profile.From(30, 0).ArcTo(new(10, 0), 1e18, Bend.Left, 5).LineTo(0, 0).LineTo(0, 9).Close();
        var solid = SolidBuilder.Build(new(50, 20, 10), [new PrismCut(Frame.Identity, flat, 10)]).Checked();
        Assert.Equal((50 * 20 * 10) - (30 * 9 / 2 * 10), solid.Volume, 1e-6);
    }

    [Fact]
    public void Edge_rounded_over_is_a_round_of_the_true_radius()
    {
        var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(AlongX, RoundedEdge(8), 500)]).Checked();
        var taken = (64 - (Math.PI * 16)) * 500;
        Assert.Equal((500 * 100 * 20) - taken, Round.Volume(solid), 1e-6);
        var rounds = solid.Faces.Where(face => face.Surface is CylinderSurface).ToList();
        Assert.Equal(8, rounds.Count);
        Assert.All(rounds, face => Assert.Equal((0, 1), (face.Cut, face.Side)));
        Assert.Single(rounds.Select(face => face.Surface).Distinct());
        var round = (CylinderSurface)rounds[0].Surface;
        Assert.Equal((8.0, new Vec3(1, 0, 0)), (round.Radius, round.AxisDirection));
        Assert.Equal(new Vec3(0, 8, 8), round.AxisPoint);
        // It meets the edge's two flats smoothly: straight down and straight to the front.
        Assert.Equal(new Vec3(0, 0, -1), round.NormalAt(new(0, 8, 0), rounds[0].Normal));
        Assert.Equal(new Vec3(0, -1, 0), round.NormalAt(new(0, 0, 8), rounds[^1].Normal));
    }

    [Fact]
    public void Cove_is_a_hollow_round()
    {
        var cove = Profile.From(0, 0).LineTo(8, 0).ArcAround(new(0, 0), new(0, 8), Bend.Left, 8).Close();
        var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(AlongX, cove, 500)]).Checked();
        Assert.Equal((500 * 100 * 20) - (Math.PI * 16 * 500), Round.Volume(solid), 1e-6);
        var round = solid.Faces.First(face => face.Surface is CylinderSurface);
        var half = Math.Sqrt(0.5);
        var normal = round.Surface.NormalAt(new(0, 8 * half, 8 * half), round.Normal);
        Assert.Equal(-half, normal.Y, 1e-12);
        Assert.Equal(-half, normal.Z, 1e-12);
    }

    // A cyma: a hollow quarter and a round quarter of one radius, whose bulges make up for each other.
    [Fact]
    public void Ogee_keeps_both_its_arcs_and_takes_its_area_times_its_length()
    {
        var ogee = Profile
            .From(0, 0)
            .LineTo(12, 0)
            .ArcTo(new(6, 6), 6, Bend.Right, 6)
            .ArcTo(new(0, 12), 6, Bend.Left, 6)
            .Close();
        Assert.Equal(72, ogee.Area, 1e-9);
        var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(AlongX, ogee, 500)]).Checked();
        Assert.Equal((500 * 100 * 20) - (72 * 500), Round.Volume(solid), 1e-6);

        // Where the one passes into the other a stretch of each would lie in one straight line: the round one gets one more.
        var sides = solid.Faces.Where(face => face.Cut == 0).Select(face => face.Side).Order().ToList();
        Assert.Equal([.. Enumerable.Repeat(1, 6), .. Enumerable.Repeat(2, 7)], sides);
        Assert.Equal(2, solid.Faces.Select(face => face.Surface).OfType<CylinderSurface>().Distinct().Count());
    }

    [Fact]
    public void Rail_arched_below_loses_the_segment_of_chord_and_rise()
    {
        var frame = new Frame(default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));
        var arch = Profile.From(450, 0).ArchTo(new(50, 0), 40, Bend.Left, 24).Close();
        var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(frame, arch, 20)]).Checked();
        var radius = ((200.0 * 200 / 40) + 40) / 2;
        var rest = radius - 40;
        var segment = (radius * radius * Math.Acos(rest / radius)) - (rest * 200);
        Assert.Equal((500 * 100 * 20) - (segment * 20), Round.Volume(solid), 1e-6);
    }

    [Fact]
    public void Curve_through_points_is_one_surface_with_smooth_normals()
    {
        // A quarter of an ellipse, 12 by 6; its normal at (x, y) goes as (x / 144, y / 36).
        var points = Enumerable
            .Range(0, 33)
            .Select(i => Math.SinCos(Math.PI * i / 64))
            .Select(turn => new Vec2(12 * turn.Cos, 6 * turn.Sin))
            .ToArray();
        var profile = Profile.From(0, 0).LineTo(points[0]).CurveTo(points).Close();
        var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(AlongX, profile, 500)]).Checked();
        var faces = solid.Faces.Where(face => face.Surface is SweptSurface).ToList();
        Assert.Equal(32, faces.Count);
        Assert.Single(faces.Select(face => face.Surface).Distinct());
        foreach (var face in faces)
        {
            var p = solid.Vertices[solid.Triangles[3 * face.FirstTriangle]];
            var normal = face.Surface.NormalAt(p, face.Normal);
            var (y, z) = (p.Y / 144, p.Z / 36);
            var length = Math.Sqrt((y * y) + (z * z));
            Assert.Equal(-y / length, normal.Y, 0.003);
            Assert.Equal(-z / length, normal.Z, 0.003);
        }
    }

    [Fact]
    public void Side_is_told_of_straight_outlines_given_either_way_round_too()
    {
        Vec2[] corners = [new(0, 0), new(20, 0), new(20, 6), new(10, 6), new(10, 12), new(0, 12)];
        foreach (var outline in (Vec2[][])[corners, [.. corners.Reverse()]])
        {
            var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(AlongX, outline, 500)]).Checked();
            foreach (var face in solid.Faces.Where(face => face.Cut == 0))
            {
                var side = new PrismCut(AlongX, outline, 500).Outline.Sides[face.Side];
                foreach (var i in Enumerable.Range(3 * face.FirstTriangle, 3 * face.TriangleCount))
                {
                    var p = solid.Vertices[solid.Triangles[i]];
                    Assert.InRange(p.Y, Math.Min(side.From.X, side.To.X), Math.Max(side.From.X, side.To.X));
                    Assert.InRange(p.Z, Math.Min(side.From.Y, side.To.Y), Math.Max(side.From.Y, side.To.Y));
                }
            }

            Assert.Equal(4, solid.Faces.Count(face => face.Cut == 0));
        }
    }

    // All stretches of a hollow arc are seen from one corner: pieces that all met there were too many for one line.
    [Theory]
    [InlineData(40)]
    [InlineData(200)]
    public void Corner_of_a_top_rounded_in_many_stretches_is_one_round(int chords)
    {
        var corner = Profile.From(0, 0).LineTo(60, 0).ArcAround(new(60, 60), new(0, 60), Bend.Right, chords).Close();
        var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(Frame.Identity, corner, 20)]).Checked();
        Assert.Equal((500 * 100 * 20) - ((3600 - (Math.PI * 900)) * 20), Round.Volume(solid), 1e-6);
        Assert.Equal((chords, 1), (solid.Faces.Count(face => face.Surface is CylinderSurface), solid.PieceCount));
    }

    // A bracket sawn out between two hollow arcs, in a frame at an angle to the board: 60 stretches each.
    [Fact]
    public void Tilted_cut_with_two_hollow_arcs_takes_its_area_times_its_length()
    {
        var (sin, cos) = Math.SinCos(20 * Math.PI / 180);
        var frame = new Frame(new(250, 50, -40), new(cos, 0, -sin), new(0, 1, 0), new(sin, 0, cos));
        var lens = Profile
            .From(-30, -30)
            .ArchTo(new(30, -30), 12, Bend.Right, 60)
            .LineTo(30, 30)
            .ArchTo(new(-30, 30), 12, Bend.Right, 60)
            .Close();
        var solid = SolidBuilder.Build(new(500, 100, 20), [new PrismCut(frame, lens, 200)]).Checked();
        // Cut by two parallel faces at a slant: the area of the section grows by 1 / cos.
        Assert.Equal((500 * 100 * 20) - (lens.Area * 20 / cos), Round.Volume(solid), 1e-6);
    }

    // Rounds one lower edge over: the square corner less a quarter of a disc.
    private static Profile RoundedEdge(double radius) =>
        Profile.From(0, 0).LineTo(radius, 0).ArcAround(new(radius, radius), new(0, radius), Bend.Right, 8).Close();
}
