using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Heads;

/// <summary>Strips that hide the gap between boxes of pine 18 with face frames; stiles of the house, 40 wide.</summary>
public sealed class TrimTests
{
    private static string Two(string right, string trim) =>
        Metric(
            $"one: {{ size: [500, 900, 300], face frame }}\ntwo: {{ size: [400, 800, 300], face frame, {right} }}",
            rest: $"trim:\n  strip: {{ {trim} }}\n"
        );

    [Fact]
    public void A_strip_laps_over_both_sides_of_its_gap()
    {
        var piece = Built.From(Two("right of: one, gap: 10", "hides: [one, two]"));
        // As high as both are; the gap of 10 and a lap of 12 on each side, from 500 - 12.
        piece.Measures("strip", "800 x 34 x 18");
        piece.StandsAt("strip", "488, -18, 0");
        var cover = Assert.Single(piece.Covers);
        Assert.Equal(Direction.Right, cover.Towards);
        Assert.Equal([piece.Part("one face frame right stile").Id], cover.One);
        Assert.Equal([piece.Part("two face frame left stile").Id], cover.Other);
        piece.MustBeSound();
    }

    [Fact]
    public void It_is_screwed_to_the_one_and_lies_loose_on_the_other()
    {
        var piece = Built.From(Two("right of: one, gap: 10", "hides: [one, two], fixed to: two"));
        var strip = piece.Part("strip").Id;
        var joints = piece.Joints.Where(joint => joint.Enters == strip).ToDictionary(joint => joint.Receives);
        Assert.Equal(JointKind.Screwed, joints[piece.Part("two face frame left stile").Id].Kind);
        Assert.Equal(JointKind.Resting, joints[piece.Part("one face frame right stile").Id].Kind);
        Assert.All(joints.Values, joint => Assert.False(joint.Glued));
    }

    [Fact]
    public void A_strip_lies_along_the_seam_of_two_that_stand_on_each_other()
    {
        var piece = Built.From(Two("on: one, line up: fronts", "hides: [one, two], width: 40"));
        // Over the narrower of the two, its middle on the seam.
        piece.Measures("strip", "400 x 40 x 18");
        piece.StandsAt("strip", "50, -18, 880");
        piece.MustBeSound();
    }

    [Theory]
    [InlineData(
        "right of: one, gap: 10, line up: fronts, size: [400, 800, 250]",
        "hides: [one, two], fixed to: three",
        "There is no carcase called 'three'."
    )]
    [InlineData("right of: one", "hides: [one, one]", "The strip has one carcase on both sides of its gap.")]
    [InlineData(
        "on: one, size: [400, 800, 250]",
        "hides: [one, two]",
        "The fronts of the one and the two do not lie in one plane: no strip lies on both."
    )]
    [InlineData(
        "at: [900, 0, 1000]",
        "hides: [one, two]",
        "The one and the two have no edges side by side for a strip to lie on."
    )]
    public void A_strip_that_cannot_lie_on_both_is_refused(string right, string trim, string message)
    {
        var sized = right.Contains("size", StringComparison.Ordinal) ? "" : "size: [400, 800, 300], ";
        var recipe = Metric(
            $"one: {{ size: [500, 900, 300], face frame }}\ntwo: {{ {sized}face frame, {right} }}",
            rest: $"trim:\n  strip: {{ {trim} }}\n"
        );
        Assert.EndsWith(message, Built.ErrorOf(recipe), StringComparison.Ordinal);
    }

    [Fact]
    public void Fronts_where_the_strip_should_lie_are_told() =>
        Assert.EndsWith(
            "The strip would stand in the place of the one door slab.",
            Built.ErrorOf(
                Metric(
                    "one: { size: [500, 900, 300], front: { doors: slab } }\ntwo: { size: [400, 900, 300] }",
                    rest: "trim:\n  strip: { hides: [one, two] }\n"
                )
            ),
            StringComparison.Ordinal
        );
}
