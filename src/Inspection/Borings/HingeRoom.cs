using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether hinges have room inside the carcase: no shelf, rail or box where they sit.</summary>
internal sealed class HingeRoom : ICheck
{
    public static FindingKind NoRoom { get; } =
        new(
            "hinge-lacks-room",
            Severity.Stop,
            "No room for a hinge",
            "Something that is built in stands where the hinge and its plate sit: the door does not shut, or the hinge cannot be screwed on.",
            "hardware literature, from memory: the sheet of the hinge has the last word"
        );

    public static FindingKind MeetsLoose { get; } =
        new(
            "hinge-meets-loose-shelf",
            Severity.Warn,
            "Loose shelf at a hinge",
            "The shelf as drawn meets the hinge: it goes a hole higher or lower, or gets a notch.",
            "hardware literature, from memory: the sheet of the hinge has the last word"
        );

    public string Name => "room for hinges inside the carcase";

    public string Of => "cup hinges";

    public string How =>
        "A block as large as the sheet of the hinge says, from the back of the door inwards, beside the part that carries the plate, is held "
        + "against the solids there: shelves, rails, boxes. The door is shut; what it meets on its way is another check. Hinges on a face frame "
        + "are not judged: their plates differ too much.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [NoRoom, MeetsLoose];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var held = piece.Piece.Joints.Select(joint => joint.Enters).ToHashSet(StringComparer.Ordinal);
        foreach (var door in HungOn.In(piece))
        {
            foreach (var hinge in door.Hinges)
            {
                if (hinge.Hinge?.Arm is not { } arm || Room(door, hinge, arm) is not { } room)
                    continue;
                covered++;
                findings.AddRange(Met(door, hinge, room, held));
            }
        }
        return new(covered, findings);
    }

    /// <summary>The block of hinge and plate.</summary>
    private static Box? Room(HungOn door, Hardware hinge, HingeArm arm)
    {
        var (piece, edge, run) = (door.Seen, door.Edge, door.Along == Axis.Z ? Direction.Up : Direction.Right);
        var cup = door.Cut(hinge, 0).Where(one => one.Cut.Kind == CutKind.HingeCup).Select(one => one.Box).ToList();
        if (cup.Count == 0)
            return null;
        var leaf = piece.Shape(hinge.Ties[0]).Box;
        var post = piece.Shape(hinge.Ties[1]).Box;
        var start = cup[0]
            .Centre()
            .With(Direction.Back, leaf.Reach(Direction.Back))
            .With(edge.Opposite(), post.Reach(edge.Opposite()));
        var half = piece.ToUnits(arm.Height) / 2;
        return new Box(start, start)
            .Grown(run, half)
            .Grown(run.Opposite(), half)
            .Grown(Direction.Back, piece.ToUnits(arm.Reach))
            .Grown(edge.Opposite(), piece.ToUnits(arm.Aside));
    }

    private static IEnumerable<Finding> Met(HungOn door, Hardware hinge, Box room, HashSet<string> held)
    {
        var piece = door.Seen;
        var block = new Placed(
            SolidBuilder.Build(room.Max - room.Min, []),
            new(room.Min, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1))
        );
        foreach (var other in piece.Near(room))
        {
            if (
                hinge.Ties.Contains(other.Part.Id, StringComparer.Ordinal)
                || string.Equals(other.Part.Group, door.Front.Group, StringComparison.Ordinal)
                || !other.Box.Overlaps(room)
                || Pair.Overlap(block, other.Placed) is not { } overlap
                || piece.ToLength(overlap.Depth) <= Tolerance.Fitting
            )
                continue;
            var isLoose = other.Part.Role == Role.Shelf && !held.Contains(other.Part.Id);
            yield return new()
            {
                Kind = isLoose ? MeetsLoose : NoRoom,
                Message = $"The {other.Part.Name} stands where a hinge of the {door.Name} sits.",
                Parts = PartIds.Together([other.Part.Id], hinge.Ties),
                Place = other.Part.Source,
                Related = piece.Group(door.Front.Group)?.Source is { } place ? [place] : [],
                Where = piece.ToSpace(overlap.Bounds.Min, overlap.Bounds.Max),
                Measured = new MeasuredLength("in the room of the hinge", piece.ToLength(overlap.Depth)),
                Wanted = new(null, Length.Zero),
                Remedy = new($"Move the {other.Part.Name}, or the hinge along its edge.", Sure: false),
                Assumptions =
                [
                    $"hinge and plate want {piece.Say(hinge.Hinge!.Arm!.Height)} along the edge, {piece.Say(hinge.Hinge.Arm.Reach)} from the back of the door and {piece.Say(hinge.Hinge.Arm.Aside)} beside the side",
                ],
            };
        }
    }
}
