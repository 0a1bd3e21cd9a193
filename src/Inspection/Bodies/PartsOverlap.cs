using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether two parts that no joint ties stand in each other's place.</summary>
internal sealed class PartsOverlap : ICheck
{
    public static FindingKind Overlap { get; } =
        new(
            "parts-overlap",
            Severity.Stop,
            "Parts overlap",
            "Two parts stand partly in the same place, and no joint makes room for either."
        );

    public string Name => "parts in each other's place without a joint";

    public string Of => "pairs of parts whose boxes overlap";

    public string How =>
        "All parts whose boxes share more than their skins are measured against each other; touching is no overlap, nor is 1/128 in (0.2 mm), which a shaving takes off. Pairs "
        + "that a joint ties are judged with their joint.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Overlap];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var measured = AroundMeasuredOpenings(piece);
        foreach (var (a, b) in piece.NearPairs())
        {
            if (piece.JoinedPairs.Contains((a.Part.Id, b.Part.Id)))
                continue;
            if (measured.Contains((a.Part.Group, b.Part.Id)) || measured.Contains((b.Part.Group, a.Part.Id)))
                continue;
            // Boards of one turned frame lie square to each other there.
            var seen = piece.From(a.Part.Turn);
            var (first, second) = (seen.Shape(a.Part.Id), seen.Shape(b.Part.Id));
            if (!first.Box.Overlaps(second.Box))
                continue;
            covered++;
            if (
                seen.Overlap(first, second) is { } shared
                && piece.ToLength(Math.Min(shared.Depth, JointFit.Thin(shared))) > Tolerance.Fitting
            )
                findings.Add(Tell(seen, a.Part, b.Part, shared));
        }
        return new(covered, findings);
    }

    /// <summary>
    /// Groups of fronts with the parts around their openings, where the opening was measured: the front is made to what was
    /// measured, the parts stand as drawn, and what counts between the two is told by the gaps.
    /// </summary>
    private static HashSet<(string Group, string Part)> AroundMeasuredOpenings(InspectedPiece piece)
    {
        var around = new HashSet<(string, string)>();
        foreach (var front in piece.Piece.Fronts)
        {
            var opening = piece.Opening(front.Opening);
            if (front.Hang != Hang.Inset || opening.AsMeasured is null)
                continue;
            var (left, right, bottom, top) = (
                opening.Bounds.Left,
                opening.Bounds.Right,
                opening.Bounds.Bottom,
                opening.Bounds.Top
            );
            foreach (var part in left.Concat(right).Concat(bottom).Concat(top))
                around.Add((front.Group, part));
        }
        return around;
    }

    private static Finding Tell(InspectedPiece piece, Part a, Part b, Solids.Overlap shared)
    {
        var parts = JointPlaces.Doubted(a, b);
        var depth = piece.ToLength(shared.Depth);
        var smallest = Enumerable.Range(0, 3).Select(i => (Axis)i).MinBy(axis => shared.Bounds.Size(axis));
        return new()
        {
            Kind = Overlap,
            Message = $"The {parts[0].Name} and the {parts[1].Name} stand in the same place.",
            Parts = [parts[0].Id, parts[1].Id],
            Place = parts[0].Source,
            Related = [parts[1].Source],
            Where = JointPlaces.Across(piece, shared.Bounds, Directions.Along(smallest, 1)),
            Measured = new MeasuredVolume("overlap", piece.Grid.ToCubicMm(shared.Volume), depth),
            Wanted = Wanted.Exactly(Length.Zero),
            Remedy = new(
                $"Move one of them by {piece.Say(depth)}, cut it back, or say which joint ties the two.",
                Sure: false
            ),
        };
    }
}
