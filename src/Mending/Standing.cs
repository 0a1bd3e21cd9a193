using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Mending;

/// <summary>The stops and warnings of a report that are not accepted, and which of another report's are the same ones.</summary>
internal static class Standing
{
    /// <summary>What the grid may round when the piece is built again.</summary>
    private static readonly Length Rounding = Length.FromMillimetres(new Rational(1, 50));

    public static IEnumerable<Finding> Of(Report report) =>
        report.Findings.Where(finding => finding.Kind.Severity > Severity.Note && finding.AcceptedBecause is null);

    /// <summary>What has become of a finding in another build: the one about the same thing, whatever its kind; null where it is gone.</summary>
    /// <param name="finding">One of the findings of <paramref name="before"/>.</param>
    public static Finding? Same(Finding finding, Report before, Report after)
    {
        var others = Of(before).Where(other => other != finding && IsAbout(finding, other)).ToList();
        var about = Of(after)
            .Where(other => IsAbout(finding, other))
            .Where(other => IsAlike(finding, other) || !others.Exists(known => IsAlike(known, other)))
            .ToList();
        return about.Find(other => other.Kind.Id == finding.Kind.Id && IsSameMessage(finding, other))
            ?? about.Find(other => IsSameMessage(finding, other))
            ?? about.Find(other => other.Kind.Id == finding.Kind.Id)
            ?? about.Find(other => other.Measured?.Name == finding.Measured?.Name)
            ?? about.FirstOrDefault();
    }

    /// <summary>The first finding that the one report has and the other has not, or not so bad; null where there is none.</summary>
    public static Finding? New(Report after, Report before)
    {
        var old = Of(before).ToList();
        foreach (var finding in Of(after))
        {
            var at = old.FindIndex(other =>
                other.Kind.Id == finding.Kind.Id && IsAbout(other, finding) && !IsWorse(finding, other)
            );
            if (at < 0)
                return finding;
            old.RemoveAt(at);
        }
        return null;
    }

    private static bool IsAlike(Finding a, Finding b) => a.Kind.Id == b.Kind.Id && IsSameMessage(a, b);

    private static bool IsSameMessage(Finding a, Finding b) =>
        string.Equals(a.Message, b.Message, StringComparison.Ordinal);

    private static bool IsAbout(Finding a, Finding b) =>
        a.Parts.Count == b.Parts.Count && a.Parts.ToHashSet(StringComparer.Ordinal).SetEquals(b.Parts);

    private static bool IsWorse(Finding now, Finding before) =>
        Miss.Of(now) is { } miss && Miss.Of(before) is { } was && Length.Abs(miss.By) > Length.Abs(was.By) + Rounding;
}
