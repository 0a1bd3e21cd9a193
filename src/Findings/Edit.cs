namespace Dryfit.Findings;

/// <summary>An exact change of a file: these characters, and no others, give way to those.</summary>
/// <param name="Place">The characters to take out; its length is that of <paramref name="OldText"/>.</param>
/// <param name="OldText">What stands there: <c>390</c>.</param>
/// <param name="NewText">What belongs there, written as the maker writes numbers: <c>397</c>.</param>
public sealed record Edit(SourcePlace Place, string OldText, string NewText);
