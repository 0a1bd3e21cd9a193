using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether doors, flaps and drop fronts open as far as their hinges let them.</summary>
internal sealed class DoorSwing : ICheck
{
    public static FindingKind HardlyOpens { get; } =
        new(
            "door-hardly-opens",
            Severity.Stop,
            "Door hardly opens",
            "It meets something before 60 degrees: more than half of its opening stays covered."
        );

    public static FindingKind StopsShort { get; } =
        new(
            "door-stops-short",
            Severity.Warn,
            "Door does not open square",
            "It meets something before a right angle: what stands behind it comes out aslant or not at all, and one of the two gets a dent."
        );

    public static FindingKind WantsStop { get; } =
        new(
            "door-wants-a-stop",
            Severity.Note,
            "Door meets something when it is flung open",
            "It opens square, but its hinges let it go on until it meets something, and then pull at their screws."
        );

    /// <summary>From here on the door covers less than half of its opening: the cosine of 60 degrees is a half.</summary>
    private const int HalfFree = 60;

    private const int Square = 90;

    public string Name => "doors and flaps opening to their angle";

    public string Of => "doors and flaps";

    public string How =>
        "Each door, flap and drop front is turned with its pull from shut to the angle of its hinges or stays, past all that "
        + "stands about: carcase, frame, trim, tops, other fronts shut, walls as far as they are known, and what is on them. "
        + "Butt hinges turn on their pin. A cup hinge is no pin: its door is followed as if it turned about the front corner of "
        + "its edge, and what it meets no deeper than its hinge may wander is not told. Old doors that are kept are not followed.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [HardlyOpens, StopsShort, WantsStop];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var front in piece.Piece.Fronts.Where(front => front.Swing is not null))
        {
            covered++;
            if (piece.Path(front) is { Met: { } met } path)
                findings.Add(Tell(piece.From(front), path, met));
        }
        return new(covered, findings);
    }

    private static Finding Tell(InspectedPiece piece, DoorPath path, Met met)
    {
        var degrees = (int)Math.Floor(path.Degrees);
        var name = piece.GroupName(path.Front.Group);
        var what = met.Own.Handle is null ? $"The {name}" : $"The {met.Own.Name}";
        return new()
        {
            Kind =
                degrees < HalfFree ? HardlyOpens
                : degrees < Math.Min(Square, path.Swing.Degrees) ? StopsShort
                : WantsStop,
            Message =
                $"{what} meets the {met.Other.Name} before the {(met.Own.Handle is null ? "hinges stop it" : "door is open")}.",
            Parts = PartIds.Together(Ids(met.Own), Ids(met.Other)),
            Place = piece.Group(path.Front.Group)?.Source ?? met.Own.Source,
            Related = [met.Other.Source],
            Where = piece.ToSpace(met.At, met.At),
            Measured = new MeasuredAngle("opens", degrees, path.Swing.Degrees),
            Remedy = Remedy(piece, path, met, degrees),
            Assumptions = [Assumed(piece, path.Swing)],
        };
    }

    private static string[] Ids(Body body) => body.Part is { } id ? [id] : [];

    private static string Assumed(InspectedPiece piece, Swing swing) =>
        swing.Wander == Length.Zero
            ? $"the {swing.Hinge} turns on its pin, in the plane of the front's face"
            : $"the {swing.Hinge} is followed as a pin at the front corner of its edge; it may carry its door {piece.SayByTape(swing.Wander)} aside";

    private static Remedy Remedy(InspectedPiece piece, DoorPath path, Met met, int degrees)
    {
        var ways = new List<string>();
        var sure = false;
        if (Flatter(piece, path, met) is { } flat)
        {
            ways.Add($"a pull that stands off no more than {piece.Say(flat)}");
            sure = true;
        }
        var wanted = degrees < Square ? Math.Min(Square, path.Swing.Degrees) : path.Swing.Degrees;
        if (Away(piece, path.To(wanted), met) is { } away)
        {
            ways.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a filler that brings the {met.Other.Name} {piece.Say(away)} further away, for {wanted} degrees"
                )
            );
            sure = true;
        }
        if (degrees >= HalfFree)
        {
            ways.Add(string.Create(CultureInfo.InvariantCulture, $"hinges with a stop at {degrees} degrees"));
            sure = true;
        }
        if (ways.Count == 0)
            ways.Add("a bevel on the edge that binds, a wider gap there, or the other edge to hinge on");
        return new($"It wants {string.Join("; or ", ways)}.", sure);
    }

    /// <summary>How far the pull may stand off for the door to open; null where the pull is not what meets, or does not matter.</summary>
    private static Length? Flatter(InspectedPiece piece, DoorPath path, Met met)
    {
        if (met.Own is not { Handle: { } size, Part: { } part })
            return null;
        var hardware = piece.HandlesOf(part).First(handle => handle.Handle == size);
        return Solved.Largest(
            piece,
            size.StandsOff,
            standsOff => standsOff > Length.Zero && With(standsOff).Meets(box => path.Obstacles(piece, box)) is null
        );

        DoorPath With(Length standsOff) =>
            path with
            {
                Bodies =
                [
                    .. path.Bodies.Select(body =>
                        body == met.Own
                            ? Bodies.HandleOf(piece, piece.Shape(part), hardware, size with { StandsOff = standsOff })
                            : body
                    ),
                ],
            };
    }

    /// <summary>How much further away, on the side of the hinges, that which it meets must be; null where it is of the carcase
    /// itself or the door reaches it however far it is moved.</summary>
    private static Length? Away(InspectedPiece piece, DoorPath path, Met met)
    {
        if (path.Axis != Axis.Z || IsOfItsCarcase(piece, path.Front.Group, met.Other))
            return null;
        var way = path.Front.Motion == FrontMotion.TurnsOnLeftEdge ? Direction.Left : Direction.Right;
        var isBeyondTheHinges = (met.At - path.Turn.AxisPoint).Along(way) >= 0;
        return isBeyondTheHinges
            ? Solved.Smallest(
                piece,
                Solved.WidestFiller,
                by => path.Meets(_ => [met.Other.Moved(way.Unit() * piece.ToUnits(by))]) is null
            )
            : null;
    }

    private static bool IsOfItsCarcase(InspectedPiece piece, string door, Body other) =>
        other.Group is { } group
        && string.Equals(Carcase(piece, door), Carcase(piece, group), StringComparison.Ordinal);

    private static string? Carcase(InspectedPiece piece, string id)
    {
        var group = piece.Group(id);
        while (group is { Kind: not (GroupKind.Carcase or GroupKind.KeptCarcase), Parent: { } parent })
            group = piece.Group(parent);
        return group?.Id;
    }
}
