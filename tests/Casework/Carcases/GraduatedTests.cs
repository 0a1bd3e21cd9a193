using Dryfit.Casework.Tests.Kit;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Banks whose openings grow from the top down.</summary>
public sealed class GraduatedTests
{
    private static string Recipe(string rows) =>
        $$"""
            piece: Chest
            units: mm
            materials: { body: birch plywood 18, boxes: birch plywood 12, bottoms: birch plywood 6.5 }
            carcases:
              chest: { size: [500, 836, 450], front: { rows: {{rows}} } }
            """;

    private static IEnumerable<Length> Heights(string rows) =>
        Built.From(Recipe(rows)).Openings.Select(o => o.Clear.Height);

    /// <summary>800 mm inside by a step of 40: a + (a + 40) + (a + 80) + (a + 120) = 800, a = 140.</summary>
    [Fact]
    public void By_a_step_each_is_so_much_higher_than_the_one_above() =>
        Assert.Equal(
            [Exact("140 mm"), Exact("180 mm"), Exact("220 mm"), Exact("260 mm")],
            Heights("{ graduated: 4, step: 40, of: drawer }")
        );

    /// <summary>800 mm by 1.5: 1 + 1.5 + 2.25 = 4.75 parts of 168.4; marked to whole millimetres 168, 253, and what is left.</summary>
    [Fact]
    public void By_a_ratio_each_is_so_many_times_as_high_and_the_last_takes_the_rest() =>
        Assert.Equal(
            [Exact("168 mm"), Exact("253 mm"), Exact("379 mm")],
            Heights("{ graduated: 3, ratio: 1.5, of: drawer }")
        );

    [Theory]
    [InlineData("{ graduated: 3, of: drawer }", "How the openings grow is missing.")]
    [InlineData("{ graduated: 3, ratio: 1.2, step: 20, of: drawer }", "not by both")]
    [InlineData("{ graduated: 3, step: 300, of: drawer }", "have no room")]
    [InlineData("{ graduated: 3, ratio: 0, of: drawer }", "between a tenth and ten")]
    public void What_cannot_grow_is_refused(string rows, string says) =>
        Assert.Contains(says, Built.ErrorOf(Recipe(rows)), StringComparison.Ordinal);
}
