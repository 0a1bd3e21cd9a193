using Dryfit.Casework;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

public sealed class BodyTests
{
    [Fact]
    public void Boards_in_each_others_place_are_found_with_volume_depth_and_place()
    {
        var bench = Two(Box(99, 0, 0, 200, 20, 50));
        var finding = bench.Inspect().The(PartsOverlap.Overlap);
        Assert.Equal(1.0 * 20 * 50, finding.Volume().CubicMm, 1e-6);
        Assert.Equal(Mm(1), finding.Volume().Depth);
        finding.IsAt((99, 25), (100, 25));
    }

    [Fact]
    public void Touching_is_no_overlap()
    {
        var report = Two(Box(100, 0, 0, 200, 20, 50)).Inspect();
        Assert.DoesNotContain(report.Findings, finding => finding.Kind == PartsOverlap.Overlap);
    }

    [Fact]
    public void Kept_part_is_not_the_one_to_cut()
    {
        var bench = Two(Box(99, 0, 0, 200, 20, 50));
        bench.Change("one", board => board with { IsKept = true });
        Assert.Equal(["two", "one"], bench.Inspect().The(PartsOverlap.Overlap).Parts);
    }

    [Fact]
    public void Part_that_no_joint_ties_is_found()
    {
        var bench = Cupboard.Sound();
        bench.Add("stray", Role.Shelf, "carcase", Box(100, 100, 100, 200, 120, 110));
        var finding = bench.Inspect().Only(Connected.PartLoose);
        Assert.Equal(["stray"], finding.Parts);
    }

    [Fact]
    public void Door_without_hinges_is_found_as_one_unit()
    {
        var bench = Cupboard.Sound();
        bench.Unfit("hinge");
        var finding = bench.Inspect().Only(Connected.UnitLoose);
        Assert.Equal("The door is tied to nothing.", finding.Message);
        Assert.Equal(5, finding.Parts.Count);
    }

    [Fact]
    public void Open_joint_that_leaves_a_part_loose_is_told_once()
    {
        var bench = Cupboard.Sound();
        bench.Change("top-frame-rail", board => board with { Extent = Box(1, 0, 600, 399, 20, 640) });
        var report = bench.Inspect();
        Assert.All(report.Findings, finding => Assert.Same(JointMeets.Open, finding.Kind));
        Assert.Equal(2, report.Findings.Count);
    }

    [Theory]
    [InlineData(640, true)]
    [InlineData(640.1, true)]
    [InlineData(645, false)]
    public void Old_carcase_stands_on_the_rest_by_its_weight(double z, bool stands)
    {
        var bench = Cupboard.Sound();
        bench.Group("chest", GroupKind.KeptCarcase);
        var bottom = (decimal)z;
        bench.Add(
            "old-chest",
            Role.Kept,
            "chest",
            Box(-40, 0, bottom, 440, 300, bottom + 400),
            Box(-20, 0, bottom + 20, 420, 280, bottom + 380)
        );
        bench.Change("old-chest", board => board with { IsKept = true });
        var report = bench.Inspect();
        Assert.Equal(stands ? [] : [Connected.PartLoose], report.Findings.Select(finding => finding.Kind));
    }

    [Fact]
    public void Two_carcases_stand_side_by_side_on_the_floor()
    {
        var bench = Chest.Sound();
        bench.Group("other", GroupKind.Carcase);
        bench.Add("other-side", Role.Side, "other", Box(600, 0, -20, 620, 300, 220));
        bench.Add("other-bottom", Role.Bottom, "other", Box(620, 0, 0, 900, 300, 20));
        bench.Join(JointKind.Screwed, "other-side", "other-bottom", Direction.Left);
        bench.Inspect().IsClean();
    }

    private static Bench Two(Extent second)
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        bench.Add("one", Role.Shelf, "carcase", Box(0, 0, 0, 100, 20, 50));
        bench.Add("two", Role.Shelf, "carcase", second);
        return bench;
    }
}
