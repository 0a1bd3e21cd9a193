using Dryfit.Findings;

namespace Dryfit.Casework.Building;

/// <summary>The finish schemes of the recipe: which parts get what under each.</summary>
internal sealed class FinishPlan(IReadOnlyList<FinishPlan.Scheme> schemes)
{
    /// <summary>One scheme: phrases that name parts, or <c>all</c>, each with its finish; the closest phrase wins.</summary>
    internal sealed record Scheme(
        FinishScheme Named,
        IReadOnlyList<(string Phrase, string Finish, SourcePlace Place)> Lines
    );

    /// <summary>Words that stand for many parts at once.</summary>
    public static IReadOnlyList<string> Words { get; } = ["all", "fronts", "inside"];

    public IReadOnlyList<FinishScheme> Schemes => [.. schemes.Select(s => s.Named)];

    /// <summary>Lines that mean no part of the piece.</summary>
    public IEnumerable<(string Phrase, SourcePlace Place)> Unused(IReadOnlyList<PartDraft> parts) =>
        schemes
            .SelectMany(scheme => scheme.Lines)
            .Where(line => !parts.Any(part => Means(line.Phrase, part)))
            .Select(line => (line.Phrase, line.Place));

    /// <summary>The finish of a part under each scheme; schemes that say nothing of it leave it out.</summary>
    public IReadOnlyDictionary<string, string> For(PartDraft part)
    {
        var finishes = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var scheme in schemes)
        {
            if (part.Material.Kind is MaterialKind.Glass or MaterialKind.Plastic)
                continue;
            var best = scheme
                .Lines.Where(line => Means(line.Phrase, part))
                .OrderByDescending(line => line.Phrase == "all" ? 0 : line.Phrase.Length)
                .Select(line => line.Finish)
                .FirstOrDefault();
            if (best is not null)
                finishes[scheme.Named.Name] = best;
        }
        return finishes;
    }

    private static bool Means(string phrase, PartDraft part) =>
        phrase switch
        {
            "all" => true,
            "fronts" => part.Group.Kind is GroupKind.Door || part.Role is Role.DrawerFront or Role.DoorSlab,
            "inside" => part.Role is Role.Shelf or Role.Back or Role.Partition or Role.Bottom,
            _ => new Namesake(phrase).IsIn(part.Name)
                || string.Equals(part.Material.Name, phrase, StringComparison.OrdinalIgnoreCase),
        };
}
