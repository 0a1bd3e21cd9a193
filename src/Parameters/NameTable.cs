using System.Runtime.CompilerServices;
using Dryfit.Findings;
using Dryfit.Parameters.Formulas;

namespace Dryfit.Parameters;

/// <summary>Names with what they stand for, worked out late and once.</summary>
internal sealed class NameTable(Scope scope) : INames
{
    private readonly Dictionary<string, Known> _known = new(StringComparer.Ordinal);
    private readonly List<Known> _order = [];
    private readonly List<Known> _working = [];

    /// <summary>Whether something went wrong in what is being worked out now.</summary>
    private bool _faulty;

    /// <summary>How many names deep that which is being worked out now has leant so far.</summary>
    private int _depth;

    private bool _toldTooDeep;

    /// <summary>Unknown names with a dot are nobody's fault: see <see cref="Scope.LeaveSizesOpen"/>.</summary>
    public bool SizesAreOpen { get; set; }

    public IEnumerable<string> All => _order.Select(k => k.Name);

    public bool Knows(string name) => _known.ContainsKey(name);

    public void MarkFaulty() => _faulty = true;

    public void Add(string name, SourcePlace? place, Func<Figure>? work, NamedWord? word)
    {
        if (_known.TryGetValue(name, out var first))
        {
            var where = first.Place is { } known ? $"on line {known.Line}" : "by the tool itself";
            scope.Report(new InputError($"The name '{name}' is taken already, {where}.", place, "another name"));
            return;
        }
        var added = new Known(name, place, work, word);
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

    private bool IsOpen(string name) => SizesAreOpen && name.Contains('.', StringComparison.Ordinal);

    private IEnumerable<Expression> WordOf(ComparisonCondition comparison)
    {
        if (comparison.Left is NameExpression left && Word(left.Name) is not null)
            yield return comparison.Right;
        if (comparison.Right is NameExpression right && Word(right.Name) is not null)
            yield return comparison.Left;
    }

    private Figure? Work(Known known, Stretch at, Action<FormulaFault> report)
    {
        if (known.State == State.Working)
        {
            ReportLoop(known, at, report);
            return null;
        }
        if (known.State == State.Waiting)
            WorkFirst(known, at, report);
        _depth = Math.Max(_depth, known.Depth);
        _faulty |= known.Faulty;
        return known.Faulty ? null : known.Figure;
    }

    private void WorkFirst(Known known, Stretch at, Action<FormulaFault> report)
    {
        if (_working.Count >= FormulaLimits.Chain || !RuntimeHelpers.TryEnsureSufficientExecutionStack())
        {
            known.State = State.Done;
            known.Faulty = true;
            ReportTooDeep(known, at, report);
            return;
        }
        var (faulty, depth) = (_faulty, _depth);
        (_faulty, _depth) = (false, 0);
        known.State = State.Working;
        _working.Add(known);
        known.Figure = known.DoWork();
        _working.RemoveAt(_working.Count - 1);
        known.State = State.Done;
        known.Depth = _depth + 1;
        known.Faulty |= _faulty;
        // However the chain was come upon, from its near or its far end, it may be no longer than this.
        if (known.Depth > FormulaLimits.Chain && !known.Faulty)
        {
            known.Faulty = true;
            ReportTooDeep(known, at, report);
        }
        (_faulty, _depth) = (faulty, depth);
    }

    /// <summary>A chain of ten thousand breaks every few names; once told is enough.</summary>
    private void ReportTooDeep(Known known, Stretch at, Action<FormulaFault> report)
    {
        if (_toldTooDeep)
            return;
        _toldTooDeep = true;
        report(
            new FormulaFault(
                $"'{known.Name}' leans on names that lean on names, more than {FormulaLimits.Chain} in a row.",
                at,
                "a shorter chain of names"
            )
        );
    }

    private void ReportLoop(Known known, Stretch at, Action<FormulaFault> report)
    {
        var start = _working.IndexOf(known);
        var loop = _working.GetRange(start, _working.Count - start);
        // All of the loop is as wrong as the name where it was noticed: one error tells of them all.
        foreach (var member in loop)
            member.Faulty = true;
        var names = string.Join(" -> ", loop.Append(known).Select(k => k.Name));
        report(
            new FormulaFault($"These lean on each other in a circle: {names}.", at, "a size that does not need itself")
        );
    }

    private enum State
    {
        Waiting,
        Working,
        Done,
    }

    private sealed class Known(string name, SourcePlace? place, Func<Figure>? work, NamedWord? word)
    {
        public string Name { get; } = name;
        public SourcePlace? Place { get; } = place;
        public NamedWord? Word { get; } = word;
        public State State { get; set; }
        public Figure? Figure { get; set; }
        public bool Faulty { get; set; }
        public int Depth { get; set; }

        public Figure DoWork() =>
            work is null ? throw new InvalidOperationException($"'{Name}' is a word and has no figure.") : work();
    }
}
