using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>One side of a front: what it faces there, the room measured between the two, and what was wanted.</summary>
/// <param name="Wanted">The gap wanted (inset, or to a neighbour) or the lap wanted (overlaid).</param>
/// <param name="Faces">Ids of the parts on the other side of the gap.</param>
/// <param name="Neighbour">Group of the other front where nothing stands between the two; null elsewhere.</param>
/// <param name="Gap">The room from the front's edge outward; an overlaid front laps over by as much as this is below zero.
/// Null where the two have no course in common.</param>
/// <param name="FaceY">Where the front's face lies, front to back, grid units.</param>
internal sealed record FrontSide(
    Front Front,
    Direction Side,
    Length Wanted,
    IReadOnlyList<string> Faces,
    string? Neighbour,
    SideGap? Gap,
    double FaceY
)
{
    public Axis Along => Side.Axis() == Axis.X ? Axis.Z : Axis.X;

    /// <summary>"the left of", "the top of".</summary>
    public string Word =>
        Side switch
        {
            Direction.Left => "left",
            Direction.Right => "right",
            Direction.Down => "bottom",
            _ => "top",
        };

    /// <summary>The two ends of the gap at one place, the front's own end first.</summary>
    public (Vec3 Own, Vec3 Other) Ends(GapAt at) => at.Ends(Side, Along, FaceY);
}

/// <summary>Measures the sides of fronts.</summary>
internal static class FrontSides
{
    private static readonly Direction[] All = [Direction.Left, Direction.Right, Direction.Down, Direction.Up];

    /// <summary>The opening's edge is where the carcase's front is: this much behind it counts, and no rabbet farther in.</summary>
    private const double EdgeMm = 1;

    /// <summary>No edge is out of true by more; what lies farther back is a hole in it.</summary>
    private const double EdgeBandMm = 25;

    /// <summary>The parts that keep a front's gaps: all of a door, the face alone of a drawer (its box runs inside).</summary>
    public static IReadOnlyList<Shape> Own(InspectedPiece piece, Front front)
    {
        var face = piece.ShapesOf(front.Face);
        return front.Motion == FrontMotion.SlidesOut ? face : [.. face.Union(piece.Members(front.Group))];
    }

    /// <summary>The sides of a front for which something is wanted.</summary>
    public static IEnumerable<FrontSide> Of(InspectedPiece piece, Front front)
    {
        var opening = piece.Opening(front.Opening);
        var own = Own(piece, front);
        if (own.Count == 0)
            yield break;
        foreach (var side in All)
        {
            if (Wanted(front.Wanted, side) is { } wanted)
                yield return ToOpening(piece, front, own, opening, side, wanted);
            foreach (var neighbour in front.Neighbours.Where(neighbour => neighbour.Side == side))
            {
                if (ToNeighbour(piece, front, own, neighbour) is { } between)
                    yield return between;
            }
        }
    }

    private static FrontSide? ToNeighbour(
        InspectedPiece piece,
        Front front,
        IReadOnlyList<Shape> own,
        FrontNeighbour neighbour
    )
    {
        if (piece.Front(neighbour.Group) is not { } other)
            return null;
        var theirs = Own(piece, other);
        var shared = Shared(Depth(own), Depth(theirs));
        // What laps over in a rebate lies behind the face: the gap is told where one sees it.
        if (neighbour.IsRebated && shared is { } slab)
            shared = (slab.From, slab.From + (EdgeMm * piece.Grid.UnitsPerMm));
        var gap = Between(piece, own, theirs, neighbour.Side, shared);
        return new(front, neighbour.Side, neighbour.Gap, other.Face, neighbour.Group, gap, Around(own).Min.Y);
    }

    private static FrontSide ToOpening(
        InspectedPiece piece,
        Front front,
        IReadOnlyList<Shape> own,
        Opening opening,
        Direction side,
        Length wanted
    )
    {
        var ids = Bounds(opening.Bounds, side);
        var bounds = piece.ShapesOf(ids);
        var along = side.Axis() == Axis.X ? Axis.Z : Axis.X;
        SideGap? gap;
        if (opening.AsMeasured is { } measured)
        {
            gap = SideGap.Measure(
                Outline.Facing(own, side, along, null),
                FoundOpening.Edge(piece.Grid, opening, measured, front, side),
                Around(own).Centre().Along(side),
                EdgeBandMm * piece.Grid.UnitsPerMm
            );
        }
        else if (bounds.Count == 0)
        {
            gap = null;
        }
        else if (front.Hang == Hang.Inset)
        {
            gap = Between(piece, own, bounds, side, Shared(Depth(own), Depth(bounds)));
        }
        else
        {
            var edge = Depth(bounds).From;
            // Where a pair meets in a rebate, the one laps over what the other leaves open behind.
            (double From, double To)? face = front.Neighbours.Any(neighbour => neighbour.IsRebated)
                ? (Depth(own).From, Depth(own).From + (EdgeMm * piece.Grid.UnitsPerMm))
                : null;
            gap = SideGap.Measure(
                Outline.Facing(own, side, along, face),
                Outline.Against(bounds, side, along, (edge, edge + (EdgeMm * piece.Grid.UnitsPerMm))),
                Around(own).Centre().Along(side),
                EdgeBandMm * piece.Grid.UnitsPerMm
            );
        }
        return new(front, side, wanted, ids, null, gap, Around(own).Min.Y);
    }

    /// <summary>The room between two sets of parts in a direction, within a layer of depth.</summary>
    public static SideGap? Between(
        InspectedPiece piece,
        IReadOnlyList<Shape> own,
        IReadOnlyList<Shape> others,
        Direction side,
        (double From, double To)? slab
    )
    {
        var along = side.Axis() == Axis.X ? Axis.Z : Axis.X;
        return SideGap.Measure(
            Outline.Facing(own, side, along, slab),
            Outline.Against(others, side, along, slab),
            Around(own).Centre().Along(side),
            EdgeBandMm * piece.Grid.UnitsPerMm
        );
    }

    public static Box Around(IReadOnlyList<Shape> shapes) =>
        shapes.Select(shape => shape.Box).Aggregate((a, b) => a.Around(b));

    /// <summary>From the front to the back of some parts.</summary>
    public static (double From, double To) Depth(IReadOnlyList<Shape> shapes)
    {
        var box = Around(shapes);
        return (box.Min.Y, box.Max.Y);
    }

    /// <summary>The depth two have in common; null where one stands wholly before the other, so that all of both counts.</summary>
    public static (double From, double To)? Shared((double From, double To) a, (double From, double To) b)
    {
        var shared = (From: Math.Max(a.From, b.From), To: Math.Min(a.To, b.To));
        return shared.From < shared.To ? shared : null;
    }

    private static Length? Wanted(WantedSides wanted, Direction side) =>
        side switch
        {
            Direction.Left => wanted.Left,
            Direction.Right => wanted.Right,
            Direction.Down => wanted.Bottom,
            _ => wanted.Top,
        };

    public static IReadOnlyList<string> Bounds(OpeningBounds bounds, Direction side) =>
        side switch
        {
            Direction.Left => bounds.Left,
            Direction.Right => bounds.Right,
            Direction.Down => bounds.Bottom,
            _ => bounds.Top,
        };
}
