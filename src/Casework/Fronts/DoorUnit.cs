using Dryfit.Casework.Building;

namespace Dryfit.Casework.Fronts;

/// <summary>A door as it left the clamps.</summary>
/// <param name="Extent">The whole of it, as it really is.</param>
/// <param name="HingeMember">The part that takes the hinges.</param>
/// <param name="Face">The parts that keep the gaps.</param>
internal sealed record DoorUnit(Extent Extent, PartDraft HingeMember, IReadOnlyList<PartDraft> Face);
