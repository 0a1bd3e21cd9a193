using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Mending;

/// <summary>The lines that the sizes of some parts come from, by the sums behind them.</summary>
internal static class Reasons
{
    /// <summary>Where the sizes of a finding's parts, of their doors and drawers, and of their openings are said.</summary>
    public static IReadOnlyList<SourcePlace> PlacesBehind(Finding finding, Piece piece)
    {
        var ids = finding.Parts.ToHashSet(StringComparer.Ordinal);
        var parts = piece.Parts.Where(part => ids.Contains(part.Id)).ToList();
        var groups = parts.Select(part => part.Group).ToHashSet(StringComparer.Ordinal);
        // A part belongs to its door, and that to its carcase: parents stand before their children.
        foreach (var group in piece.Groups.Reverse())
        {
            if (groups.Contains(group.Id) && group.Parent is { } parent)
                groups.Add(parent);
        }
        var openings = piece.Fronts.Where(front => groups.Contains(front.Group)).Select(front => front.Opening);
        var closed = openings.ToHashSet(StringComparer.Ordinal);
        var figures = parts
            .SelectMany(SizesOf)
            .Concat(
                piece.Openings.Where(o => closed.Contains(o.Id)).SelectMany(o => o.Sizes).Select(size => size.Figure)
            )
            .Concat(
                piece
                    .Groups.Where(g => groups.Contains(g.Id))
                    .Reverse()
                    .SelectMany(g => g.Sizes)
                    .Select(size => size.Figure)
            );
        return PlacesBehind(figures);
    }

    public static IEnumerable<Figure> SizesOf(Part part) => [part.Length, part.Width, part.Thickness];

    /// <summary>The places of all lines that figures lead to, each once, in the order met.</summary>
    public static IReadOnlyList<SourcePlace> PlacesBehind(IEnumerable<Figure> figures)
    {
        var places = new List<SourcePlace>();
        var waiting = new Queue<Figure>(figures);
        var seen = new HashSet<Reason>(ReferenceEqualityComparer.Instance);
        while (waiting.TryDequeue(out var figure))
        {
            if (!seen.Add(figure.Reason))
                continue;
            if (SaidAt(figure.Reason) is { } place)
                places.Add(place with { UsedAt = null });
            foreach (var next in figure.Reason.Within())
                waiting.Enqueue(next);
        }
        return [.. places.Distinct()];
    }

    /// <summary>Where a figure itself is said, under whatever names; null where it is reckoned.</summary>
    public static SourcePlace? SaidAt(Figure figure)
    {
        var reason = figure.Reason;
        while (reason is NamedReason named)
            reason = named.Of.Reason;
        return SaidAt(reason);
    }

    private static SourcePlace? SaidAt(Reason reason) =>
        reason switch
        {
            GivenReason { Origin: WrittenOrigin written } => written.Place,
            FormulaReason formula => formula.Place,
            _ => null,
        };
}
