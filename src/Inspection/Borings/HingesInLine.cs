using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether what hinges cut into a door lies in one line, and where it meets what they cut into its post.</summary>
internal sealed class HingesInLine : ICheck
{
    /// <summary>Cup hinges can be set by as much up and down: hardware literature, from memory.</summary>
    private static readonly Length Setting = Length.FromMillimetres(2);

    public static FindingKind OutOfLine { get; } =
        new(
            "hinges-out-of-line",
            Severity.Stop,
            "Hinges not in one line",
            "Hinges turn about one line: where one stands off it, the door binds and works its screws loose."
        );

    public static FindingKind Apart { get; } =
        new(
            "hinge-halves-apart",
            Severity.Stop,
            "Hinge does not meet its place on the other part",
            "What is cut into the door for the hinge and what is cut into its post do not stand at the same height: the door cannot be hung.",
            "cup hinges are set by up to 2 mm (hardware literature, from memory); leaves meet to the fit"
        );

    public string Name => "hinges in one line, door against post";

    public string Of => "hinges";

    public string How =>
        "The cups of one door are measured from its hinge edge, the recesses of butt hinges likewise; then the middle of each, along "
        + "the edge, is held against the middle of what the same hinge cut into side, post or frame. Hinges that are only screwed on "
        + "are not judged.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [OutOfLine, Apart];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var door in HungOn.In(piece))
        {
            var cut = door
                .Hinges.Select(hinge => (Hinge: hinge, OnDoor: OnDoor(door, hinge), OnPost: Middle(door.Cut(hinge, 1))))
                .Where(one => one.OnDoor is not null)
                .ToList();
            covered += cut.Count;
            if (Line(door, [.. cut.Select(one => (one.Hinge, one.OnDoor!.Value))]) is { } crooked)
                findings.Add(crooked);
            // Halves that all stand apart by the same are one mistake: the worst is told.
            var apart = cut.Where(one => one.OnPost is not null)
                .Select(one => Meet(door, one.Hinge, one.OnDoor!.Value, one.OnPost!.Value))
                .OfType<Finding>()
                .MaxBy(finding => ((MeasuredLength)finding.Measured!).Value);
            if (apart is not null)
                findings.Add(apart);
        }
        return new(covered, findings);
    }

    private static Finding? Line(HungOn door, IReadOnlyList<(Hardware Hinge, Vec3 At)> hinges)
    {
        if (hinges.Count < 2)
            return null;
        var (piece, edge) = (door.Seen, door.Edge);
        var first = hinges.MinBy(one => one.At.Along(edge));
        var last = hinges.MaxBy(one => one.At.Along(edge));
        var off = piece.ToLength(last.At.Along(edge) - first.At.Along(edge));
        if (off <= Tolerance.Fitting)
            return null;
        return Tell(door, last.Hinge, OutOfLine) with
        {
            Message = $"The hinges of the {door.Name} are not in one line.",
            Where = piece.ToSpace(last.At.With(edge, first.At.Along(edge)), last.At),
            Measured = new MeasuredLength("off the line", off),
            Wanted = new(null, Tolerance.Fitting),
            Remedy = new("Mark all hinges of a door out with one gauge from its edge.", Sure: false),
        };
    }

    private static Finding? Meet(HungOn door, Hardware hinge, Vec3 onDoor, Vec3 onPost)
    {
        var (piece, run) = (door.Seen, door.Along == Axis.Z ? Direction.Up : Direction.Right);
        var off = piece.ToLength(Math.Abs(onDoor.Along(run) - onPost.Along(run)));
        var most = hinge.Hinge?.Form == HingeForm.Cup ? Setting : Tolerance.Fitting;
        if (off <= most + Tolerance.Rounding)
            return null;
        return Tell(door, hinge, Apart) with
        {
            Message =
                $"A hinge of the {door.Name} stands {(door.Along == Axis.Z ? "higher or lower" : "further aside")} than its place on the {piece.Shape(hinge.Ties[1]).Part.Name}.",
            Where = piece.ToSpace(onDoor, onDoor.With(run, onPost.Along(run))),
            Measured = new MeasuredLength("apart", off),
            Wanted = new(null, most),
            Remedy = new(
                $"Mark the hinges out on the {door.Name} from the {piece.Shape(hinge.Ties[1]).Part.Name} when the door stands in its opening.",
                Sure: false
            ),
        };
    }

    private static Finding Tell(HungOn door, Hardware hinge, FindingKind kind)
    {
        var part = door.Seen.Shape(hinge.Ties[0]).Part;
        return new()
        {
            Kind = kind,
            Message = door.Name,
            Parts = [.. hinge.Ties],
            Place = part.IsAsCut ? part.Source : door.Seen.Group(door.Front.Group)?.Source ?? part.Source,
            Related = [door.Seen.Shape(hinge.Ties[1]).Part.Source],
        };
    }

    /// <summary>The middle of a cup; of a recess, the middle of the hinge edge before it.</summary>
    private static Vec3? OnDoor(HungOn door, Hardware hinge)
    {
        var cuts = door.Cut(hinge, 0);
        var cups = cuts.Where(one => one.Cut.Kind == CutKind.HingeCup).ToList();
        return Middle(cups.Count > 0 ? cups : cuts);
    }

    private static Vec3? Middle(IReadOnlyList<(PartCut Cut, Box Box)> cuts) =>
        cuts.Count == 0 ? null : cuts.Select(one => one.Box).Aggregate((all, one) => all.Around(one)).Centre();
}
