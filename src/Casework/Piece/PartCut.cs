using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>What a cut is called at the bench.</summary>
public enum CutKind
{
    Groove,
    Dado,
    StoppedDado,
    Rabbet,

    /// <summary>What is taken off beside a tongue or tenon.</summary>
    Shoulder,

    /// <summary>What is taken out between tails, or between pins.</summary>
    DovetailSocket,

    /// <summary>What is taken out between the fingers of a box joint.</summary>
    FingerSocket,
    Mortise,

    /// <summary>Half of the thickness, taken away where another part lies over it.</summary>
    Lap,
    BiscuitSlot,
    Bore,
    PocketHole,
    HingeCup,

    /// <summary>What is cut out of an edge for the leaf of a butt hinge.</summary>
    HingeRecess,
    ShelfPinHole,
    Notch,
    Bevel,

    /// <summary>An end cut at an angle, to meet another cut at its own.</summary>
    Mitre,

    /// <summary>A face that leans in towards one end.</summary>
    Taper,

    /// <summary>A hollow along an edge, as under an apron.</summary>
    Arch,

    /// <summary>A corner taken off straight.</summary>
    Chamfer,

    /// <summary>A corner rounded over.</summary>
    RoundedEdge,

    /// <summary>A corner hollowed out.</summary>
    Cove,

    /// <summary>Any other shape run along an edge: ogee, bead, a profile of the maker's own.</summary>
    Moulding,

    /// <summary>A shape sawn out of a board: the curve of a bracket.</summary>
    SawnShape,

    /// <summary>An edge sawn to the line of a wall or a floor.</summary>
    Scribe,

    /// <summary>What is turned off a square blank on the lathe.</summary>
    Turning,

    /// <summary>A hole right through a worktop, for a sink or a hob.</summary>
    CutOut,

    /// <summary>The inside of a kept carcase, which was never cut by us but is not there.</summary>
    Hollow,

    /// <summary>What is cut off an old part to make it smaller.</summary>
    CutDown,
}

/// <summary>One cut in one part, in board coordinates.</summary>
/// <param name="Id">Unique within the part: <c>groove-1</c>.</param>
/// <param name="Kind">What it is called at the bench.</param>
/// <param name="Joint">Id of the joint or hardware that makes it; null where it stands alone.</param>
public abstract record PartCut(string Id, CutKind Kind, string? Joint);

/// <summary>A square cut.</summary>
public sealed record SquareCut(string Id, CutKind Kind, string? Joint, Extent Extent) : PartCut(Id, Kind, Joint);

/// <summary>A round hole: it starts at a point of the board's surface and goes in along one of the board's directions.</summary>
/// <param name="From">The centre of the hole's mouth, board coordinates.</param>
/// <param name="Into">Which way it goes in, as a direction of the board (Right is +x, Back +y, Up +z).</param>
/// <param name="TiltDegrees">Degrees by which it leans away from <paramref name="Into"/> towards <paramref name="Leaning"/>.</param>
public sealed record RoundCut(
    string Id,
    CutKind Kind,
    string? Joint,
    Point From,
    Direction Into,
    Length Diameter,
    Length Depth,
    int TiltDegrees = 0,
    Direction Leaning = Direction.Right
) : PartCut(Id, Kind, Joint);

/// <summary>
/// An outline swept straight through: bevels, tapers, mitres, arches, mouldings. The outline lies square to
/// <paramref name="Along"/>, its first coordinate along the next board axis in the order x, y, z, x; its second along the
/// one after.
/// </summary>
/// <param name="Outline">Corners counter-clockwise seen against the sweep, in board coordinates of those two axes.</param>
/// <param name="From">Where the sweep starts on its axis.</param>
/// <param name="To">Where it ends; above <paramref name="From"/>.</param>
public sealed record OutlineCut(
    string Id,
    CutKind Kind,
    string? Joint,
    Axis Along,
    IReadOnlyList<OutlineCorner> Outline,
    Length From,
    Length To
) : PartCut(Id, Kind, Joint)
{
    /// <summary>What the shape is called, with its size: "ogee 1/2"; null where the kind says it.</summary>
    public string? Called { get; init; }

    /// <summary>True where it belongs to the shape that the cut before it tells: the other corners of a turned leg.</summary>
    public bool IsFurther { get; init; }

    public bool Equals(OutlineCut? other) =>
        other is not null
        && base.Equals(other)
        && (Along, From, To, Called, IsFurther) == (other.Along, other.From, other.To, other.Called, other.IsFurther)
        && Outline.SequenceEqual(other.Outline);

    public override int GetHashCode() => HashCode.Combine(base.GetHashCode(), Along, From, To, Outline.Count);
}
