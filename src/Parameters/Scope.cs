using System.Globalization;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters.Formulas;
using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>
/// The names a recipe's formulas may use, worked out when asked for and only once, in any order; cycles are reported
/// with the whole loop. It also gathers the errors of everything read through it, each once.
/// </summary>
public sealed class Scope
{
    private static readonly Origin InPlaceOfAFault = new TradeOrigin("in place of what could not be worked out");

    private readonly InputErrors _errors = new();
    private readonly NameWork _work = new();
    private readonly NameTable _names;
    private readonly Dictionary<Scalar, InnerNames> _homes = new(ReferenceEqualityComparer.Instance);
    private readonly List<InnerNames> _inner = [];
    private readonly Dictionary<Scalar, Site> _sites = new(ReferenceEqualityComparer.Instance);
    private readonly List<Site> _order = [];

    public Scope(LengthUnit unit)
    {
        Unit = unit;
        _names = new NameTable(this, unit, _work);
    }

    /// <summary>The unit of bare numbers where a length is meant.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Everything wrong so far, in the order found.</summary>
    public IReadOnlyList<InputError> Errors => _errors.All;

    /// <summary>Every name known so far, in the order defined.</summary>
    public IEnumerable<string> Names => _names.All;

    /// <summary>The values worked out so far, in the order asked for.</summary>
    internal IReadOnlyList<Site> Sites => _order;

    public void Report(InputError error) => _errors.Add(error);

    /// <summary>Whether formulas may use the name.</summary>
    public bool Knows(string name) => _names.Knows(name);

    /// <summary>Makes a name known whose figure is worked out by <paramref name="work"/> when first asked for.</summary>
    /// <param name="name">As formulas write it: <c>side_bay</c>, <c>base.width</c>.</param>
    /// <param name="place">Where it is said, for errors; null for the tool's own.</param>
    /// <param name="work">Gives the figure; may ask the scope for other names.</param>
    /// <remarks>A name that is taken already is an error of the recipe; the first keeps it.</remarks>
    public void Define(string name, SourcePlace? place, Func<Figure> work) => _names.Add(name, place, work, null);

    /// <summary>Makes a name known that stands for a word, to be compared in conditions.</summary>
    /// <param name="choices">All words it could be.</param>
    public void DefineWord(string name, SourcePlace? place, string word, IReadOnlyList<string> choices) =>
        _names.Add(name, place, null, new NamedWord(word, choices));

    /// <summary>The figure of a name; null where there is none or it could not be worked out, which is then reported.</summary>
    public Figure? Named(string name) => _names.Work(name);

    /// <summary>The word a parameter of words stands for, or null.</summary>
    public string? Word(string name) => _names.Word(name)?.Word;

    /// <summary>Works out every name defined, so that the errors of those nobody asked for come out too.</summary>
    public void WorkOutAll()
    {
        _names.WorkAll();
        foreach (var inner in _inner)
            inner.Table.WorkAll();
    }

    /// <summary>
    /// Says that the sizes of carcases could not be defined, since the recipe has other errors: a name with a dot that is
    /// not known may well be right, so it is not reported.
    /// </summary>
    public void LeaveSizesOpen() => _work.SizesAreOpen = true;

    /// <summary>Works a scalar out as a length called <paramref name="name"/> in sums.</summary>
    /// <returns>The length; after an error a harmless one above zero, so that reading goes on.</returns>
    public Figure Length(Scalar scalar, string name)
    {
        var site = SiteOf(scalar);
        if (Work(site)?.AsLength(site.Names.Unit) is not { } worked)
            return Harmless(name);
        if (worked.Dimension != 1)
        {
            Refuse(site, $"{Capital(worked.Kind)} stands here; a length is wanted.", "a length such as 3 1/2");
            return Harmless(name);
        }
        var length = worked.Figure.Length;
        if (Measure.Length.Abs(length) > LengthText.Longest)
            Refuse(site, "This is longer than a kilometre.", "a size that fits in a room");
        else if (site.Shape is LengthShape { Sign: LengthSign.AboveZero } && length.Sign <= 0)
            Refuse(site, $"This comes to {Shown(length)}; it must be above zero.", "a length above zero");
        else if (site.Shape is LengthShape { Sign: LengthSign.ZeroOrMore } && length.Sign < 0)
            Refuse(site, $"This comes to {Shown(length)}; it cannot be less than zero.", "a length of zero or more");
        return site.Refused ? Harmless(name) : Explained(site, name, worked);
    }

