using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Inspection.Tests;

/// <summary>Edges that should lie in one plane, and tops that should overhang: on a top that lies on a side 18 thick.</summary>
public sealed class EdgeTests
{
    [Theory]
    [InlineData(400, null)]
    [InlineData(400.19, null)]
    [InlineData(400.21, "edge-a-little-out-of-line")]
    [InlineData(399.1, "edge-a-little-out-of-line")]
    [InlineData(401, "edge-out-of-line")]
    [InlineData(350, "edge-out-of-line")]
    public void Top_should_end_flush_with_its_side_at_the_back(double deep, string? kind)
    {
        var report = Top((decimal)deep, new EdgeLine(Direction.Back, Length.Zero)).Inspect();
        Assert.Equal(kind is null ? [] : [kind], report.Findings.Select(finding => finding.Kind.Id));
    }

    [Theory]
    [InlineData(412, false)]
    [InlineData(412.19, false)]
    [InlineData(410, true)]
    [InlineData(400, true)]
    [InlineData(414, true)]
    public void Top_overhangs_as_far_as_it_should(double deep, bool isTold)
    {
        var report = Top((decimal)deep, new EdgeLine(Direction.Back, Bench.Mm(12))).Inspect();
        Assert.Equal(isTold, report.Findings.Any(finding => finding.Kind == EdgesInLine.OutOfLine));
    }

    [Fact]
    public void A_step_says_how_far_and_what_would_mend_it()
    {
        var finding = Top(397, new EdgeLine(Direction.Back, Length.Zero)).Inspect().The(EdgesInLine.OutOfLine);
        Assert.Equal(["top", "side"], finding.Parts);
        Assert.Equal(Bench.Mm(3), finding.Length());
        Assert.StartsWith("Make the top 3 mm ", finding.Remedy?.Text, StringComparison.Ordinal);
        Assert.Equal((397.0, 400.0), (finding.Where!.To.YMm, finding.Where.From.YMm));
    }

    /// <summary>A top so deep on a side 400 deep, both from the same front.</summary>
    private static Bench Top(decimal deep, EdgeLine line)
    {
        var bench = new Bench();
        bench.Group("box", GroupKind.Carcase);
        bench.Add("side", Role.Side, "box", Bench.Box(0, 0, 0, 18, 400, 700));
        bench.Add("top", Role.Top, "box", Bench.Box(0, 0, 700, 500, deep, 720));
        bench.Join(JointKind.Screwed, "side", "top", Direction.Down, line: line);
        return bench;
    }
}
