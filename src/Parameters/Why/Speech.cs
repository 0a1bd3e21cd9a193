using Dryfit.Measure;

namespace Dryfit.Parameters.Why;

/// <summary>Says one term in a line: what it is made of, and in a remark the numbers or where it was said.</summary>
/// <param name="inputs">What names in a formula stand for.</param>
internal sealed class Speech(Wording wording, IReadOnlyList<NamedInput> inputs)
{
    /// <summary>Deeper terms than this are cut short; they have no names and no maker would follow them.</summary>
    private const int Deepest = 24;

    private readonly List<(string, Figure)> _named = [];

    /// <summary>Figures the term names that have sums of their own.</summary>
    public IReadOnlyList<(string Name, Figure Figure)> Named => _named;

    public (string Text, string Remark) Say(Figure figure)
    {
        figure = Resolve(figure);
        switch (figure.Reason)
        {
            case GivenReason given:
                return (given.Name, wording.Origin(given.Origin));
            case LiteralReason literal when literal.Text == wording.Number(figure.Quantity):
                // The number itself stands in its column already.
                return ("", "");
            case NamedReason or LiteralReason:
                return (Names(figure), "");
            case TimesReason once when once.Factor == Rational.One:
                return Say(once.A);
            case ConditionReason condition:
                var (chosen, why) = Say(condition.Chosen);
                var since = condition.Held ? $"since {condition.Condition}" : $"since not {condition.Condition}";
                return (chosen, why.Length == 0 ? since : $"{since}; {why}");
            case RoundedReason rounded:
                return (
                    Names(rounded.Of),
                    wording.Rounding(rounded.Of.Quantity, figure.Quantity, Quantity.Of(rounded.Step), rounded.Way)
                );
            case RoundedNumberReason rounded:
                return (
                    Names(rounded.Of),
                    wording.Rounding(rounded.Of.Quantity, figure.Quantity, Quantity.Of(rounded.Step), rounded.Way)
                );
            case RootReason { Exact: false } root:
                var step = figure.Quantity.IsLength ? "1/640 mm" : "a billionth";
                return (Names(figure), $"root of {wording.NumberWithUnit(root.Of.Quantity)}, rounded to {step}");
            case FormulaReason formula:
                return (formula.Text, wording.Place(formula.Place));
            default:
                return (Names(figure), Numbers(figure));
        }
    }

    /// <summary>The term in names: <c>2 x stile</c>.</summary>
    private string Names(Figure figure) => Spell(figure, Loose, 0, NameOf);

    /// <summary>The term in numbers: <c>2 x 1 3/4</c>, with where the only one given was said.</summary>
    private string Numbers(Figure figure)
    {
        var given = new List<GivenReason>();
        var text = Spell(
            figure,
            Loose,
            0,
            leaf =>
            {
                if (Resolve(leaf).Reason is GivenReason one && !given.Contains(one))
                    given.Add(one);
                return wording.Said(leaf.Quantity);
            }
        );
        if (given.Count == 0)
            return text;
        return given.Count == 1
            ? $"{text}; {wording.Origin(given[0].Origin)}"
            : $"{text}; {string.Join(", ", given.Select(g => $"{g.Name}: {wording.Origin(g.Origin)}"))}";
    }

    private string NameOf(Figure leaf)
    {
        switch (leaf.Reason)
        {
            case NameReason name:
                Note(name.Name, Resolve(leaf));
                return name.Name;
            case NamedReason named:
                Note(named.Name, leaf);
                return named.Name;
            case GivenReason given:
                return given.Name;
            case LiteralReason literal:
                return literal.Text;
            case FormulaReason formula:
                return formula.Text;
            default:
                return wording.Number(leaf.Quantity);
        }
    }

    /// <summary>A figure of a formula's name stands for what the name was; kept under the formula's name for it.</summary>
    private Figure Resolve(Figure figure) =>
        figure.Reason is NameReason name && inputs.FirstOrDefault(i => i.Name == name.Name) is { } input
            ? input.Value.Reason switch
            {
                GivenReason given => input.Value with { Reason = given with { Name = name.Name } },
                NamedReason named => input.Value with { Reason = named with { Name = name.Name } },
                _ => input.Value with { Reason = new NamedReason(name.Name, input.Value) },
            }
            : figure;

    private void Note(string name, Figure figure)
    {
        if (figure.Reason is NamedReason named)
            _named.Add((name, named.Of));
    }

    private const int Loose = 0;
    private const int SumTight = 1;
    private const int ProductTight = 2;

    private string Spell(Figure figure, int tight, int depth, Func<Figure, string> leaf)
    {
        if (depth > Deepest)
            return "…";
        string Inner(Figure of, int inside) => Spell(of, inside, depth + 1, leaf);
        var (text, own) = figure.Reason switch
        {
            SumReason => (SpellSum(figure, f => Inner(f, SumTight)), SumTight),
            TimesReason t when t.Factor == Rational.One => (Inner(t.A, tight), int.MaxValue),
            TimesReason t when t.Factor.Numerator.IsOne => (
                $"{Inner(t.A, ProductTight)} / {Number(t.Factor.Denominator)}",
                ProductTight
            ),
            TimesReason t => ($"{Number(t.Factor)} x {Inner(t.A, ProductTight)}", ProductTight),
            DividedReason d => ($"{Inner(d.A, ProductTight)} / {Divisor(d.Divisor)}", ProductTight),
            ProductReason p => ($"{Inner(p.A, ProductTight)} x {Inner(p.B, ProductTight)}", ProductTight),
            QuotientReason q => ($"{Inner(q.A, ProductTight)} / {Inner(q.B, ProductTight + 1)}", ProductTight),
            ChosenReason c => ($"{c.How} {Listed([.. c.Among.Select(f => Inner(f, Loose))])}", SumTight),
            ConditionReason c => (Inner(c.Chosen, tight), int.MaxValue),
            RoundedReason r => ($"{Inner(r.Of, Loose)} rounded to {wording.Said(Quantity.Of(r.Step))}", SumTight),
            RoundedNumberReason r => ($"{Inner(r.Of, Loose)} rounded to {Number(r.Step)}", SumTight),
            RootReason r => ($"root of ({Inner(r.Of, Loose)})", int.MaxValue),
            _ => (leaf(figure), int.MaxValue),
        };
        return own < tight || (own == SumTight && tight == SumTight) ? $"({text})" : text;
    }

    private static string SpellSum(Figure sum, Func<Figure, string> inner)
    {
        var terms = Term.Flatten(sum);
        return string.Concat(
            terms.Select(
                (t, i) => i == 0 ? (t.Sign == '-' ? "-" : "") + inner(t.Figure) : $" {t.Sign} {inner(t.Figure)}"
            )
        );
    }

    /// <summary>"a, b and c".</summary>
    private static string Listed(IReadOnlyList<string> items) =>
        items.Count == 1 ? items[0] : $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}";

    private string Divisor(Rational divisor) => divisor.IsWhole ? Number(divisor) : $"({Number(divisor)})";

    private string Number(Rational number) => wording.Number(Quantity.Of(number));
}
