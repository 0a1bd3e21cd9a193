using Dryfit.Casework;

namespace Dryfit.Inspection;

/// <summary>What a piece holds by its ids, whatever frame it is looked at from.</summary>
internal sealed class PieceIndex
{
    public PieceIndex(Piece piece)
    {
        Piece = piece;
        foreach (var group in piece.Groups)
            Groups[group.Id] = group;
        foreach (var opening in piece.Openings)
            Openings[opening.Id] = opening;
        foreach (var front in piece.Fronts)
            Fronts[front.Group] = front;
        foreach (var part in piece.Parts)
            Order[part.Id] = Order.Count;
        Members = piece
            .Parts.Select((part, n) => (part.Group, n))
            .ToLookup(m => m.Group, m => m.n, StringComparer.Ordinal);
        Handles = piece
            .Hardware.Where(hardware => hardware.Handle is not null)
            .ToLookup(hardware => hardware.Ties[0], StringComparer.Ordinal);
        JoinedPairs = piece.Joints.Select(joint => InOrder(joint.Receives, joint.Enters)).ToHashSet();
        GluedPairs = piece
            .Joints.Where(joint => joint.Glued && joint.Kind is (JointKind.Butt or JointKind.Edged))
            .Select(joint => InOrder(joint.Receives, joint.Enters))
            .ToHashSet();
    }

    public Piece Piece { get; }

    public Dictionary<string, Group> Groups { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, Opening> Openings { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, Front> Fronts { get; } = new(StringComparer.Ordinal);

    /// <summary>The place of each part in the order of the piece.</summary>
    public Dictionary<string, int> Order { get; } = new(StringComparer.Ordinal);

    /// <summary>The parts of each group by their places in the order of the piece.</summary>
    public ILookup<string, int> Members { get; }

    /// <summary>Pulls and knobs by the part they are screwed to.</summary>
    public ILookup<string, Hardware> Handles { get; }

    /// <summary>How each front that turns was followed as it opens, by its group.</summary>
    public Dictionary<string, DoorPath> Paths { get; } = new(StringComparer.Ordinal);

    /// <summary>Ids of the parts of each joint, in the order of the piece.</summary>
    public IReadOnlySet<(string, string)> JoinedPairs { get; }

    /// <summary>Of those, the pairs whose faces are glued flat against each other.</summary>
    public IReadOnlySet<(string, string)> GluedPairs { get; }

    /// <summary>The piece as seen from each frame that was asked for.</summary>
    /// <remarks>No turn is no key: the number beside it makes one of it.</remarks>
    public Dictionary<(PlanTurn? Turn, int Key), InspectedPiece> Seen { get; } = [];

    /// <summary>Two part ids in the order of the piece.</summary>
    public (string First, string Second) InOrder(string a, string b) =>
        Order.GetValueOrDefault(a) <= Order.GetValueOrDefault(b) ? (a, b) : (b, a);
}
