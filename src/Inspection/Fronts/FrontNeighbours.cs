using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>The room between fronts of different openings that hang beside or over each other.</summary>
internal sealed class FrontNeighbours : ICheck
{
    /// <summary>1 mm: what hinges settle and edges carry paint; 3 mm is usual between frameless fronts.</summary>
    private static readonly Length Least = Length.FromMillimetres(1);

    public static FindingKind Touch { get; } =
        new(
            "fronts-touch",
            Severity.Stop,
            "Fronts touch",
            "Two fronts have no room between them: one cannot open without the other."
        );

    public static FindingKind Close { get; } =
        new(
            "fronts-close",
            Severity.Warn,
            "Fronts very close",
            "Less than 1 mm is left between two fronts: hinges settle and finish builds up by that much.",
            "32 mm basics, bellinghambaywoodcraft.com: 3 mm between frameless fronts, 1.5 mm at edges; the limit is common practice"
        );

    public string Name => "room between neighbouring fronts";

    public string Of => "pairs of fronts";

    public string How =>
        "Fronts of different openings that hang side by side or over each other in one depth are measured against each "
        + "other. What is wanted there follows from their overlays, which are judged by themselves; here they must only "
        + "stay apart by 1 mm. Fronts at an angle to each other are measured where they come nearest.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Touch, Close];

    public Outcome Run(InspectedPiece piece)
    {
        var fronts = piece.Piece.Fronts.Where(front => front.Face.Count > 0).ToList();
        var own = fronts.ConvertAll(front => FrontSides.Own(piece.From(front), front));
        var boxes = fronts.ConvertAll(front => FrontSides.Around(FrontSides.Own(piece, front)));
        var tree = new BoxTree(boxes);
        var reach = piece.ToUnits(Length.FromMillimetres(10));
        var covered = 0;
        var findings = new List<Finding>();
        for (var i = 0; i < fronts.Count; i++)
        {
            foreach (var j in tree.Touching(boxes[i].Grown(reach)))
            {
                if (j <= i || fronts[i].Neighbours.Any(n => n.Group == fronts[j].Group))
                    continue;
                var seen = piece.From(fronts[i]);
                var isSquare = seen == piece.From(fronts[j]);
                var told = isSquare
                    ? SideBySide(seen, (fronts[i], own[i]), (fronts[j], own[j]), reach)
                    : AtAnAngle(piece, fronts[i], fronts[j], reach);
                if (told is not { } pair)
                    continue;
                covered++;
                if (pair.Finding is not null)
                    findings.Add(pair.Finding);
            }
        }
        return new(covered, findings);
    }

    /// <summary>Two fronts that are turned alike, seen squarely; null where they are no neighbours.</summary>
    private static Told? SideBySide(
        InspectedPiece piece,
        (Front Front, IReadOnlyList<Shape> Shapes) one,
        (Front Front, IReadOnlyList<Shape> Shapes) other,
        double reach
    )
    {
        var (a, b) = (FrontSides.Around(one.Shapes), FrontSides.Around(other.Shapes));
        if (!a.Grown(reach).Touches(b))
            return null;
        if (FrontSides.Shared(FrontSides.Depth(one.Shapes), FrontSides.Depth(other.Shapes)) is not { } slab)
            return null;
        var side = Towards(a, b);
        if (FrontSides.Between(piece, one.Shapes, other.Shapes, side, slab) is not { } gap)
            return null;
        if (Judge(piece.ToLength(gap.Smallest.Gap)) is not { } kind)
            return new(null);
        var measured = new FrontSide(one.Front, side, Least, other.Front.Face, other.Front.Group, gap, a.Min.Y);
        var (from, to) = measured.Ends(gap.Shown(gap.Smallest, piece.ToUnits(Tolerance.Fitting)));
        return new(Tell(piece, kind, one.Front, other.Front, gap.Smallest.Gap, (from, to)));
    }

    /// <summary>Two fronts at an angle to each other: what counts is the nearest they come; null where that is far.</summary>
    private static Told? AtAnAngle(InspectedPiece piece, Front one, Front other, double reach)
    {
        Gap? nearest = null;
        foreach (var a in FrontSides.Own(piece, one))
        {
            foreach (var b in FrontSides.Own(piece, other))
            {
                if (
                    a.Box.Grown(reach).Touches(b.Box)
                    && Pair.Gap(a.Placed, b.Placed, nearest?.Distance ?? reach) is { } gap
                    && gap.Distance <= (nearest?.Distance ?? reach)
                )
                    nearest = gap;
            }
        }
        if (nearest is null)
            return null;
        return Judge(piece.ToLength(nearest.Distance)) is { } kind
            ? new(Tell(piece, kind, one, other, nearest.Distance, (nearest.OnA, nearest.OnB)))
            : new(null);
    }

    /// <summary>A pair that was looked at, and what was found.</summary>
    private sealed record Told(Finding? Finding);

    private static FindingKind? Judge(Length smallest)
    {
        if (smallest <= Tolerance.Rounding)
            return Touch;
        return smallest < Least - Tolerance.Rounding ? Close : null;
    }

    /// <summary>Neighbours lie apart, or least into each other, along one axis: that is where they meet.</summary>
    private static Direction Towards(Box a, Box b)
    {
        var x = Math.Max(b.Min.X - a.Max.X, a.Min.X - b.Max.X);
        var z = Math.Max(b.Min.Z - a.Max.Z, a.Min.Z - b.Max.Z);
        if (x >= z)
            return b.Centre().X >= a.Centre().X ? Direction.Right : Direction.Left;
        return b.Centre().Z >= a.Centre().Z ? Direction.Up : Direction.Down;
    }

    private static Finding Tell(
        InspectedPiece piece,
        FindingKind kind,
        Front one,
        Front other,
        double gap,
        (Vec3 From, Vec3 To) ends
    )
    {
        var part = piece.Shape(one.Face[0]).Part;
        var names = $"the {piece.GroupName(one.Group)} and the {piece.GroupName(other.Group)}";
        return new()
        {
            Kind = kind,
            Message =
                kind == Touch ? $"There is no room between {names}." : $"There is hardly any room between {names}.",
            Parts = PartIds.Together(one.Face, other.Face),
            Place = piece.Group(one.Group)?.Source ?? part.Source,
            Related = piece.Group(other.Group) is { } group ? [group.Source] : [],
            Where = piece.ToSpace(ends.From, ends.To),
            Measured = new MeasuredLength("gap", piece.ToLength(gap)),
            Wanted = new(Least, null),
            Remedy = new("Make one of them smaller, or their overlays less.", Sure: false),
        };
    }
}
