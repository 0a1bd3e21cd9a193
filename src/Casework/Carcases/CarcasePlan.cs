using Dryfit.Casework.Building;
using Dryfit.Casework.Corners;
using Dryfit.Casework.Facings;
using Dryfit.Casework.Feet;
using Dryfit.Casework.Hanging;
using Dryfit.Casework.Heads;
using Dryfit.Casework.Room;
using Dryfit.Casework.Shaping;
using Dryfit.Casework.Shelving;
using Dryfit.Casework.Sides;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Carcases;

/// <summary>How flat panels of a carcase are tied to its uprights.</summary>
internal enum PanelJoint
{
    Dado,

    /// <summary>A dado for half of the panel, with a shoulder over it.</summary>
    ShoulderedDado,
    Dowels,
    Biscuits,
    LooseTongue,
    Screws,
    PluggedScrews,

    /// <summary>Fittings that can be undone.</summary>
    Connectors,
}

/// <summary>What closes a carcase above.</summary>
internal enum ClosedBy
{
    Panel,
    Stretchers,
}

/// <summary>A carcase as the recipe asks for it: sizes, place and construction, before any part is made.</summary>
internal sealed record CarcasePlan
{
    public required GroupDraft Group { get; init; }

    /// <summary>The outside, stand and top thickness included, overhangs not.</summary>
    public required Extent Envelope { get; init; }

    public required Figure Width { get; init; }

    public required Figure Height { get; init; }

    public required Figure Depth { get; init; }

    public required Material Body { get; init; }

    /// <summary>The band on the front edges; null for none.</summary>
    public required Material? Edging { get; init; }

    public required PanelJoint Joint { get; init; }

    /// <summary>How its corners are joined; null: as all its flat panels.</summary>
    public CornersPlan? Corners { get; init; }

    /// <summary>Whether flat panels reach into the uprights by the depth of a dado.</summary>
    public bool IsLetIn => Joint is PanelJoint.Dado or PanelJoint.ShoulderedDado;

    public required ClosedBy ClosedBy { get; init; }

    public required FacePlan? Face { get; init; }

    public required BackPlan? Back { get; init; }

    public required TopPlan? Top { get; init; }

    /// <summary>Whether a worktop lies on it.</summary>
    public bool IsCovered { get; init; }

    public required StandPlan Stand { get; init; }

    /// <summary>The shape run round the edges of its fronts; null: square.</summary>
    public EdgeShape? FrontEdge { get; init; }

    /// <summary>Whether the grain runs on over its fronts; null: each is cut by itself.</summary>
    public GrainPlan? GrainRunsOn { get; init; }

    /// <summary>What goes round its head; null for nothing.</summary>
    public HeadPlan? Head { get; init; }

    public required ShelvesPlan? Shelves { get; init; }

    /// <summary>Which of its sides are frames with panels, and how; null where both are boards.</summary>
    public SidesPlan? Sides { get; init; }

    /// <summary>The thickness of the side at an end.</summary>
    public Figure SideThickness(Direction end) =>
        Sides?.IsFramed(end) == true ? Sides.Frame.Material.Thickness : Body.Thickness;

    /// <summary>What is planted on its ends and its back; null for nothing.</summary>
    public FacingPlan? Facing { get; init; }

    /// <summary>The open end of a run with its corner cut off; null for a whole carcase.</summary>
    public CantedPlan? Canted { get; init; }

    /// <summary>Its front across a corner; null for a square carcase.</summary>
    public DiagonalPlan? Diagonal { get; init; }

    /// <summary>The end that stands behind another run; null for none.</summary>
    public BlindPlan? Blind { get; init; }

    /// <summary>What it hangs on the wall by; null where it stands.</summary>
    public HangPlan? Hangs { get; init; }

    /// <summary>The strip that closes the gap to its neighbour; null for none.</summary>
    public FillerPlan? Filler { get; init; }

    /// <summary>The strips that close it against walls and floor; null for none.</summary>
    public ScribePlan? Scribes { get; init; }

    /// <summary>What the recipe says of the front; null where it is open.</summary>
    public required Mapping? Front { get; init; }

    /// <summary>The material of doors and drawer fronts where nothing is said.</summary>
    public required Material Fronts { get; init; }
}

