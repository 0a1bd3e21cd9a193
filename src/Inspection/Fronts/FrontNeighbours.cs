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
        + "stay apart by 1 mm.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Touch, Close];

    public Outcome Run(InspectedPiece piece)
    {
        var fronts = piece.Piece.Fronts.Where(front => front.Face.Count > 0).ToList();
        var own = fronts.ConvertAll(front => FrontSides.Own(piece, front));
        var boxes = own.ConvertAll(FrontSides.Around);
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
                if (FrontSides.Shared(FrontSides.Depth(own[i]), FrontSides.Depth(own[j])) is not { } slab)
                    continue;
                var side = Towards(boxes[i], boxes[j]);
                if (FrontSides.Between(piece, own[i], own[j], side, slab) is not { } gap)
                    continue;
                covered++;
                if (Judge(piece, gap) is { } kind)
                    findings.Add(Tell(piece, kind, fronts[i], fronts[j], side, gap, boxes[i].Min.Y));
            }
        }
        return new(covered, findings);
    }

    private static FindingKind? Judge(InspectedPiece piece, SideGap gap)
    {
        var smallest = piece.ToLength(gap.Smallest.Gap);
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
        Direction side,
        SideGap gap,
        double faceY
    )
    {
        var measured = new FrontSide(one, side, Least, other.Face, other.Group, gap, faceY);
        var (own, theirs) = measured.Ends(gap.Shown(gap.Smallest, piece.ToUnits(Tolerance.Fitting)));
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
            Where = piece.ToSpace(own, theirs),
            Measured = new MeasuredLength("gap", piece.ToLength(gap.Smallest.Gap)),
            Wanted = new(Least, null),
            Remedy = new("Make one of them smaller, or their overlays less.", Sure: false),
        };
    }
}
