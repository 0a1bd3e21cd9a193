namespace Dryfit.Solids.Tests;

/// <summary>Measures held against closed forms that any handbook of mechanics gives.</summary>
public sealed class MeasureTests
{
    private static readonly Solid Cube = SolidBuilder.Build(new(10, 10, 10), []);

    [Fact]
    public void Moments_of_a_board_are_those_of_a_box()
    {
        // Mass (b^2 + c^2) / 12 about each axis through the middle.
        var solid = SolidBuilder.Build(new(600, 300, 20), []);
        var moments = Moments.Of(solid);
        Assert.Equal(solid.Volume * ((300 * 300) + (20 * 20)) / 12, moments.Xx, 1e-3);
        Assert.Equal(solid.Volume * ((600 * 600) + (20 * 20)) / 12, moments.Yy, 1e-3);
        Assert.Equal(solid.Volume * ((600 * 600) + (300 * 300)) / 12, moments.Zz, 1e-3);
        Assert.Equal(0, moments.Xy, 1e-3);
        Assert.Equal(0, moments.Yz, 1e-3);
        Assert.Equal(0, moments.Zx, 1e-3);
    }

    [Fact]
    public void Centre_of_a_bored_board_is_that_of_board_less_bore()
    {
        var solid = SolidBuilder.Build(
            new(100, 60, 20),
            [new BoreCut(Frame.Identity with { Origin = new(20, 30, 12) }, 10, 20, 24)]
        );
        var bore = 12 * 10 * 10 * Math.Sin(2 * Math.PI / 24) * 8;
        var board = 100.0 * 60 * 20;
        Assert.Equal(((board * 50) - (bore * 20)) / (board - bore), solid.Centroid.X, 1e-9);
        Assert.Equal(30, solid.Centroid.Y, 1e-9);
        Assert.Equal(((board * 10) - (bore * 16)) / (board - bore), solid.Centroid.Z, 1e-9);
    }

    [Fact]
    public void Short_way_of_a_lone_tilted_bore_measures_what_its_triangles_do()
    {
        var (sin, cos) = Math.SinCos(25 * Math.PI / 180);
        var frame = new Frame(new(50, 20, -8), new(1, 0, 0), new(0, cos, -sin), new(0, sin, cos));
        var solid = SolidBuilder.Build(new(100, 60, 20), [new BoreCut(frame, 5, 20, 24)]).Checked();
        double volume = 0,
            area = 0;
        var moments = default(Vec3);
        for (var i = 0; i < solid.Triangles.Count; i += 3)
        {
            var (a, b, c) = (
                solid.Vertices[solid.Triangles[i]],
                solid.Vertices[solid.Triangles[i + 1]],
                solid.Vertices[solid.Triangles[i + 2]]
            );
            var cross = Vec3.Cross(b - a, c - a);
            var part = Vec3.Dot(a, cross) / 6;
            volume += part;
            area += Math.Sqrt(Vec3.Dot(cross, cross)) / 2;
            moments += (a + b + c) * (part / 4);
        }

        Assert.Equal(volume, solid.Volume, 1e-7);
        Assert.Equal(area, solid.Area, 1e-7);
        Assert.Equal(moments.X / volume, solid.Centroid.X, 1e-9);
        Assert.Equal(moments.Y / volume, solid.Centroid.Y, 1e-9);
        Assert.Equal(moments.Z / volume, solid.Centroid.Z, 1e-9);
    }

    [Fact]
    public void Round_volume_of_a_bored_board_has_true_cylinders()
    {
        var solid = SolidBuilder.Build(
            new(100, 60, 20),
            [new BoreCut(Frame.Identity with { Origin = new(20, 30, 12) }, 10, 20, 24)]
        );
        Assert.Equal((100 * 60 * 20) - (Math.PI * 100 * 8), Round.Volume(solid), 1e-6);
    }

    [Fact]
    public void Box_in_a_turned_frame_is_as_wide_as_the_diagonal()
    {
        var half = Math.Sqrt(0.5);
        var turned = new Frame(default, new(half, half, 0), new(-half, half, 0), new(0, 0, 1));
        var box = new Placed(Cube, Frame.Identity).BoundsIn(turned);
        Assert.Equal(10 * Math.Sqrt(2), box.Max.X - box.Min.X, 1e-12);
        Assert.Equal(10, box.Max.Z);
    }

