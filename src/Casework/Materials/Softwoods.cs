namespace Dryfit.Casework;

/// <summary>Which timbers are softwoods: joints are cut at other slopes in them.</summary>
internal static class Softwoods
{
    private static readonly HashSet<string> Names =
    [
        .. AmericanSoftwoods.All.Select(species => species.Name),
        "norway spruce",
        "scots pine",
        "silver fir",
        "european larch",
        "spruce-pine-fir",
        "hem-fir",
    ];

    public static bool Has(Material material) => material.Kind == MaterialKind.Solid && Names.Contains(material.Stuff);
}
