namespace Dryfit.Casework;

/// <summary>Timbers of Europe and the tropics, and lumber sold as a group of species.</summary>
internal static class OtherTimbers
{
    private const string Imported = "Wood Handbook FPL-GTR-113 (1999), Table 4-5b";
    private const string ImportedFromMemory = "Wood Handbook, table of imported woods (basic gravity from memory)";
    private const string EuropeanFromMemory = "DIN 68364, mean density at 12 % moisture content (from memory)";
    private const string LumberGroup = "NDS 2018, Table 12.3.3A, ovendry basis, taken as at 12 %";

    public static IReadOnlyList<Species> All { get; } =
    [
        Basic("true mahogany", 0.45, Imported, "mahogany", "honduran mahogany", "american mahogany"),
        Basic("african mahogany", 0.42, Imported, "khaya"),
        Basic("teak", 0.55, ImportedFromMemory),
        Basic("sapele", 0.55, ImportedFromMemory, "sapelli"),
        Dense("european oak", 710, "english oak", "french oak"),
        Dense("european beech", 720, "steamed beech"),
        Dense("european ash", 700),
        Dense("sycamore maple", 630, "sycamore", "european maple"),
        Dense("european walnut", 680),
        Dense("european cherry", 600),
        Dense("european birch", 660),
        Dense("european lime", 530, "lime", "linden"),
        Dense("norway spruce", 460, "european spruce", "whitewood"),
        Dense("scots pine", 520, "european redwood", "red deal"),
        Dense("silver fir", 460, "european fir"),
        Dense("european larch", 600),
        Group("spruce-pine-fir", 0.42, "spf", "construction lumber", "whitewood lumber"),
        Group("hem-fir", 0.43),
    ];

    private static Species Basic(string name, double basic, string source, params string[] alsoCalled) =>
        Species.FromBasicSpecificGravity(name, basic, source, alsoCalled);

    private static Species Dense(string name, double densityKgPerM3, params string[] alsoCalled) =>
        new(name, SpecificGravity: null, densityKgPerM3, EuropeanFromMemory, alsoCalled);

    private static Species Group(string name, double specificGravity, params string[] alsoCalled) =>
        Species.FromSpecificGravity(name, specificGravity, LumberGroup, alsoCalled);
}
