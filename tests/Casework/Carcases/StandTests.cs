using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>What a box of 600 x 720 x 400 stands on. House rules: rails 70 wide, 3 behind the faces of the legs.</summary>
public sealed class StandTests
{
    [Fact]
    public void Square_legs_stand_in_the_corners_with_rails_between()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], stands on: { legs: 50, height: 160 } }"));
        piece.Measures("box stand front left leg", "160 x 50 x 50");
        piece.StandsAt("box stand front left leg", "0, 0, 0");
        piece.StandsAt("box stand rear right leg", "550, 350, 0");
        piece.Measures("box stand front rail", "500 x 70 x 18");
        piece.StandsAt("box stand front rail", "50, 3, 90");
        piece.StandsAt("box stand rear rail", "50, 379, 90");
        piece.Measures("box stand left end rail", "300 x 70 x 18");
        piece.StandsAt("box stand right end rail", "579, 50, 90");
        // What is left of the height for the box.
        piece.Measures("box left side", "560 x 400 x 18");
        piece.StandsAt("box left side", "0, 0, 160");
        piece.MustBeSound();
    }

    [Fact]
    public void Legs_of_dressed_lumber_are_glued_up_of_plies()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], stands on: { legs: { of: posts, plies: 2 }, height: 150, rails: 60 } }",
                materials: "posts: scots pine 2x4"
            )
        );
        // A dressed 2x4 is 1 1/2 x 3 1/2 in, 38.1 x 88.9 mm: softwood lumber standard PS 20.
        piece.Measures("box stand front left leg ply 1", "150 x 88.9 x 38.1");
        piece.Measures("box stand front left leg ply 2", "150 x 88.9 x 38.1");
        piece.StandsAt("box stand front left leg ply 2", "0, 38.1, 0");
        piece.StandsAt("box stand rear left leg ply 1", "0, 323.8, 0");
        // 600 - 2 x 88.9; 400 - 4 x 38.1.
        piece.Measures("box stand front rail", "422.2 x 60 x 18");
        piece.Measures("box stand left end rail", "247.6 x 60 x 18");
        Assert.Equal(8, piece.PartsOf(Role.Leg).Count);
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("left end", "box right side", "box left side")]
    [InlineData("right end", "box left side", "box right side")]
    public void Legs_at_one_end_leave_the_other_side_down_to_the_floor(string end, string toFloor, string lifted)
    {
        var piece = Built.From(
            Metric($"box: {{ size: [600, 720, 400], stands on: {{ legs: 50, height: 160, at: {end} }} }}")
        );
        piece.Measures(toFloor, "720 x 400 x 18");
        piece.Measures(lifted, "560 x 400 x 18");
        // From the leg to the side: 600 - 50 - 18.
        piece.Measures("box stand front rail", "532 x 70 x 18");
        Assert.Equal(2, piece.PartsOf(Role.Leg).Count);
        Assert.Equal(3, piece.PartsOf(Role.StandRail).Count);
        piece.MustBeSound();
    }

    [Fact]
    public void A_toe_space_is_notched_out_of_the_sides_and_closed_by_a_board()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], back: none, joint: screws, stands on: { toe space: 100, toe depth: 65 } }"
            )
        );
        piece.Measures("box left side", "720 x 400 x 18");
        piece.Holds("box left side", ((720 * 400) - (100 * 65)) * 18);
        piece.Measures("box toe board", "564 x 100 x 18");
        piece.StandsAt("box toe board", "18, 65, 0");
        piece.StandsAt("box bottom", "18, 0, 100");
        piece.MustBeSound();
    }

    [Fact]
    public void Behind_a_face_frame_the_toe_space_is_as_deep_from_the_face()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], face frame, stands on: { toe space: 100, toe depth: 65 } }")
        );
        piece.StandsAt("box toe board", "18, 65, 0");
        piece.Measures("box face frame left stile", "620 x 40 x 18");
        piece.StandsAt("box face frame left stile", "0, 0, 100");
        piece.MustBeSound();
    }

    [Fact]
    public void A_plinth_is_a_frame_with_its_ends_between_front_and_rear()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], stands on: { plinth: 80, setback: 30 } }"));
        piece.Measures("box plinth front", "600 x 80 x 18");
        piece.StandsAt("box plinth front", "0, 30, 0");
        piece.StandsAt("box plinth rear", "0, 382, 0");
        // 400 - 30 - 18 - 18.
        piece.Measures("box plinth left end", "334 x 80 x 18");
        piece.StandsAt("box plinth right end", "582, 48, 0");
        piece.Measures("box left side", "640 x 400 x 18");
        piece.MustBeSound();
    }

    [Fact]
    public void A_toe_space_ends_behind_the_face_frame()
    {
        Assert.Equal(
            "7:3: The toe space is no deeper than the face frame before it.",
            Built.ErrorOf(
                Metric("box: { size: [600, 720, 400], face frame, stands on: { toe space: 100, toe depth: 18 } }")
            )
        );
    }

    [Theory]
    [InlineData("legs: 250", "Two legs are deeper than the carcase they should carry.")]
    [InlineData("legs: { of: body, width: 320 }", "Two legs are wider than the carcase they should carry.")]
    [InlineData("legs: 50, height: 60, rails: 70", "The rails are wider than the legs are high.")]
    [InlineData("legs: 12, height: 160", "The legs are thinner than the rails between them and their setback.")]
    [InlineData("legs: 50, plinth: 80", "It cannot stand on two things.")]
    [InlineData("height: 80", "What it stands on is missing.")]
    [InlineData("legs: 50, height: 720", "The box left side would have a length of 0 mm")]
    [InlineData("plinth: 900", "The box left side would have a length of")]
    [InlineData("plinth: 80, setback: 400", "The box plinth left end would have a length of")]
    [InlineData("toe space: 720", "The box")]
    [InlineData("toe space: 100, toe depth: 400", "The toe space is deeper than the carcase.")]
    [InlineData("legs: { of: post }", "There is no material called 'post'.")]
    public void What_cannot_stand_is_refused(string stand, string says)
    {
        Assert.Contains(
            says,
            Built.ErrorOf(Metric($"box: {{ size: [600, 720, 400], stands on: {{ {stand} }} }}")),
            StringComparison.Ordinal
        );
    }
}
