namespace Dryfit.Inspection;

/// <summary>Lists of part ids for findings: each once, the first named first.</summary>
internal static class PartIds
{
    public static IReadOnlyList<string> Together(params IReadOnlyList<IEnumerable<string>> lists) =>
        [.. lists.SelectMany(list => list).Distinct(StringComparer.Ordinal)];
}
