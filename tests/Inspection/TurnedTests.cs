using Dryfit.Findings;

namespace Dryfit.Inspection.Tests;

/// <summary>A carcase at an angle in plan is judged like a straight one.</summary>
public sealed class TurnedTests
{
    private static string Recipe(string turned, string rest) =>
        $$"""
            piece: Angle
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5, fronts: maple 20, panes: float glass 4 }
            carcases:
              box:
                size: [900, 900, 500]
                {{turned}}
                stands on: { plinth: 100 }
                front: { columns: [ { rows: [ drawer, { doors: framed } ] }, { doors: slab }, { doors: glazed } ] }
                shelves: { fixed: 1 }
              frame:
                right of: box
                size: [700, 900, 400]
                face frame:
                front: { rows: [ { height: 150, drawer }, { doors: framed pair } ] }
            {{rest}}
            """;

    private const string Slips = """
        as cut:
          box middle bay door: { width: 290 }
          box left bay door stiles: { length: 380 }
          frame left door: { width: 300 }
          frame right door panel: { width: 230 }
          box drawer sides: { length: 300 }
          frame drawer front: { height: 142 }
          box fixed shelf 1: { width: 380 }
          frame bottom: { length: 660 }
        """;

    [Theory]
    [InlineData("turned: { left: 30 }")]
    [InlineData("turned: { right: 45, about: middle }")]
    [InlineData("turned: { left: 90 }")]
    [InlineData("turned: { right: 180 }")]
    public void Sound_piece_is_sound_at_any_angle(string turned)
    {
        var straight = Whole.Recipe(Recipe("", ""));
        var report = Whole.Recipe(Recipe(turned, ""));
        Assert.Empty(straight.Findings);
        Assert.Empty(report.Findings);
        Assert.Equal(straight.Checks, report.Checks);
    }

    [Theory]
    [InlineData("turned: { left: 30 }")]
    [InlineData("turned: { right: 45, about: middle }")]
    [InlineData("turned: { left: 90 }")]
    [InlineData("turned: { right: 7.3 }")]
    public void Slips_are_found_alike_at_any_angle(string turned)
    {
        var straight = Whole.Recipe(Recipe("", Slips));
        var report = Whole.Recipe(Recipe(turned, Slips));
        Assert.True(straight.Findings.Count > 5);
        Assert.Equal(straight.Findings.Select(Told), report.Findings.Select(Told));
    }

    [Fact]
    public void Places_of_findings_are_turned_with_what_they_are_told_of()
    {
        // A quarter to the left about the left front corner: x becomes -y, y becomes x.
        var straight = Whole.Recipe(Recipe("", Slips));
        var turned = Whole.Recipe(Recipe("turned: { left: 90 }", Slips));
        foreach (var (a, b) in straight.Findings.Zip(turned.Findings))
        {
            Same(a.Where!.From, b.Where!.From);
            Same(a.Where.To, b.Where.To);
        }

        static void Same(SpacePoint square, SpacePoint turned)
        {
            Assert.Equal(square.YMm, turned.XMm, 1e-6);
            Assert.Equal(-square.XMm, turned.YMm, 1e-6);
            Assert.Equal(square.ZMm, turned.ZMm, 1e-6);
        }
    }

    [Fact]
    public void Carcases_turned_into_each_other_overlap()
    {
        var report = Whole.Recipe(
            Recipe("", "")
                .Replace(
                    "right of: box",
                    "right of: box\n    turned: { left: 30, about: left rear corner }",
                    StringComparison.Ordinal
                )
        );
        Assert.Contains(report.Findings, f => f.Kind.Id == "parts-overlap");
    }

    [Fact]
    public void Fronts_at_an_angle_that_touch_are_told()
    {
        // Two frameless carcases whose front corners meet at a right angle: their doors, 20 thick, stand in each other.
        var report = Whole.Recipe(
            """
            piece: Corner
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5 }
            carcases:
              one: { size: [600, 900, 500], front: { doors: slab } }
              two: { right of: one, size: [600, 900, 500], front: { doors: slab }, turned: { left: 90 } }
            """
        );
        Assert.Contains(report.Findings, f => f.Kind.Id == "fronts-touch");
    }

    [Theory]
    [InlineData("right")]
    [InlineData("left")]
    public void Diagonal_front_is_sound_and_its_slips_are_found(string corner)
    {
        var recipe = $$"""
            piece: Corner
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5, frame: ash 20 }
            carcases:
              corner:
                size: [900, 720, 900]
                stands on: { plinth: 90 }
                face frame: { material: frame }
                diagonal: { corner: {{corner}}, beside: 560 }
                shelves: { adjustable: 2 }
                front: { doors: framed }

            """;
        Assert.Empty(Whole.Recipe(recipe).Findings);
        var short7 = Whole.Recipe(recipe + "as cut:\n  corner front door: { height: 540 }\n");
        Assert.Contains(short7.Findings, f => f.Kind.Id == "front-gap-too-wide");
        var shortEnd = Whole.Recipe(recipe + "as cut:\n  corner front face frame top rail: { length: 390 }\n");
        Assert.Contains(shortEnd.Findings, f => f.Kind.Id == "joint-open");
    }

    private static string Told(Finding finding) =>
        $"{finding.Kind.Id}: {finding.Message} {Size(finding.Measured)} {finding.Remedy?.Text}";

    private static string Size(Measured? measured) =>
        measured switch
        {
            MeasuredLength length => $"{length.Value.ToMillimetres():0.000}",
            MeasuredRange range => $"{range.Smallest.ToMillimetres():0.000} to {range.Largest.ToMillimetres():0.000}",
            MeasuredVolume volume => $"{volume.CubicMm:0.000}",
            _ => "",
        };
}
