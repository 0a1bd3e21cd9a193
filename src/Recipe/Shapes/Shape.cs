namespace Dryfit.Recipe;

/// <summary>
/// What may stand at a place of the recipe. The checker, the JSON Schema and the reference page are all made from the
/// same shapes, so they cannot drift apart.
/// </summary>
public abstract record Shape;

/// <summary>A length, or a formula that gives one.</summary>
/// <param name="Sign">Which side of zero it may lie on.</param>
public sealed record LengthShape(LengthSign Sign = LengthSign.ZeroOrMore) : Shape;

/// <summary>Which side of zero a length may lie on.</summary>
public enum LengthSign
{
    /// <summary>A gap, an overhang: nothing below zero.</summary>
    ZeroOrMore,

    /// <summary>A size of something that is there.</summary>
    AboveZero,

    /// <summary>An offset that may go either way.</summary>
    Any,
}

/// <summary>A whole number from <paramref name="From"/> to <paramref name="To"/>, or a formula that gives one.</summary>
public sealed record CountShape(int From, int To) : Shape;

/// <summary>A plain number or fraction (a share, a ratio), or a formula that gives one.</summary>
public sealed record NumberShape : Shape;

/// <summary>A length, number or count: a parameter's default, say.</summary>
public sealed record QuantityShape : Shape;

/// <summary>Free text.</summary>
public sealed record TextShape : Shape;

/// <summary>yes or no; nothing at all counts as yes.</summary>
public sealed record YesNoShape : Shape;

/// <summary>Nothing but the key itself: <c>open</c>.</summary>
public sealed record BareShape : Shape;

/// <summary>One of the words given.</summary>
public sealed record ChoiceShape(params IReadOnlyList<string> Words) : Shape
{
    /// <summary>Whether the name of a parameter that is one of the words may stand for it; not where names are not known yet.</summary>
    public bool TakesNames { get; init; } = true;
}

/// <summary>Several words in any order, at most one of each group: <c>framed pair</c>, <c>glazed, hinged left</c>.</summary>
/// <param name="Groups">Each group with its words.</param>
public sealed record PhraseShape(params IReadOnlyList<ChoiceShape> Groups) : Shape;

/// <summary>The name of something defined elsewhere in the recipe: a material, a carcase.</summary>
/// <param name="Of">What it names, in the singular, as it reads in an error: "material".</param>
public sealed record NameShape(string Of) : Shape;

/// <summary>Text with a small grammar of its own that its word reads: <c>maple 3/4</c>.</summary>
/// <param name="Describes">What it looks like, for errors and the page: "a species and a thickness".</param>
public sealed record SpokenShape(string Describes) : Shape;

/// <summary>A list of values of one shape.</summary>
public sealed record ListShape(Shape Item, int AtLeast = 0, int AtMost = 1000) : Shape;

/// <summary>Names of the maker's choosing, each with a value of one shape: parameters, materials, carcases.</summary>
/// <param name="Item">What each name holds.</param>
/// <param name="Named">What the names are, in the singular: "parameter".</param>
public sealed record NamedShape(Shape Item, string Named) : Shape;

/// <summary>
/// A word of the recipe: known keys, each with its own shape. A record may name itself in another's fields (regions
/// nest), so fields are read late.
/// </summary>
/// <param name="Name">The word, unique: it is the heading on the reference page and the definition in the JSON Schema.</param>
/// <param name="Doc">One or two sentences a maker reads.</param>
/// <param name="Example">A few lines of YAML that show it.</param>
/// <param name="ReadFields">The fields, in the order a maker thinks of them.</param>
public sealed record RecordShape(string Name, string Doc, string Example, Func<IReadOnlyList<Field>> ReadFields) : Shape
{
    private IReadOnlyList<Field>? _fields;

    /// <summary>Read once, however many ask at the same time: words are known by identity.</summary>
    public IReadOnlyList<Field> Fields =>
        _fields ?? Interlocked.CompareExchange(ref _fields, ReadFields(), null) ?? _fields;

    /// <summary>What further keys mean, whose names are not known here: "the parameters of the word"; null where there are none.</summary>
    public string? FurtherKeys { get; init; }

    public bool Equals(RecordShape? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);
}

/// <summary>The first shape whose kind (single value, list, keys) and words fit what is written.</summary>
public sealed record EitherShape(params IReadOnlyList<Shape> Shapes) : Shape;

/// <summary>One key of a word.</summary>
/// <param name="Key">As written, in lower case with spaces: <c>face frame</c>.</param>
/// <param name="Shape">What it holds.</param>
/// <param name="Doc">One sentence a maker reads: meaning, datum, unit where it is not a length.</param>
/// <param name="Required">Whether leaving it out is an error.</param>
/// <param name="Default">What happens when it is left out, as the page says it: "the shop's gap for inset fronts".</param>
public sealed record Field(string Key, Shape Shape, string Doc, bool Required = false, string? Default = null);
