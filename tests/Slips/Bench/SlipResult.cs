using Dryfit.Findings;

namespace Dryfit.Slips;

/// <summary>What came of one slip.</summary>
/// <param name="Verdict">What had to come of it.</param>
/// <param name="Because">What the judge saw leave its tolerance.</param>
/// <param name="Findings">What was found.</param>
internal sealed record SlipResult(
    Slip Slip,
    Verdict Verdict,
    IReadOnlyList<string> Because,
    IReadOnlyList<Finding> Findings
)
{
    public bool Counts => Verdict == Verdict.Counts;

    /// <summary>Whether anything was found that the sound piece does not have.</summary>
    public bool IsFound => Findings.Count > 0;

    /// <summary>Whether a finding names one of the parts that came out wrong.</summary>
    public bool IsToldRightly => Findings.Any(f => f.Parts.Any(Slip.Parts.Contains));

    /// <summary>Ids of what keeps from cutting or warns.</summary>
    public IEnumerable<string> FalseKinds =>
        Findings.Where(f => f.Kind.Severity != Severity.Note).Select(f => f.Kind.Id);

    /// <summary>A stop or a warning though all stays inside its tolerance.</summary>
    public bool IsFalse => Verdict == Verdict.Inside && Findings.Any(f => f.Kind.Severity != Severity.Note);

    /// <summary>What reproduces it: the recipe, its parameters, and the change.</summary>
    public string Told =>
        $"{Slip.Kind} ({Slip.Mistake}) in {Slip.Sound.Said}:\n{Slip.Edit.Diff}"
        + string.Concat(Because.Take(3).Select(b => $"  judge: {b}\n"))
        + string.Concat(Findings.Take(3).Select(f => $"  found: {f.Kind.Id}: {f.Message}\n"));
}
