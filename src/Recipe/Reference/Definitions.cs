namespace Dryfit.Recipe;

/// <summary>The words reachable from a root, each once, in the order a reader meets them, with a name of its own.</summary>
internal sealed class Definitions
{
    private readonly Dictionary<RecordShape, string> _slugs = new(ReferenceEqualityComparer.Instance);
    private readonly List<RecordShape> _order = [];
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    public Definitions(RecordShape root)
    {
        // Breadth first: the words of the top before those inside them. Words may hold each other in a circle.
        var waiting = new Queue<RecordShape>([root]);
        Add(root);
        while (waiting.TryDequeue(out var word))
        {
            foreach (var inner in word.Fields.SelectMany(f => Records(f.Shape)).Where(Add))
                waiting.Enqueue(inner);
        }
    }

    /// <summary>The root first.</summary>
    public IReadOnlyList<RecordShape> All => _order;

    /// <summary>The word's name in links: lower case with hyphens.</summary>
    public string Slug(RecordShape word) => _slugs[word];

    private bool Add(RecordShape word)
    {
        if (_slugs.ContainsKey(word))
            return false;
        var slug = string.Concat(word.Name.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : '-'));
        for (var n = 2; !_taken.Add(slug); n++)
            slug = $"{slug}-{n}";
        _slugs.Add(word, slug);
        _order.Add(word);
        return true;
    }

    private static IEnumerable<RecordShape> Records(Shape shape) =>
        shape switch
        {
            RecordShape record => [record],
            ListShape list => Records(list.Item),
            NamedShape named => Records(named.Item),
            EitherShape either => either.Shapes.SelectMany(Records),
            _ => [],
        };
}
