using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters.Formulas;

namespace Dryfit.Parameters;

/// <summary>Names with what they stand for, worked out late and once.</summary>
/// <param name="unit">The unit of bare numbers in the formulas that use these names.</param>
/// <param name="work">What is being worked out now, shared by all tables of a scope: names of one may lean on another's.</param>
internal sealed class NameTable(Scope scope, LengthUnit unit, NameWork work) : INames
{
    private readonly Dictionary<string, KnownName> _known = new(StringComparer.Ordinal);
    private readonly List<KnownName> _order = [];

    public LengthUnit Unit => unit;

    public IEnumerable<string> All => _order.Select(k => k.Name);

    public bool Knows(string name) => _known.ContainsKey(name);

    public void Add(string name, SourcePlace? place, Func<Figure>? doWork, NamedWord? word)
    {
        if (_known.TryGetValue(name, out var first))
        {
            var where = first.Place is { } known ? $"on line {known.Line}" : "by the tool itself";
            scope.Report(new InputError($"The name '{name}' is taken already, {where}.", place, "another name"));
            return;
        }
        var added = new KnownName(name, place, doWork, word);
        _known.Add(name, added);
        _order.Add(added);
    }

    public NamedWord? Word(string name) => _known.TryGetValue(name, out var known) ? known.Word : null;

    public Figure? Figure(string name, Stretch at, Action<FormulaFault> report)
    {
        if (!_known.TryGetValue(name, out var known))
        {
            if (!IsOpen(name))
                report(NoSuch(name, at));
            return null;
        }
        if (known.Word is { } word)
        {
            report(
                new FormulaFault(
                    $"'{name}' is a word ({word.Word}), not a size.",
                    at,
                    "a name of a size, or a comparison"
                )
            );
            return null;
        }
        return Work(known, at, report);
    }

    public Figure? Work(string name)
    {
        if (_known.TryGetValue(name, out var known) && known.Word is null)
            return Work(
                known,
                default,
                fault => scope.Report(new InputError(fault.Message, known.Place, fault.Expected))
            );
        return null;
    }

    public void WorkAll()
    {
        for (var i = 0; i < _order.Count; i++)
            Work(_order[i].Name);
    }

    /// <summary>The names in a formula that nothing stands for; words beside = and != are none.</summary>
    public IEnumerable<NameExpression> Unknown(Expression formula)
    {
        var words = Parts
            .Comparisons(formula)
            .SelectMany(WordOf)
            .ToHashSet<Expression>(ReferenceEqualityComparer.Instance);
        return Parts
            .Of(formula)
            .OfType<NameExpression>()
            .Where(n => !Knows(n.Name) && !IsOpen(n.Name) && !words.Contains(n));
    }

    public FormulaFault NoSuch(string name, Stretch at)
    {
        var nearest = scope.IsFull ? null : NearestWord.To(name, All);
        var expected = _order.Count switch
        {
            0 => "a length; no parameters are defined",
            <= 12 => "one of " + string.Join(", ", All),
            _ => "the name of a parameter or of a size",
        };
        return new FormulaFault($"There is no name {Excerpt.Quote(name)}.", at, expected, nearest);
    }

    /// <summary>Makes a name of another table known here under a name of its own; nothing where that has none.</summary>
    public void Lend(string name, NameTable from, string known)
    {
        if (from._known.TryGetValue(known, out var lent) && _known.TryAdd(name, lent))
            _order.Add(lent);
    }

    private bool IsOpen(string name) => work.SizesAreOpen && name.Contains('.', StringComparison.Ordinal);

    private IEnumerable<Expression> WordOf(ComparisonCondition comparison)
    {
        if (comparison.Left is NameExpression left && Word(left.Name) is not null)
            yield return comparison.Right;
        if (comparison.Right is NameExpression right && Word(right.Name) is not null)
            yield return comparison.Left;
    }

    private Figure? Work(KnownName known, Stretch at, Action<FormulaFault> report) => work.Out(known, at, report);
}
