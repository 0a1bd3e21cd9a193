using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Facings;

/// <summary>A frame with panels as the recipe asks for it, wherever it stands: planted on a carcase, or its own side.</summary>
internal sealed record PanelFramePlan
{
    /// <summary>What it is called where it cannot be built: "facing", "side".</summary>
    public required string Called { get; init; }

    /// <summary>Of stiles, rails and muntins.</summary>
    public required Material Material { get; init; }

    public required Material Panel { get; init; }

    public required Figure Stile { get; init; }

    public required Figure TopRail { get; init; }

    public required Figure BottomRail { get; init; }

    public MiddleRails? MiddleRails { get; init; }

    /// <summary>Uprights between the panels of each row; null for none.</summary>
    public Muntins? Muntins { get; init; }

    /// <summary>How panels are raised; null for flat ones.</summary>
    public RaisedPanel? Raised { get; init; }

    /// <summary>Whether the rails are tenoned into mortises of the stiles; else stub tenons go into the grooves.</summary>
    public bool IsTenoned { get; init; }

    /// <summary>The wood that must stay behind the grooves, for dados from there; the lip gives way to it. Null for no more than is left.</summary>
    public Length? Behind { get; init; }

    public required SourcePlace Place { get; init; }
}

/// <summary>How a frame with panels stands in the piece, and what its members are called there.</summary>
/// <param name="Right">Where its right end is, as it is seen.</param>
/// <param name="Shows">Where its front looks.</param>
/// <param name="Prefix">What goes before the names of its parts: "left side "; empty in a group of its own.</param>
/// <param name="LeftStile">What the stile at its left end is called.</param>
internal sealed record FrameStance(
    GroupDraft Group,
    Direction Right,
    Direction Shows,
    string Prefix,
    string LeftStile,
    string RightStile,
    Role Stile,
    Role Rail,
    Role Panel
);

/// <summary>A frame with panels that stands.</summary>
/// <param name="Members">Stiles, rails and muntins.</param>
/// <param name="Fields">The clear spaces between them, through the whole thickness.</param>
/// <param name="Behind">The wood behind the grooves.</param>
internal sealed record PanelFrame(
    PartDraft Left,
    PartDraft Right,
    IReadOnlyList<PartDraft> Members,
    IReadOnlyList<Extent> Fields,
    Length Behind
);
