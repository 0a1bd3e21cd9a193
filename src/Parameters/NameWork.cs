using System.Runtime.CompilerServices;
using Dryfit.Findings;
using Dryfit.Parameters.Formulas;

namespace Dryfit.Parameters;

/// <summary>Works names out, each once, and tells circles and chains that are too long.</summary>
internal sealed class NameWork
{
    private readonly List<KnownName> _working = [];

    /// <summary>Whether something went wrong in what is being worked out now.</summary>
    private bool _faulty;

    /// <summary>How many names deep that which is being worked out now has leant so far.</summary>
    private int _depth;

    private bool _toldTooDeep;

    /// <summary>Unknown names with a dot are nobody's fault: see <see cref="Scope.LeaveSizesOpen"/>.</summary>
    public bool SizesAreOpen { get; set; }

    public void MarkFaulty() => _faulty = true;

    /// <summary>The figure of a name; null where it could not be worked out, which is then reported.</summary>
    public Figure? Out(KnownName known, Stretch at, Action<FormulaFault> report)
    {
        if (known.State == NameState.Working)
        {
            ReportLoop(known, at, report);
            return null;
        }
        if (known.State == NameState.Waiting)
            WorkFirst(known, at, report);
        _depth = Math.Max(_depth, known.Depth);
        _faulty |= known.Faulty;
        return known.Faulty ? null : known.Figure;
    }

    private void WorkFirst(KnownName known, Stretch at, Action<FormulaFault> report)
    {
        if (_working.Count >= FormulaLimits.Chain || !RuntimeHelpers.TryEnsureSufficientExecutionStack())
        {
            known.State = NameState.Done;
            known.Faulty = true;
            ReportTooDeep(known, at, report);
            return;
        }
        var (faulty, depth) = (_faulty, _depth);
        (_faulty, _depth) = (false, 0);
        known.State = NameState.Working;
        _working.Add(known);
        known.Figure = known.DoWork();
        _working.RemoveAt(_working.Count - 1);
        known.State = NameState.Done;
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
    private void ReportTooDeep(KnownName known, Stretch at, Action<FormulaFault> report)
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

    private void ReportLoop(KnownName known, Stretch at, Action<FormulaFault> report)
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
}

/// <summary>How far a name has been worked out.</summary>
internal enum NameState
{
    Waiting,
    Working,
    Done,
}

/// <summary>A name with what it stands for: a figure worked out late, or a word.</summary>
internal sealed class KnownName(string name, SourcePlace? place, Func<Figure>? work, NamedWord? word)
{
    public string Name { get; } = name;
    public SourcePlace? Place { get; } = place;
    public NamedWord? Word { get; } = word;
    public NameState State { get; set; }
    public Figure? Figure { get; set; }
    public bool Faulty { get; set; }
    public int Depth { get; set; }

    public Figure DoWork() =>
        work is null ? throw new InvalidOperationException($"'{Name}' is a word and has no figure.") : work();
}