    [Fact]
    public void Section_of_a_bored_board_has_an_outline_and_a_hole()
    {
        var solid = SolidBuilder.Build(
            new(100, 60, 20),
            [new BoreCut(Frame.Identity with { Origin = new(20, 30, 12) }, 10, 20, 24)]
        );
        var polygon = 12 * 10 * 10 * Math.Sin(2 * Math.PI / 24);
        var through = Section.At(new(solid, Frame.Identity), Frame.Identity with { Origin = new(0, 0, 15) });
        Assert.Equal(2, through.Count);
        Assert.Equal(6000 - polygon, Section.Area(through), 1e-9);
        var below = Section.At(new(solid, Frame.Identity), Frame.Identity with { Origin = new(0, 0, 5) });
        Assert.Equal(6000, Section.Area(below), 1e-9);
    }

    [Fact]
    public void Section_in_the_plane_of_a_face_takes_the_side_of_w()
    {
        var up = Section.At(new(Cube, Frame.Identity), Frame.Identity);
        Assert.Equal(100, Section.Area(up), 1e-12);
        Assert.Empty(Section.At(new(Cube, Frame.Identity), Frame.Identity with { Origin = new(0, 0, 10) }));
    }

    [Fact]
    public void Slide_past_a_part_comes_as_near_as_its_side_clearance()
    {
        var standing = new Placed(Cube, Frame.Identity with { Origin = new(30, 12.5, 0) });
        var least = Sweep.LeastGap(new(Cube, Frame.Identity), new Slide(new(60, 0, 0)), standing, 20, 0.01)!;
        Assert.Equal(2.5, least.Distance, 0.01);
        Assert.InRange(least.Share, 20.0 / 60 - 0.01, 40.0 / 60 + 0.01);
    }

    [Fact]
    public void Door_turning_on_its_corner_sweeps_its_diagonal()
    {
        // A door 10 by 10 turning by a right angle about its near left corner: its far corner goes round at 10 sqrt 2.
        var standing = new Placed(Cube, Frame.Identity with { Origin = new(-5, (10 * Math.Sqrt(2)) + 1, 0) });
        var turn = new Turn(default, new(0, 0, 1), Math.PI / 2);
        var least = Sweep.LeastGap(new(Cube, Frame.Identity), turn, standing, 20, 0.001)!;
        Assert.Equal(1, least.Distance, 0.001);
        Assert.Equal(0.5, least.Share, 0.03);
    }

    [Fact]
    public void Slide_into_a_part_meets_it_and_one_away_from_it_does_not()
    {
        var standing = new Placed(Cube, Frame.Identity with { Origin = new(15, 0, 0) });
        Assert.Equal(
            0,
            Sweep.LeastGap(new(Cube, Frame.Identity), new Slide(new(20, 0, 0)), standing, 20, 0.01)!.Distance
        );
        Assert.Null(Sweep.LeastGap(new(Cube, Frame.Identity), new Slide(new(-20, 0, 0)), standing, 4, 0.01));
    }

    [Fact]
    public void Greatest_gap_of_a_slide_past_a_part_is_the_one_at_its_ends()
    {
        // 20 along and 2.5 aside at both ends of the way.
        var standing = new Placed(Cube, Frame.Identity with { Origin = new(30, 12.5, 0) });
        var (moving, slide) = (new Placed(Cube, Frame.Identity), new Slide(new(60, 0, 0)));
        var greatest = Sweep.GreatestGap(moving, slide, standing, 25, 0.01)!;
        Assert.Equal(Math.Sqrt((20 * 20) + (2.5 * 2.5)), greatest.Distance, 1e-12);
        Assert.Null(Sweep.GreatestGap(moving, slide, standing, 10, 0.01));
    }

