namespace Dryfit.Parameters.Why;

/// <summary>Finds the sums behind a figure: each named figure once, in the order met.</summary>
internal sealed class Sums(Wording wording)
{
    private readonly Queue<(string Name, Figure Figure)> _waiting = new();
    private readonly HashSet<(string, Quantity)> _seen = [];

    public IReadOnlyList<Block> Of(Figure figure, string? heading)
    {
        var (name, of) = figure.Reason switch
        {
            NamedReason named => (named.Name, named.Of),
            GivenReason given => (given.Name, figure),
            _ => ("size", figure),
        };
        Wait(heading ?? name, of);
        var blocks = new List<Block>();
        while (_waiting.TryDequeue(out var next))
            blocks.Add(BlockOf(next.Name, next.Figure));
        return blocks;
    }

    /// <summary>A figure that is only another name for a named one has the sum of that: one is not the sum of the other.</summary>
    private static Figure Renamed(Figure figure)
    {
        while (figure.Reason is NamedReason again)
            figure = again.Of;
        return figure;
    }

    private void Wait(string name, Figure figure)
    {
        figure = Renamed(figure);
        if (_seen.Add((name, figure.Quantity)))
            _waiting.Enqueue((name, figure));
    }

    private Block BlockOf(string name, Figure figure)
    {
        var number = Digits.Cut(wording.NumberWithUnit(figure.Quantity));
        var exactly = wording.Exactly(figure.Quantity);
        switch (figure.Reason)
        {
            case GivenReason given:
                var called = given.Name == name ? "" : $"{given.Name}, ";
                return new Block([new Row(name, number, Remarks(exactly, called + wording.Origin(given.Origin)))]);
            case LiteralReason literal:
                return new Block([new Row(name, number, Remarks(exactly, literal.Text))]);
            case FormulaReason { Sum: { } sum } formula:
                var head = new Row(name, number, Remarks(exactly, $"{wording.Place(formula.Place)}: {formula.Text}"));
                return new Block([head, .. Terms(sum, formula.Inputs)]);
            case FormulaReason formula:
                var first = new Row(name, number, Remarks(exactly, $"{wording.Place(formula.Place)}: {formula.Text}"));
                return new Block([
                    first,
                    .. formula.Inputs.Select(i => RowOf(new Term(' ', i.Value), formula.Inputs, figure.Quantity)),
                ]);
            default:
                return new Block([new Row(name, number, exactly), .. Terms(figure, [])]);
        }
    }

    private List<Row> Terms(Figure sum, IReadOnlyList<NamedInput> inputs) =>
        [.. Term.Flatten(sum).Select(t => RowOf(t, inputs, sum.Quantity))];

    private Row RowOf(Term term, IReadOnlyList<NamedInput> inputs, Quantity total)
    {
        var speech = new Speech(wording, inputs);
        var (text, remark) = speech.Say(term.Figure);
        foreach (var (name, figure) in speech.Named)
            Wait(name, figure);
        // A sum of one term is exactly what its heading says already.
        var exactly = term.Figure.Quantity == total ? "" : wording.Exactly(term.Figure.Quantity);
        return new Row(
            $"  {term.Sign} {text}",
            Digits.Cut(wording.Number(term.Figure.Quantity)),
            Remarks(exactly, remark)
        );
    }

    private static string Remarks(params IEnumerable<string> remarks) =>
        string.Join("; ", remarks.Where(r => r.Length > 0));
}

/// <summary>One term of a sum with its sign; the first of a sum has none.</summary>
internal sealed record Term(char Sign, Figure Figure)
{
    /// <summary>The terms of a sum of sums, from left to right. A long sum is long, not deep, so no calls are nested.</summary>
    public static IReadOnlyList<Term> Flatten(Figure sum)
    {
        var terms = new List<Term>();
        var left = new Stack<(Figure Figure, bool Minus)>([(sum, false)]);
        while (left.TryPop(out var next))
        {
            if (next.Figure.Reason is SumReason reason)
            {
                left.Push((reason.B, next.Minus != reason.Negated));
                left.Push((reason.A, next.Minus));
            }
            else
            {
                var sign =
                    next.Minus ? '-'
                    : terms.Count == 0 ? ' '
                    : '+';
                terms.Add(new Term(sign, next.Figure));
            }
        }
        return terms;
    }
}
