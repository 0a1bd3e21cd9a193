using Dryfit.Findings;

namespace Dryfit.Inspection.Tests;

/// <summary>Wood left around cut-outs: 50 mm at edges, 150 mm at joints, common practice.</summary>
public sealed class CutOutTests
{
    [Theory]
    [InlineData("from left: 600, size: [400, 400], from front: 50", null)] // 500 deep: 50 behind as well
    [InlineData("from left: 600, size: [400, 400], from front: 49", "cut-out-near-edge")]
    [InlineData("from left: 600, size: [400, 400], from front: 51", "cut-out-near-edge")]
    [InlineData("from left: 50, size: [400, 300]", null)]
    [InlineData("from left: 49, size: [400, 300]", "cut-out-near-edge")]
    [InlineData("from left: 1350, size: [400, 300]", null)] // the joint is at 1200
    [InlineData("from left: 1349, size: [400, 300]", "cut-out-near-joint")]
    [InlineData("from left: 651, size: [400, 300]", "cut-out-near-joint")]
    [InlineData("from left: 650, size: [400, 300]", null)]
    public void Little_wood_is_told(string hole, string? kind) =>
        Assert.Equal(kind is null ? [] : [kind], Report($"hob: {{ {hole} }}").Findings.Select(f => f.Kind.Id));

    [Fact]
    public void Two_cut_outs_near_each_other_are_told_once()
    {
        var finding = Assert.Single(
            Report("{ hob: { from left: 100, size: [400, 300] }, sink: { from left: 540, size: [300, 300] } }").Findings
        );
        Assert.Equal("cut-out-near-edge", finding.Kind.Id);
        Assert.Equal(40, Assert.IsType<MeasuredLength>(finding.Measured).Value.ToMillimetres(), 1e-6);
    }

    private static Report Report(string holes) =>
        Whole.Recipe(
            $$"""
            piece: Worktop
            units: mm
            materials: { body: birch plywood 18, backs: birch plywood 6.5, tops: european beech 40 }
            carcases:
              one: { size: [1000, 700, 500] }
              two: { size: [1000, 700, 500] }
            worktops:
              long: { over: [one, two], joints: [1200], cut outs: {{(holes[0] == '{' ? holes : $"{{ {holes} }}")}} }
            """
        );
}