    [Fact]
    public void Greatest_gap_of_a_turn_is_found_on_the_way()
    {
        // A rod along x turns half round about one end, over a wall whose top is 3 below the axis.
        var rod = new Placed(SolidBuilder.Build(new(10, 1, 1), []), Frame.Identity with { Origin = new(0, 0, -0.5) });
        var wall = new Placed(Cube, Frame.Identity with { Origin = new(-5, -13, -5) });
        var turn = new Turn(default, new(0, 0, 1), Math.PI);
        // Its lowest point is the axis until it is upright; then its other long side sinks, by its width of 1 at the end.
        Assert.Equal(3, Sweep.GreatestGap(rod, turn, wall, 50, 1e-3)!.Distance, 1e-3);
        Assert.Equal(2, Sweep.LeastGap(rod, turn, wall, 50, 1e-3)!.Distance, 1e-3);
    }

    [Fact]
    public void Slide_meets_the_first_of_others_exactly_and_not_what_it_slides_along()
    {
        Placed[] others =
        [
            new(Cube, Frame.Identity with { Origin = new(45, 0, 0) }),
            new(Cube, Frame.Identity with { Origin = new(30, 5, 5) }),
            new(SolidBuilder.Build(new(100, 10, 10), []), Frame.Identity with { Origin = new(0, -10, 0) }),
        ];
        var slide = new Slide(new(60, 0, 0));
        var meeting = Sweep.FirstMeeting(new(Cube, Frame.Identity), slide, others, 0.1)!;
        Assert.Equal((1, 20.0 / 60), (meeting.Other, meeting.Share));
        Assert.Equal(30, meeting.At.X);
        Assert.Null(Sweep.FirstMeeting(new(Cube, Frame.Identity), slide, [others[2]], 0.1));
    }

    [Fact]
    public void Turn_meets_a_corner_where_the_door_face_comes_to_it()
    {
        // The corner (5, 12) is 13 from the axis at atan(12 / 5); the face 10 off the axis comes to it when 13 sin = 10.
        var standing = new Placed(Cube, Frame.Identity with { Origin = new(-5, 12, 0) });
        var turn = new Turn(default, new(0, 0, 1), Math.PI / 2);
        var share = (Math.Atan2(12, 5) - Math.Asin(10 / 13.0)) / (Math.PI / 2);
        var meeting = Sweep.FirstMeeting(new(Cube, Frame.Identity), turn, [standing], 0.001)!;
        Assert.InRange(meeting.Share, share, share + 0.001);
        Assert.Equal(5, meeting.At.X, 0.01);
        Assert.Equal(12, meeting.At.Y, 0.01);
        // The far corner goes round at 10 sqrt 2: past that it meets nothing.
        var clear = new Placed(Cube, Frame.Identity with { Origin = new(-5, (10 * Math.Sqrt(2)) + 0.01, 0) });
        Assert.Null(Sweep.FirstMeeting(new(Cube, Frame.Identity), turn, [clear], 0.001));
    }

    [Fact]
    public void Door_that_only_touches_what_it_turns_beside_meets_nothing()
    {
        // It stands on a floor all the way.
        var floor = new Placed(
            SolidBuilder.Build(new(100, 100, 10), []),
            Frame.Identity with
            {
                Origin = new(-50, -50, -10),
            }
        );
        var turn = new Turn(default, new(0, 0, 1), Math.PI / 2);
        Assert.Null(Sweep.FirstMeeting(new(Cube, Frame.Identity), turn, [floor], 0.5));
    }

    [Fact]
    public void Room_of_a_turning_door_reaches_to_its_diagonal_and_that_of_a_slide_is_both_its_ends()
    {
        var door = new Placed(Cube, Frame.Identity);
        var room = Sweep.Room(door, new Turn(default, new(0, 0, 1), Math.PI / 2));
        Assert.Equal(-10, room.Min.X, 1e-12);
        Assert.Equal(10, room.Max.X, 1e-12);
        Assert.Equal(0, room.Min.Y, 1e-12);
        Assert.Equal(10 * Math.Sqrt(2), room.Max.Y, 1e-12);
        Assert.Equal((0, 10), (room.Min.Z, room.Max.Z));
        Assert.Equal(new Box(new(-3, 0, 0), new(10, 10, 14)), Sweep.Room(door, new Slide(new(-3, 0, 4))));
    }

