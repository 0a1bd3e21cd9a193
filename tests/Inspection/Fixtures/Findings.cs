using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection.Tests;

/// <summary>What tests ask of a report.</summary>
internal static class FindingsAsked
{
    public static Finding Only(this Report report, FindingKind kind)
    {
        Assert.Equal([kind.Id], report.Findings.Select(finding => finding.Kind.Id));
        return report.Findings[0];
    }

    /// <summary>The one finding of a kind, whatever else there is.</summary>
    public static Finding The(this Report report, FindingKind kind) =>
        Assert.Single(report.Findings, finding => finding.Kind == kind);

    public static void IsClean(this Report report) => Assert.Equal([], report.Findings.Select(Told));

    /// <summary>The one finding of how doors and drawers open; what stands before the piece may be in its way in besides.</summary>
    public static Finding Opening(this Report report, FindingKind kind)
    {
        var finding = Assert.Single(report.Findings, IsOfOpening);
        Assert.Equal(kind.Id, finding.Kind.Id);
        return finding;
    }

    public static void OpensFreely(this Report report) =>
        Assert.Equal([], report.Findings.Where(IsOfOpening).Select(Told));

    private static bool IsOfOpening(Finding finding) =>
        new DoorSwing().Kinds.Contains(finding.Kind) || new DrawerTravel().Kinds.Contains(finding.Kind);

    public static Length Length(this Finding finding) => Assert.IsType<MeasuredLength>(finding.Measured).Value;

    public static MeasuredVolume Volume(this Finding finding) => Assert.IsType<MeasuredVolume>(finding.Measured);

    public static string Told(this Finding finding) => $"{finding.Kind.Id}: {finding.Message} {finding.Measured}";

    public static void IsAt(this Finding finding, (double X, double Z) from, (double X, double Z) to)
    {
        Assert.NotNull(finding.Where);
        Assert.Equal(from, (finding.Where.From.XMm, finding.Where.From.ZMm));
        Assert.Equal(to, (finding.Where.To.XMm, finding.Where.To.ZMm));
    }
}
