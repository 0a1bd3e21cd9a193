using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using static Dryfit.Inspection.Tests.Bench;

namespace Dryfit.Inspection.Tests;

public sealed class RackTests
{
    private static readonly SourcePlace Line = new("piece.dryfit.yaml", 7, 3, 4);

    [Fact]
    public void A_full_rack_says_its_weight_and_what_one_weighs()
    {
        // 30 bottles of 1.4 kg.
        var finding = With(top: 1500).Inspect().Only(RackLoads.Weight);
        Assert.Equal("The rack holds 30 bottles: some 42 kg when it is full.", finding.Message);
        Assert.Equal(["one weighs 1400 g: from memory"], finding.Assumptions);
        Assert.Equal(Line, finding.Place);
    }

    [Fact]
    public void A_maker_in_inches_is_told_pounds_besides()
    {
        var bench = With(top: 1500);
        bench.Format = LengthFormat.Inches;
        // 42 kg are 92.6 lb.
        Assert.Contains("93 lb (42 kg)", bench.Inspect().Only(RackLoads.Weight).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rack_just_within_reach_is_no_matter_and_one_above_is_told()
    {
        // The lowest point of the cupboard lies 40 under the zero of the piece.
        Assert.DoesNotContain(With(top: 1860).Inspect().Findings, f => f.Kind == RackLoads.OutOfReach);
        var finding = With(top: 1861).Inspect().The(RackLoads.OutOfReach);
        Assert.Equal(Mm(1901), Assert.IsType<MeasuredLength>(finding.Measured).Value);
        Assert.Equal(Mm(1900), finding.Wanted!.AtMost);
        Assert.Equal(Severity.Note, finding.Kind.Severity);
    }

    private static Bench With(int top)
    {
        var bench = Cupboard.Sound();
        bench.Add(new Load("rack", "bottles", 30, 1400, Mm(top), Mm(1900), ["top-frame-rail"], "from memory", Line));
        return bench;
    }
}
