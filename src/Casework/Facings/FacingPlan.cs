using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Facings;

/// <summary>How a side of a carcase is faced.</summary>
internal enum FacingKind
{
    Slab,
    Framed,
}

/// <summary>What is planted on the ends and the back of a carcase that is seen from there; null where it is not faced.</summary>
/// <param name="Panel">The panels of framed ones.</param>
/// <param name="Muntins">Uprights between the panels of each framed one.</param>
internal sealed record FacingPlan(
    FacingKind? Left,
    FacingKind? Right,
    FacingKind? Back,
    Material Material,
    Material Panel,
    Figure Stile,
    Figure Rail,
    int Muntins,
    SourcePlace Place
);