    /// <summary>Works a scalar out as a whole number (within a million either way, and within its shape's limits).</summary>
    /// <returns>The number; after an error the nearest allowed.</returns>
    public int Count(Scalar scalar)
    {
        var site = SiteOf(scalar);
        var (from, to) = site.Shape is CountShape shape ? (shape.From, shape.To) : (-1_000_000, 1_000_000);
        var harmless = Math.Clamp(1, from, to);
        site.WantsNumber = true;
        if (Work(site) is not { } worked)
            return harmless;
        if (worked.Dimension != 0)
            Refuse(site, $"{Capital(worked.Kind)} stands here; a whole number is wanted.", "a whole number");
        else if (!worked.Magnitude.IsWhole)
            Refuse(
                site,
                $"This comes to {worked.Magnitude}, which is no whole number.",
                "a whole number, or round(...)"
            );
        else if (worked.Magnitude < from || worked.Magnitude > to)
            Refuse(
                site,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"This comes to {worked.Magnitude}; it must be from {from} to {to}."
                ),
                string.Create(CultureInfo.InvariantCulture, $"a whole number from {from} to {to}")
            );
        return site.Refused ? harmless : (int)worked.Magnitude.Numerator;
    }

    /// <summary>Works a scalar out as a plain number.</summary>
    /// <returns>The number; after an error 1.</returns>
    public Figure Number(Scalar scalar, string name)
    {
        var site = SiteOf(scalar);
        site.WantsNumber = true;
        if (Work(site) is { } worked)
        {
            if (worked.Dimension == 0)
                return Explained(site, name, worked);
            Refuse(site, $"{Capital(worked.Kind)} stands here; a plain number is wanted.", "a number such as 2 or 1/3");
        }
        return Figure.Given(name, Rational.One, InPlaceOfAFault);
    }

    /// <summary>Names that only some formulas know: those of the file of a maker's own word, where it is used.</summary>
    /// <param name="name">The name of the use, with which the names of its parts begin.</param>
    /// <param name="unit">The unit of bare numbers in that file.</param>
    public InnerNames Inner(string name, LengthUnit unit)
    {
        var inner = new InnerNames(name, new NameTable(this, unit, _work), _names);
        _inner.Add(inner);
        return inner;
    }

    /// <summary>Says that all values of a tree mean by their names what <paramref name="inner"/> says.</summary>
    public void Settle(Node tree, InnerNames inner)
    {
        // Trees that were read are no deeper than their limit.
        switch (tree)
        {
            case Scalar scalar:
                _homes[scalar] = inner;
                break;
            case Sequence list:
                foreach (var item in list.Items)
                    Settle(item, inner);
                break;
            case Mapping word:
                foreach (var entry in word.Entries)
                    Settle(entry.Value, inner);
                break;
        }
    }

    /// <summary>The names of its own that a value knows; null for a value of the recipe itself.</summary>
    public InnerNames? InnerOf(Scalar value) => _homes.GetValueOrDefault(value);

    /// <summary>The word that a name stands for where a value is; null where it is no name of a word.</summary>
    public string? WordAt(Scalar value, string name) => TableOf(value).Word(name)?.Word;

    internal NameTable TableOf(Scalar value) => _homes.GetValueOrDefault(value)?.Table ?? _names;

    /// <summary>A formula that is a stretch of a longer value: the <c>20</c> of <c>20 behind the front</c>.</summary>
    /// <param name="start">0 for the first character of the value's text.</param>
    public Scalar Within(Scalar value, int start, int length) =>
        AtHomeWith(
            value,
            new Scalar(value.Text.Substring(start, length), value.PlaceOf(start, length))
            {
                TextStart = value.TextStart < 0 ? -1 : 0,
            }
        );

    /// <summary>A value that stands for another at the same place: the word that a name stands for, say.</summary>
    public Scalar InPlaceOf(Scalar value, string text) => AtHomeWith(value, value with { Text = text, TextStart = -1 });

    /// <summary>A made value means by its names what the one means that it was made from.</summary>
    private Scalar AtHomeWith(Scalar value, Scalar made)
    {
        if (_homes.TryGetValue(value, out var home))
            _homes[made] = home;
        return made;
    }

    /// <summary>Whatever the scalar gives; null after an error.</summary>
    internal Worked? Any(Scalar scalar) => Work(SiteOf(scalar));

    /// <summary>The formula of a scalar with what its shape allows; read once, its fault reported once.</summary>
    internal Site SiteOf(Scalar scalar, Shape? shape = null)
    {
        if (!_sites.TryGetValue(scalar, out var site))
        {
            var expression = FormulaText.Parse(scalar.Text, out var fault);
            site = new Site(scalar, expression, TableOf(scalar));
            _sites.Add(scalar, site);
            _order.Add(site);
            if (fault is not null)
                Report(site, fault);
        }
        site.Shape ??= shape;
        return site;
    }

    /// <summary>Reports the names of a formula that nothing stands for.</summary>
    internal void CheckNames(Site site)
    {
        if (site.Expression is null || site.NamesChecked)
            return;
        site.NamesChecked = true;
        foreach (var name in site.Names.Unknown(site.Expression))
            Report(site, site.Names.NoSuch(name.Name, name.At));
    }

    /// <summary>A figure that says where it came from: a number as written, or a formula with its inputs.</summary>
    internal static Figure Explained(Site site, string name, Worked worked) =>
        site.IsPlainNumber
            ? new(worked.Figure.Quantity, new GivenReason(name, new WrittenOrigin(site.Scalar.Place)))
            : new(worked.Figure.Quantity, new NamedReason(name, Formula(site, worked)));

    /// <summary>A value that is a word, not a formula: no names are looked for in it.</summary>
    internal void SettleAsWord(Scalar scalar)
    {
        var site = new Site(scalar, null, TableOf(scalar)) { Refused = true };
        if (_sites.TryAdd(scalar, site))
            _order.Add(site);
    }

    internal bool IsRefused(Scalar scalar) => _sites.TryGetValue(scalar, out var site) && site.Refused;

    /// <summary>Further errors are dropped, so nothing need be found out for them.</summary>
    internal bool IsFull => _errors.Full;

    internal void MarkFaulty() => _work.MarkFaulty();

    internal void Refuse(Site site, string message, string? expected = null, string? suggestion = null) =>
        Report(site, new FormulaFault(message, new(0, site.Scalar.Text.Length), expected, suggestion));

    internal string Shown(Length length) => LengthFormat.For(Unit).WriteWithUnit(length);

    private static Figure Formula(Site site, Worked worked) =>
        new(
            worked.Figure.Quantity,
            new FormulaReason(site.Scalar.Text.Trim(), site.Inputs, site.Scalar.Place) { Sum = worked.Figure }
        );

    private Worked? Work(Site site)
    {
        if (site.Refused)
        {
            MarkFaulty();
            return null;
        }
        CheckNames(site);
        if (!site.Refused && !site.IsWorked)
        {
            var evaluator = new Evaluator(site.Scalar.Text, site.Names.Unit, site.Names, fault => Report(site, fault));
            site.Value = evaluator.Work(site.Expression!);
            site.Inputs = evaluator.Inputs;
            site.IsWorked = true;
        }
        if (site.Value is null)
            MarkFaulty();
        return site.Value;
    }

    private void Report(Site site, FormulaFault fault)
    {
        MarkFaulty();
        site.Refused = true;
        var place = site.Scalar.PlaceOf(fault.At.Start, fault.At.Length);
        Report(new InputError(fault.Message, place, fault.Expected, fault.Suggestion));
    }

    private Figure Harmless(string name)
    {
        MarkFaulty();
        return Figure.Given(name, Measure.Length.From(Unit == LengthUnit.Inch ? 4 : 100, Unit), InPlaceOfAFault);
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
