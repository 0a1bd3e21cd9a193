using Dryfit.Measure;

namespace Dryfit.Inspection.Tests;

public sealed class ReportTests
{
    [Fact]
    public void Every_kind_has_an_id_of_its_own_in_words_and_says_why()
    {
        Assert.Equal(
            Catalogue.All.Count,
            Catalogue.All.Select(kind => kind.Id).Distinct(StringComparer.Ordinal).Count()
        );
        Assert.All(Catalogue.All, kind => Assert.Matches("^[a-z]+(-[a-z]+)+$", kind.Id));
        Assert.All(Catalogue.All, kind => Assert.NotEmpty(kind.Why));
    }

    [Fact]
    public void Page_lists_every_kind_and_what_is_not_checked()
    {
        var page = FindingsPage.Write();
        Assert.All(Catalogue.All, kind => Assert.Contains($"| `{kind.Id}` |", page, StringComparison.Ordinal));
        Assert.All(Catalogue.NotChecked, left => Assert.Contains(left.Name[1..], page, StringComparison.Ordinal));
        Assert.DoesNotContain('\r', page);
    }

    [Fact]
    public void Report_says_what_was_not_checked()
    {
        var report = Cupboard.Sound().Inspect();
        Assert.All(report.Checks.Take(Catalogue.Checks.Count), check => Assert.True(check.Ran));
        Assert.All(report.Checks.Skip(Catalogue.Checks.Count), check => Assert.False(check.Ran));
        Assert.Contains(report.Checks, check => check.Name.Contains("tip-over", StringComparison.Ordinal));
    }

    [Fact]
    public void Accepted_finding_prints_with_its_reason_and_stops_nothing()
    {
        var bench = new Cupboard { DoorWidth = 390, PanelWidth = 286 }.OnBench();
        Assert.True(bench.Inspect().StopsTheSaw);

        bench.Accept("front-gap-too-wide", "door stiles", "a cat needs to get in");
        var report = bench.Inspect();

        Assert.Equal("a cat needs to get in", report.Only(FrontGaps.TooWide).AcceptedBecause);
        Assert.False(report.StopsTheSaw);
    }

    [Fact]
    public void Acceptance_of_other_parts_accepts_nothing_and_says_so()
    {
        var bench = new Cupboard { DoorWidth = 390, PanelWidth = 286 }.OnBench();
        bench.Accept("front-gap-too-wide", "left shelf", "never mind");
        bench.Accept("front-gap-to-wide", null, "mistyped");
        var report = bench.Inspect();
        Assert.True(report.StopsTheSaw);
        var notes = report.Findings.Where(finding => finding.Kind == Accepted.NotNeeded).ToList();
        Assert.Equal([null, "Did you mean 'front-gap-too-wide'?"], notes.Select(finding => finding.Remedy?.Text));
    }

    [Fact]
    public void Safety_is_not_accepted_away()
    {
        var bench = new Cupboard { PanelWidth = 284 }.OnBench();
        bench.Change("door-panel", board => board with { Stuff = Casework.MaterialKind.Glass });
        bench.Accept("pane-falls-out", null, "nobody comes near it");
        var report = bench.Inspect();
        Assert.Null(report.The(LooseFit.PaneFallsOut).AcceptedBecause);
        report.The(Accepted.NotForSafety);
        Assert.True(report.StopsTheSaw);
    }

    [Fact]
    public void Findings_come_gravest_first_and_the_same_every_time()
    {
        var bench = new Cupboard
        {
            DoorWidth = 395.5m,
            DoorBottom = 4,
            DoorY = 1,
        }.OnBench();
        var first = bench.Inspect();
        Assert.True(first.Findings.Count > 3);
        Assert.Equal(
            first.Findings.Select(finding => finding.Kind.Severity).OrderDescending(),
            first.Findings.Select(finding => finding.Kind.Severity)
        );
        Assert.Equal(first.Findings.Select(FindingsAsked.Told), bench.Inspect().Findings.Select(FindingsAsked.Told));
    }

    [Fact]
    public void Lengths_in_remedies_are_the_makers_own()
    {
        var bench = new Cupboard { DoorWidth = 393, PanelWidth = 289 }.OnBench();
        Assert.Equal("Make the door 3 mm wider.", bench.Inspect().Findings[0].Remedy?.Text);

        bench = new Cupboard { DoorWidth = 396 - 3.175m, PanelWidth = 292 - 3.175m }.OnBench();
        bench.Format = LengthFormat.Inches;
        Assert.Equal("Make the door 1/8 in wider.", bench.Inspect().Findings[0].Remedy?.Text);
    }
}
