using Dryfit.Findings;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

/// <summary>Stock that comes thicker or thinner than it is said to be.</summary>
public sealed class StockTests
{
    /// <summary>
    /// A carcase 600 wide with sides of 18 leaves 564; side slides take 12.7 each side and forgive 0.8. Plywood of 12 may come
    /// at 12.4, which leaves 12.3 beside the box.
    /// </summary>
    private const string Chest = """
        piece: Chest
        units: mm
        materials:
          body: birch plywood 18 mm
          boxes: MATERIAL
          backs: birch plywood 6.5
          bottoms: birch plywood 6.5
        carcases:
          chest: { size: [600, 700, 500], front: { rows: { equal: 3, of: { drawer: { joint: JOINT } } } } }

        """;

    [Theory]
    [InlineData("birch plywood 12", "rabbeted", true)]
    [InlineData("{ sheet: birch plywood, actual: 12 }", "rabbeted", false)]
    [InlineData("{ sheet: birch plywood, thickness: 12, varies by: 0.2 }", "rabbeted", true)]
    [InlineData("{ sheet: birch plywood, thickness: 12, varies by: 0.19 }", "rabbeted", false)]
    [InlineData("birch plywood 12", "box jointed", false)]
    [InlineData("maple 12", "rabbeted", false)]
    public void Box_that_fits_only_at_its_nominal_thickness_is_told(string boxes, string joint, bool told)
    {
        var report = Whole.Recipe(
            Chest.Replace("MATERIAL", boxes, StringComparison.Ordinal).Replace("JOINT", joint, StringComparison.Ordinal)
        );
        Assert.Equal(told, report.Findings.Any(finding => finding.Kind == DrawerStock.OnlyAtNominal));
    }

    [Fact]
    public void The_worst_room_both_ways_is_told_once_for_all_boxes_of_a_stock()
    {
        var finding = Whole
            .Recipe(
                Chest
                    .Replace("MATERIAL", "birch plywood 12", StringComparison.Ordinal)
                    .Replace("JOINT", "rabbeted", StringComparison.Ordinal)
            )
            .The(DrawerStock.OnlyAtNominal);
        var room = Assert.IsType<MeasuredRange>(finding.Measured);
        Assert.Equal((Mm(12.3m), Mm(13.1m)), (room.Smallest, room.Largest));
        Assert.Equal(new Wanted(Mm(12.7m), Mm(13.5m)), finding.Wanted);
        Assert.Equal(6, finding.Parts.Count);
        Assert.Contains("from 11.2 mm to 12 mm", finding.Remedy!.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(6, null)]
    [InlineData(5.1, null)]
    [InlineData(4.9, "panel-rattles")]
    public void Panel_thinner_than_its_groove_rattles(double thickness, string? kind)
    {
        var told = new Cupboard { PanelThickness = (decimal)thickness }
            .OnBench()
            .Inspect()
            .Findings.Where(finding => new ThicknessFit().Kinds.Contains(finding.Kind));
        Assert.Equal(kind is null ? [] : [kind], told.Select(finding => finding.Kind.Id));
    }

    [Theory]
    [InlineData(0.19, null)]
    [InlineData(0.21, "tongue-slack")]
    public void Tongue_thinner_than_its_groove_is_slack(double slack, string? kind)
    {
        var bench = Cupboard.Sound();
        // Both cheeks of the groove in the left stile are cut a little farther apart.
        bench.Change("door-left-stile", board => board with { Cuts = [Box(52, 7, 2, 62, 13 + (decimal)slack, 598)] });
        var told = bench.Inspect().Findings.Where(finding => finding.Kind == ThicknessFit.Slack).ToList();
        // Two rails enter it.
        Assert.Equal(kind is null ? 0 : 2, told.Count);
    }

    /// <summary>Plywood said to measure 6 may come 0.4 thicker or thinner.</summary>
    [Theory]
    [InlineData(6, null)]
    [InlineData(5.85, "groove-fits-only-at-nominal")]
    [InlineData(5.75, null)]
    [InlineData(5.45, null)]
    [InlineData(5.35, "panel-rattles")]
    public void Groove_of_another_width_than_its_panel_is_held_against_what_the_stock_may_be(double panel, string? kind)
    {
        var bench = new Cupboard { PanelThickness = (decimal)panel }.OnBench();
        bench.Change("door-panel", board => board with { Varies = Mm(0.4m) });
        var told = bench.Inspect().Findings.Where(finding => new ThicknessFit().Kinds.Contains(finding.Kind));
        Assert.Equal(kind is null ? [] : [kind], told.Select(finding => finding.Kind.Id));
    }
}
