using Dryfit.Parameters;

namespace Dryfit.Casework.Hanging;

/// <summary>What a carcase hangs on a wall by.</summary>
/// <param name="IsCleat">A bevelled cleat on a cleat of the wall; else rails that are screwed to the wall.</param>
/// <param name="Width">Of each rail or cleat, at its wider face.</param>
internal sealed record HangPlan(bool IsCleat, Figure Width, Material Material);
