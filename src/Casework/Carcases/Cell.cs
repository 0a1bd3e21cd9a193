using Dryfit.Casework.Building;
using Dryfit.Casework.Shelving;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// A rectangle of the front while it is being divided: its clear size, what bounds it in the plane of the front and
/// what bounds the inside behind it.
/// </summary>
internal sealed record Cell
{
    /// <summary>Clear width and height in the plane of the front.</summary>
    public required Figure Width { get; init; }

    public required Figure Height { get; init; }

    /// <summary>Left end of the clear width.</summary>
    public required Length X { get; init; }

    /// <summary>Lower end of the clear height.</summary>
    public required Length Z { get; init; }

    /// <summary>How far the clear width begins right of the inside behind it; null where the two begin together.</summary>
    public required Figure? InsetLeft { get; init; }

    /// <summary>Parts at the four sides in the plane of the front; null below or above where only a gap divides.</summary>
    public required PartDraft Left { get; init; }

    public required PartDraft Right { get; init; }

    public required PartDraft? Below { get; init; }

    public required PartDraft? Above { get; init; }

    /// <summary>How far overlaid fronts lap over each side, or stop short of it where no part divides.</summary>
    public required Figure ReachLeft { get; init; }

    public required Figure ReachRight { get; init; }

    public required Figure ReachBelow { get; init; }

    public required Figure ReachAbove { get; init; }

    /// <summary>The inside behind: uprights left and right, flat parts below and above.</summary>
    public required PartDraft InsideLeft { get; init; }

    public required PartDraft InsideRight { get; init; }

    public required PartDraft Floor { get; init; }

    public required IReadOnlyList<PartDraft> Ceiling { get; init; }

    public required Figure InsideWidth { get; init; }

    public required Figure InsideHeight { get; init; }

    /// <summary>The clear space behind the front.</summary>
    public required Extent Inside { get; init; }

    /// <summary>What the bay is called, empty while the carcase is one bay: "left bay".</summary>
    public required string Bay { get; init; }

    /// <summary>The shelves said for a cell around this one.</summary>
    public required ShelvesPlan? Shelves { get; init; }
}
