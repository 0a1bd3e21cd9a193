namespace Dryfit.Findings;

/// <summary>
/// All that the checks have to say about one piece: what they found, and what they looked at. Where nothing is found,
/// every check that ran has passed, and what was not checked is listed.
/// </summary>
/// <param name="Findings">What was found, the gravest first; the order is the same every time.</param>
/// <param name="Checks">Every check there is, in catalogue order, with what it covered or why it was not run.</param>
public sealed record Report(IReadOnlyList<Finding> Findings, IReadOnlyList<CheckRun> Checks)
{
    /// <summary>Which numbers would mend what was found; null where that was not asked.</summary>
    public Mended? Mended { get; init; }

    /// <summary>True where a finding says not to cut. A stop that the maker accepted with a reason does not count.</summary>
    public bool StopsTheSaw =>
        Findings.Any(finding => finding.Kind.Severity == Severity.Stop && finding.AcceptedBecause is null);

    /// <summary>How many findings of a severity stand, those accepted left out.</summary>
    public int Count(Severity severity) =>
        Findings.Count(finding => finding.Kind.Severity == severity && finding.AcceptedBecause is null);
}

/// <summary>One check of a piece: what it covered, or why it was not run.</summary>
/// <param name="Name">What is checked, as a maker says it: "gaps around inset fronts".</param>
/// <param name="Covered">How many things were looked at; 0 where the check was not run or the piece has none.</param>
/// <param name="Of">What those things are, in the plural: "gaps", "joints".</param>
/// <param name="NotRun">Why it was not run, as a phrase; null where it ran.</param>
public sealed record CheckRun(string Name, int Covered, string Of, string? NotRun = null)
{
    public bool Ran => NotRun is null;

    public static CheckRun Over(string name, int covered, string of) => new(name, covered, of);

    public static CheckRun Left(string name, string why) => new(name, 0, "", why);
}
