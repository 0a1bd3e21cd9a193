using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Drawers;

/// <summary>What drawers run on, how their bottoms are held, what divides them.</summary>
public sealed class DrawerRunningTests
{
    private static Piece Of(string drawers, string frame = "face frame: { stiles: 1 1/2, rails: 1 1/2 }") =>
        Built.From(
            $$"""
            piece: Bench drawers
            units: in
            materials: { body: birch plywood 3/4, boxes: maple 1/2, bottoms: birch plywood 1/4, fronts: cherry 3/4, runners: maple 3/4 }
            carcases:
              bench:
                size: [24, 24, 20]
                {{frame}}
                front: { rows: [ {{drawers}} ] }
            """
        );

    [Fact]
    public void Runners_lie_behind_the_rail_and_stand_a_little_above_it()
    {
        var piece = Of("{ drawer: runners }, { drawer: runners }");
        piece.MustBeSound();
        var (rail, runner) = (piece.Part("bench face frame rail 1"), piece.Part("bench drawer 1 left runner"));
        Assert.Equal(Exact("1/8\""), runner.Extent.Max.Z - rail.Extent.Max.Z);
        Assert.Equal(Exact("3/4\""), runner.Extent.Height);
        // From the side, 3/4 in behind the edge of the stile, to 1 1/4 in inside the opening.
        Assert.Equal(Exact("2\""), runner.Extent.Width);
        Assert.Equal(runner.Extent.Max.Z, piece.Part("bench drawer 1 left side").Extent.Min.Z);
    }

    [Fact]
    public void On_a_floor_flush_with_the_rail_runners_are_slips()
    {
        var piece = Of("{ drawer: runners }, { drawer: runners }");
        var slip = piece.Part("bench drawer 2 left runner");
        Assert.Equal(Exact("1/8\""), slip.Extent.Height);
        Assert.Equal(piece.Part("bench bottom").Extent.Max.Z, slip.Extent.Min.Z);
    }

    [Fact]
    public void Kickers_keep_a_drawer_from_tipping_where_a_rail_leaves_room()
    {
        var piece = Of("{ drawer: runners }, { drawer: runners }");
        var kicker = piece.Part("bench drawer 2 right kicker");
        Assert.Equal(piece.Part("bench face frame rail 1").Extent.Min.Z, kicker.Extent.Min.Z);
        Assert.Equal(Exact("1/2\""), kicker.Extent.Height);
        var over = kicker.Extent.Min.Z - piece.Part("bench drawer 2 right side").Extent.Max.Z;
        Assert.True(over >= Exact("1/16\"") && over < Exact("3/16\""), $"{over}");
    }

    [Fact]
    public void Drawer_on_wood_has_a_thirty_second_of_room_each_side()
    {
        // Between the stiles 24 - 3 = 21 in.
        var piece = Of("{ drawer: runners }");
        var (left, right) = (piece.Part("bench drawer 1 left side"), piece.Part("bench drawer 1 right side"));
        Assert.Equal(Exact("20 15/16\""), right.Extent.Max.X - left.Extent.Min.X);
    }

    [Theory]
    [InlineData("face frame: { stiles: 1 1/2, rails: 1 1/2 }")]
    [InlineData("face frame: none")]
    public void Side_hung_drawer_lies_on_strips_in_grooves_of_its_sides(string frame)
    {
        var piece = Of("{ drawer: { slides: side hung, joint: dovetailed } }, { drawer: side hung }", frame);
        piece.MustBeSound();
        var (side, strip) = (piece.Part("bench drawer 1 left side"), piece.Part("bench drawer 1 left strip"));
        // Groove 3/16 in deep, and 1/32 in of room at its bottom.
        Assert.Equal(Exact("3/16\"") - Exact("1/32\""), strip.Extent.Max.X - side.Extent.Min.X);
        Assert.Contains(
            side.Cuts,
            c => c.Kind == CutKind.Groove && c is SquareCut { Extent.Height: var deep } && deep == Exact("3/16\"")
        );
    }

    [Theory]
    [InlineData(
        "{ drawer: runners }, { drawer: { slides: runners, hang: inset } }, { drawer: { slides: side hung, hang: inset } }"
    )]
    [InlineData(
        "{ drawer: { slides: runners, bottom set: planted } }, { open }, { drawer: { slides: runners, bottom set: slid in } }"
    )]
    public void Frameless_drawers_run_on_wood_too(string drawers) => Of(drawers, "face frame: none").MustBeSound();

    [Fact]
    public void Bottom_is_slid_in_under_the_back()
    {
        var piece = Of("{ drawer: { bottom set: slid in } }");
        piece.MustBeSound();
        var (bottom, back) = (piece.Part("bench drawer 1 bottom"), piece.Part("bench drawer 1 back"));
        Assert.Equal(bottom.Extent.Max.Z, back.Extent.Min.Z);
        Assert.Equal(bottom.Extent.Max.Y, back.Extent.Max.Y);
        // Slides of 18 in: 18 - 1/2 + 1/4 - 1/32 = 17 23/32.
        Assert.Equal(Exact("17 23/32\""), bottom.Width.Length);
        Assert.Contains(
            piece.Joints,
            j => j.Kind == JointKind.Screwed && j.Enters == bottom.Id && j.Receives == back.Id
        );
    }

    [Fact]
    public void Planted_bottom_covers_the_walls_from_below()
    {
        var piece = Of("{ drawer: { bottom set: planted } }");
        piece.MustBeSound();
        var (bottom, side) = (piece.Part("bench drawer 1 bottom"), piece.Part("bench drawer 1 left side"));
        Assert.Equal(bottom.Extent.Max.Z, side.Extent.Min.Z);
        // Opening 21 in less two slides of 1/2 in.
        Assert.Equal(Exact("20\""), bottom.Length.Length);
    }

    [Fact]
    public void Dividers_share_the_drawer_evenly()
    {
        var piece = Of("{ drawer: { dividers: 3 } }");
        piece.MustBeSound();
        // Inside 20 - 1 = 19 in, less three of 1/2 in: four bays of 4 3/8 in.
        var inner = piece.Part("bench drawer 1 left side").Extent.Max.X;
        Assert.Equal(Exact("4 3/8\""), piece.Part("bench drawer 1 divider 1").Extent.Min.X - inner);
        Assert.Equal(Exact("9 1/4\""), piece.Part("bench drawer 1 divider 2").Extent.Min.X - inner);
    }

    [Fact]
    public void Dividers_run_from_side_to_side_where_it_is_said()
    {
        var piece = Of("{ drawer: { dividers: { count: 1, run: from side to side, height: 2 } } }");
        piece.MustBeSound();
        var divider = piece.Part("bench drawer 1 divider");
        // 19 in inside and 1/8 in into both sides.
        Assert.Equal(Exact("19 1/4\""), divider.Length.Length);
        Assert.Equal(Exact("2\""), divider.Extent.Height);
    }
}
