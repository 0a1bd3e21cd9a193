using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether the warp measured on a door shows at its lock edge.</summary>
internal sealed class DoorWarp : ICheck
{
    public static FindingKind StandsOff { get; } =
        new(
            "door-warp-shows",
            Severity.Warn,
            "Warped door stands off",
            "The hinges hold three corners of a door, and the fourth stands before or behind what is beside it: it catches light and sleeve, and the door does not lie on its stops.",
            "common practice"
        );

    public string Name => "doors whose warp was measured";

    public string Of => "doors";

    public string How =>
        "The warp recorded of a door (`as measured`, `warp`: how far the upper corner of its lock edge stands off the plane of the three others) is added to how far its face lies before "
        + "what is beside it. In a pair the two doors are held against each other where they meet. Up to 1/16 in (1.6 mm) nothing is said: "
        + "hinges and stops share that out between top and bottom. A door of which no warp is recorded is taken as flat.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [StandsOff];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var front in piece.Piece.Fronts.Where(front => front.AsFound?.Warp is not null))
        {
            covered++;
            if (Judge(piece.From(front), front) is { } finding)
                findings.Add(finding);
        }
        return new(covered, findings);
    }

    private static Finding? Judge(InspectedPiece piece, Front front)
    {
        var lockSide = front.Motion == FrontMotion.TurnsOnRightEdge ? Direction.Left : Direction.Right;
        var warp = front.AsFound!.Warp!.Value;
        var face = FrontSides.Around(piece.ShapesOf(front.Face));
        // Before what is beside it: above zero.
        var (beside, before) = (piece.GroupName(front.Opening), warp);
        IReadOnlyList<string> others = [];
        var neighbour = front.Neighbours.FirstOrDefault(n => n.Side == lockSide);
        if (neighbour is not null && piece.Front(neighbour.Group) is { } other)
        {
            // Told once, by the door that stands off more.
            var theirs = other.AsFound?.Warp ?? Length.Zero;
            if (Length.Abs(theirs) > Length.Abs(warp) || (theirs == -warp && lockSide == Direction.Left))
                return null;
            others = other.Face;
            beside = piece.GroupName(other.Group);
            before = warp - theirs + piece.ToLength(FrontSides.Around(piece.ShapesOf(others)).Min.Y - face.Min.Y);
        }
        else if (
            front.Hang == Hang.Inset
            && FrontSides.Bounds(piece.Opening(front.Opening).Bounds, lockSide) is { Count: > 0 } ids
        )
        {
            others = ids;
            beside = piece.Shape(ids[0]).Part.Name;
            before = warp + piece.ToLength(FrontSides.Around(piece.ShapesOf(ids)).Min.Y - face.Min.Y);
        }
        else
        {
            beside = "plane of its three other corners";
        }
        if (Length.Abs(before) <= Tolerance.SeenWarp)
            return null;
        var name = piece.GroupName(front.Group);
        var x = face.Centre().With(lockSide, face.Reach(lockSide)).X;
        var corner = new Vec3(x, face.Min.Y, face.Max.Z);
        return new()
        {
            Kind = StandsOff,
            Message =
                $"The upper corner of the {name}'s lock edge stands {(before.Sign > 0 ? "before" : "behind")} the {beside}.",
            Parts = PartIds.Together(front.Face, others),
            Place = front.AsFound.Source,
            Related = piece.Group(front.Group) is { } group ? [group.Source] : [],
            Where = piece.ToSpace(corner, corner with { Y = corner.Y - piece.ToUnits(before) }),
            Measured = new MeasuredLength(before.Sign > 0 ? "proud by" : "shy by", Length.Abs(before)),
            Wanted = new(null, Tolerance.SeenWarp),
            Remedy = new(
                $"Shift the upper hinge out and the lower one in by a quarter of it each, plane the stops, or make the {name} anew from straight stuff.",
                Sure: false
            ),
        };
    }
}
