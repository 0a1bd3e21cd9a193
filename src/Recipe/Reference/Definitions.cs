namespace Dryfit.Recipe;

/// <summary>The words reachable from a root, each once, in the order a reader meets them, with a name of its own.</summary>
internal sealed class Definitions
{
    private readonly Dictionary<RecordShape, string> _slugs = new(ReferenceEqualityComparer.Instance);
    private readonly List<RecordShape> _order = [];
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);
    private readonly Definitions? _elsewhere;
    private readonly string _page;

    /// <param name="takesNames">Whether names of parameters may stand for words.</param>
    public Definitions(RecordShape root, bool takesNames)
        : this(root) => TakesNames = takesNames;

    /// <param name="elsewhere">Words that another page explains; null for none.</param>
    /// <param name="page">That page.</param>
    public Definitions(RecordShape root, Definitions? elsewhere = null, string page = "")
    {
        _elsewhere = elsewhere;
        _page = page;
        // Breadth first: the words of the top before those inside them. Words may hold each other in a circle.
        var waiting = new Queue<RecordShape>([root]);
        Add(root);
        while (waiting.TryDequeue(out var word))
        {
            foreach (var inner in word.Fields.SelectMany(f => Records(f.Shape)).Where(Add))
                waiting.Enqueue(inner);
        }
    }

    public bool TakesNames { get; }

    /// <summary>The root first.</summary>
    public IReadOnlyList<RecordShape> All => _order;

    /// <summary>The word's name in links: lower case with hyphens.</summary>
    public string Slug(RecordShape word) => _slugs[word];

    /// <summary>The words that this page explains itself.</summary>
    public IEnumerable<RecordShape> Own => _order.Where(word => !IsElsewhere(word));

    /// <summary>Where a word is explained: on this page, or on the other.</summary>
    public string Link(RecordShape word) => IsElsewhere(word) ? $"{_page}#{_elsewhere!.Slug(word)}" : $"#{Slug(word)}";

    private bool IsElsewhere(RecordShape word) => _elsewhere?._slugs.ContainsKey(word) == true;

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
