using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>A corner carcase whose front runs at 45 degrees from the one run to the other.</summary>
/// <param name="WallAtRight">Whether the corner of the walls is at its right; else at its left.</param>
/// <param name="Beside">Depth of its end beside the run along the back wall.</param>
internal sealed record DiagonalPlan(bool WallAtRight, Figure Beside, SourcePlace Place);
