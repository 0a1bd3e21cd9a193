using Dryfit.Casework;
using Dryfit.Findings;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

/// <summary>Boards of 400 x 20 x 100 that stand on edge, with cuts that go too far and cuts that just do not.</summary>
public sealed class WholePartTests
{
    [Fact]
    public void Board_that_a_cut_parts_is_told_with_its_pieces_their_sizes_the_cut_and_the_place_of_the_smaller_one()
    {
        var report = Rail(Box(300, 0, 0, 310, 20, 100)).Inspect();
        var finding = report.The(PartWhole.FallsApart);
        Assert.Equal(
            "The rail falls into 2 pieces (300 mm x 100 mm x 20 mm, 600 cm3; 90 mm x 100 mm x 20 mm, 180 cm3), parted by cut-0.",
            finding.Message
        );
        Assert.Equal(["rail"], finding.Parts);
        Assert.Equal((310, 400), (finding.Where!.From.XMm, finding.Where.To.XMm));
        Assert.Equal(Severity.Stop, finding.Kind.Severity);
    }

    [Fact]
    public void Sizes_of_pieces_are_told_in_the_makers_unit()
    {
        var bench = Rail(Box(254, 0, 0, 273, 20, 100));
        bench.Format = Dryfit.Measure.LengthFormat.Inches;
        Assert.Contains("10 in x ", bench.Inspect().The(PartWhole.FallsApart).Message, StringComparison.Ordinal);
        Assert.Contains(" in3", bench.Inspect().The(PartWhole.FallsApart).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Dados_from_both_sides_that_meet_part_the_board_and_both_are_named()
    {
        var finding = Rail(Box(100, 0, 0, 120, 12, 100), Box(110, 12, 0, 130, 20, 100), Box(300, 0, 0, 310, 5, 100))
            .Inspect()
            .The(PartWhole.FallsApart);
        Assert.EndsWith("parted by cut-0 and cut-1.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Dados_from_both_sides_with_a_shaving_left_between_them_leave_one_piece()
    {
        var report = Rail(Box(100, 0, 0, 120, 12, 100), Box(110, 12.1m, 0, 130, 20, 100)).Inspect();
        Assert.DoesNotContain(report.Findings, finding => finding.Kind == PartWhole.FallsApart);
        Assert.DoesNotContain(report.Findings, finding => finding.Kind == PartTouchesItself.KnifeEdge);
    }

    [Fact]
    public void Board_that_its_cuts_take_wholly_is_told_and_one_with_a_shaving_left_is_not()
    {
        var gone = Rail(Box(0, 0, 0, 400, 20, 100)).Inspect().The(PartWhole.CutAway);
        Assert.Equal("The cuts leave nothing of the rail.", gone.Message);
        Assert.Equal((0, 400), (gone.Where!.From.XMm, gone.Where.To.XMm));
        var report = Rail(Box(0, 0, 0, 400, 20, 99.9m)).Inspect();
        Assert.DoesNotContain(report.Findings, finding => finding.Kind == PartWhole.CutAway);
    }

    // Dados from both sides, each half through, that end in one line: the halves hang together above them only.
    [Fact]
    public void Dados_from_both_sides_that_meet_in_a_line_leave_a_knife_edge_and_just_short_of_it_none()
    {
        var finding = Rail(Box(100, 0, 0, 120, 10, 60), Box(120, 10, 0, 140, 20, 60))
            .Inspect()
            .The(PartTouchesItself.KnifeEdge);
        Assert.Equal("The rail touches itself along an edge, where cut-0 and cut-1 meet.", finding.Message);
        Assert.Equal(Mm(60), ((MeasuredLength)finding.Measured!).Value);
        Assert.Equal((120, 10), (finding.Where!.From.XMm, finding.Where.From.YMm));
        Assert.Equal((120, 10), (finding.Where.To.XMm, finding.Where.To.YMm));
        Assert.Equal(60, Math.Abs(finding.Where.To.ZMm - finding.Where.From.ZMm));
        Assert.Equal(Severity.Warn, finding.Kind.Severity);

        var apart = Rail(Box(100, 0, 0, 119.9m, 10, 60), Box(120, 10, 0, 140, 20, 60)).Inspect();
        Assert.DoesNotContain(apart.Findings, f => f.Kind == PartTouchesItself.KnifeEdge);
        var into = Rail(Box(100, 0, 0, 120.1m, 10, 60), Box(120, 10, 0, 140, 20, 60)).Inspect();
        Assert.DoesNotContain(into.Findings, f => f.Kind == PartTouchesItself.KnifeEdge);
    }

    [Fact]
    public void Notches_that_meet_in_a_corner_only_touch_in_a_point()
    {
        var finding = Rail(Box(0, 0, 0, 200, 10, 50), Box(200, 10, 50, 400, 20, 100))
            .Inspect()
            .The(PartTouchesItself.KnifeEdge);
        Assert.Equal("The rail touches itself in a point, where cut-0 and cut-1 meet.", finding.Message);
        Assert.Equal(finding.Where!.From, finding.Where.To);
        Assert.Null(finding.Measured);
    }

    // Quarters that meet in an edge are two pieces: that is told, and not the edge.
    [Fact]
    public void Pieces_that_only_touch_are_told_as_pieces()
    {
        var report = Rail(Box(0, 0, 0, 200, 10, 100), Box(200, 10, 0, 400, 20, 100)).Inspect();
        report.The(PartWhole.FallsApart);
        Assert.DoesNotContain(report.Findings, finding => finding.Kind == PartTouchesItself.KnifeEdge);
    }

    // The same from a recipe: an apron of 700 x 180 x 24 with the maker's own cuts.
    [Theory]
    [InlineData(
        "part-falls-apart",
        "{ in: front, from: top 40, wide: 20, deep: 12 }",
        "{ in: back, from: top 60, wide: 20, deep: 12 }"
    )]
    [InlineData(
        "part-touches-itself",
        "{ in: front, from: top 40, wide: 20, deep: 12, stopped: [left 90, right 90] }",
        "{ in: back, from: top 60, wide: 20, deep: 12, stopped: [left 90, right 90] }"
    )]
    [InlineData(
        null,
        "{ in: front, from: top 40, wide: 20, deep: 12 }",
        "{ in: back, from: top 61, wide: 20, deep: 12 }"
    )]
    public void Grooves_of_a_recipe_that_meet_are_found(string? kind, string front, string back)
    {
        var report = Whole.Recipe(
            $"""
            piece: An apron in trouble
            units: mm
            materials: {"{ body: ash 24 }"}
            boards:
              apron:
                lies: on edge
                length: 700
                width: 180
                left: at 0
                front: at 0
                bottom: at 0
                cuts:
                  - groove: {front}
                  - groove: {back}
            """
        );
        Assert.Equal(kind, report.Findings.SingleOrDefault()?.Kind.Id);
    }

    private static Bench Rail(params Extent[] cuts)
    {
        var bench = new Bench();
        bench.Add("rail", Role.Shelf, "piece", Box(0, 0, 0, 400, 20, 100), cuts);
        return bench;
    }
}
