using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework;

/// <summary>What a group of parts is.</summary>
public enum GroupKind
{
    Piece,
    Carcase,

    /// <summary>An old carcase that stays: one rigid body.</summary>
    KeptCarcase,
    FaceFrame,
    Stand,

    /// <summary>A slab or frame planted on an end or the back of a carcase.</summary>
    Facing,
    Door,
    Drawer,

    /// <summary>A wide top or other part with its own fittings.</summary>
    Top,

    /// <summary>The loose boards of one use of a maker's own word.</summary>
    OwnWord,
}

/// <summary>Parts that belong together: they leave the clamps, or move, as one.</summary>
/// <param name="Id">Unique in the piece: <c>upper/left-door</c>.</param>
/// <param name="Name">As a maker says it: "upper left door".</param>
/// <param name="Parent">Id of the group it belongs to; null for the piece itself.</param>
/// <param name="Turn">How it is turned in plan; null where it stands square in the piece. Places of its parts, joints,
/// openings and fronts are told in its own frame, before that turn.</param>
public sealed record Group(
    string Id,
    string Name,
    GroupKind Kind,
    string? Parent,
    SourcePlace Source,
    PlanTurn? Turn = null
)
{
    /// <summary>The sizes of the whole that have a sum: of a carcase, a door, a drawer; none where only its parts have.</summary>
    public IReadOnlyList<NamedSize> Sizes { get; init; } = [];
}

/// <summary>A size of a whole: the width of a door, with its sum.</summary>
public sealed record NamedSize(string Name, Figure Figure);
