using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>The wood around holes for pins, dowels, screws and fittings: before the drill, and beside it.</summary>
internal sealed class BoreWood : ICheck
{
    public static FindingKind ComesThrough { get; } =
        new(
            "hole-comes-through",
            Severity.Stop,
            "Hole through a part that should end in it",
            "The hole comes out at the far face, where it shows, and what sits in it has nothing to stand on."
        );

    public static FindingKind BreaksOut { get; } =
        new(
            "hole-breaks-out",
            Severity.Stop,
            "Hole breaks out at a side",
            "Part of the hole lies outside the wood: nothing holds what goes into it, and the edge tears out."
        );

    public static FindingKind Thin { get; } =
        new(
            "hole-leaves-thin-wood",
            Severity.Warn,
            "Little wood beside a hole",
            "So little wood breaks out when the hole is bored, when the dowel is driven, or under load.",
            "common practice: 2 mm, 5/64 in"
        );

    public string Name => "wood around holes for pins, dowels, screws and fittings";

    public string Of => "holes";

    public string How =>
        "From the wall and the bottom of every round hole the wood is measured to the outside of its part, shaped edges "
        + "included. That a hole should end in the wood is known of shelf pins, dowels, connectors and hinges; of others only the "
        + "wood beside them is judged. Slanted pockets, and holes that meet what a joint cut, are left out; hinge cups have a check "
        + "of their own.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [ComesThrough, BreaksOut, Thin];

    /// <summary>Less breaks out when the drill comes through the last fibres, or under load.</summary>
    public static Length Least(InspectedPiece piece) =>
        piece.Piece.Format.Unit == LengthUnit.Inch ? Length.FromInches(0, 5, 64) : Length.FromMillimetres(2);

    /// <summary>A step of 1/10000 mm ends a search for the least wood.</summary>
    public static double Settled(InspectedPiece piece) => piece.Grid.UnitsPerMm / 10000.0;

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var words = new BoredWords(piece.Piece);
        foreach (var part in piece.Piece.Parts)
        {
            var holes = Bored.In(part).Where(IsJudged).ToList();
            if (holes.Count == 0)
                continue;
            covered += holes.Count;
            var skin = new Skin(part);
            var found = holes
                .SelectMany(hole =>
                    skin.Near(hole, piece.ToUnits(Least(piece)), Settled(piece), hole.Cut.Kind == CutKind.ShelfPinHole)
                )
                .Where(wall => !wall.IsBeneath || words.IsBlind(wall.Hole))
                .Where(wall => !IsCovered(piece, wall))
                .Select(wall => (Wall: wall, Kind: KindOf(piece, wall)))
                .Where(found => found.Kind is not null)
                // Holes of one joint or one row, on one face: one mistake.
                .GroupBy(found => (found.Kind!, found.Wall.Hole.Cut.Joint, words.Of(found.Wall.Hole)));
            findings.AddRange(
                found.Select(group => Tell(piece, words, group.Key.Item1, group.MinBy(one => one.Wall.Wood).Wall))
            );
        }
        return new(covered, findings);
    }

    /// <summary>Both ends of the wood that was measured; where a hole comes out, the place of its axis there.</summary>
    public static SpacePlace Where(InspectedPiece piece, Wall wall)
    {
        var frame = wall.Hole.Part.Placed.Frame;
        return piece.ToSpace(frame.ToWorld(wall.OnHole), frame.ToWorld(wall.OnFace));
    }

    /// <summary>Where a face is: at the edge, or in what a joint cut.</summary>
    public static string Place(Part part, Solids.Face face) =>
        face.Cut < 0 || face.Cut >= part.Cuts.Count
            ? "at the edge"
            : part.Cuts[face.Cut].Kind switch
            {
                CutKind.Groove => "at the groove",
                CutKind.Dado or CutKind.StoppedDado => "at the dado",
                CutKind.Rabbet => "at the rabbet",
                CutKind.Mortise => "at the mortise",
                CutKind.Shoulder => "at the shoulder",
                _ => "at the shaped edge",
            };

    /// <summary>Whether a joint cut a face: a groove, a dado, a mortise.</summary>
    public static bool IsOfJoint(Wall wall) => wall.Face.Cut >= 0 && !Skin.IsShaping(wall.Hole.Part, wall.Face.Cut);

    /// <summary>Whether another part is glued to the face there, as one ply of a leg to the next, or edging to its panel.</summary>
    private static bool IsCovered(InspectedPiece piece, Wall wall)
    {
        var part = wall.Hole.Part;
        var at = part.Placed.Frame.ToWorld(wall.OnFace);
        return piece
            .Near(new Solids.Box(at, at).Grown(1))
            .Where(other => other.Part != part)
            .Any(other => piece.GluedPairs.Contains(piece.Pairing(part.Id, other.Part.Id)));
    }

    private static bool IsJudged(Bored hole) =>
        hole.Round is not null
        && hole.Cut is RoundCut { TiltDegrees: 0 }
        && hole.Cut.Kind is not (CutKind.HingeCup or CutKind.PocketHole);

    private static FindingKind? KindOf(InspectedPiece piece, Wall wall)
    {
        var wood = piece.ToLength(wall.Wood);
        if (wood >= Least(piece) - Tolerance.Rounding)
            return null;
        return wood > Tolerance.Rounding ? Thin
            : wall.IsBeneath ? ComesThrough
            : BreaksOut;
    }

    private static Finding Tell(InspectedPiece piece, BoredWords words, FindingKind kind, Wall wall)
    {
        var part = wall.Hole.Part;
        var hole = words.Of(wall.Hole);
        var at = Place(part, wall.Face);
        return new()
        {
            Kind = kind,
            Message =
                kind == ComesThrough ? $"A {hole} comes through the {part.Name}."
                : kind == BreaksOut ? $"A {hole} breaks out {at} of the {part.Name}."
                : wall.IsBeneath ? $"A {hole} leaves little wood before it in the {part.Name}."
                : $"A {hole} leaves little wood {at} of the {part.Name}.",
            Parts = [part.Id],
            Place = part.Source,
            Where = Where(piece, wall),
            Measured = new MeasuredLength("wood left", piece.ToLength(wall.Wood)),
            Wanted = new(Least(piece), null),
            Remedy = new(
                wall.IsBeneath
                    ? $"Bore less deep, or make the {part.Name} thicker."
                    : "Move the hole into the wood, or use a thinner drill.",
                Sure: false
            ),
        };
    }
}
