using Dryfit.Casework;
using Dryfit.Casework.Building;
using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>
/// What the maker knows of and accepts: such findings still print, with the reason, and no longer stop the saw. What
/// concerns people's safety stands.
/// </summary>
internal static class Accepted
{
    public static FindingKind NotNeeded { get; } =
        new(
            "acceptance-not-needed",
            Severity.Note,
            "Nothing to accept",
            "The recipe accepts a finding that does not come up: it was mended, or its name is mistyped. Take the line out."
        );

    public static FindingKind NotForSafety { get; } =
        new(
            "safety-is-not-accepted",
            Severity.Note,
            "Safety cannot be accepted away",
            "The recipe accepts a finding that concerns people's safety. It stands until it is mended."
        );

    public static IReadOnlyList<FindingKind> Kinds { get; } = [NotNeeded, NotForSafety];

    /// <summary>Marks what is accepted, and adds a note for every acceptance that does nothing.</summary>
    public static IReadOnlyList<Finding> Mark(Piece piece, IReadOnlyList<Finding> findings)
    {
        if (piece.Accepted.Count == 0)
            return findings;
        var names = piece.Parts.ToDictionary(part => part.Id, part => part.Name, StringComparer.Ordinal);
        var marked = findings.ToList();
        foreach (var accepted in piece.Accepted)
        {
            var meant = Enumerable.Range(0, marked.Count).Where(i => Means(accepted, marked[i], names)).ToList();
            if (meant.Count == 0)
            {
                var message =
                    !Catalogue.All.Any(kind => kind.Id == accepted.Kind)
                        ? $"The recipe accepts '{accepted.Kind}', and there is no finding of that name."
                    : marked.Exists(finding => finding.Kind.Id == accepted.Kind)
                        ? $"The recipe accepts '{accepted.Kind}' of '{accepted.Parts}'; it comes up of other parts only."
                    : $"The recipe accepts '{accepted.Kind}', which does not come up.";
                var nearest = NearestWord.To(accepted.Kind, Catalogue.All.Select(kind => kind.Id));
                var remedy =
                    nearest is null || nearest == accepted.Kind
                        ? null
                        : new Remedy($"Did you mean '{nearest}'?", Sure: false);
                marked.Add(Note(NotNeeded, message, accepted) with { Remedy = remedy });
            }
            else if (marked[meant[0]].Kind.ConcernsSafety)
            {
                marked.Add(
                    Note(
                        NotForSafety,
                        $"'{accepted.Kind}' concerns people's safety and is not accepted away.",
                        accepted
                    )
                );
            }
            else
            {
                foreach (var i in meant)
                    marked[i] = marked[i] with { AcceptedBecause = accepted.Reason };
            }
        }
        return marked;
    }

    private static bool Means(AcceptedFinding accepted, Finding finding, Dictionary<string, string> names)
    {
        if (finding.Kind.Id != accepted.Kind)
            return false;
        if (accepted.Parts is not { } phrase)
            return true;
        var meant = new Namesake(phrase);
        return finding.Parts.Any(id => names.TryGetValue(id, out var name) && meant.IsIn(name));
    }

    private static Finding Note(FindingKind kind, string message, AcceptedFinding accepted) =>
        new()
        {
            Kind = kind,
            Message = message,
            Place = accepted.Source,
        };
}
