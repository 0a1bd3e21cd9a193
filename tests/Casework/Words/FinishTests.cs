using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Words;

/// <summary>Named finishes, and findings a maker accepts.</summary>
public sealed class FinishTests
{
    private static readonly Piece Piece = Built.From(
        Metric(
            "box: { size: [800, 700, 400], shelves: { fixed: 1, material: panes }, front: { columns: [ drawer, { doors: glazed } ] } }",
            """
            finishes:
              plain: { all: clear satin }
              two tone: { all: clear satin, fronts: "milk paint, ochre", left side: black oil }
              raw outside: { inside: shellac, backs: grey paint }
            """,
            materials: "panes: float glass 4\nboxes: birch plywood 12"
        )
    );

    private static string? Finish(string part, string scheme) => Piece.Part(part).Finishes.GetValueOrDefault(scheme);

    [Fact]
    public void All_means_every_part_but_glass()
    {
        Assert.Equal("clear satin", Finish("box right side", "plain"));
        Assert.Equal("clear satin", Finish("box door top rail", "plain"));
        Assert.Null(Finish("box door pane", "plain"));
        Assert.Null(Finish("box right bay fixed shelf 1", "plain"));
    }

    [Fact]
    public void What_is_named_more_closely_goes_before_all()
    {
        Assert.Equal("milk paint, ochre", Finish("box door top rail", "two tone"));
        Assert.Equal("milk paint, ochre", Finish("box drawer 1 front", "two tone"));
        Assert.Equal("black oil", Finish("box left side", "two tone"));
        Assert.Equal("clear satin", Finish("box bottom", "two tone"));
    }

    [Fact]
    public void Inside_and_materials_mean_their_parts_and_the_rest_stays_bare()
    {
        Assert.Equal("shellac", Finish("box bottom", "raw outside"));
        Assert.Null(Finish("box left side", "raw outside"));
    }

    [Fact]
    public void Schemes_keep_the_order_of_the_recipe()
    {
        Assert.Equal(["plain", "two tone", "raw outside"], Piece.Finishes.Select(f => f.Name));
    }

    [Fact]
    public void Accepted_findings_are_handed_on_with_their_reason_and_line()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [800, 700, 400] }",
                """
                accept:
                  - { finding: door-gap-too-wide, parts: left door, because: an old hinge }
                  - { finding: joint-open, because: filled }
                """
            )
        );
        Assert.Equal(
            [("door-gap-too-wide", "left door", "an old hinge", 9), ("joint-open", null, "filled", 10)],
            piece.Accepted.Select(a => (a.Kind, a.Parts, a.Reason, a.Source.Line))
        );
    }
}
