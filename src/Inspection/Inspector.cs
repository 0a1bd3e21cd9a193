using Dryfit.Casework;
using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>The stage's door: a finished piece goes in, what was found on its solids comes out.</summary>
public static class Inspector
{
    /// <summary>Runs every check on a piece. The piece is not changed; the same piece gives the same report.</summary>
    public static Report Inspect(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var inspected = new InspectedPiece(piece);
        var outcomes = Catalogue.Checks.Select(check => (Check: check, Outcome: check.Run(inspected))).ToList();
        var told = Explained.LeaveOut(inspected, [.. outcomes.SelectMany(run => run.Outcome.Findings)]);
        var found = told.Select(finding => OwnNumbers.Doubt(inspected, finding));
        return new(
            InOrder(Accepted.Mark(piece, [.. found.Select(RelatedOnce)])),
            [
                .. outcomes.Select(run => CheckRun.Over(run.Check.Name, run.Outcome.Covered, run.Check.Of)),
                .. Catalogue.NotChecked,
            ]
        );
    }

    /// <summary>The gravest first, then in the order of the checks, then by their place in the recipe.</summary>
    private static IReadOnlyList<Finding> InOrder(IEnumerable<Finding> findings) =>
        [
            .. findings
                .OrderByDescending(finding => finding.Kind.Severity)
                .ThenBy(finding => CheckOf(finding.Kind))
                .ThenBy(finding => finding.Place is null)
                .ThenBy(finding => finding.Place?.File, StringComparer.Ordinal)
                .ThenBy(finding => finding.Place?.Line)
                .ThenBy(finding => finding.Place?.Column),
        ];

    private static int CheckOf(FindingKind kind)
    {
        var at = 0;
        while (at < Catalogue.Checks.Count && !Catalogue.Checks[at].Kinds.Contains(kind))
            at++;
        return at;
    }

    /// <summary>The finding with no line of the recipe named twice.</summary>
    private static Finding RelatedOnce(Finding finding) =>
        finding with
        {
            Related = [.. finding.Related.Distinct().Where(place => place != finding.Place)],
        };
}
