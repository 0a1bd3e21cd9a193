using Dryfit.Casework;
using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>Holes and slots of one part that run into each other.</summary>
internal sealed class BoresMeet : ICheck
{
    public static FindingKind Meet { get; } =
        new(
            "holes-meet",
            Severity.Stop,
            "Two holes run into each other",
            "The second fastening finds the first one in its way, or nothing to hold it."
        );

    public static FindingKind Near { get; } =
        new(
            "holes-near-each-other",
            Severity.Warn,
            "Little wood between two holes",
            "So thin a wall breaks when the second hole is bored or its dowel is driven.",
            "common practice: 2 mm, 5/64 in"
        );

    public string Name => "holes that meet each other";

    public string Of => "holes";

    public string How =>
        "In every part the holes and slots for pins, dowels, biscuits, screws, hinges and fittings are measured against each "
        + "other, from whichever face they go in. Holes of different kinds that belong to one fastening are meant to meet, as a cam "
        + "meets its bolt, and are left out.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Meet, Near];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var words = new BoredWords(piece.Piece);
        var within = piece.ToUnits(BoreWood.Least(piece) - Tolerance.Rounding);
        foreach (var part in piece.Piece.Parts)
        {
            var holes = Bored.In(part);
            if (holes.Count < 2)
                continue;
            covered += holes.Count;
            var tree = new BoxTree([.. holes.Select(hole => hole.Hollow.Box)]);
            var found = new List<(Bored First, Bored Second, double Wood, Solids.Vec3 From, Solids.Vec3 To)>();
            for (var n = 0; n < holes.Count; n++)
            {
                foreach (var other in tree.Touching(holes[n].Hollow.Box.Grown(within)))
                {
                    if (other <= n || AreOfOneFastening(holes[n], holes[other]))
                        continue;
                    var (wood, from, to) = Hollow.Between(
                        holes[n].Hollow,
                        holes[other].Hollow,
                        BoreWood.Settled(piece)
                    );
                    if (wood < within)
                        found.Add((holes[n], holes[other], wood, from, to));
                }
            }
            findings.AddRange(
                found
                    .GroupBy(pair => (pair.First.Cut.Joint, pair.Second.Cut.Joint))
                    .Select(group => group.MinBy(pair => pair.Wood))
                    .Select(pair => Tell(piece, words, pair.First, pair.Second, pair.Wood, pair.From, pair.To))
            );
        }
        return new(covered, findings);
    }

    /// <summary>Whether two holes are parts of one: those of one fitting that are not simply side by side.</summary>
    private static bool AreOfOneFastening(Bored a, Bored b) =>
        a.Cut.Joint is not null
        && string.Equals(a.Cut.Joint, b.Cut.Joint, StringComparison.Ordinal)
        && !(
            a.Cut is RoundCut first
            && b.Cut is RoundCut second
            && (first.Kind, first.Diameter, first.Into, first.Depth)
                == (second.Kind, second.Diameter, second.Into, second.Depth)
        );

    private static Finding Tell(
        InspectedPiece piece,
        BoredWords words,
        Bored first,
        Bored second,
        double wood,
        Solids.Vec3 from,
        Solids.Vec3 to
    )
    {
        var left = piece.ToLength(wood);
        var isMet = left <= Tolerance.Rounding;
        var (part, frame) = (first.Part, first.Part.Placed.Frame);
        var (one, other) = (words.Of(first), words.Of(second));
        var both = string.Equals(one, other, StringComparison.Ordinal) ? $"Two {one}s" : $"A {one} and a {other}";
        return new()
        {
            Kind = isMet ? Meet : Near,
            Message = isMet
                ? $"{both} of the {part.Name} run into each other."
                : $"{both} of the {part.Name} leave little wood between them.",
            Parts = [part.Id],
            Place = part.Source,
            Where = piece.ToSpace(frame.ToWorld(from), frame.ToWorld(to)),
            Measured = new MeasuredLength("wood between them", left),
            Wanted = new(BoreWood.Least(piece), null),
            Remedy = new(
                "Move one of the two, bore less deep, or make the part thicker: fastenings from both sides of a part want to be staggered.",
                Sure: false
            ),
        };
    }
}
