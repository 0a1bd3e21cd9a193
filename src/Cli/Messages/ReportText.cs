using Dryfit.Findings;
using Dryfit.Outputs.Findings;

namespace Dryfit.Cli;

/// <summary>What the checks have to say, on a terminal.</summary>
internal static class ReportText
{
    /// <param name="quiet">Only what should be looked at before cutting; nothing at all where that is nothing.</param>
    public static void Write(ProvedPiece proved, bool quiet, Surroundings surroundings)
    {
        var report = proved.Report;
        if (quiet)
        {
            report = new Report([.. report.Findings.Where(ShouldBeLookedAt)], []);
            if (report.Findings.Count == 0)
                return;
        }
        surroundings.Out.Write(FindingsText.Write(proved.Piece, report, surroundings.OutHasColour));
    }

    private static bool ShouldBeLookedAt(Finding finding) =>
        finding.Kind.Severity > Severity.Note && finding.AcceptedBecause is null;
}
