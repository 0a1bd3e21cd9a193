using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>The box of a carcase as built: its parts and the space inside.</summary>
internal sealed record Box
{
    public required PartDraft Left { get; init; }

    public required PartDraft Right { get; init; }

    public required PartDraft Bottom { get; init; }

    /// <summary>The top panel, or the stretchers from front to back.</summary>
    public required IReadOnlyList<PartDraft> Closing { get; init; }

    public required PartDraft? Back { get; init; }

    /// <summary>The clear space: between the sides, from floor to ceiling, from the front edge of the sides to the back.</summary>
    public required Extent Inside { get; init; }

    public required Figure InsideWidth { get; init; }

    public required Figure InsideHeight { get; init; }

    public required Figure InsideDepth { get; init; }

    /// <summary>The Z at which the front (frame or opening) begins below.</summary>
    public required Length BaseZ { get; init; }

    /// <summary>The Z of the upper end of the sides.</summary>
    public required Length TopZ { get; init; }

    /// <summary>Height of the front from <see cref="BaseZ"/> to <see cref="TopZ"/>.</summary>
    public required Figure FrontHeight { get; init; }
}
