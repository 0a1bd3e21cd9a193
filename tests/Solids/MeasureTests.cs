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
