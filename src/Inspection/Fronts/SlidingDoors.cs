using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether sliding doors close their opening, and come out of their grooves.</summary>
internal sealed class SlidingDoors : ICheck
{
    public static FindingKind Slot { get; } =
        new(
            "sliding-doors-leave-a-slot",
            Severity.Stop,
            "Sliding doors leave a slot",
            "Shut, the two leaves do not pass one another: one looks between them into the carcase, and dust goes in."
        );

    public static FindingKind StaysIn { get; } =
        new(
            "sliding-door-stays-in",
            Severity.Stop,
            "Sliding door cannot be lifted in or out",
            "Lifted until it meets the upper groove, the leaf still stands in the lower one: it goes in only before the carcase is glued.",
            "upper groove twice as deep as the lower: common practice"
        );

    public string Name => "sliding doors: closing their opening, lifting out";

    public string Of => "sliding doors";

    public string How =>
        "Each leaf is followed upwards until it meets the bottom of its upper groove, and that is held against how deep it "
        + "stands in the lower one. Leaves of one opening must pass one another.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Slot, StaysIn];

    public Outcome Run(InspectedPiece piece)
    {
        var findings = new List<Finding>();
        var sliding = piece.Piece.Fronts.Where(front => front.Motion.IsSideways() && front.Face.Count > 0).ToList();
        foreach (var front in sliding)
        {
            if (Lift(piece.From(front), front) is { } stays)
                findings.Add(stays);
        }
        foreach (var leaves in sliding.GroupBy(front => front.Opening, StringComparer.Ordinal))
        {
            if (Passing(piece.From(leaves.First()), [.. leaves]) is { } slot)
                findings.Add(slot);
        }
        return new(sliding.Count, findings);
    }

    private static Finding? Lift(InspectedPiece piece, Front front)
    {
        var members = piece.Members(front.Group).Select(shape => shape.Part.Id).ToHashSet(StringComparer.Ordinal);
        var runs = piece
            .Piece.Joints.Where(joint => joint.Kind == JointKind.Runs && members.Contains(joint.Enters))
            .Select(piece.Fit)
            .ToLookup(fit => fit.Joint.Into);
        if (!runs[Direction.Up].Any() || !runs[Direction.Down].Any())
            return null;
        var room = runs[Direction.Up].Min(fit => fit.Room ?? double.MaxValue);
        var deep = runs[Direction.Down].Max(fit => fit.Engagement ?? 0);
        if (room == double.MaxValue || piece.ToLength(room) > piece.ToLength(deep))
            return null;
        var name = piece.GroupName(front.Group);
        var place = runs[Direction.Up].First();
        return new()
        {
            Kind = StaysIn,
            Message = $"The {name} cannot be lifted out of its lower groove.",
            Parts = PartIds.Together(front.Face, [place.Receives.Part.Id]),
            Place = piece.Group(front.Group)?.Source,
            Where = JointPlaces.Where(piece, place),
            Measured = new MeasuredLength("room above", piece.ToLength(room)),
            Wanted = new(piece.ToLength(deep), null),
            Remedy = new(
                "Make the upper groove deeper, or the leaf lower and the lower groove shallower.",
                Sure: false
            ),
        };
    }

    private static Finding? Passing(InspectedPiece piece, List<Front> leaves)
    {
        var boxes = leaves
            .Select(front => (Front: front, Box: FrontSides.Around(piece.ShapesOf(front.Face))))
            .OrderBy(leaf => leaf.Box.Min.X)
            .ToList();
        for (var n = 1; n < boxes.Count; n++)
        {
            var (left, right) = (boxes[n - 1], boxes[n]);
            var slot = piece.ToLength(right.Box.Min.X - left.Box.Max.X);
            if (slot.Sign < 0)
                continue;
            return new()
            {
                Kind = Slot,
                Message =
                    $"Shut, the {piece.GroupName(left.Front.Group)} and the {piece.GroupName(right.Front.Group)} do not pass one another.",
                Parts = PartIds.Together(left.Front.Face, right.Front.Face),
                Place = piece.Group(left.Front.Group)?.Source,
                Where = piece.ToSpace(
                    left.Box.Centre() with
                    {
                        X = left.Box.Max.X,
                    },
                    left.Box.Centre() with
                    {
                        X = right.Box.Min.X,
                    }
                ),
                Measured = new MeasuredLength("slot", slot),
                Wanted = new(null, Length.Zero),
                Remedy = new("Make one of them wider by the slot and what they should pass.", Sure: false),
            };
        }
        return null;
    }
}
