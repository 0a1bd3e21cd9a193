using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Words;

/// <summary>The maker's own numbers: what was cut stands as it was cut, and nothing else moves.</summary>
public sealed class AsCutTests
{
    private const string Carcase =
        "box: { size: [600, 720, 400], joint: dado, shelves: { fixed: 1 }, front: { doors: framed pair } }";

    private static (Piece Reckoned, Piece Cut) Both(string cut) =>
        (
            Built.From(Metric(Carcase, materials: "panels: birch plywood 6")),
            Built.From(Metric(Carcase, $"as cut:\n  {cut}\n", materials: "panels: birch plywood 6"))
        );

    private static IEnumerable<(string, Extent, int)> Of(Piece piece, Func<Part, bool> which) =>
        piece.Parts.Where(which).Select(p => (p.Id, p.Extent, p.Cuts.Count));

    [Theory]
    [InlineData("fixed shelf 1: { length: 570 }", "box fixed shelf 1", "570 x 371.5 x 18")]
    [InlineData("shelf: { width: 300, thickness: 17.2 }", "box fixed shelf 1", "576 x 300 x 17.2")]
    [InlineData("left side: { length: 722 }", "box left side", "722 x 400 x 18")]
    [InlineData("back: { width: 570 }", "box back", "695 x 570 x 6.5")]
    public void A_part_keeps_its_left_front_lower_corner_and_nothing_else_moves(string cut, string part, string sizes)
    {
        var (reckoned, made) = Both(cut);
        made.Measures(part, sizes);
        Assert.Equal(reckoned.Part(part).Extent.Min, made.Part(part).Extent.Min);
        Assert.True(made.Part(part).IsAsCut);
        Assert.Equal(10, made.Part(part).Source.Line);
        Assert.Equal(Of(reckoned, p => p.Name != part), Of(made, p => p.Name != part));
        Assert.DoesNotContain(made.Parts, p => p.IsAsCut && p.Name != part);
    }

    [Fact]
    public void A_short_shelf_leaves_its_dado_as_reckoned_and_the_joint_open()
    {
        var (reckoned, made) = Both("fixed shelf 1: { length: 566 }");
        Assert.Equal(
            reckoned.VolumeMm3(reckoned.Part("box right side")),
            made.VolumeMm3(made.Part("box right side")),
            1e-3
        );
        // 576 reckoned, 566 cut: the right end is 10 short of the bottom of its dado.
        Assert.Equal(["Dado: box fixed shelf 1 stays 10 mm off box right side"], made.Faults());
    }

    [Fact]
    public void A_unit_keeps_its_hinge_edge_and_its_bottom_gap()
    {
        var (reckoned, made) = Both("left door: { width: 290, height: 700 }");
        Extent Around(Piece piece, string door) =>
            piece
                .Parts.Where(p => p.Group == door)
                .Select(p => p.Extent)
                .Aggregate(
                    (a, b) =>
                        new Extent(
                            new(
                                Measure.Length.Min(a.Min.X, b.Min.X),
                                Measure.Length.Min(a.Min.Y, b.Min.Y),
                                Measure.Length.Min(a.Min.Z, b.Min.Z)
                            ),
                            new(
                                Measure.Length.Max(a.Max.X, b.Max.X),
                                Measure.Length.Max(a.Max.Y, b.Max.Y),
                                Measure.Length.Max(a.Max.Z, b.Max.Z)
                            )
                        )
                );
        var (before, after) = (Around(reckoned, "box/left-door"), Around(made, "box/left-door"));
        Assert.Equal(before.Min, after.Min);
        Assert.Equal((made.Read("290"), made.Read("700")), (after.Width, after.Height));
        Assert.Equal(Of(reckoned, p => p.Group != "box/left-door"), Of(made, p => p.Group != "box/left-door"));
    }

    [Fact]
    public void A_phrase_that_means_nothing_is_told_with_the_nearest_name()
    {
        var error = Assert.Single(
            Built.ErrorsOf(Metric("box: { size: [600, 720, 400] }", "as cut: { left sied: { length: 700 } }"))
        );
        Assert.Contains("No part or unit of the piece is called 'left sied'.", error.Message, StringComparison.Ordinal);
        Assert.Equal(8, error.Place!.Line);
    }

    [Fact]
    public void The_last_of_two_phrases_has_the_last_word()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400] }", "as cut: { sides: { length: 700 }, left side: { length: 710 } }")
        );
        piece.Measures("box left side", "710 x 400 x 18");
        piece.Measures("box right side", "700 x 400 x 18");
    }
}
