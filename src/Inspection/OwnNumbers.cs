using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>
/// A door or drawer that leaves the clamps with a member cut to the maker's own number is wrong in many places: its panel,
/// its beads, its back. Each is told where it shows, and all lead to the member that was cut.
/// </summary>
internal static class OwnNumbers
{
    /// <summary>Puts the members as cut first, with their line of the recipe, where a finding names none itself.</summary>
    public static Finding Doubt(InspectedPiece piece, Finding finding)
    {
        var parts = finding.Parts.Select(id => piece.Shape(id).Part).ToList();
        if (parts.Exists(part => part.IsAsCut))
            return finding;
        var cut = parts
            .Select(part => part.Group)
            .Distinct(StringComparer.Ordinal)
            .Where(group => piece.Front(group) is not null)
            .SelectMany(piece.Members)
            .Select(shape => shape.Part)
            .Where(part => part.IsAsCut)
            .ToList();
        if (cut.Count == 0)
            return finding;
        var names = string.Join(" and the ", cut.Select(part => part.Name));
        return finding with
        {
            Parts = PartIds.Together(cut.Select(part => part.Id), finding.Parts),
            Place = cut[0].Source,
            Related = [.. new[] { finding.Place }.Concat(finding.Related).OfType<SourcePlace>().Distinct()],
            Remedy = finding.Remedy is { } remedy
                ? new($"Look first at the {names}, cut by your own numbers. Else: {remedy.Text}", Sure: false)
                : null,
        };
    }
}
