using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.Findings;
using Dryfit.Outputs.Tests.Pieces;

namespace Dryfit.Outputs.Tests.Findings;

public class Findings_in_the_terminal
{
    [Fact]
    public void A_finding_says_what_was_measured_what_was_wanted_and_where()
    {
        var piece = Cupboards.OneDoor(gapAtRight: 9).Build();
        var text = FindingsText.Write(piece, Cupboards.ReportOf(Cupboards.TooWide(9)), colour: false);
        Assert.Equal(
            """
            stop 1: Door gap too wide  (door-gap-too-wide)
              The gap on the right of the door is too wide.
                measured   gap 9 mm
                wanted     1 to 3 mm
                off by     6 mm too much
                parts      case door slab, case right-side
                recipe     cupboard.dryfit.yaml:12:5
                to mend    Make the door 560 wide.

            1 stop. Do not cut yet.
            Checked:
              gaps around inset fronts: 4 gaps
            Not checked (not part of this tool yet):
              tip-over

            """,
            text
        );
    }

    [Fact]
    public void What_a_piece_has_none_of_is_named_apart_from_what_was_checked()
    {
        var report = new Report([], [CheckRun.Over("gaps", 4, "gaps"), CheckRun.Over("racks that tip", 0, "racks")]);
        Assert.Equal(
            """
            Nothing found: every check that ran has passed.
            Checked:
              gaps: 4 gaps
            Nothing here to check for:
              racks that tip

            """,
            FindingsText.Write(Cupboards.OneDoor(9).Build(), report, colour: false)
        );
    }

    [Fact]
    public void Lengths_are_in_the_makers_own_fractions()
    {
        var sketch = Cupboards.OneDoor(gapAtRight: 9);
        sketch.Format = LengthFormat.Inches;
        var finding = Cupboards.TooWide(9) with
        {
            Measured = new MeasuredLength("gap", Length.FromInches(0, 5, 16)),
            Wanted = new(Length.FromInches(0, 1, 16), Length.FromInches(0, 1, 8)),
        };
        var text = FindingsText.Write(sketch.Build(), Cupboards.ReportOf(finding), colour: false);
        Assert.Contains("gap 5/16 in\n", text, StringComparison.Ordinal);
        Assert.Contains("1/16 to 1/8 in\n", text, StringComparison.Ordinal);
        Assert.Contains("3/16 in too much\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gap_that_runs_out_of_true_may_miss_both_ways()
    {
        var finding = Cupboards.TooWide(9) with { Measured = new MeasuredRange("gap", Sketch.Mm(0), Sketch.Mm(5)) };
        var text = FindingsText.Write(Cupboards.OneDoor(9).Build(), Cupboards.ReportOf(finding), colour: false);
        Assert.Contains("gap 0 to 5 mm\n", text, StringComparison.Ordinal);
        Assert.Contains("2 mm too much, 1 mm too little\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_found_says_so_and_still_lists_what_was_not_checked()
    {
        var text = FindingsText.Write(Cupboards.OneDoor(2).Build(), Cupboards.ReportOf(), colour: true);
        Assert.StartsWith("Nothing found: every check that ran has passed.\n", text, StringComparison.Ordinal);
        Assert.Contains("Not checked (not part of this tool yet):\n  tip-over\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_accepted_stop_still_prints_but_does_not_stop_the_saw()
    {
        var finding = Cupboards.TooWide(9) with { AcceptedBecause = "the customer wants it so" };
        var text = FindingsText.Write(Cupboards.OneDoor(9).Build(), Cupboards.ReportOf(finding), colour: false);
        Assert.Contains("accepted 1: Door gap too wide", text, StringComparison.Ordinal);
        Assert.Contains("accepted   the customer wants it so\n", text, StringComparison.Ordinal);
        Assert.Contains("1 accepted. Nothing stops the saw.\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_colour_there_is_no_escape_code_whatever_parts_are_called()
    {
        foreach (var name in Cupboards.HostileNames)
        {
            var piece = Cupboards.OneDoor(9).Change("case/door/slab", part => part with { Name = name }).Build();
            var text = FindingsText.Write(piece, Cupboards.ReportOf(Cupboards.TooWide(9)), colour: false);
            Assert.DoesNotContain('\u001b', text);
            Assert.DoesNotContain('\0', text);
            Assert.DoesNotContain('\u202e', text);
            Assert.Single(text.Split('\n'), line => line.StartsWith("    parts", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Colour_marks_the_severity_word_alone()
    {
        var text = FindingsText.Write(
            Cupboards.OneDoor(9).Build(),
            Cupboards.ReportOf(Cupboards.TooWide(9)),
            colour: true
        );
        Assert.StartsWith("\u001b[1;31mstop\u001b[0m 1: Door gap too wide", text, StringComparison.Ordinal);
    }
}
