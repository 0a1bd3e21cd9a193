using Dryfit.Casework;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

/// <summary>
/// Two posts of 40 x 20 with a gap between 40 and 50, from the floor to 600, and a strip of 10 before it that should lap 12
/// over each.
/// </summary>
public sealed class CoverTests
{
    [Theory]
    [InlineData(28, 62, null, null)]
    // Within 1/128 in (0.2 mm) of the lap wanted, and just beyond.
    [InlineData(28.1, 62, null, null)]
    [InlineData(28.3, 62, "trim-laps-too-little", 11.7)]
    [InlineData(28, 55, "trim-laps-too-little", 5.0)]
    [InlineData(40, 62, "trim-leaves-gap-open", 0.0)]
    [InlineData(28, 47, "trim-leaves-gap-open", -3.0)]
    public void A_strip_hides_its_gap_where_it_laps_over_both_sides(double from, double to, string? kind, double? lap)
    {
        var report = Inspect(Posts(), (decimal)from, (decimal)to);
        Assert.Equal(kind is null ? [] : [kind], Kinds(report));
        if (lap is not null)
            Assert.Equal(Mm((decimal)lap), report.Findings.First(finding => finding.Kind.Id == kind).Length());
    }

    [Fact]
    public void The_worst_place_along_the_strip_counts()
    {
        var bench = Posts();
        // Half way up the right post stands 20 further off: there the strip ends in the air.
        bench.Change("right", board => board with { Cuts = [Box(50, 0, 300, 70, 20, 600)] });
        var finding = Inspect(bench, 28, 62)
            .Findings.First(found => found.Kind.Id.StartsWith("trim", StringComparison.Ordinal));
        Assert.Equal("trim-leaves-gap-open", finding.Kind.Id);
        // From the strip's edge at 62 to the post at 70.
        Assert.Equal(Mm(-8), finding.Length());
    }

    [Fact]
    public void A_strip_that_is_longer_than_what_it_lies_on_shows_the_gap()
    {
        var bench = Posts();
        bench.Change("right", board => board with { Extent = Box(50, 0, 0, 90, 20, 500) });
        Assert.Equal(["trim-leaves-gap-open"], Kinds(Inspect(bench, 28, 62)));
    }

    [Theory]
    [InlineData(50, null)]
    // Within 1/128 in (0.2 mm) of the wall, and just beyond.
    [InlineData(50.1, null)]
    [InlineData(50.3, 0.3)]
    [InlineData(53, 3.0)]
    public void A_strip_at_a_wall_lies_against_it(double wall, double? gap)
    {
        var bench = Posts();
        bench.AddRoom("right wall", Box((decimal)wall, -300, 0, (decimal)wall + 100, 300, 700));
        bench.Add("strip", Role.CoverStrip, "case", Box(28, -10, 0, 50, 0, 600));
        bench.Join(JointKind.Screwed, "left", "strip", Direction.Back);
        var piece = bench.Build() with
        {
            Covers = [new("strip", ["left"], [], Direction.Right, Mm(12), Somewhere) { Wall = "right wall" }],
        };
        var report = Inspector.Inspect(piece);
        Assert.Equal(gap is null ? [] : ["trim-stands-off-the-wall"], Kinds(report));
        if (gap is not null)
            Assert.Equal(
                Mm((decimal)gap),
                report.Findings.First(finding => finding.Kind.Id == "trim-stands-off-the-wall").Length()
            );
    }

    private static IEnumerable<string> Kinds(Findings.Report report) =>
        report.Findings.Select(finding => finding.Kind.Id).Where(id => id.StartsWith("trim", StringComparison.Ordinal));

    private static Findings.SourcePlace Somewhere { get; } = new("test.dryfit.yaml", 7, 1, 1);

    private static Bench Posts()
    {
        var bench = new Bench();
        bench.Group("case", GroupKind.Carcase);
        bench.Add("left", Role.FrameStile, "case", Box(0, 0, 0, 40, 20, 600));
        bench.Add("right", Role.FrameStile, "case", Box(50, 0, 0, 90, 20, 600));
        bench.Fit("bolt", "left", "right");
        return bench;
    }

    private static Findings.Report Inspect(Bench bench, decimal from, decimal to)
    {
        bench.Add("strip", Role.CoverStrip, "case", Box(from, -10, 0, to, 0, 600));
        bench.Join(JointKind.Screwed, "left", "strip", Direction.Back);
        bench.Join(JointKind.Resting, "right", "strip", Direction.Back);
        var piece = bench.Build() with
        {
            Covers = [new("strip", ["left"], ["right"], Direction.Right, Mm(12), Somewhere)],
        };
        return Inspector.Inspect(piece);
    }
}
