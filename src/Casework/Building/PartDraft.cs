using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Building;

/// <summary>
/// A part while joints still cut it. It knows two sizes: as reckoned, by which its neighbours are cut, and as it
/// really is, which differs where the maker cut it to a number of their own.
/// </summary>
internal class PartDraft
{
    private List<PartCut> _cuts = [];
    private readonly HashSet<Direction> _withoutFace = [];

    public required string Id { get; init; }

    public required string Name { get; init; }

    public required Role Role { get; init; }

    public required GroupDraft Group { get; init; }

    public required Material Material { get; init; }

    public required Figure Length { get; init; }

    public required Figure Width { get; init; }

    public required Figure Thickness { get; init; }

    /// <summary>Its size along an axis of the piece.</summary>
    public Figure SizeAlong(Axis axis) =>
        axis == Place.Lie.Along.Axis() ? Length
        : axis == Place.Lie.Across.Axis() ? Width
        : Thickness;

    public Figure? ShoulderLength { get; set; }

    /// <summary>What of its reckoned place shows between its shoulders; null where it has none that matter to others.</summary>
    public Extent? BetweenShoulders { get; set; }

    /// <summary>Where others may meet it: between its shoulders.</summary>
    public Extent Open => BetweenShoulders ?? Reckoned;

    public Figure? ShoulderWidth { get; set; }

    public Figure? FinishedLength { get; set; }

    public Figure? FinishedWidth { get; set; }

    /// <summary>A lean of its own, in the frame of its group: a spline across a mitre. Null: as its group stands.</summary>
    public PlanTurn? Lean { get; init; }

    /// <summary>How the frame is turned in which it is built.</summary>
    public PlanTurn? Turn => Lean ?? Group.Turn;

    /// <summary>In that frame.</summary>
    public required Placement Place { get; set; }

    /// <summary>Where the part would be by its reckoned sizes; joints cut its neighbours by this.</summary>
    public required Extent Reckoned { get; init; }

    /// <summary>Where the blank really is.</summary>
    public required Extent Extent { get; init; }

    /// <summary>Where it lies in a board that it shares with its neighbours; null where it is cut by itself.</summary>
    public GrainRun? Run { get; set; }

    public bool IsKept { get; init; }

    public bool IsAsCut { get; init; }

    public required SourcePlace Source { get; init; }

    public IReadOnlyList<PartCut> Cuts => _cuts;

    /// <summary>Tells the same board in the same place from other sides of it.</summary>
    /// <param name="place">Where it lies, told anew.</param>
    /// <param name="cut">Each cut, told anew.</param>
    public void Relay(Placement place, Func<PartCut, PartCut> cut)
    {
        Place = place;
        _cuts = _cuts.ConvertAll(old => cut(old));
    }

    /// <summary>Notes that an end has no face of its own to rest on: a mitre leaves a line, a corner joint the ends of tails.</summary>
    public void LeaveNoFace(Direction end) => _withoutFace.Add(end);

    /// <summary>Whether its end has no face of its own.</summary>
    public bool HasNoFace(Direction end) => _withoutFace.Contains(end);

    /// <summary>Takes a box of the piece away from this part; what lies outside the blank does no harm.</summary>
    public virtual void CutAway(CutKind kind, Extent inPiece, string? joint = null) =>
        _cuts.Add(new SquareCut(NextId(kind), kind, joint, Place.ToBoard(inPiece)));

    /// <summary>Bores a hole from a point of the piece in one of its directions.</summary>
    public virtual void Bore(
        CutKind kind,
        Point at,
        Direction into,
        Length diameter,
        Length depth,
        string? joint = null
    ) => _cuts.Add(new RoundCut(NextId(kind), kind, joint, Place.ToBoard(at), Place.ToBoard(into), diameter, depth));

    /// <summary>Bores a leaning hole: it goes along <paramref name="into"/>, turned by some degrees towards a direction.</summary>
    public void BoreLeaning(
        CutKind kind,
        Point at,
        Direction into,
        Direction leaning,
        int degrees,
        Length diameter,
        Length depth,
        string? joint = null
    ) =>
        _cuts.Add(
            new RoundCut(
                NextId(kind),
                kind,
                joint,
                Place.ToBoard(at),
                Place.ToBoard(into),
                diameter,
                depth,
                degrees,
                Place.ToBoard(leaning)
            )
        );

    /// <summary>Sweeps an outline, given in board coordinates, out of the part.</summary>
    public void Sweep(
        CutKind kind,
        Axis along,
        IReadOnlyList<OutlineCorner> outline,
        Length from,
        Length to,
        string? joint = null,
        string? called = null,
        bool isFurther = false
    ) =>
        _cuts.Add(
            new OutlineCut(NextId(kind), kind, joint, along, outline, from, to)
            {
                Called = called,
                IsFurther = isFurther,
            }
        );

    /// <summary>The part that lies at a place of it: itself, unless it is put together from several.</summary>
    public virtual PartDraft At(Point place) => this;

    /// <summary>The part at one of its edges: itself, unless it is put together from several.</summary>
    public virtual PartDraft Edge(Direction side) => this;

    /// <summary>The parts of it that carry what meets it: itself, unless it is put together from several.</summary>
    /// <param name="what">Where the other is.</param>
    /// <param name="into">The way it meets this one.</param>
    /// <param name="name">What the other is called.</param>
    /// <exception cref="CannotBuildException">Nothing carries it there.</exception>
    public virtual IReadOnlyList<PartDraft> Carrying(Extent what, Direction into, string name, SourcePlace place) =>
        [this];

    /// <summary>Whether it is wood all over a place, and no thin panel.</summary>
    public virtual bool IsWood(Extent place) => true;

    /// <summary>Refuses what would be let into or fixed to a thin panel.</summary>
    /// <exception cref="CannotBuildException">It is not wood all over the place.</exception>
    public virtual void RequireWood(Extent place, string what) { }

    private string NextId(CutKind kind) => $"{Slug.Of(Spoken.Of(kind))}-{_cuts.Count(c => c.Kind == kind) + 1}";
}
