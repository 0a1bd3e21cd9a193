using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>The open end of a run, its free front corner cut off.</summary>
/// <param name="AtRight">Whether its free end is the right one.</param>
/// <param name="Across">What is cut off the front.</param>
/// <param name="Deep">What is cut off the end.</param>
/// <param name="IsClosed">Whether panels close the cant and the rest of its end.</param>
internal sealed record CantedPlan(bool AtRight, Figure Across, Figure Deep, bool IsClosed);
