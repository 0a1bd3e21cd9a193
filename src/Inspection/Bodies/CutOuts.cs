using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>The wood that is left around the cut-outs of worktops, and between them.</summary>
internal sealed class CutOuts : ICheck
{
    /// <summary>A narrower strip breaks when the worktop is carried, and bends under a sink.</summary>
    private static readonly Length LeastStrip = Length.FromMillimetres(50);

    /// <summary>Nearer to a joint there is no room for its bolts, and water finds its way in.</summary>
    private static readonly Length LeastToJoint = Length.FromMillimetres(150);

    public static FindingKind NearEdge { get; } =
        new(
            "cut-out-near-edge",
            Severity.Warn,
            "Little wood left beside a cut-out",
            "The strip between a cut-out and an edge, or between two cut-outs, is narrow: it breaks when the worktop is carried. The sheet of the sink or hob says what it wants around it, and how far heat must stay from wood.",
            "common practice: 50 mm"
        );

    public static FindingKind NearJoint { get; } =
        new(
            "cut-out-near-joint",
            Severity.Warn,
            "Cut-out near a joint",
            "A joint of the worktop so near to a cut-out has no room for its bolts, and water from a sink finds its way into it.",
            "common practice: 150 mm"
        );

    public string Name => "wood left around the cut-outs of worktops";

    public string Of => "cut-outs";

    public string How =>
        "The walls of each cut-out are measured against the outside of its length of worktop, against those of other "
        + "cut-outs, and against the ends at which another length is joined.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [NearEdge, NearJoint];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var part in piece.Piece.Parts.Where(part => part.Role == Role.Worktop))
        {
            var holes = Holes(part);
            covered += holes.Count;
            for (var n = 0; n < holes.Count; n++)
            {
                foreach (
                    var side in (ReadOnlySpan<Direction>)
                        [Direction.Left, Direction.Right, Direction.Front, Direction.Back]
                )
                {
                    if (Judge(piece, part, holes, n, side) is { } finding)
                        findings.Add(finding);
                }
            }
        }
        return new(covered, findings);
    }

    /// <summary>What is left on one side of a cut-out, in the part's own coordinates.</summary>
    private static Finding? Judge(
        InspectedPiece piece,
        Part part,
        List<(PartCut Cut, Box Box)> holes,
        int n,
        Direction side
    )
    {
        var (cut, box) = holes[n];
        var joined = Joined(piece, part, side);
        var edge = part.Solid.Bounds.Reach(side);
        var beside = holes
            .Where((_, other) => other != n)
            .Where(hole => Overlap(hole.Box, box, Outline.Third(side.Axis(), Axis.Z)))
            .Select(hole => -hole.Box.Reach(side.Opposite()))
            .Where(reach => reach >= box.Reach(side))
            .DefaultIfEmpty(double.MaxValue)
            .Min();
        var meets = Math.Min(edge, beside);
        var left = piece.ToLength(meets - box.Reach(side));
        var isJoint = joined && meets == edge;
        // Between two cut-outs the strip is told once.
        if (meets == beside && side.Sign() < 0)
            return null;
        var least = isJoint ? LeastToJoint : LeastStrip;
        if (left >= least - Tolerance.Fitting)
            return null;
        var from = box.Centre().With(side, box.Reach(side));
        var to = box.Centre().With(side, meets);
        var seen = piece.From(part.Turn);
        var frame = part.Unturned.Frame;
        var word = BoardSide(part, side);
        return new()
        {
            Kind = isJoint ? NearJoint : NearEdge,
            Message = isJoint
                ? $"The {Called(cut)} of the {part.Name} is near the joint at its {word}."
                : $"There is little wood left at the {word} of the {Called(cut)} of the {part.Name}.",
            Parts = [part.Id],
            Place = part.Source,
            Where = seen.ToSpace(frame.ToWorld(from), frame.ToWorld(to)),
            Measured = new MeasuredLength("wood left", left),
            Wanted = new(least, null),
            Remedy = new(
                $"Move the cut-out by {piece.Say(least - left)}, or make it smaller; the sheet of what goes in says what it may be.",
                Sure: false
            ),
        };
    }

    /// <summary>The box around the walls of each cut-out.</summary>
    private static List<(PartCut Cut, Box Box)> Holes(Part part)
    {
        var holes = new List<(PartCut, Box)>();
        for (var n = 0; n < part.Cuts.Count; n++)
        {
            if (part.Cuts[n].Kind != CutKind.CutOut)
                continue;
            var corners = part
                .Solid.Faces.Where(face => face.Cut == n)
                .SelectMany(face => Enumerable.Range(3 * face.FirstTriangle, 3 * face.TriangleCount))
                .Select(at => part.Solid.Vertices[part.Solid.Triangles[at]])
                .ToList();
            if (corners.Count > 0)
                holes.Add((part.Cuts[n], Boxes.Of(corners)));
        }
        return holes;
    }

    private static bool Overlap(Box a, Box b, Axis axis)
    {
        var on = axis.Measured();
        return a.Min.On(on) < b.Max.On(on) && b.Min.On(on) < a.Max.On(on);
    }

    /// <summary>Whether another worktop is joined at an end of this one.</summary>
    private static bool Joined(InspectedPiece piece, Part part, Direction side)
    {
        if (side.Axis() != Axis.X)
            return false;
        var seen = piece.From(part.Turn);
        var own = seen.Shape(part.Id).Box;
        var towards = side.Sign() > 0 ? part.Place.Lie.Along : part.Place.Lie.Along.Opposite();
        return piece
            .Piece.Joints.Where(joint => joint.Receives == part.Id || joint.Enters == part.Id)
            .Select(joint => seen.Shape(joint.Receives == part.Id ? joint.Enters : joint.Receives))
            .Where(other => other.Part.Role == Role.Worktop)
            .Any(other => other.Box.Centre().Along(towards) > own.Reach(towards));
    }

    private static string Called(PartCut cut) => (cut as OutlineCut)?.Called ?? "cut-out";

    private static string BoardSide(Part part, Direction side)
    {
        var way = side.Axis() == Axis.X ? part.Place.Lie.Along : part.Place.Lie.Across;
        return (side.Sign() > 0 ? way : way.Opposite()) switch
        {
            Direction.Left => "left",
            Direction.Right => "right",
            Direction.Front => "front",
            _ => "back",
        };
    }
}
