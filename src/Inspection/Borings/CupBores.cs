using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>The wood around the cups of hinges: under them, and beside them.</summary>
internal sealed class CupBores : ICheck
{
    /// <summary>The least distance from the door's edge to the cup for which hinges are made.</summary>
    private static readonly Length LeastToEdge = Length.FromMillimetres(3);

    public static FindingKind ComesThrough { get; } =
        new(
            "hinge-cup-comes-through",
            Severity.Stop,
            "Hinge cup through the face of a door",
            "The drill for the cup comes out at the front of the door."
        );

    public static FindingKind ThinUnder { get; } =
        new(
            "hinge-cup-leaves-thin-face",
            Severity.Warn,
            "Little wood under a hinge cup",
            "The point of the drill, or the cup when it is pressed in, comes through so little wood or shows as a spot.",
            "common practice: 2 mm, 5/64 in"
        );

    public static FindingKind BreaksOut { get; } =
        new(
            "hinge-cup-breaks-out",
            Severity.Stop,
            "Hinge cup breaks out of its wood",
            "The cup reaches over the edge of its stile, or into the groove for the panel: there is nothing to hold it there, and it shows or meets the panel."
        );

    public static FindingKind ThinBeside { get; } =
        new(
            "hinge-cup-leaves-thin-wall",
            Severity.Warn,
            "Little wood beside a hinge cup",
            "So thin a wall breaks out when the cup is bored or the door hangs on it.",
            "common practice: 2 mm, 5/64 in"
        );

    public static FindingKind NearEdge { get; } =
        new(
            "hinge-cup-near-edge",
            Severity.Warn,
            "Hinge cup nearer to the door's edge than hinges are made for",
            "The hinge cannot be set so that the door covers what it should, and the wood between cup and edge breaks.",
            "hinge maker's quick reference (hardware literature): 3 to 8 mm from edge to cup"
        );

    public string Name => "wood around the cups of hinges";

    public string Of => "hinge cups";

    public string How =>
        "From the bottom and the wall of every hinge cup the wood is measured to all faces of its door, stile or rail: to the "
        + "front, to mouldings and shaped edges, to the inner edge, to the groove for the panel and to the mortises of its joints. "
        + "That the cup is bored as deep and as wide as its hinge wants is taken from the shop file.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [ComesThrough, ThinUnder, BreaksOut, ThinBeside, NearEdge];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var part in piece.Piece.Parts)
        {
            if (part.IsKept || !part.Cuts.Any(cut => cut.Kind == CutKind.HingeCup))
                continue;
            var cups = Bored.In(part).Where(hole => hole.Cut.Kind == CutKind.HingeCup).ToList();
            var skin = new Skin(part);
            covered += cups.Count;
            var told = cups.SelectMany(cup => skin.Near(cup, piece.ToUnits(LeastToEdge), BoreWood.Settled(piece), true))
                .Select(wall => (Wall: wall, Kind: KindOf(piece, wall)))
                .Where(found => found.Kind is not null)
                .GroupBy(found => found.Kind!)
                // Of cups alike the worst one is told.
                .Select(group => Tell(piece, group.Key, group.MinBy(found => found.Wall.Wood).Wall, group.Count()));
            findings.AddRange(OnlyTheGravest(told));
        }
        return new(covered, findings);
    }

    /// <summary>A cup that comes out leaves thin wood all round where it does.</summary>
    private static IEnumerable<Finding> OnlyTheGravest(IEnumerable<Finding> found)
    {
        var all = found.ToList();
        return all.Where(finding =>
            (finding.Kind != ThinUnder || !all.Exists(other => other.Kind == ComesThrough))
            && (finding.Kind != ThinBeside || !all.Exists(other => other.Kind == BreaksOut))
        );
    }

    private static FindingKind? KindOf(InspectedPiece piece, Wall wall)
    {
        var wood = piece.ToLength(wall.Wood);
        var isOut = wood <= Tolerance.Rounding;
        // A groove lies before the drill only where the cup reaches over it.
        if (wall.IsBeneath && !BoreWood.IsOfJoint(wall))
            return isOut ? ComesThrough
                : wood < BoreWood.Least(piece) - Tolerance.Rounding ? ThinUnder
                : null;
        if (isOut)
            return BreaksOut;
        if (IsHingeEdge(piece, wall))
            return wood < LeastToEdge - Tolerance.Rounding ? NearEdge : null;
        return wood < BoreWood.Least(piece) - Tolerance.Rounding ? ThinBeside : null;
    }

    /// <summary>Whether a face is the edge of the door at which it hangs.</summary>
    private static bool IsHingeEdge(InspectedPiece piece, Wall wall)
    {
        var part = wall.Hole.Part;
        if (wall.Face.Cut >= 0 || piece.Front(part.Group)?.Motion.TurnsOn() is not { } edge)
            return false;
        var frame = part.Unturned.Frame;
        var normal = (frame.U * wall.Face.Normal.X) + (frame.V * wall.Face.Normal.Y) + (frame.W * wall.Face.Normal.Z);
        return normal.Along(edge) > SeenSolid.AsAnEdge;
    }

    private static Finding Tell(InspectedPiece piece, FindingKind kind, Wall wall, int times)
    {
        var part = wall.Hole.Part;
        var cups = times > 1 ? "Hinge cups" : "A hinge cup";
        var (come, leave, lie) = times > 1 ? ("come", "leave", "lie") : ("comes", "leaves", "lies");
        var into = BoreWood.Place(part, wall.Face);
        var least = kind == NearEdge ? LeastToEdge : BoreWood.Least(piece);
        return new()
        {
            Kind = kind,
            Message =
                kind == ComesThrough ? $"{cups} {come} through the face of the {part.Name}."
                : kind == ThinUnder
                    ? $"{cups} {leave} little wood under {(times > 1 ? "them" : "it")} in the {part.Name}."
                : kind == BreaksOut ? $"{cups} {come} out {into} of the {part.Name}."
                : kind == ThinBeside ? $"{cups} {leave} little wood {into} of the {part.Name}."
                : $"{cups} {lie} too near to the edge of the {part.Name}.",
            Parts = [part.Id],
            Place = part.IsAsCut ? part.Source : piece.Group(part.Group)?.Source ?? part.Source,
            Related = part.IsAsCut ? [] : [part.Source],
            Where = BoreWood.Where(piece, wall),
            Measured = new MeasuredLength("wood left", piece.ToLength(wall.Wood)),
            Wanted = new(least, null),
            Remedy = new(
                kind == ComesThrough || kind == ThinUnder
                    ? $"Make the {part.Name} thicker, or use a hinge with a shallower cup."
                    : $"Make the {part.Name} wider, or use a hinge with a smaller cup or another distance from the edge.",
                Sure: false
            ),
        };
    }
}
