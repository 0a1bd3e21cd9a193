namespace Dryfit.Recipe;

/// <summary>Walks a tree along its shape.</summary>
public static class ShapeWalk
{
    /// <summary>Every single value that is written, with the shape its place asks for, in the order of the shape's keys.</summary>
    /// <param name="node">The tree; where it does not fit the shape, nothing is looked at.</param>
    public static IEnumerable<(Scalar Value, Shape Shape)> Values(Node node, Shape shape) => Values(node, shape, 0);

    private static IEnumerable<(Scalar, Shape)> Values(Node node, Shape shape, int depth)
    {
        if (depth > ReadLimits.Depth)
            return [];
        return (node, shape) switch
        {
            (_, EitherShape either) => Values(node, Alternatives.Pick(node, either), depth),
            (Scalar { IsEmpty: false } value, _) => [(value, shape)],
            (Sequence list, ListShape of) => list.Items.SelectMany(item => Values(item, of.Item, depth + 1)),
            (Mapping names, NamedShape of) => names.Entries.SelectMany(e => Values(e.Value, of.Item, depth + 1)),
            (Mapping word, RecordShape record) => record
                .Fields.Where(field => word[field.Key] is not null)
                .SelectMany(field => Values(word[field.Key]!, field.Shape, depth + 1)),
            _ => [],
        };
    }
}
