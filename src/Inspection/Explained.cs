using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>
/// One mistake is told once: an overlap that a front's gap already tells of, or a part that hangs loose because its joint
/// was found open, is left out.
/// </summary>
internal static class Explained
{
    private static readonly FindingKind[] TellOfOverlaps =
    [
        FrontGaps.Binds,
        FrontNeighbours.Touch,
        DrawerRuns.TooTight,
        DrawerRuns.NoRoomAbove,
        DrawerRuns.NoRoomBelow,
        DrawerRuns.NoRoomBehind,
    ];

    private static readonly FindingKind[] TellOfLooseParts = [JointMeets.Misses, JointMeets.Open, DrawerRuns.FrontOff];

    public static IEnumerable<Finding> LeaveOut(IReadOnlyList<Finding> findings)
    {
        var overlaps = findings.Where(finding => TellOfOverlaps.Contains(finding.Kind)).Select(PartsOf).ToList();
        var loose = findings.Where(finding => TellOfLooseParts.Contains(finding.Kind)).Select(PartsOf).ToList();
        return findings.Where(finding =>
            finding.Kind == PartsOverlap.Overlap ? !overlaps.Exists(told => finding.Parts.All(told.Contains))
            : finding.Kind == Connected.PartLoose ? !loose.Exists(told => finding.Parts.All(told.Contains))
            : true
        );
    }

    private static HashSet<string> PartsOf(Finding finding) => [.. finding.Parts];
}
