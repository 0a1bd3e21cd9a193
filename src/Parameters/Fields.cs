using Dryfit.Findings;
using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>
/// A word's keys, read with their formulas worked out. The tree was checked against the shape before, so a required
/// key is there; a formula that cannot be worked out records its error and reads as a harmless figure, so that all
/// errors of a recipe come in one go.
/// </summary>
public sealed class Fields
{
    private readonly Mapping _mapping;
    private readonly Scope _scope;

    public Fields(Mapping mapping, Scope scope)
    {
        _mapping = mapping;
        _scope = scope;
    }

    /// <summary>Where the word stands.</summary>
    public SourcePlace Place => _mapping.Place;

    /// <summary>Names and errors of the recipe being read.</summary>
    public Scope Scope => _scope;

    public bool Has(string key) => _mapping[key] is not null;

    /// <summary>The raw value of a key, for words with a grammar of their own.</summary>
    public Node? Node(string key) => _mapping[key];

    /// <summary>A length; <paramref name="name"/> is how the sum calls it (the key itself where left out).</summary>
    public Figure Length(string key, string? name = null) =>
        LengthOrNull(key, name)
        ?? throw new InvalidOperationException($"Required key '{key}' slipped through the check.");

    public Figure? LengthOrNull(string key, string? name = null) =>
        _mapping[key] is Scalar scalar ? _scope.Length(scalar, name ?? key) : null;

    /// <summary>A whole number; 0 where the key is not there.</summary>
    public int Count(string key) => _mapping[key] is Scalar scalar ? _scope.Count(scalar) : 0;

    /// <summary>A plain number; null where the key is not there.</summary>
    public Figure? NumberOrNull(string key, string? name = null) =>
        _mapping[key] is Scalar scalar ? _scope.Number(scalar, name ?? key) : null;

    /// <summary>Whether yes is said; <paramref name="unsaid"/> where the key is not there.</summary>
    public bool YesNo(string key, bool unsaid = false) =>
        _mapping[key] is Scalar scalar ? Recipe.YesNo.Read(scalar) ?? unsaid : unsaid;

    /// <summary>The words of a phrase, one a group; all null where the key is not there.</summary>
    public IReadOnlyList<string?> Phrase(string key, PhraseShape shape) =>
        _mapping[key] is Scalar scalar ? Recipe.Phrase.Read(scalar, shape).Chosen : new string?[shape.Groups.Count];

    /// <summary>The text as written, or null.</summary>
    public string? Text(string key) => (_mapping[key] as Scalar)?.Text;

    /// <summary>The place of a key's value, or of the word where the key is not there.</summary>
    public SourcePlace PlaceOf(string key) => _mapping[key]?.Place ?? Place;

    /// <summary>The word under a key, or null where it is not there or is not a mapping.</summary>
    public Fields? Map(string key) => _mapping[key] is Mapping mapping ? new Fields(mapping, _scope) : null;

    /// <summary>The items of a list, or nothing.</summary>
    public IReadOnlyList<Node> List(string key) => _mapping[key] is Sequence list ? list.Items : [];

    /// <summary>Named entries under a key, in the order written; nothing where it is not there.</summary>
    public IEnumerable<Entry> Named(string key) => _mapping[key] is Mapping mapping ? mapping.Entries : [];
}
