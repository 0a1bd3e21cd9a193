namespace Dryfit.Casework;

/// <summary>The hardwoods of North America.</summary>
/// <remarks>
/// Specific gravity, ovendry weight on the volume at 12 % moisture content: USDA Forest Products Laboratory, Wood Handbook
/// (FPL-GTR-190, 2010), chapter 5, Table 5-3a. The names the trade uses without further word ("maple", "pine") stand
/// with the species a furniture maker most often means by them: common practice.
/// </remarks>
internal static class AmericanHardwoods
{
    public static IReadOnlyList<Species> All { get; } =
    [
        Of("red alder", 0.41, "alder"),
        Of("black ash", 0.49),
        Of("blue ash", 0.58),
        Of("green ash", 0.56),
        Of("oregon ash", 0.55),
        Of("white ash", 0.60, "ash", "american ash"),
        Of("bigtooth aspen", 0.39),
        Of("quaking aspen", 0.38, "aspen"),
        Of("american basswood", 0.37, "basswood", "american lime"),
        Of("american beech", 0.64, "beech"),
        Of("paper birch", 0.55, "white birch"),
        Of("sweet birch", 0.65),
        Of("yellow birch", 0.62, "birch"),
        Of("butternut", 0.38, "white walnut"),
        Of("black cherry", 0.50, "cherry", "american cherry"),
        Of("american chestnut", 0.43, "chestnut"),
        Of("balsam poplar", 0.34),
        Of("black cottonwood", 0.35),
        Of("eastern cottonwood", 0.40, "cottonwood"),
        Of("american elm", 0.50, "elm", "white elm"),
        Of("rock elm", 0.63),
        Of("slippery elm", 0.53, "red elm"),
        Of("hackberry", 0.53),
        Of("bitternut hickory", 0.66),
        Of("nutmeg hickory", 0.60),
        Of("pecan hickory", 0.66, "pecan"),
        Of("water hickory", 0.62),
        Of("mockernut hickory", 0.72),
        Of("pignut hickory", 0.75),
        Of("shagbark hickory", 0.72, "hickory"),
        Of("shellbark hickory", 0.69),
        Of("black locust", 0.69, "locust", "robinia"),
        Of("cucumbertree", 0.48),
        Of("southern magnolia", 0.50),
        Of("bigleaf maple", 0.48, "big leaf maple"),
        Of("black maple", 0.57),
        Of("red maple", 0.54, "soft maple"),
        Of("silver maple", 0.47),
        Of("sugar maple", 0.63, "maple", "hard maple", "rock maple"),
        Of("black oak", 0.61),
        Of("cherrybark oak", 0.68),
        Of("laurel oak", 0.63),
        Of("northern red oak", 0.63, "red oak", "oak", "american red oak"),
        Of("pin oak", 0.63),
        Of("scarlet oak", 0.67),
        Of("southern red oak", 0.59),
        Of("water oak", 0.63),
        Of("willow oak", 0.69),
        Of("bur oak", 0.64),
        Of("chestnut oak", 0.66),
        Of("live oak", 0.88),
        Of("overcup oak", 0.63),
        Of("post oak", 0.67),
        Of("swamp chestnut oak", 0.67),
        Of("swamp white oak", 0.72),
        Of("white oak", 0.68, "american white oak"),
        Of("sassafras", 0.46),
        Of("sweetgum", 0.52, "red gum", "gum"),
        Of("american sycamore", 0.49, "american plane"),
        Of("black tupelo", 0.50),
        Of("water tupelo", 0.50),
        Of("black walnut", 0.55, "walnut", "american walnut", "american black walnut"),
        Of("black willow", 0.39, "willow"),
        Of("yellow-poplar", 0.42, "poplar", "tulipwood", "tulip poplar", "tuliptree"),
    ];

    private static Species Of(string name, double specificGravity, params string[] alsoCalled) =>
        Species.FromSpecificGravity(name, specificGravity, "Wood Handbook FPL-GTR-190 (2010), Table 5-3a", alsoCalled);
}
