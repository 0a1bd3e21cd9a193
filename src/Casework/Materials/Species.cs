namespace Dryfit.Casework;

/// <summary>A species of timber.</summary>
/// <param name="Name">Its plain name, in small letters: "sugar maple".</param>
/// <param name="SpecificGravity">
/// Ovendry weight on the volume at 12 % moisture content, against water; null where only the density is known.
/// </param>
/// <param name="DensityKgPerM3">Density at 12 % moisture content, to the kilogram.</param>
/// <param name="Source">Where the number comes from; says so where it is from memory.</param>
/// <param name="AlsoCalled">Other names for it, in small letters.</param>
public sealed record Species(
    string Name,
    double? SpecificGravity,
    double DensityKgPerM3,
    string Source,
    IReadOnlyList<string> AlsoCalled
)
{
    private const double MoistureContent = 0.12;

    /// <summary>Every species known, hardwoods first; no name stands twice.</summary>
    public static IReadOnlyList<Species> All { get; } =
    [.. AmericanHardwoods.All, .. AmericanSoftwoods.All, .. OtherTimbers.All];

    internal Stuff AsStuff => new(Name, MaterialKind.Solid, HasGrain: true, DensityKgPerM3, Source, AlsoCalled);

    /// <summary>A species known by its specific gravity at 12 % moisture content.</summary>
    /// <remarks>
    /// Density = 1000 G (1 + M/100) kg/m3, G and M at the same moisture content: Wood Handbook FPL-GTR-282 (2021),
    /// equation 4-14.
    /// </remarks>
    internal static Species FromSpecificGravity(
        string name,
        double specificGravity,
        string source,
        IReadOnlyList<string> alsoCalled
    ) => new(name, specificGravity, WholeKg(specificGravity), source + ", equation 4-14", alsoCalled);

    /// <summary>A species known by its basic specific gravity (ovendry weight on green volume).</summary>
    /// <remarks>
    /// G at M % = Gb / (1 - 0.265 Gb (1 - M/30)), below 30 % moisture content: Wood Handbook FPL-GTR-282 (2021),
    /// equation 4-13.
    /// </remarks>
    internal static Species FromBasicSpecificGravity(
        string name,
        double basic,
        string source,
        IReadOnlyList<string> alsoCalled
    )
    {
        var specificGravity = basic / (1 - (0.265 * basic * (1 - (MoistureContent / 0.30))));
        return new(name, specificGravity, WholeKg(specificGravity), source + ", equations 4-13 and 4-14", alsoCalled);
    }

    private static double WholeKg(double specificGravity) =>
        Math.Round(1000 * specificGravity * (1 + MoistureContent), MidpointRounding.AwayFromZero);
}
