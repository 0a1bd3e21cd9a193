using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Solids;

namespace Dryfit.Casework;

/// <summary>What a part is for. Checks may ask for it; sizes never come from it.</summary>
public enum Role
{
    Side,
    Top,
    Bottom,
    Partition,
    Shelf,

    /// <summary>A strip of timber along the front edge of a shelf.</summary>
    ShelfLip,

    /// <summary>A rail or hanger of a rack.</summary>
    RackRail,
    Back,
    Stretcher,
    FrameStile,
    FrameRail,
    FrameMullion,
    Leg,
    StandRail,
    Plinth,

    /// <summary>A board on edge that a piece stands on at its corner, sawn to a shape.</summary>
    Bracket,

    /// <summary>A block glued into a corner.</summary>
    Block,

    /// <summary>A board planted round a carcase: cornice, frieze, planted plinth.</summary>
    Moulding,

    /// <summary>A strip that hides a gap on purpose.</summary>
    CoverStrip,
    DoorStile,
    DoorRail,

    /// <summary>Between the panels of a door, or a bar between its panes.</summary>
    DoorMuntin,
    DoorPanel,
    DoorSlab,
    Glass,
    GlassBead,
    DrawerFront,
    DrawerSide,
    DrawerBack,
    DrawerBoxFront,
    DrawerBottom,

    /// <summary>A strip that brings a slide out to the edge of the opening.</summary>
    Packer,

    /// <summary>A top over a run of carcases, or one of its lengths.</summary>
    Worktop,

    /// <summary>A slab planted on an end or the back of a carcase that is seen from there.</summary>
    Facing,
    FacingStile,
    FacingRail,
    FacingPanel,

    /// <summary>A stile or a muntin of a side that is a frame with panels.</summary>
    SideStile,
    SideRail,
    SidePanel,

    /// <summary>A panel that closes what stands behind another run.</summary>
    BlindPanel,

    /// <summary>A panel at an angle that closes the canted end of a run.</summary>
    CantPanel,

    /// <summary>A rail or cleat by which a carcase hangs on the wall.</summary>
    HangingRail,

    /// <summary>A strip that closes the gap between two carcases, or between a carcase and a wall.</summary>
    Filler,

    /// <summary>A strip that a drawer runs on, or that keeps it from tipping.</summary>
    Runner,
    Divider,

    /// <summary>A tongue or spline of its own, let into two parts.</summary>
    Tongue,
    Edging,

    /// <summary>A loose board that the recipe says by itself.</summary>
    Board,
    Kept,
}

/// <summary>One piece of material: a board minus its cuts, in its place.</summary>
public sealed record Part
{
    /// <summary>Unique in the piece, letters, digits and hyphens by group: <c>upper/left-door/top-rail</c>.</summary>
    public required string Id { get; init; }

    /// <summary>As a maker says it, unique in the piece: "upper left door top rail".</summary>
    public required string Name { get; init; }

    public required Role Role { get; init; }

    /// <summary>Id of the group it belongs to.</summary>
    public required string Group { get; init; }

    public required Material Material { get; init; }

    /// <summary>Overall size along the grain, tongues and tenons included; before edging.</summary>
    public required Figure Length { get; init; }

    /// <summary>Overall size across the grain, before edging.</summary>
    public required Figure Width { get; init; }

    /// <summary>Actual thickness.</summary>
    public required Figure Thickness { get; init; }

    /// <summary>From shoulder to shoulder, where the part has tongues or tenons at its ends.</summary>
    public Figure? ShoulderLength { get; init; }

    /// <summary>From shoulder to shoulder across the width, where its edges have tongues.</summary>
    public Figure? ShoulderWidth { get; init; }

    /// <summary>Size along the grain with its edging on; null where it has none at its ends.</summary>
    public Figure? FinishedLength { get; init; }

    /// <summary>Size across the grain with its edging on; null where it has none on its long edges.</summary>
    public Figure? FinishedWidth { get; init; }

    /// <summary>Where it lies in a board that it shares with its neighbours; null where it is cut by itself.</summary>
    public GrainRun? Run { get; init; }

    public required IReadOnlyList<PartCut> Cuts { get; init; }

    /// <summary>Its place in the frame of its group, before the group is turned.</summary>
    public required Placement Place { get; init; }

    /// <summary>How its group is turned in plan; null where it stands square in the piece.</summary>
    public PlanTurn? Turn { get; init; }

    /// <summary>The finish it gets under each scheme, by scheme name; empty where the recipe names none.</summary>
    public IReadOnlyDictionary<string, string> Finishes { get; init; } =
        new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>True for what was there before and is not ours to cut (or only at a named end).</summary>
    public bool IsKept { get; init; }

    /// <summary>True where the maker's own number stands in place of the reckoned one.</summary>
    public bool IsAsCut { get; init; }

    /// <summary>The line of the recipe that a maker would change to change this part.</summary>
    public required SourcePlace Source { get; init; }

    /// <summary>The closed solid in board coordinates, in units of the piece's grid.</summary>
    public required Solid Solid { get; init; }

    /// <summary>The solid in its place in the piece, in units of the piece's grid.</summary>
    public required Placed Placed { get; init; }

    /// <summary>The solid in its place in the frame of its group, before the group is turned.</summary>
    public Placed Unturned
    {
        get => field ?? Placed;
        init;
    }

    /// <summary>The solid in its place as it is seen from the frame of a turn; null is the piece's own frame.</summary>
    public Placed SeenFrom(PlanTurn? turn, Grid grid) =>
        Turn == turn ? Unturned : new Placed(Solid, Unturned.Frame.Seen(Turn, turn, grid.UnitsPerMm));

    /// <summary>The blank in its place in the frame of its group (before cuts).</summary>
    public Extent Extent => Place.ToPiece(new Extent(default, new(Length.Length, Width.Length, Thickness.Length)));
}
