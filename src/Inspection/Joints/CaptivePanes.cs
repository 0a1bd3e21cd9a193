using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether a broken pane can be replaced.</summary>
internal sealed class CaptivePanes : ICheck
{
    public static FindingKind Captive { get; } =
        new(
            "pane-captive",
            Severity.Warn,
            "Pane cannot be replaced",
            "What holds the pane in front and behind is glued: when it breaks, the door must be sawn open or made anew, by someone who handles broken glass.",
            "common practice"
        );

    public string Name => "panes that can be replaced";

    public string Of => "panes";

    public string How =>
        "A pane of a door is followed to the back and to the front: what it meets there must be something that is only pinned "
        + "or screwed on, such as a bead, one way or the other.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Captive];

    public Outcome Run(InspectedPiece piece)
    {
        var loose = piece
            .Piece.Joints.Where(joint => joint is { Kind: JointKind.Screwed, Glued: false })
            .Select(joint => joint.Enters)
            .ToHashSet(StringComparer.Ordinal);
        var panes = piece.Shapes.Where(shape =>
            shape.Part.Role == Role.Glass && piece.Front(shape.Part.Group) is not null
        );
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var pane in panes)
        {
            covered++;
            var seen = piece.From(pane.Part.Turn);
            var own = seen.Shape(pane.Part.Id);
            var around = seen.Members(pane.Part.Group).Where(other => other != own && !loose.Contains(other.Part.Id));
            if (IsHeld(seen, own, around, Direction.Back) && IsHeld(seen, own, around, Direction.Front))
                findings.Add(Tell(seen, own));
        }
        return new(covered, findings);
    }

    private static bool IsHeld(InspectedPiece piece, Shape pane, IEnumerable<Shape> around, Direction way)
    {
        // As far as the thickest door: what it meets within that holds it.
        var far = piece.ToUnits(Measure.Length.FromMillimetres(100));
        return around.Any(other => Pair.GapAlong(pane.Placed, other.Placed, way.Unit(), far) is not null);
    }

    private static Finding Tell(InspectedPiece piece, Shape pane) =>
        new()
        {
            Kind = Captive,
            Message = $"The {pane.Part.Name} is captive in its groove.",
            Parts = [pane.Part.Id],
            Place = pane.Part.Source,
            Where = piece.ToSpace(pane.Box.Min, pane.Box.Max),
            Remedy = new("Hold it by beads: `panes held by: beads`.", Sure: true),
        };
}