/// <summary>An end of the front that is closed by a panel, since another run stands before it.</summary>
/// <param name="Width">From the outside of that end to the edge of the opening.</param>
internal sealed record BlindPlan(Direction End, Figure Width, Material Material, SourcePlace Place);

/// <summary>A strip between a carcase and its neighbour.</summary>
/// <param name="Side">Where the neighbour is.</param>
internal sealed record FillerPlan(Direction Side, Figure Width, Material Material);

/// <summary>A face frame.</summary>
internal sealed record FacePlan(Material Material, Figure Stile, Figure Rail, Figure Mullion, FrameJoint Joint);

/// <summary>How the members of a face frame are joined.</summary>
internal enum FrameJoint
{
    PocketScrews,
    Dowels,
    MortiseAndTenon,

    /// <summary>Tenons that come through the stiles.</summary>
    ThroughTenons,
    HalfLaps,
}

/// <summary>How a back is set.</summary>
internal enum BackSet
{
    Rabbeted,
    Grooved,
    Planted,
}

/// <summary>A back.</summary>
internal sealed record BackPlan(Material Material, BackSet Set);

/// <summary>A top that lies on the carcase, with its overhangs.</summary>
internal sealed record TopPlan(Material Material, Figure Front, Figure Left, Figure Right, Figure Back)
{
    /// <summary>The bands on its front and ends; null: none.</summary>
    public Material? Edging { get; init; }

    /// <summary>The shape run along its edges; null: square.</summary>
    public EdgePlan? Edge { get; init; }
}

/// <summary>What a carcase stands on.</summary>
internal abstract record StandPlan
{
    /// <summary>How far the carcase is lifted off what it stands on.</summary>
    public virtual Figure? Lift => null;

    /// <summary>How far up the front begins where the sides go down to the floor before which something stands.</summary>
    /// <param name="hasFace">Whether a face frame goes down there.</param>
    public virtual Figure? Raise(bool hasFace) => null;
}

/// <summary>Nothing: its own sides.</summary>
internal sealed record NoStand : StandPlan;

/// <summary>Legs with rails between, at both ends or at one; at the other end the side goes down to the floor.</summary>
internal sealed record LegsPlan(
    Material Leg,
    Figure LegWidth,
    Figure LegDepth,
    int Plies,
    Material RailMaterial,
    Figure Rail,
    Figure Height,
    bool AtLeft,
    bool AtRight
) : StandPlan
{
    /// <summary>What is done to the legs besides sawing them square; null for nothing.</summary>
    public LegShape? Shape { get; init; }

    /// <summary>The arch under the rails; null for none.</summary>
    public RailArch? Arch { get; init; }

    /// <summary>Whether the rails are tenoned into the legs; else dowelled.</summary>
    public bool Tenoned { get; init; }

    public override Figure? Lift => Height;
}

/// <summary>A plinth: a frame of boards on edge.</summary>
internal sealed record PlinthPlan(Material Material, Figure Height, Figure Setback, RailArch? Arch) : StandPlan
{
    public override Figure? Lift => Height;
}

/// <summary>A plinth board let in between sides that go down to the floor.</summary>
/// <param name="Setback">From the front of the carcase; null: flush with the front edges of the sides.</param>
internal sealed record LetInPlinthPlan(
    Material Material,
    Figure Height,
    Figure? Setback,
    RailArch? Arch,
    SourcePlace Place
) : StandPlan
{
    public override Figure? Raise(bool hasFace) => Height;
}

/// <summary>A plinth planted round the foot of a carcase whose sides go down to the floor.</summary>
internal sealed record PlantedPlinthPlan(SurroundPlan Boards, RailArch? Arch) : StandPlan
{
    /// <summary>Before a face frame it covers the lower rail, else the floor lies above it.</summary>
    public override Figure? Raise(bool hasFace) => hasFace ? null : Boards.Height;
}

/// <summary>A toe space cut out of the sides.</summary>
internal sealed record ToeSpacePlan(Figure Height, Figure Depth) : StandPlan
{
    public override Figure? Raise(bool hasFace) => Height;
}

/// <summary>Fronts in one line that are cut from one board.</summary>
/// <param name="Across">True for rows, false for columns.</param>
internal sealed record GrainPlan(bool Across, SourcePlace Place);
