using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>What a material can be made of, as the trade knows it: a species, a sheet product, a glass, a plastic.</summary>
/// <param name="Name">Its plain name, in small letters: "black cherry", "birch plywood".</param>
/// <param name="Kind">Solid timber, sheet goods, glass or plastic.</param>
/// <param name="HasGrain">Whether its grain shows, so that a part's length must follow it.</param>
/// <param name="DensityKgPerM3">Density in kg/m3; timber at 12 % moisture content. For masses, not for strength.</param>
/// <param name="DensitySource">Where the density comes from; says so where it is from memory.</param>
/// <param name="AlsoCalled">Other names for it, in small letters.</param>
public sealed record Stuff(
    string Name,
    MaterialKind Kind,
    bool HasGrain,
    double DensityKgPerM3,
    string DensitySource,
    IReadOnlyList<string> AlsoCalled
)
{
    /// <summary>How much it grows with warmth: millionths of its length for each degree (K); 0 where that does not matter.</summary>
    public int GrowthPerMillionK { get; init; }

    /// <summary>Letters and hyphens only: <c>birch-plywood</c>.</summary>
    public string Id => Name.Replace(' ', '-');

    /// <summary>Mass of a piece in kilograms.</summary>
    /// <param name="cubicMm">Its volume in cubic millimetres.</param>
    public double MassKg(double cubicMm) => cubicMm * 1e-9 * DensityKgPerM3;

    /// <summary>Mass of a square metre in kilograms.</summary>
    public double KgPerM2(Length thickness) => thickness.ToMillimetres() * 1e-3 * DensityKgPerM3;
}
