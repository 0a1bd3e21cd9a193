using Dryfit.Casework;
using Dryfit.Findings;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

/// <summary>
/// The hand-made cupboard's door turns about (1, 0): its far front corner is 397 mm away, its far back corner 397.5 mm.
/// </summary>
public sealed class SwingTests
{
    [Fact]
    public void Door_with_room_about_it_opens_to_its_angle() => Cupboard.Sound().Inspect().IsClean();

    /// <summary>At 95 degrees the far corner stands at 1 + 397 cos 95 = -33.6; at -30 it has come to 94.5 degrees.</summary>
    [Theory]
    [InlineData(-34, null)]
    [InlineData(-30, 94)]
    public void Door_that_may_be_flung_against_a_wall_is_noted(decimal wall, int? degrees)
    {
        var bench = Cupboard.Sound();
        bench.AddRoom("left wall", Box(-300, -600, 0, wall, 0, 600));
        if (degrees is null)
            bench.Inspect().OpensFreely();
        else
            Assert.Equal(
                new MeasuredAngle("opens", degrees.Value, 95),
                bench.Inspect().Opening(DoorSwing.WantsStop).Measured
            );
    }

    /// <summary>
    /// A knob from 352 to 382 mm off the pin that stands off 25 mm: its corner is 382.8 mm away, 3.74 degrees before the face.
    /// A wall 16.5 mm beside the pin is met at acos(-16.5 / 382.8) - 3.74 = 88.7 degrees. At 90 degrees the corner stands 25 mm
    /// beside the pin: 8.5 mm further than the wall.
    /// </summary>
    [Fact]
    public void Pull_that_meets_the_wall_is_told_with_what_would_let_the_door_open()
    {
        var bench = Cupboard.Sound();
        bench.Knob("door-right-stile", 368, 0, 300, 30);
        bench.AddRoom("left wall", Box(-300, -600, 0, -15.5m, 0, 600));
        var finding = bench.Inspect().Opening(DoorSwing.StopsShort);
        Assert.Equal("The knob of the door meets the left wall before the door is open.", finding.Message);
        Assert.Equal(new MeasuredAngle("opens", 88, 95), finding.Measured);
        Assert.True(finding.Remedy!.Sure);
        Assert.Contains(
            "brings the left wall 9 mm further away, for 90 degrees",
            finding.Remedy.Text,
            StringComparison.Ordinal
        );
        Assert.Contains("a stop at 88 degrees", finding.Remedy.Text, StringComparison.Ordinal);
    }

    /// <summary>The nearest corner of the radiator lies atan(100 / 249) = 21.9 degrees from the shut door, 268 mm off the pin;
    /// the panel lies 7 mm behind the face, asin(7 / 268) = 1.5 degrees more.</summary>
    [Theory]
    [InlineData(250, 23)]
    [InlineData(600, null)]
    public void Door_behind_a_radiator_hardly_opens(decimal right, int? degrees)
    {
        var bench = Cupboard.Sound();
        bench.AddRoom("radiator", Box(right - 100, -150, 100, right, -100, 500));
        if (degrees is null)
            bench.Inspect().OpensFreely();
        else
            Assert.Equal(
                new MeasuredAngle("opens", degrees.Value, 95),
                bench.Inspect().Opening(DoorSwing.HardlyOpens).Measured
            );
    }

    /// <summary>
    /// A strip proud of the far frame stile, beside the door: the door's back corner passes 0.5 mm beyond its front one, 397.5
    /// from the pin; tolerance is 0.2.
    /// </summary>
    [Theory]
    [InlineData(398.1, false)]
    [InlineData(398.35, true)]
    public void Thick_door_binds_on_its_far_edge_as_it_opens(double strip, bool opens)
    {
        var bench = Cupboard.Sound();
        bench.Add("strip", Role.FrameStile, "frame", Box((decimal)strip, -5, 0, 440, 0, 600));
        bench.Join(JointKind.Screwed, "right-frame-stile", "strip", Direction.Back);
        var found = bench.Inspect().Findings.Any(f => f.Kind == DoorSwing.HardlyOpens);
        Assert.Equal(!opens, found);
    }

    [Fact]
    public void Cup_hinge_may_carry_its_door_past_what_is_no_nearer_than_it_wanders()
    {
        // At 90 degrees the face of the left door stands over its edge, at 1.5; to 110 it goes on by 297 sin 20 = 101.6 mm.
        var free = Run.Sound();
        free.AddRoom("left wall", Box(-300, -600, 0, -97.5m, 0, 600));
        free.Inspect().OpensFreely();

        var wall = Run.Sound();
        wall.AddRoom("left wall", Box(-300, -600, 0, -95, 0, 600));
        var finding = wall.Inspect().Opening(DoorSwing.WantsStop);
        Assert.Equal(new MeasuredAngle("opens", 109, 110), finding.Measured);
        Assert.Contains("3 mm aside", Assert.Single(finding.Assumptions), StringComparison.Ordinal);
    }

