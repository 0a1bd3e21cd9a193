namespace Dryfit.Casework;

/// <summary>
/// Glass and clear plastics. Glass in furniture can hurt when it breaks: whoever supplies it, and the local code, say
/// where it must be toughened or laminated.
/// </summary>
internal static class ClearSheets
{
    private const string GlassSource = "2500 kg/m3 (156 lb/ft3): published glass weight tables";

    public static IReadOnlyList<Stuff> All { get; } =
    [
        Glass("float glass", "glass", "clear glass", "annealed glass", "window glass"),
        Glass("toughened glass", "tempered glass", "safety glass"),
        Glass("laminated glass"),
        Glass("mirror", "mirror glass"),
        Plastic("acrylic", 1190, "ISO 1183, typical (from memory)", "pmma", "acrylic glass", "acrylic sheet"),
        Plastic("polycarbonate", 1200, "typical (from memory)", "polycarbonate sheet"),
    ];

    private static Stuff Glass(string name, params string[] alsoCalled) =>
        new(name, MaterialKind.Glass, HasGrain: false, 2500, GlassSource, alsoCalled);

    /// <summary>Both grow by about 70 millionths of their length a degree, glass by 9: typical values, from memory.</summary>
    private static Stuff Plastic(string name, double densityKgPerM3, string source, params string[] alsoCalled) =>
        new(name, MaterialKind.Plastic, HasGrain: false, densityKgPerM3, source, alsoCalled) { GrowthPerMillionK = 70 };
}
