using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shelving;

/// <summary>Shelves of a bay as the recipe wants them.</summary>
internal sealed record ShelvesPlan
{
    /// <summary>Those jointed in; they part the bay.</summary>
    public required ShelfCount Fixed { get; init; }

    /// <summary>Those that can be moved.</summary>
    public required ShelfCount Adjustable { get; init; }

    /// <summary>What adjustable shelves lie on.</summary>
    public ShelfSupport On { get; init; }

    /// <summary>Null: the carcase's own.</summary>
    public Material? Material { get; init; }

    /// <summary>The band on the front edges of shelves of sheet goods; null: the carcase's own.</summary>
    public Material? Edging { get; init; }

    /// <summary>A strip along the front edge that stiffens; null for none.</summary>
    public LipPlan? Lip { get; init; }

    /// <summary>The shape run along the front edges; null: square.</summary>
    public EdgePlan? Edge { get; init; }

    /// <summary>How far they stay behind the front of the inside; null: by the house.</summary>
    public Figure? Setback { get; init; }

    /// <summary>Room left between them and the back; null for none.</summary>
    public Figure? Behind { get; init; }

    /// <summary>Whether they come forward through the opening of a face frame, notched round its stiles.</summary>
    public bool BetweenStiles { get; init; }

    /// <summary>Where the recipe asks for them.</summary>
    public required SourcePlace Place { get; init; }
}

/// <summary>How many shelves of a sort, and where.</summary>
/// <param name="At">Heights from the floor of the bay to the underside of each, from the lowest; empty: spread evenly.</param>
/// <param name="Place">Where the recipe says so.</param>
internal sealed record ShelfCount(int Count, IReadOnlyList<Figure> At, SourcePlace Place);

/// <summary>What adjustable shelves lie on.</summary>
internal enum ShelfSupport
{
    /// <summary>Pins in bored rows.</summary>
    Pins,

    /// <summary>Clips in metal strips let into the uprights.</summary>
    Strips,

    /// <summary>Clips in metal strips screwed onto the uprights.</summary>
    PlantedStrips,
}

/// <summary>A strip of timber glued to the front edge of a shelf, its upper edge flush.</summary>
/// <param name="Height">From its upper to its lower edge: its width as a board.</param>
internal sealed record LipPlan(Material Material, Figure Height, SourcePlace Place);
