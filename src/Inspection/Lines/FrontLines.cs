using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Edges of fronts beside and over each other.</summary>
internal static class FrontLines
{
    /// <summary>Across more than this, a stile or the ends of two carcases, the eye no longer follows a line. Common practice.</summary>
    private const double ReachMm = 120;

    /// <summary>Fronts of one run stand in one plane, or a door's thickness before it.</summary>
    private const double DepthMm = 40;

    public static Outcome Check(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var all = piece.Piece.Fronts.Where(front => front.Face.Count > 0);
        foreach (var alike in all.GroupBy(front => (Turn: piece.Group(front.Group)?.Turn, Key: 0)))
        {
            var seen = piece.From(alike.Key.Turn);
            var fronts = alike.Select(front => new Edged(seen, front)).ToList();
            Rank(fronts);
            var tree = new BoxTree([.. fronts.Select(front => front.Face)]);
            var (reach, deep) = (seen.Grid.UnitsPerMm * ReachMm, seen.Grid.UnitsPerMm * DepthMm);
            for (var i = 0; i < fronts.Count; i++)
            {
                foreach (var j in tree.Touching(fronts[i].Face.Grown(reach)))
                {
                    var (one, other) = (fronts[i], fronts[j]);
                    if (Math.Abs(one.Face.Min.Y - other.Face.Min.Y) > deep)
                        continue;
                    var beside = IsBefore(one, other, Axis.X);
                    if (!beside && !(one.Carcase == other.Carcase && IsBefore(one, other, Axis.Z)))
                        continue;
                    covered++;
                    if (Worst(seen, one, other, beside ? Axis.Z : Axis.X) is { } finding)
                        findings.Add(finding);
                }
            }
        }
        return new(covered, findings);
    }

    /// <summary>Whether the one ends before the other begins along an axis, and the two share some of their course across it.</summary>
    private static bool IsBefore(Edged one, Edged other, Axis axis)
    {
        var (along, across) = (axis.Measured(), (axis == Axis.X ? Axis.Z : Axis.X).Measured());
        return one.Face.Max.On(along) <= other.Face.Min.On(along)
            && one.Face.Min.On(across) < other.Face.Max.On(across)
            && other.Face.Min.On(across) < one.Face.Max.On(across);
    }

    /// <summary>How many fronts of its own carcase stand one beyond the other on each side of a front: over, under, beside it.</summary>
    private static void Rank(List<Edged> fronts)
    {
        foreach (var carcase in fronts.GroupBy(front => front.Carcase, StringComparer.Ordinal))
        {
            foreach (var axis in (ReadOnlySpan<Axis>)[Axis.X, Axis.Z])
            {
                var inOrder = carcase.OrderBy(front => front.Face.Min.On(axis.Measured())).ToList();
                Count(inOrder, Directions.Along(axis, -1), (before, after) => IsBefore(before, after, axis));
                inOrder.Reverse();
                Count(inOrder, Directions.Along(axis, 1), (before, after) => IsBefore(after, before, axis));
            }
        }
    }

    private static void Count(List<Edged> inOrder, Direction side, Func<Edged, Edged, bool> isBefore)
    {
        for (var i = 1; i < inOrder.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (isBefore(inOrder[j], inOrder[i]))
                    inOrder[i].Beyond[(int)side] = Math.Max(
                        inOrder[i].Beyond[(int)side],
                        inOrder[j].Beyond[(int)side] + 1
                    );
            }
        }
    }

    private static Finding? Worst(InspectedPiece piece, Edged one, Edged other, Axis axis)
    {
        Finding? worst = null;
        var most = Tolerance.Fitting;
        foreach (var side in (ReadOnlySpan<Direction>)[Directions.Along(axis, 1), Directions.Along(axis, -1)])
        {
            if (!IsOneLine(one, other, side))
                continue;
            var by = piece.ToLength(one.Edge(side) - other.Edge(side));
            if (Length.Abs(by) <= most || Length.Abs(by) > Tolerance.ReadsAsMeant)
                continue;
            most = Length.Abs(by);
            worst = Tell(piece, one, other, side, most);
        }
        return worst;
    }

    /// <summary>Outer edges of two stacks are one line; inner ones where as many fronts lie beyond them, of as many in all.</summary>
    private static bool IsOneLine(Edged one, Edged other, Direction side)
    {
        var (beyond, theirs) = (one.Beyond[(int)side], other.Beyond[(int)side]);
        var (behind, behindTheirs) = (one.Beyond[(int)side.Opposite()], other.Beyond[(int)side.Opposite()]);
        return beyond == theirs && (beyond == 0 || behind == behindTheirs);
    }

    private static Finding Tell(InspectedPiece piece, Edged one, Edged other, Direction side, Length by)
    {
        var (name, neighbour) = (piece.GroupName(one.Front.Group), piece.GroupName(other.Front.Group));
        var word = side switch
        {
            Direction.Up => "top",
            Direction.Down => "bottom",
            Direction.Left => "left",
            _ => "right",
        };
        var middle = (one.Face.Centre() + other.Face.Centre()) * 0.5;
        middle = middle with { Y = Math.Min(one.Face.Min.Y, other.Face.Min.Y) };
        var first = piece.Shape(one.Front.Face[0]).Part;
        return new()
        {
            Kind = LinesRunOn.Gap,
            Message = $"The {word} of the {name} is nearly in line with that of the {neighbour}, but not quite.",
            Parts = PartIds.Together(one.Front.Face, other.Front.Face),
            Place = piece.Group(one.Front.Group)?.Source ?? first.Source,
            Related = piece.Group(other.Front.Group) is { } group ? [group.Source] : [],
            Where = piece.ToSpace(
                middle.With(side, one.Edge(side) * side.Sign()),
                middle.With(side, other.Edge(side) * side.Sign())
            ),
            Measured = new MeasuredLength("out of line by", by),
            Wanted = Wanted.Exactly(Length.Zero),
            Remedy = new("Bring the two into line, or set them off by enough to be seen as meant.", Sure: false),
        };
    }

    /// <summary>A front with the edges that one sees of it: its own, or those of the opening it is set in.</summary>
    private sealed class Edged(InspectedPiece piece, Front front)
    {
        public Front Front { get; } = front;

        public Box Face { get; } = FrontSides.Around(piece.ShapesOf(front.Face));

        public string? Carcase { get; } = CarcaseOf.Group(piece, front.Group)?.Id;

        /// <summary>How many fronts lie beyond it, by direction.</summary>
        public int[] Beyond { get; } = new int[6];

        /// <summary>Where its edge lies on the axis of a direction.</summary>
        public double Edge(Direction side)
        {
            var axis = side.Axis().Measured();
            if (
                Front.Hang == Hang.Inset
                && FrontSides.Bounds(piece.Opening(Front.Opening).Bounds, side) is { Count: > 0 } bounds
            )
            {
                var met = FrontSides.Around(piece.ShapesOf(bounds));
                if (!Front.Neighbours.Any(neighbour => neighbour.Side == side))
                    return (side.Sign() > 0 ? met.Min : met.Max).On(axis);
            }
            return (side.Sign() > 0 ? Face.Max : Face.Min).On(axis);
        }
    }
}
