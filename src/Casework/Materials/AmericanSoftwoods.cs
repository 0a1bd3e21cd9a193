namespace Dryfit.Casework;

/// <summary>The softwoods of North America.</summary>
/// <remarks>
/// Specific gravity, ovendry weight on the volume at 12 % moisture content: USDA Forest Products Laboratory, Wood Handbook
/// (FPL-GTR-190, 2010), chapter 5, Table 5-3a. The names the trade uses without further word ("maple", "pine") stand
/// with the species a furniture maker most often means by them: common practice.
/// </remarks>
internal static class AmericanSoftwoods
{
    public static IReadOnlyList<Species> All { get; } =
    [
        Of("baldcypress", 0.46, "cypress", "bald cypress"),
        Of("atlantic white cedar", 0.32),
        Of("eastern redcedar", 0.47, "aromatic cedar", "eastern red cedar"),
        Of("incense cedar", 0.37, "pencil cedar"),
        Of("northern white cedar", 0.31, "white cedar"),
        Of("port-orford cedar", 0.43),
        Of("western redcedar", 0.32, "cedar", "western red cedar", "red cedar"),
        Of("yellow cedar", 0.44, "alaska cedar"),
        Of("coast douglas-fir", 0.48, "douglas-fir", "fir", "oregon pine"),
        Of("interior west douglas-fir", 0.50),
        Of("interior north douglas-fir", 0.48),
        Of("interior south douglas-fir", 0.46),
        Of("balsam fir", 0.35),
        Of("california red fir", 0.38),
        Of("grand fir", 0.37),
        Of("noble fir", 0.39),
        Of("pacific silver fir", 0.43),
        Of("subalpine fir", 0.32),
        Of("white fir", 0.39),
        Of("eastern hemlock", 0.40),
        Of("mountain hemlock", 0.45),
        Of("western hemlock", 0.45, "hemlock"),
        Of("western larch", 0.52, "larch"),
        Of("eastern white pine", 0.35, "pine", "white pine"),
        Of("jack pine", 0.43),
        Of("loblolly pine", 0.51, "southern pine", "southern yellow pine", "yellow pine"),
        Of("lodgepole pine", 0.41),
        Of("longleaf pine", 0.59),
        Of("pitch pine", 0.52),
        Of("pond pine", 0.56),
        Of("ponderosa pine", 0.40, "western yellow pine"),
        Of("red pine", 0.46, "norway pine"),
        Of("sand pine", 0.48),
        Of("shortleaf pine", 0.51),
        Of("slash pine", 0.59),
        Of("spruce pine", 0.44),
        Of("sugar pine", 0.36),
        Of("virginia pine", 0.48),
        Of("western white pine", 0.35, "idaho white pine"),
        Of("old-growth redwood", 0.40, "redwood"),
        Of("young-growth redwood", 0.35),
        Of("black spruce", 0.42),
        Of("engelmann spruce", 0.35),
        Of("red spruce", 0.40),
        Of("sitka spruce", 0.40, "spruce"),
        Of("white spruce", 0.36),
        Of("tamarack", 0.53),
    ];

    private static Species Of(string name, double specificGravity, params string[] alsoCalled) =>
        Species.FromSpecificGravity(name, specificGravity, "Wood Handbook FPL-GTR-190 (2010), Table 5-3a", alsoCalled);
}
