using Dryfit.Casework.Trim;
using Dryfit.Findings;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>Finds every place of a recipe that names a material or a carcase, and tells the names nothing stands for.</summary>
internal static class NameCheck
{
    /// <param name="recipe">The tree; where it does not fit its shape, nothing is looked at.</param>
    /// <param name="shop">The shop file, which names families of hardware; null where there is none.</param>
    public static IEnumerable<InputError> Check(Mapping recipe, Mapping? shop)
    {
        var known = new Dictionary<string, List<string>>(StringComparer.Ordinal)
        {
            ["material"] = Keys(recipe, "materials"),
            ["space between walls"] = Keys(recipe, "room"),
            ["carcase"] = [.. Keys(recipe, "carcases"), .. Keys(recipe, "kept")],
        };
        known["carcase or wall"] = [.. known["carcase"], .. WallTrim.Names];
        foreach (var (of, kinds) in HardwareWord.Named)
            known[of] = [.. kinds.SelectMany(kind => Keys(shop?["hardware"] as Mapping, kind.Section))];
        foreach (var (name, shape) in ShapeWalk.Values(recipe, RecipeWord.Shape))
        {
            if (shape is NameShape { Of: var of } && known.TryGetValue(of, out var names) && !names.Contains(name.Text))
                yield return Unknown(name, of, names);
        }
    }

    private static InputError Unknown(Scalar name, string of, List<string> known) =>
        new(
            $"There is no {of} called '{name.Text}'.",
            name.Place,
            known.Count == 0
                ? $"the name of a {of}; the {(HardwareWord.Named.ContainsKey(of) ? "shop file" : "recipe")} has none"
                : $"one of {string.Join(", ", known)}",
            NearestWord.To(name.Text, known)
        );

    private static List<string> Keys(Mapping? within, string section) =>
        (within?[section] as Mapping)?.Entries.Select(entry => entry.Key).ToList() ?? [];
}
