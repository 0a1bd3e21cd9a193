using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Trim;

/// <summary>A strip that hides the gap between two bodies.</summary>
/// <param name="One">The name of the one body.</param>
/// <param name="Other">The name of the other.</param>
/// <param name="Carrier">The one of the two that it is fixed to.</param>
/// <param name="Width">Across the gap; null: as wide as gap and laps.</param>
/// <param name="Lap">Over each side, at least.</param>
/// <param name="Edge">Run along both edges of its face; null: square.</param>
internal sealed record TrimPlan(
    string Name,
    string One,
    string Other,
    string Carrier,
    Material Material,
    Figure? Width,
    Figure Lap,
    EdgeShape? Edge,
    SourcePlace Place
);
