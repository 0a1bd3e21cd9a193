using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Parameters;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

/// <summary>Symmetry and line: what is meant to be alike is, and what nearly runs on does.</summary>
public sealed class LineTests
{
    private static readonly SourcePlace Line = new("bench.dryfit.yaml", 30, 1, 1);

    [Theory]
    [InlineData(300.1, false)]
    [InlineData(300.3, true)]
    [InlineData(340, true)]
    public void Bays_asked_to_be_equal_are_equal(double second, bool told)
    {
        var report = TwoBays(300, (decimal)second, alike: true).Inspect();
        Assert.Equal(told, report.Findings.Any(finding => finding.Kind == AlikeBays.Unequal));
        if (!told)
            return;
        var finding = report.The(AlikeBays.Unequal);
        Assert.Equal("The right bay is wider than the left bay, and the two are meant to be alike.", finding.Message);
        Assert.Equal(Mm((decimal)second), finding.Length());
        Assert.Equal(Wanted.Exactly(Mm(300)), finding.Wanted);
    }

    [Theory]
    [InlineData(300.1, false)]
    [InlineData(302, true)]
    [InlineData(305, true)]
    [InlineData(306, false)]
    public void Bays_with_numbers_of_their_own_are_told_where_they_are_nearly_alike(double second, bool told)
    {
        var report = TwoBays(300, (decimal)second, alike: false).Inspect();
        Assert.Equal(told, report.Findings.Any(finding => finding.Kind == AlikeBays.NearlyAlike));
    }

    [Fact]
    public void Graduated_bays_are_meant_to_differ()
    {
        var bench = TwoBays(300, 302, alike: false, isGraduated: true);
        Assert.DoesNotContain(bench.Inspect().Findings, finding => finding.Kind == AlikeBays.NearlyAlike);
    }

    [Theory]
    [InlineData("430", "428", true)]
    [InlineData("430", "430", false)]
    [InlineData("430", "400", false)]
    [InlineData("430", "side", false)]
    [InlineData("side", "side + 2", true)]
    [InlineData("side + 0.0", "round(side, 25)", false)]
    public void Widths_written_in_a_recipe_are_held_against_each_other(string left, string right, bool told)
    {
        var report = Whole.Recipe(
            $$"""
            piece: Three bays
            units: mm
            parameters: { side: 428 }
            materials: { body: birch plywood 18 mm, backs: birch plywood 6.5 }
            carcases:
              run:
                size: [1500, 800, 400]
                front: { columns: [ { width: {{left}}, open }, open, { width: "{{right}}", open } ] }

            """
        );
        Assert.Equal(told, report.Findings.Any(finding => finding.Kind == AlikeBays.NearlyAlike));
    }

    [Theory]
    [InlineData(0.09, false)]
    [InlineData(0.11, true)]
    public void Doors_of_a_pair_are_equal(double off, bool told)
    {
        var bench = Run.Sound();
        // The line between the two stands off the middle, and its gap is right.
        bench.Change(
            "left-slab",
            board => board with { Extent = Box(1.5m, -20, 1.5m, 298.5m + (decimal)off, -2, 500) }
        );
        bench.Change(
            "right-slab",
            board => board with { Extent = Box(301.5m + (decimal)off, -20, 1.5m, 598.5m, -2, 500) }
        );
        if (told)
            Assert.Equal(
                "The right door is narrower than the left door beside it.",
                bench.Inspect().Only(AlikeParts.PairUnequal).Message
            );
        else
            bench.Inspect().IsClean();
    }

    [Theory]
    [InlineData("900", "898", true)]
    [InlineData("900", "900", false)]
    [InlineData("900", "890", false)]
    [InlineData("900", "tall", false)]
    public void Carcases_that_nearly_agree_are_told_once(string first, string second, bool told)
    {
        var report = Whole.Recipe(
            $$"""
            piece: Two carcases
            units: mm
            parameters: { tall: 898 }
            materials: { body: birch plywood 18 mm, backs: birch plywood 6.5 }
            carcases:
              left: { size: [600, {{first}}, 500], front: { doors: slab pair } }
              right: { right of: left, size: [500, {{second}}, 500], front: { doors: slab } }

            """
        );
        if (told)
        {
            var finding = report.Only(AlikeParts.Carcases);
            Assert.Equal((Mm(898), Wanted.Exactly(Mm(900))), (finding.Length(), finding.Wanted));
        }
        else
        {
            Assert.DoesNotContain(report.Findings, finding => finding.Kind == AlikeParts.Carcases);
        }
    }

