using Dryfit.Findings;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>Finds every place of a recipe that names a material or a carcase, and tells the names nothing stands for.</summary>
internal static class NameCheck
{
    /// <param name="recipe">The tree; where it does not fit its shape, nothing is looked at.</param>
    public static IEnumerable<InputError> Check(Mapping recipe)
    {
        var known = new Dictionary<string, List<string>>(StringComparer.Ordinal)
        {
            ["material"] = Keys(recipe, "materials"),
            ["carcase"] = [.. Keys(recipe, "carcases"), .. Keys(recipe, "kept")],
        };
        return Sites(recipe, RecipeWord.Shape, 0)
            .Where(site => known.ContainsKey(site.Shape.Of) && !known[site.Shape.Of].Contains(site.Name.Text))
            .Select(site => Unknown(site.Name, site.Shape.Of, known[site.Shape.Of]));
    }

    private static InputError Unknown(Scalar name, string of, List<string> known) =>
        new(
            $"There is no {of} called '{name.Text}'.",
            name.Place,
            known.Count == 0 ? $"the name of a {of}; the recipe has none" : $"one of {string.Join(", ", known)}",
            NearestWord.To(name.Text, known)
        );

    private static IEnumerable<(Scalar Name, NameShape Shape)> Sites(Node node, Shape shape, int depth)
    {
        if (depth > ReadLimits.Depth)
            return [];
        return (node, shape) switch
        {
            (Scalar { IsEmpty: false } name, NameShape named) => [(name, named)],
            (_, EitherShape either) => Sites(node, Alternatives.Pick(node, either), depth),
            (Sequence list, ListShape of) => list.Items.SelectMany(item => Sites(item, of.Item, depth + 1)),
            (Mapping names, NamedShape of) => names.Entries.SelectMany(e => Sites(e.Value, of.Item, depth + 1)),
            (Mapping word, RecordShape record) => record
                .Fields.Where(field => word[field.Key] is not null)
                .SelectMany(field => Sites(word[field.Key]!, field.Shape, depth + 1)),
            _ => [],
        };
    }

    private static List<string> Keys(Mapping recipe, string section) =>
        (recipe[section] as Mapping)?.Entries.Select(entry => entry.Key).ToList() ?? [];
}