    /// <summary>A drop front: the door turned on its lower edge, 596 mm high, before which a chair stands.</summary>
    [Fact]
    public void Flap_that_drops_meets_what_stands_before_it()
    {
        var bench = Cupboard.Sound();
        bench.Change(front =>
            front with
            {
                Motion = FrontMotion.TurnsOnBottomEdge,
                Swing = front.Swing! with { Degrees = 90, Pin = new(default, default, Mm(1)) },
            }
        );
        Assert.DoesNotContain(bench.Inspect().Findings, f => new DoorSwing().Kinds.Contains(f.Kind));
        bench.AddRoom("chair", Box(100, -500, -400, 300, -400, 105));
        // The chair's upper front edge lies atan(104 / 400) = 14.6 degrees above level, and meets
        // the panel, 7 mm behind the face: asin(7 / 413) = 1.0 degrees more.
        Assert.Equal(new MeasuredAngle("opens", 76, 90), bench.Inspect().Opening(DoorSwing.StopsShort).Measured);
    }

    [Theory]
    [InlineData(398, null)]
    [InlineData(380, 18)]
    public void Drawer_comes_out_until_it_meets_what_stands_before_it(decimal left, int? further)
    {
        var bench = Chest.Sound();
        bench.AddRoom("radiator", Box(left, -160, 0, 600, -100, 200));
        if (further is null)
        {
            bench.Inspect().OpensFreely();
            return;
        }
        var finding = bench.Inspect().Opening(DrawerTravel.Stopped);
        Assert.Equal(new MeasuredLength("comes out", Mm(100)), finding.Measured);
        Assert.Equal(new Wanted(Mm(250), null), finding.Wanted);
        Assert.Contains($"{further} mm further away", finding.Remedy!.Text, StringComparison.Ordinal);
        finding.IsAt(
            (finding.Where!.From.XMm, finding.Where.From.ZMm),
            (finding.Where.From.XMm, finding.Where.From.ZMm)
        );
    }

    /// <summary>
    /// Open at 95 degrees, the back of the door's hinge edge stands at 1 + cos 95 + 20 sin 95 = 20.8, 2.7 mm before the frame.
    /// </summary>
    [Theory]
    [InlineData(21, false)]
    [InlineData(15, true)]
    public void Pull_out_passes_the_open_door_or_strikes_its_thickness(decimal left, bool strikes)
    {
        var bench = Cupboard.Sound();
        bench.Group("tray", GroupKind.Drawer, "carcase");
        bench.Add("tray-left", Role.DrawerSide, "tray", Box(left, 30, 100, left + 12, 280, 200));
        bench.Slide("tray-left", "left-frame-stile", 250);
        if (!strikes)
        {
            bench.Inspect().OpensFreely();
            return;
        }
        var finding = bench.Inspect().Opening(DrawerTravel.StrikesDoor);
        Assert.Equal("The tray strikes the door, open at 95 degrees.", finding.Message);
        // Where its edge, 20 mm thick, stands at 15, it is 1 + 14.2 cos 85 = 2.2 mm before the frame.
        Assert.True(finding.Length() > Mm(32) && finding.Length() < Mm(33));
        Assert.Contains("by 6 mm more", finding.Remedy!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Walls_are_not_known_to_go_on_before_the_mouth_unless_the_recipe_says_so()
    {
        const string alcove = """
            piece: Cupboard
            units: mm
            room: { alcove: { widths: [[0, 820], [900, 820]], depth: 420 GOES } }
            materials: { body: pine 18, backs: birch plywood 6 }
            carcases:
              base:
                size: [800, 700, 400]
                between: alcove
                face frame: { stiles: 30, rails: 40 }
                front: { doors: { kind: slab, leaves: pair } }

            """;
        Assert.DoesNotContain(
            Whole.Recipe(alcove.Replace("GOES", "", StringComparison.Ordinal)).Findings,
            f => new DoorSwing().Kinds.Contains(f.Kind)
        );
        var report = Whole.Recipe(
            alcove
                .Replace("GOES", ", walls go on: 500", StringComparison.Ordinal)
                .Replace("leaves: pair", "leaves: pair, pull: pull", StringComparison.Ordinal)
        );
        Assert.Contains(report.Findings, f => f.Kind == DoorSwing.StopsShort || f.Kind == DoorSwing.WantsStop);
    }
}
