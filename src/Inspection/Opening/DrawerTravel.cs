using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether drawers and pull-outs come out as far as what they run on lets them.</summary>
internal sealed class DrawerTravel : ICheck
{
    public static FindingKind Stopped { get; } =
        new(
            "drawer-cannot-come-out",
            Severity.Stop,
            "Drawer cannot come out",
            "Something stands in its way before it is drawn out, with its pull: what is at the back is never reached."
        );

    public static FindingKind StrikesDoor { get; } =
        new(
            "inner-drawer-strikes-door",
            Severity.Stop,
            "Inner drawer strikes the open door",
            "The door, open as far as it goes, still stands in the way with its thickness or its hinge edge."
        );

    public string Name => "drawers and pull-outs coming out";

    public string Of => "drawers and pull-outs";

    public string How =>
        "Each drawer and pull-out is slid out with its pull as far as its slides come out (on wood, until a quarter is left "
        + "in), past all that stands about. A door in front of it is opened first, as far as it goes, and then stands in its place: "
        + "what comes no deeper into that than its hinges may wander is not told.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Stopped, StrikesDoor];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var (group, travel) in Drawers(piece))
        {
            covered++;
            var seen = piece.From(piece.Group(group)?.Turn);
            var drawer = new Drawer(group, Bodies.Of(seen, group), travel);
            if (Fixed(seen, drawer) is { } stopped)
                findings.Add(stopped);
            findings.AddRange(DoorsBefore(seen, drawer).Select(path => Strikes(seen, drawer, path)).OfType<Finding>());
        }
        return new(covered, findings);
    }

    /// <summary>What comes out: fronts with a box behind, and boxes that have no front of their own.</summary>
    private static IEnumerable<(string Group, Length Travel)> Drawers(InspectedPiece piece)
    {
        foreach (var front in piece.Piece.Fronts)
        {
            if (front is { Motion: FrontMotion.SlidesOut, Drawer.Travel: { } travel })
                yield return (front.Group, travel);
        }
        var slides = piece
            .Piece.Hardware.Where(hardware => hardware.Travel is not null)
            .Select(hardware => (piece.Shape(hardware.Ties[0]).Part.Group, hardware.Travel!.Value));
        foreach (var inner in slides.DistinctBy(slide => slide.Group, StringComparer.Ordinal))
        {
            if (piece.Front(inner.Group) is null)
                yield return inner;
        }
    }

    private static Finding? Fixed(InspectedPiece piece, Drawer drawer)
    {
        var met = Paths.Sliding(
            drawer.Bodies,
            Out(piece, drawer.Travel),
            box =>
                Bodies
                    .Near(piece, box, group => IsOwn(drawer, group) || IsBefore(piece, drawer, group))
                    .Where(body => !Bodies.IsDrawnElsewhere(piece, piece.Front(drawer.Group), body)),
            piece.ToUnits(Tolerance.Rounding)
        );
        if (met is null)
            return null;
        var what = met.Own.Handle is null ? $"The {piece.GroupName(drawer.Group)}" : $"The {met.Own.Name}";
        var away = Away(piece, drawer, met);
        return Tell(piece, drawer, met, Stopped, $"{what} meets the {met.Other.Name} on its way out.") with
        {
            Remedy = away is null
                ? new("Make it narrower or lower there, move one of the two, or take a smaller pull.", Sure: false)
                : new(
                    $"A filler that brings the {met.Other.Name} {piece.Say(away.Value)} further away lets it out.",
                    Sure: true
                ),
        };
    }

    private static Finding? Strikes(InspectedPiece piece, Drawer drawer, DoorPath path)
    {
        var from = piece.Group(path.Front.Group)?.Turn;
        var door = path.Opened().Select(body => body.Moved(piece.Seen(body.Placed, from))).ToList();
        var met = Paths.Sliding(
            drawer.Bodies,
            Out(piece, drawer.Travel),
            box => door.Where(body => body.Box.Overlaps(box)),
            path.Within
        );
        if (met is null)
            return null;
        var clear = Aside(piece, drawer, path, door);
        return Tell(
            piece,
            drawer,
            met,
            StrikesDoor,
            $"The {piece.GroupName(drawer.Group)} strikes the {piece.GroupName(path.Front.Group)}, open at {(int)path.Degrees} degrees."
        ) with
        {
            Remedy = clear is null
                ? new("Let the door open further, or make the drawer narrower.", Sure: false)
                : new(
                    $"Set its slide in by {piece.Say(clear.Value)} more on the side of the hinges, or take hinges that carry the door that much further out of the opening.",
                    Sure: true
                ),
            Assumptions =
            [
                $"the door stands where a pin at the front corner of its edge would carry it, to {piece.SayByTape(Length.Max(path.Swing.Wander, Tolerance.Fitting))}",
            ],
        };
    }

    private static Finding Tell(InspectedPiece piece, Drawer drawer, Met met, FindingKind kind, string message) =>
        new()
        {
            Kind = kind,
            Message = message,
            Parts = PartIds.Together(Ids(met.Own), Ids(met.Other)),
            Place = piece.Group(drawer.Group)?.Source ?? met.Own.Source,
            Related = [met.Other.Source],
            Where = piece.ToSpace(met.At, met.At),
            Measured = new MeasuredLength("comes out", piece.ToLength(piece.ToUnits(drawer.Travel) * met.Share)),
            Wanted = new(drawer.Travel, null),
        };

    private static string[] Ids(Body body) => body.Part is { } id ? [id] : [];

    private static Slide Out(InspectedPiece piece, Length travel) =>
        new(Direction.Front.Unit() * piece.ToUnits(travel));

    private static bool IsOwn(Drawer drawer, string group) =>
        string.Equals(group, drawer.Group, StringComparison.Ordinal);

    /// <summary>Whether a group is a front that is opened before this one comes out: it stands before it, looking the same way.</summary>
    private static bool IsBefore(InspectedPiece piece, Drawer drawer, string group) =>
        piece.Front(group) is { Motion: not FrontMotion.Fixed }
        && piece.Group(group)?.Turn == piece.Group(drawer.Group)?.Turn
        && Around(piece.Members(group)).Min.Y < Around(piece.Members(drawer.Group)).Min.Y;

    private static Box Around(IEnumerable<Shape> shapes) =>
        shapes.Select(shape => shape.Box).Aggregate((a, b) => a.Around(b));

    /// <summary>The doors that must be opened before a drawer comes out.</summary>
    private static IEnumerable<DoorPath> DoorsBefore(InspectedPiece piece, Drawer drawer)
    {
        var way = drawer
            .Bodies.Select(body => Sweep.Room(body.Placed, Out(piece, drawer.Travel)))
            .Aggregate((a, b) => a.Around(b));
        return piece
            .Near(way)
            .Select(shape => shape.Part.Group)
            .Distinct(StringComparer.Ordinal)
            .Where(group => !IsOwn(drawer, group) && IsBefore(piece, drawer, group))
            .Select(group => piece.Front(group)!)
            .Where(front => front.Swing is not null)
            .Select(piece.Path);
    }

    /// <summary>How much further what it meets must be from it, to the left or right.</summary>
    private static Length? Away(InspectedPiece piece, Drawer drawer, Met met)
    {
        if (met.Other.Group is not null)
            return null;
        var middle = drawer.Bodies.Select(body => body.Box).Aggregate((a, b) => a.Around(b)).Centre();
        var way = met.At.X < middle.X ? Direction.Left : Direction.Right;
        return Clear(piece, drawer, [met.Other], way, piece.ToUnits(Tolerance.Rounding));
    }

    /// <summary>How much further to the side of its hinges a door must stand for a drawer to pass.</summary>
    private static Length? Aside(InspectedPiece piece, Drawer drawer, DoorPath path, IReadOnlyList<Body> door) =>
        path.Front.Motion switch
        {
            FrontMotion.TurnsOnLeftEdge => Clear(piece, drawer, door, Direction.Left, path.Within),
            FrontMotion.TurnsOnRightEdge => Clear(piece, drawer, door, Direction.Right, path.Within),
            _ => null,
        };

    private static Length? Clear(
        InspectedPiece piece,
        Drawer drawer,
        IReadOnlyList<Body> others,
        Direction way,
        double within
    ) =>
        Solved.Smallest(
            piece,
            Solved.WidestFiller,
            by =>
            {
                var moved = others.Select(body => body.Moved(way.Unit() * piece.ToUnits(by))).ToList();
                return Paths.Sliding(
                    drawer.Bodies,
                    Out(piece, drawer.Travel),
                    box => moved.Where(body => body.Box.Overlaps(box)),
                    within
                )
                    is null;
            }
        );

    /// <summary>A drawer with all that comes out with it.</summary>
    private sealed record Drawer(string Group, IReadOnlyList<Body> Bodies, Length Travel);
}
