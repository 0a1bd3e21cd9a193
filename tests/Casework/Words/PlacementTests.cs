using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Words;

/// <summary>Where carcases stand: a low one of 800 x 700 x 500 and a second of 400 x 600 x 300.</summary>
public sealed class PlacementTests
{
    private static Piece Two(string place) =>
        Built.From(
            Metric(
                $"low: {{ size: [800, 700, 500], back: planted }}\nsecond: {{ {place}size: [400, 600, 300], back: planted }}"
            )
        );

    [Theory]
    [InlineData("", "800, 200, 0")]
    [InlineData("right of: low, ", "800, 200, 0")]
    [InlineData("right of: low, gap: 25, ", "825, 200, 0")]
    [InlineData("right of: low, line up: fronts, ", "800, 0, 0")]
    [InlineData("left of: low, ", "-400, 200, 0")]
    [InlineData("left of: low, gap: 25, ", "-425, 200, 0")]
    [InlineData("on: low, ", "200, 200, 700")]
    [InlineData("on: low, across: left, ", "0, 200, 700")]
    [InlineData("on: low, across: right, line up: fronts, ", "400, 0, 700")]
    [InlineData("at: [-500, 12.5, 0], ", "-500, 12.5, 0")]
    public void A_carcase_stands_where_the_recipe_says(string place, string corner)
    {
        var piece = Two(place);
        piece.StandsAt("second left side", corner);
        piece.StandsAt("low left side", "0, 0, 0");
        piece.MustBeSound();
    }

    [Fact]
    public void A_carcase_on_another_rests_on_it_and_one_beside_it_is_screwed_to_it()
    {
        Assert.Contains(Two("on: low, ").Joints, j => j.Kind == JointKind.Resting);
        Assert.Contains(
            Two("").Joints,
            j => j is { Kind: JointKind.Screwed, Receives: "low/right-side", Enters: "second/left-side" }
        );
    }

    [Fact]
    public void Carcases_may_lean_on_what_is_said_below_them()
    {
        var piece = Built.From(
            Metric(
                "top: { on: middle, size: [400, 200, 300] }\nmiddle: { on: low, size: [500, 300, 300] }\nlow: { at: [0, 0, 0], size: [600, 400, 300] }"
            )
        );
        piece.StandsAt("top left side", "100, 0, 700");
        piece.MustBeSound();
    }

    [Fact]
    public void Sizes_may_be_taken_from_other_carcases()
    {
        var piece = Built.From(
            Metric(
                "low: { size: [600, 400, 300] }\nhigh: { on: low, size: [low.width - 100, 2 * low.height, low.depth - 40] }"
            )
        );
        piece.Measures("high left side", "800 x 260 x 18");
        piece.StandsAt("high right side", "532, 40, 400");
    }

    [Fact]
    public void Carcases_that_lean_on_each_other_in_a_circle_are_told_the_circle()
    {
        Assert.Equal(
            "8:12: The carcases lean on each other in a circle: a -> c -> b -> a.",
            Built.ErrorOf(
                Metric(
                    "a: { on: c, size: [600, 400, 300] }\nb: { on: a, size: [600, 400, 300] }\nc: { right of: b, size: [600, 400, 300] }"
                )
            )
        );
    }

    [Fact]
    public void A_carcase_cannot_lean_on_itself()
    {
        Assert.Contains(
            "in a circle: a -> a.",
            Built.ErrorOf(Metric("a: { on: a, size: [600, 400, 300] }")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Sizes_that_need_each_other_in_a_circle_are_refused()
    {
        var errors = Built.ErrorsOf(Metric("a: { size: [b.width, 400, 300] }\nb: { size: [a.width, 400, 300] }"));
        Assert.Contains(errors, e => e.Message.Contains("a.width", StringComparison.Ordinal));
    }

    [Fact]
    public void An_unknown_carcase_is_named_with_the_nearest()
    {
        var error = Assert.Single(
            Built.ErrorsOf(Metric("low: { size: [600, 400, 300] }\nhigh: { on: lwo, size: [600, 400, 300] }"))
        );
        Assert.Equal("8:15: There is no carcase called 'lwo'.", Built.Said(error));
        Assert.Equal("low", error.Suggestion);
    }

    [Fact]
    public void One_place_is_enough()
    {
        Assert.Contains(
            "It cannot stand both 'on' and 'left of'.",
            Built.ErrorOf(
                Metric("low: { size: [600, 400, 300] }\nhigh: { on: low, left of: low, size: [600, 400, 300] }")
            ),
            StringComparison.Ordinal
        );
    }
}
