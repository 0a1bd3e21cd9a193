namespace Dryfit.Findings;

/// <summary>Which numbers of the recipe, changed to what, mend the findings of a report; each was tried by building again.</summary>
/// <param name="Edits">All edits in the order of the text; together they mend what they mend and bring up nothing new.</param>
/// <param name="Left">The stops and warnings that no number mends, each with the reason as a sentence.</param>
/// <param name="Builds">How often the piece was built to find that out.</param>
/// <param name="After">What the checks say of the piece with all edits made.</param>
public sealed record Mended(IReadOnlyList<Edit> Edits, IReadOnlyList<Unmended> Left, int Builds, Report After);

/// <summary>A finding that no number mends.</summary>
/// <param name="Number">Its number in the report, from 1.</param>
/// <param name="Why">Why not, as a sentence.</param>
public sealed record Unmended(int Number, string Why);
