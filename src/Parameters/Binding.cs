using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>Finds the formulas of a tree.</summary>
public static class Binding
{
    /// <summary>
    /// Reports, through the scope, every formula of the tree that cannot be read or uses a name nothing stands for, and
    /// tells the scope what each place allows (signs of lengths, limits of counts), to be held against when it is worked
    /// out. To be called once all names are defined.
    /// </summary>
    /// <param name="node">The tree; where it does not fit the shape, nothing is looked at.</param>
    public static void CheckFormulas(Node node, Shape shape, Scope scope)
    {
        foreach (var (scalar, allowed) in Sites(node, shape, 0))
            scope.CheckNames(scope.SiteOf(scalar, allowed));
    }

    private static IEnumerable<(Scalar, Shape)> Sites(Node node, Shape shape, int depth)
    {
        if (depth > ReadLimits.Depth)
            return [];
        return (node, shape) switch
        {
            (Scalar { IsEmpty: false } scalar, LengthShape or CountShape or NumberShape or QuantityShape) =>
            [
                (scalar, shape),
            ],
            (_, EitherShape either) => Sites(node, Alternatives.Pick(node, either), depth),
            (Sequence list, ListShape of) => list.Items.SelectMany(i => Sites(i, of.Item, depth + 1)),
            (Mapping names, NamedShape named) => names.Entries.SelectMany(e => Sites(e.Value, named.Item, depth + 1)),
            (Mapping word, RecordShape record) => record
                .Fields.Where(f => word[f.Key] is not null)
                .SelectMany(f => Sites(word[f.Key]!, f.Shape, depth + 1)),
            _ => [],
        };
    }
}
