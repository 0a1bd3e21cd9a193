using Dryfit.Findings;

namespace Dryfit.Casework.Facings;

/// <summary>How a side of a carcase is faced.</summary>
internal enum FacingKind
{
    Slab,
    Framed,
}

/// <summary>What is planted on the ends and the back of a carcase that is seen from there; null where it is not faced.</summary>
/// <param name="Frame">What framed ones are like.</param>
internal sealed record FacingPlan(
    FacingKind? Left,
    FacingKind? Right,
    FacingKind? Back,
    Material Material,
    PanelFramePlan Frame,
    SourcePlace Place
);
