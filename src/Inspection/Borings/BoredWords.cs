using Dryfit.Casework;

namespace Dryfit.Inspection;

/// <summary>What holes are called, and which of them are meant to end in the wood.</summary>
internal sealed class BoredWords
{
    private readonly Dictionary<string, JointKind> _joints;
    private readonly Dictionary<string, Hardware> _fittings;

    public BoredWords(Piece piece)
    {
        _joints = piece
            .Joints.DistinctBy(joint => joint.Id, StringComparer.Ordinal)
            .ToDictionary(joint => joint.Id, joint => joint.Kind, StringComparer.Ordinal);
        _fittings = piece
            .Hardware.DistinctBy(fitting => fitting.Id, StringComparer.Ordinal)
            .ToDictionary(fitting => fitting.Id, StringComparer.Ordinal);
    }

    /// <summary>As a maker calls it: "shelf pin hole", "dowel hole".</summary>
    public string Of(Bored hole) =>
        hole.Cut.Kind switch
        {
            CutKind.HingeCup => "hinge cup",
            CutKind.ShelfPinHole => "shelf pin hole",
            CutKind.PocketHole => "pocket hole",
            CutKind.BiscuitSlot => "biscuit slot",
            _ when JointOf(hole) is { } joint => joint switch
            {
                JointKind.Dowel => "dowel hole",
                JointKind.Connector => "hole for a connector",
                JointKind.Bolted => "bolt hole",
                JointKind.PocketScrewed => "screw hole of a pocket",
                JointKind.Screwed => "screw hole",
                _ => "hole",
            },
            _ when FittingOf(hole) is { } fitting => $"hole for the {fitting.Kind}",
            _ => "hole",
        };

    /// <summary>Whether it is meant to end in the wood; of others it is not known.</summary>
    public bool IsBlind(Bored hole) =>
        hole.Cut.Kind is CutKind.HingeCup or CutKind.ShelfPinHole or CutKind.BiscuitSlot
        || JointOf(hole) is JointKind.Dowel or JointKind.Connector
        || FittingOf(hole)?.Hinge is not null;

    private JointKind? JointOf(Bored hole) =>
        hole.Cut.Joint is { } id && _joints.TryGetValue(id, out var kind) ? kind : null;

    private Hardware? FittingOf(Bored hole) => hole.Cut.Joint is { } id ? _fittings.GetValueOrDefault(id) : null;
}