    [Theory]
    [InlineData(590, 590.1, false)]
    [InlineData(590, 591, true)]
    [InlineData(590, 592, true)]
    [InlineData(590, 593, false)]
    public void Parts_that_differ_by_less_than_a_setting_of_the_saw_are_told(double one, double other, bool told)
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        bench.Add("shelf-1", Role.Shelf, "carcase", Box(0, 0, 0, (decimal)one, 300, 18));
        bench.Add("shelf-2", Role.Shelf, "carcase", Box(0, 0, 100, (decimal)one, 300, 118));
        bench.Add("shelf-3", Role.Shelf, "carcase", Box(0, 0, 200, (decimal)other, 300, 218));
        var found = bench.Inspect().Findings.Where(finding => finding.Kind == AlikeParts.Parts).ToList();
        Assert.Equal(told ? 1 : 0, found.Count);
        if (told)
            Assert.Equal(["shelf-3", "shelf-1"], found[0].Parts);
    }

    [Fact]
    public void Part_cut_by_hand_is_held_against_its_twin_alone()
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        bench.Add("left-side", Role.Side, "carcase", Box(0, 0, 0, 18, 300, 700));
        bench.Add("right-side", Role.Side, "carcase", Box(582, 0, 0, 600, 300, 701));
        foreach (var side in (ReadOnlySpan<string>)["left-side", "right-side"])
            bench.Change(side, board => board.Upright());
        bench.Change("right-side", board => board.AsCut());
        var finding = bench.Inspect().The(AlikeParts.Parts);
        Assert.Equal(["right-side", "left-side"], finding.Parts);
        Assert.Equal(700, finding.Place!.Line);

        bench.Remove("left-side");
        bench.Add("long-side", Role.Side, "carcase", Box(0, 0, 0, 18, 300, 700));
        bench.Change("long-side", board => board.Upright());
        Assert.DoesNotContain(bench.Inspect().Findings, other => other.Kind == AlikeParts.Parts);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(0.1, false)]
    [InlineData(0.3, true)]
    [InlineData(5, true)]
    [InlineData(5.1, false)]
    [InlineData(19, false)]
    public void Sides_of_an_upper_carcase_stand_over_those_of_the_base_or_well_clear_of_them(double off, bool told)
    {
        var bench = OnEachOther((decimal)off);
        var found = bench.Inspect().Findings.Where(finding => finding.Kind == LinesRunOn.Upright).ToList();
        Assert.Equal(told ? 2 : 0, found.Count);
        Assert.All(found, finding => Assert.Equal(Mm((decimal)off), finding.Length()));
        var mirrored = bench.Mirrored().Inspect().Findings.Count(finding => finding.Kind == LinesRunOn.Upright);
        Assert.Equal(found.Count, mirrored);
    }

    [Theory]
    [InlineData("150", "150", false)]
    [InlineData("150", "152", true)]
    [InlineData("150", "155", true)]
    [InlineData("150", "156", false)]
    public void Gap_lines_run_on_across_neighbouring_carcases_or_break_on_purpose(string left, string right, bool told)
    {
        var report = Whole.Recipe(
            $$"""
            piece: Two carcases
            units: mm
            materials: { body: birch plywood 18 mm, backs: birch plywood 6.5, boxes: birch plywood 12, bottoms: birch plywood 6.5 }
            carcases:
              left: { size: [600, 900, 500], front: { rows: [ { height: {{left}}, drawer }, { doors: slab pair } ] } }
              right: { right of: left, size: [500, 900, 500], front: { rows: [ { height: {{right}}, drawer }, { doors: slab } ] } }

            """
        );
        var found = report.Findings.Where(finding => finding.Kind == LinesRunOn.Gap).ToList();
        Assert.Equal(told, found.Count > 0);
        if (told)
            Assert.Contains(
                found,
                finding => finding.Message.StartsWith("The bottom of the left drawer", StringComparison.Ordinal)
            );
    }

    /// <summary>Another carcase that is 4 mm off in width says nothing of a line that breaks by 2 mm elsewhere.</summary>
    [Fact]
    public void Line_that_breaks_is_told_whatever_another_carcase_is_off_by()
    {
        var report = Whole.Recipe(
            """
            piece: Three carcases
            units: mm
            materials: { body: birch plywood 18 mm, backs: birch plywood 6.5, boxes: maple 12, bottoms: birch plywood 6.5 }
            carcases:
              left: { size: [600, 900, 500], front: { rows: [ { height: 150, drawer }, { doors: slab pair } ] } }
              right: { right of: left, size: [500, 900, 500], front: { rows: [ { height: 152, drawer }, { doors: slab } ] } }
              upper: { on: left, size: [596, 500, 300] }

            """
        );
        Assert.Contains(report.Findings, finding => finding.Kind == AlikeParts.Carcases);
        Assert.Contains(report.Findings, finding => finding.Kind == LinesRunOn.Gap);
    }

    private static Bench TwoBays(decimal first, decimal second, bool alike, bool isGraduated = false)
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        var middle = 18 + first;
        var right = middle + 18 + second;
        bench.Add("left-side", Role.Side, "carcase", Box(0, 0, 0, 18, 300, 700));
        bench.Add("partition", Role.Partition, "carcase", Box(middle, 0, 0, middle + 18, 300, 700));
        bench.Add("right-side", Role.Side, "carcase", Box(right, 0, 0, right + 18, 300, 700));
        var size = Figure.Given("opening width", Mm(300), new TradeOrigin("bench"));
        bench.Add(
            new Bank(
                Axis.X,
                [
                    new("left bay", "left-side", "partition", null, size, 0, Line) { IsGraduated = isGraduated },
                    new("right bay", "partition", "right-side", null, size, alike ? 0 : 1, Line)
                    {
                        IsGraduated = isGraduated,
                    },
                ],
                Line
            )
        );
        return bench;
    }

    /// <summary>A carcase of 600 mm, and on it one that is so much narrower at each end.</summary>
    private static Bench OnEachOther(decimal off)
    {
        var bench = new Bench();
        bench.Group("base", GroupKind.Carcase);
        bench.Group("upper", GroupKind.Carcase);
        Sides(bench, "base", 0, 600, 0, 700);
        Sides(bench, "upper", off, 600 - off, 720, 1400);
        return bench;
    }

    private static void Sides(Bench bench, string carcase, decimal left, decimal right, decimal bottom, decimal top)
    {
        bench.Add($"{carcase}-left-side", Role.Side, carcase, Box(left, 0, bottom, left + 18, 300, top));
        bench.Add($"{carcase}-right-side", Role.Side, carcase, Box(right - 18, 0, bottom, right, 300, top));
        bench.Add(
            new Opening(
                carcase,
                carcase,
                Box(left + 18, 0, bottom, right - 18, 300, top),
                new([$"{carcase}-left-side"], [$"{carcase}-right-side"], [], []),
                null,
                Line
            )
        );
    }
}
