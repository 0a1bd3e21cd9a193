using System.Globalization;
using System.Text;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.Findings;

/// <summary>Findings as a maker reads them in a terminal.</summary>
public static class FindingsText
{
    private const int LabelWidth = 11;
    private const int PartsNamed = 4;

    /// <summary>Every finding, then one line that sums them up, then what was checked and what was not.</summary>
    /// <param name="colour">True to mark severities in colour as well; words alone carry the sense.</param>
    public static string Write(Piece piece, Report report, bool colour)
    {
        var names = PartNames.Of(piece);
        var text = new StringBuilder();
        for (var i = 0; i < report.Findings.Count; i++)
            WriteFinding(text, i + 1, report.Findings[i], piece, names, colour);
        WriteSummary(text, report, colour);
        return text.ToString();
    }

    private static void WriteFinding(
        StringBuilder text,
        int number,
        Finding finding,
        Piece piece,
        PartNames names,
        bool colour
    )
    {
        var kind = finding.Kind;
        var head = finding.AcceptedBecause is null ? FindingWords.Severity(kind.Severity) : "accepted";
        text.Append(Ink.Of(kind.Severity, finding.AcceptedBecause is not null, head, colour))
            .Append(CultureInfo.InvariantCulture, $" {number}: {kind.Title}  ({kind.Id})\n");
        text.Append("  ").Append(PlainText.Clean(finding.Message)).Append('\n');
        if (finding.Measured is { } measured)
            Line(text, "measured", $"{PlainText.Clean(measured.Name)} {FindingWords.Measured(measured, piece.Format)}");
        if (finding.Wanted is { } wanted && FindingWords.Wanted(wanted, piece.Format) is { Length: > 0 } limits)
            Line(text, "wanted", limits);
        if (FindingWords.Missed(finding, piece.Format) is { Length: > 0 } missed)
            Line(text, "off by", missed);
        if (finding.Parts.Count > 0)
            Line(text, finding.Parts.Count == 1 ? "part" : "parts", names.Listed(finding.Parts, PartsNamed));
        if (finding.Place is { } place)
            Line(text, "recipe", PlainText.Clean(string.Join(", used at ", place.Uses.Prepend(place))));
        foreach (var related in finding.Related.Where(other => other != finding.Place).Distinct())
            Line(text, "see also", PlainText.Clean(related.ToString()));
        if (finding.Remedy is { } remedy)
            Line(text, remedy.Sure ? "to mend" : "perhaps", PlainText.Clean(remedy.Text));
        if (finding.Assumptions.Count > 0)
            Line(text, "taking", string.Join("; ", finding.Assumptions.Select(PlainText.Clean)));
        if (finding.AcceptedBecause is { } reason)
            Line(text, "accepted", PlainText.Clean(reason));
        text.Append('\n');
    }

    private static void WriteSummary(StringBuilder text, Report report, bool colour)
    {
        text.Append(Summary(report, colour)).Append('\n');
        var ran = report.Checks.Where(check => check.Ran).ToLookup(check => check.Covered > 0);
        if (ran[true].Any())
        {
            text.Append("Checked:\n");
            foreach (var check in ran[true])
                text.Append(CultureInfo.InvariantCulture, $"  {check.Name}: {check.Covered} {check.Of}\n");
        }
        if (ran[false].Any())
            text.Append("Nothing here to check for:\n  ")
                .AppendJoin("\n  ", ran[false].Select(check => check.Name))
                .Append('\n');
        foreach (
            var reason in report
                .Checks.Where(check => !check.Ran)
                .GroupBy(check => check.NotRun, StringComparer.Ordinal)
        )
        {
            text.Append(CultureInfo.InvariantCulture, $"Not checked ({PlainText.Clean(reason.Key ?? "")}):\n");
            foreach (var check in reason)
                text.Append("  ").Append(check.Name).Append('\n');
        }
    }

    private static string Summary(Report report, bool colour)
    {
        var accepted = report.Findings.Count(finding => finding.AcceptedBecause is not null);
        var counts = new List<string>();
        foreach (var severity in (Severity[])[Severity.Stop, Severity.Warn, Severity.Note])
        {
            if (report.Count(severity) is > 0 and var count)
                counts.Add(string.Create(CultureInfo.InvariantCulture, $"{count} {FindingWords.Severity(severity)}"));
        }
        if (accepted > 0)
            counts.Add(string.Create(CultureInfo.InvariantCulture, $"{accepted} accepted"));
        if (counts.Count == 0)
            return "Nothing found: every check that ran has passed.";
        var sum = string.Join(", ", counts);
        if (report.StopsTheSaw)
            return $"{sum}. {Ink.Of(Severity.Stop, accepted: false, "Do not cut yet.", colour)}";
        return $"{sum}. Nothing stops the saw.";
    }

    private static void Line(StringBuilder text, string label, string value) =>
        text.Append("    ").Append(label.PadRight(LabelWidth)).Append(value).Append('\n');

    /// <summary>The sixteen colours that every terminal has (ECMA-48, select graphic rendition).</summary>
    private static class Ink
    {
        public static string Of(Severity severity, bool accepted, string words, bool colour)
        {
            if (!colour)
                return words;
            var code = accepted
                ? "2"
                : severity switch
                {
                    Severity.Stop => "1;31",
                    Severity.Warn => "1;33",
                    _ => "1;36",
                };
            return $"\u001b[{code}m{words}\u001b[0m";
        }
    }
}
