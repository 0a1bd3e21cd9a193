using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Doors of a pair, carcases and parts that differ by less than anyone would choose.</summary>
internal sealed class AlikeParts : ICheck
{
    public static FindingKind PairUnequal { get; } =
        new(
            "pair-unequal",
            Severity.Warn,
            "Doors of a pair are not equal",
            "The doors of a pair are one wide, one narrow: the line between them stands off the middle, over all their height.",
            "common practice"
        );

    public static FindingKind Carcases { get; } =
        new(
            "carcases-nearly-alike",
            Severity.Note,
            "Carcases nearly alike",
            "Two carcases differ by less than anyone would choose: one of the two numbers is likely a slip, and all that is in them follows it.",
            "common practice"
        );

    public static FindingKind Parts { get; } =
        new(
            "parts-nearly-alike",
            Severity.Note,
            "Parts nearly alike",
            "Two parts for the same place differ by less than one setting of the saw: one of the two numbers is likely a slip.",
            "common practice"
        );

    public string Name => "parts, doors and carcases that should be alike";

    public string Of => "pairs of parts";

    public string How =>
        "The two doors of a pair are held to within 1/128 in (0.2 mm) of each other's width, unless they meet in a rebate. Carcases "
        + "whose width, height or depth, over their sides, differ by no more than 5 mm, and parts of one role and material whose length or width differ by no more "
        + "than 2 mm (one setting of the saw), are told where their sizes rest on the same rules and parameters, so that only a number written "
        + "twice can have made the difference; or where one of the two was cut by the maker's own number and they share a name but for "
        + "left, right and number; parts scribed to the room are left out. What is worked out in another way is taken as meant.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [PairUnequal, Carcases, Parts];

    public Outcome Run(InspectedPiece piece)
    {
        var pairs = PairsOfDoors(piece).ToList();
        var carcases = NearCarcases.Find(piece);
        var parts = NearParts.Find(piece);
        return new(
            pairs.Count + carcases.Covered + parts.Covered,
            [.. pairs.OfType<Finding>(), .. carcases.Findings, .. parts.Findings]
        );
    }

    /// <summary>A finding for each pair, null where it is equal.</summary>
    private static IEnumerable<Finding?> PairsOfDoors(InspectedPiece piece)
    {
        foreach (var left in piece.Piece.Fronts.Where(front => front.Motion.TurnsOn() is not null))
        {
            foreach (var neighbour in left.Neighbours.Where(n => n is { Side: Direction.Right, IsRebated: false }))
            {
                if (piece.Front(neighbour.Group) is not { } right || right.Opening != left.Opening)
                    continue;
                var seen = piece.From(left);
                var (a, b) = (Width(seen, left), Width(seen, right));
                yield return Length.Abs(a.Size - b.Size) > Tolerance.Fitting
                    ? Unequal(seen, a.Size > b.Size ? (b, a) : (a, b))
                    : null;
            }
        }
    }

    private static (Front Front, Length Size, SpacePlace Where) Width(InspectedPiece piece, Front front)
    {
        var box = FrontSides.Around(FrontSides.Own(piece, front));
        var middle = box.Centre() with { Y = box.Min.Y };
        return (
            front,
            piece.ToLength(box.Size(Axis.X)),
            piece.ToSpace(middle with { X = box.Min.X }, middle with { X = box.Max.X })
        );
    }

    private static Finding Unequal(
        InspectedPiece piece,
        ((Front Front, Length Size, SpacePlace Where) Narrow, (Front Front, Length Size, SpacePlace Where) Wide) pair
    )
    {
        var (narrow, wide) = pair;
        // What was cut by hand is in doubt before what was reckoned.
        var odd = FrontRemedy.Doubted(piece, wide.Front, Axis.X).Any() ? wide : narrow;
        var even = odd == wide ? narrow : wide;
        var doubted = FrontRemedy.Doubted(piece, odd.Front, Axis.X).ToList();
        var first = doubted.Count > 0 ? doubted[0] : piece.Shape(odd.Front.Face[0]).Part;
        var name = piece.GroupName(odd.Front.Group);
        return new()
        {
            Kind = PairUnequal,
            Message =
                $"The {name} is {(odd == wide ? "wider" : "narrower")} than the {piece.GroupName(even.Front.Group)} beside it.",
            Parts = PartIds.Together([first.Id], odd.Front.Face, even.Front.Face),
            Place = first.Source,
            Related = piece.Group(even.Front.Group) is { } group ? [group.Source] : [],
            Where = odd.Where,
            Measured = new MeasuredLength("width", odd.Size),
            Wanted = Wanted.Exactly(even.Size),
            Remedy = new(
                $"Make the {name} {piece.Say(wide.Size - narrow.Size)} {(odd == wide ? "narrower" : "wider")}, or share it between the two.",
                Sure: false
            ),
        };
    }
}