    [Fact]
    public void Section_across_rounds_has_true_arcs_and_holes()
    {
        var round = Profile.From(0, 0).LineTo(8, 0).ArcAround(new(8, 8), new(0, 8), Bend.Right, 7).Close();
        var solid = SolidBuilder.Build(
            new(100, 60, 20),
            [
                new BoreCut(Frame.Identity with { Origin = new(40, 30, 12) }, 10, 20, 24),
                new PrismCut(Frame.Identity, round, 20),
            ]
        );
        var turned = new Frame(new(500, 3, 4), new(0, 1, 0), new(0, 0, 1), new(1, 0, 0));
        var plane = turned with { Origin = turned.ToWorld(new(0, 0, 15)) };
        var section = Section.At(new(solid, turned), plane);
        Assert.Equal(2, section.Count);
        Assert.Equal(6000 - (100 * Math.PI) - (64 - (16 * Math.PI)), Section.RoundArea(section), 1e-9);
        Assert.Equal(2, section.Single(outline => outline.Area < 0).Sides.Count);
        var around = section.Single(outline => outline.Area > 0);
        var arc = Assert.Single(around.Sides.OfType<ArcSide>());
        Assert.Equal((8, Bend.Left, 7), (arc.Radius, arc.Bend, arc.Chords));
        Assert.Equal(8, arc.Centre.X, 1e-9);
        Assert.Equal(8, arc.Centre.Y, 1e-9);
        Assert.Equal(5, around.Sides.Count);
    }

    [Fact]
    public void Section_where_a_groove_ends_a_bore_keeps_its_whole_facets_as_an_arc()
    {
        var solid = SolidBuilder.Build(
            new(100, 60, 20),
            [
                new BoreCut(Frame.Identity with { Origin = new(40, 30, 0) }, 10, 20, 24),
                new BoxCut(new(44, 0, 0), new(50, 60, 20)),
            ]
        );
        var section = Section.At(new(solid, Frame.Identity), Frame.Identity with { Origin = new(0, 0, 10) });
        // Left of x = 4 from the axis: the disc less its segment, cut off at the chord height 4 of radius 10.
        var segment = (100 * Math.Acos(0.4)) - (4 * Math.Sqrt(100 - 16));
        Assert.Equal((94 * 60) - ((100 * Math.PI) - segment), Section.RoundArea(section), 0.2);
        Assert.Equal(solid.Volume / 20, Section.Area(section), 1e-9);
    }

    // Right-angled triangle b x h: about its middle the second moments are b h^3 / 36 and h b^3 / 36, the product of inertia
    // -b^2 h^2 / 72 with the right angle at the low corner (any handbook of mechanics).
    [Fact]
    public void Moments_of_a_wedge_have_the_product_of_inertia_of_its_triangle()
    {
        var frame = Frame.Identity;
        var wedge = SolidBuilder.Build(
            new(30, 40, 10),
            [new PrismCut(frame, [new(30, 0), new(30, 40), new(0, 40)], 10)]
        );
        var moments = Moments.Of(wedge);
        Assert.Equal(-30.0 * 30 * 40 * 40 / 72 * 10, moments.Xy, 1e-6);
        var (alongX, alongY, volume) = (40.0 * 27000 / 36 * 10, 30.0 * 64000 / 36 * 10, 6000.0);
        Assert.Equal(alongX + alongY, moments.Zz, 1e-6);
        Assert.Equal(alongY + (volume * 100 / 12), moments.Xx, 1e-6);
        Assert.Equal(alongX + (volume * 100 / 12), moments.Yy, 1e-6);
        Assert.Equal(0, moments.Yz, 1e-6);
    }

    [Fact]
    public void Board_that_touches_itself_says_so_and_a_sound_one_does_not()
    {
        var corner = SolidBuilder.Build(
            new(20, 20, 10),
            [new BoxCut(default, new(10, 10, 10)), new BoxCut(new(10, 10, 0), new(20, 20, 10))]
        );
        Assert.True(corner.TouchesItself);
        Assert.False(SolidBuilder.Build(new(20, 20, 10), [new BoxCut(default, new(10, 10, 10))]).TouchesItself);
    }
}
