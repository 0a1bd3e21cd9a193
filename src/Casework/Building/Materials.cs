using Dryfit.Findings;

namespace Dryfit.Casework.Building;

/// <summary>The materials of the recipe by name.</summary>
internal sealed class Materials(IReadOnlyDictionary<string, Material> byName)
{
    /// <summary>A material by the recipe's name for it; the check of names has seen that it is there.</summary>
    public Material Get(string name, SourcePlace place) =>
        byName.TryGetValue(name, out var material)
            ? material
            : throw new CannotBuildException(
                new InputError(
                    $"There is no material called '{name}'.",
                    place,
                    byName.Count == 0
                        ? "a name from the recipe's materials"
                        : $"one of {string.Join(", ", byName.Keys.Order(StringComparer.Ordinal))}"
                )
            );

    public bool Has(string name) => byName.ContainsKey(name);
}
