using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework;

/// <summary>What kind of stuff it is.</summary>
public enum MaterialKind
{
    /// <summary>Solid timber: moves across the grain.</summary>
    Solid,

    /// <summary>Sheet goods.</summary>
    Sheet,

    /// <summary>Glass.</summary>
    Glass,

    /// <summary>Clear plastics.</summary>
    Plastic,
}

/// <summary>A material of the recipe.</summary>
/// <param name="Name">The recipe's name for it: <c>body</c>.</param>
/// <param name="Stuff">What it is: "maple", "birch plywood", "float glass".</param>
/// <param name="Thickness">Actual thickness.</param>
/// <param name="Called">Nominal thickness, where it is sold by another number than it measures.</param>
/// <param name="StockWidth">Actual width of the stock, for dressed lumber sold by its section; null for the rest.</param>
/// <param name="HasGrain">Whether a part's length must follow the grain.</param>
/// <param name="DensityKgPerM3">For masses.</param>
/// <param name="DensitySource">Where the density comes from.</param>
public sealed record Material(
    string Name,
    MaterialKind Kind,
    string Stuff,
    Figure Thickness,
    Length? Called,
    Figure? StockWidth,
    bool HasGrain,
    double DensityKgPerM3,
    string DensitySource,
    SourcePlace Source
)
{
    /// <summary>Whether only one of its faces is fit to be seen.</summary>
    public bool HasOneGoodFace { get; init; }

    /// <summary>How much thicker or thinner than <see cref="Thickness"/> the stock may be; null where that is not known.</summary>
    public Figure? Varies { get; init; }

    /// <summary>Whether the recipe says what it really measures, or how far it varies: nobody need measure it again.</summary>
    public bool IsMeasured { get; init; }
}
