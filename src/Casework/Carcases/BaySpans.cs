using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Gathers what stands at the ends of the bays of one bank, and which of them are asked to be alike.</summary>
internal sealed class BaySpans(
    PieceBuilder piece,
    GroupDraft carcase,
    Axis axis,
    IReadOnlyList<Region> regions,
    IReadOnlyList<Figure> sizes
)
{
    private readonly List<Bay> _bays = [];

    /// <param name="name">What the bay is called in its carcase, where it is no opening with a name of its own.</param>
    /// <param name="openings">How many openings the piece had before the bay was filled.</param>
    public void Add(int n, string name, PartDraft? from, PartDraft? to, int openings)
    {
        // Where only a gap divides, the gap is judged.
        if (from is null || to is null)
            return;
        var opening = regions[n].IsLeaf && piece.Openings.Count == openings + 1 ? piece.Openings[openings] : null;
        _bays.Add(
            new(
                opening?.Name ?? carcase.Full(name),
                from.Id,
                to.Id,
                opening?.Id,
                sizes[n],
                AlikeTo(n),
                regions[n].Place
            )
            {
                IsGraduated = regions[n].Growth is not null,
            }
        );
    }

    public void Tell(SourcePlace source)
    {
        if (_bays.Count > 1)
            piece.Add(new Bank(axis, _bays, source));
    }

    /// <summary>The first that is asked to be of the same size: by the same number, or by the same share of what is left.</summary>
    private int AlikeTo(int n)
    {
        if (regions[n].Growth is not null)
            return n;
        var first = 0;
        while (Asked(first) != Asked(n) || regions[first].Growth is not null)
            first++;
        return first;
    }

    private (Length? Fixed, Rational? Share) Asked(int n) =>
        regions[n].Fixed is { } given ? (given.Length, null) : (null, regions[n].Share);
}
