namespace Dryfit.Findings;

/// <summary>
/// One kind of finding: the catalogue entry that stands beside the check that raises it. The user's list of findings
/// is generated from these.
/// </summary>
/// <param name="Id">Stable, in words: <c>door-gap-too-wide</c>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Title">A few words, in the shop's language.</param>
/// <param name="Why">Why it matters to the maker, in one or two sentences.</param>
/// <param name="Source">The published source of the limit, "common practice", or null where it is plain geometry.</param>
/// <param name="ConcernsSafety">True where someone could be hurt: it cannot be accepted away.</param>
public sealed record FindingKind(
    string Id,
    Severity Severity,
    string Title,
    string Why,
    string? Source = null,
    bool ConcernsSafety = false
);
