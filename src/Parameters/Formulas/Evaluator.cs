using System.Runtime.CompilerServices;
using Dryfit.Measure;

namespace Dryfit.Parameters.Formulas;

/// <summary>
/// Works a formula out, exactly, keeping the sum as figures. Each step gives null where something is wrong; what and
/// where has then been told, once.
/// </summary>
/// <param name="text">The formula as written, to quote conditions from.</param>
/// <param name="unit">The recipe's unit, for bare numbers beside lengths.</param>
/// <param name="names">Gives the figure or word of a name.</param>
/// <param name="report">Takes what is wrong.</param>
internal sealed class Evaluator(string text, LengthUnit unit, INames names, Action<FormulaFault> report)
{
    private readonly Dictionary<string, Figure> _inputs = new(StringComparer.Ordinal);
    private readonly List<NamedInput> _order = [];

    /// <summary>The names used so far with their figures, in the order met.</summary>
    public IReadOnlyList<NamedInput> Inputs => _order;

    public Worked? Work(Expression formula)
    {
        if (!RuntimeHelpers.TryEnsureSufficientExecutionStack())
            return Fail("This leans on too many other sums.", formula.At, "fewer steps from one name to the next");
        var worked = formula switch
        {
            NumberExpression number => Number(number),
            NameExpression name => Name(name),
            WordExpression word => Fail($"'{word.Word}' is a word, not a size.", word.At, "words only beside = or !="),
            NegatedExpression negated => Negated(negated),
            SumExpression sum => Sum(sum),
            ProductExpression product => Product(product),
            CallExpression call => Call(call),
            IfExpression chosen => Chosen(chosen),
            _ => throw new InvalidOperationException($"An expression without meaning: {formula.GetType().Name}"),
        };
        return worked is { } value ? Bounded(value, formula.At) : null;
    }

    private static Worked Number(NumberExpression number) =>
        number.Number.HasUnit
            ? new(
                new(Quantity.Of(number.Number.ToLength(LengthUnit.Millimetre)), new LiteralReason(number.Text)),
                Bare: false
            )
            : new(new(Quantity.Of(number.Number.Magnitude), new LiteralReason(number.Text)), Bare: true);

    private Worked? Name(NameExpression name)
    {
        if (!_inputs.TryGetValue(name.Name, out var figure))
        {
            if (names.Figure(name.Name, name.At, report) is not { } found)
                return null;
            figure = found;
            _inputs.Add(name.Name, figure);
            _order.Add(new NamedInput(name.Name, figure));
        }
        return new(new Figure(figure.Quantity, new NameReason(name.Name)), Bare: false);
    }

    private Worked? Negated(NegatedExpression negated) =>
        Work(negated.Of) is not { } of ? null
        : of.Figure.Reason is LiteralReason literal
            ? new(new(of.Figure.Quantity.Times(-1), new LiteralReason("-" + literal.Text)), of.Bare)
        : new(of.Figure * -1, of.Bare);

    private Worked? Sum(SumExpression sum)
    {
        var total = Work(sum.First);
        var at = sum.First.At;
        foreach (var step in sum.Rest)
        {
            // The rest is looked at even when the first fails: its errors belong into the same report.
            var next = Work(step.Of);
            if (
                total is { } a
                && next is { } b
                && Alike(a, b, step.Of.At, step.Inverse ? "subtract" : "add") is var (left, right)
            )
                total = Bounded(
                    new(step.Inverse ? left.Figure - right.Figure : left.Figure + right.Figure, left.Bare),
                    at.To(step.Of.At)
                );
            else
                total = null;
        }
        return total;
    }

    private Worked? Product(ProductExpression product)
    {
        var total = Work(product.First);
        var at = product.First.At;
        foreach (var step in product.Rest)
        {
            var next = Work(step.Of);
            total =
                total is not { } a || next is not { } b ? null
                : step.Inverse ? Divided(a, b, step.Of.At)
                : Multiplied(a, b);
            if (total is { } whole)
                total = Bounded(whole, at.To(step.Of.At));
        }
        return total;
    }

    private static Worked Multiplied(Worked a, Worked b)
    {
        var bare = a.Bare && b.Bare;
        if (b.Figure.Reason is LiteralReason && b.Dimension == 0)
            return new(a.Figure * b.Magnitude, bare);
        if (a.Figure.Reason is LiteralReason && a.Dimension == 0)
            return new(b.Figure * a.Magnitude, bare);
        return new(
            new Figure(
                new(a.Magnitude * b.Magnitude, a.Dimension + b.Dimension),
                new ProductReason(a.Figure, b.Figure)
            ),
            bare
        );
    }

    private Worked? Divided(Worked a, Worked b, Stretch at)
    {
        if (b.Magnitude.Sign == 0)
            return Fail("This divides by zero.", at, "a divisor other than zero");
        if (a.Bare && b.Dimension > 0)
            return Fail(
                "A number without a unit is divided by a length.",
                at,
                "a unit behind the number, such as 54 in"
            );
        var bare = a.Bare && b.Bare;
        if (b.Figure.Reason is LiteralReason && b.Dimension == 0)
            return new(a.Figure / b.Magnitude, bare);
        return new(
            new Figure(
                new(a.Magnitude / b.Magnitude, a.Dimension - b.Dimension),
                new QuotientReason(a.Figure, b.Figure)
            ),
            bare
        );
    }

    private Worked? Call(CallExpression call)
    {
        var values = call.Arguments.Select(Work).ToList();
        if (values.Any(v => v is null))
            return null;
        var given = values.Select(v => v!.Value).ToList();
        return call.Function switch
        {
            Function.Min or Function.Max => Extreme(call, given),
            Function.Sqrt => Root(call, given[0]),
            _ => Rounded(call, given),
        };
    }

    private Worked? Extreme(CallExpression call, List<Worked> given)
    {
        var smallest = call.Function == Function.Min;
        // One length among them makes all bare numbers lengths.
        var like = given.FirstOrDefault(v => !v.Bare, given[0]);
        for (var i = 0; i < given.Count; i++)
        {
            if (Alike(like, given[i], call.Arguments[i].At, "compare") is not var (_, alike))
                return null;
            given[i] = alike;
        }
        var best = given.Aggregate((a, b) => smallest == (a.Magnitude <= b.Magnitude) ? a : b);
        var how = smallest ? "the smaller of" : "the larger of";
        return new(
            new Figure(best.Figure.Quantity, new ChosenReason(how, [.. given.Select(v => v.Figure)])),
            best.Bare
        );
    }

    private Worked? Root(CallExpression call, Worked of)
    {
        if (of.Magnitude.Sign < 0)
            return Fail("A negative number has no root.", call.At, "a value of zero or above");
        if (of.Dimension is not (0 or 2))
            return Fail(
                $"This takes the root of {of.Kind}.",
                call.At,
                "an area, such as width * width + depth * depth"
            );
        var (root, exact) = Roots.Of(of.Magnitude, of.Dimension == 2 ? Roots.LengthStepMm : Roots.NumberStep);
        return new(new Figure(new(root, of.Dimension / 2), new RootReason(of.Figure, exact)), of.Bare);
    }

    private Worked? Rounded(CallExpression call, List<Worked> given)
    {
        var way = call.Function switch
        {
            Function.RoundDown => RoundingWay.Down,
            Function.RoundUp => RoundingWay.Up,
            _ => RoundingWay.Nearest,
        };
        if (given.Count == 1)
        {
            if (given[0].Dimension > 0)
                return Fail(
                    "The step to round to is missing.",
                    call.At,
                    $"a step, as in round({Quoted(call.Arguments[0].At)}, 1/8)"
                );
            return new(given[0].Figure.RoundTo(Rational.One, way), given[0].Bare);
        }
        if (Alike(given[0], given[1], call.Arguments[1].At, "round") is not var (of, step))
            return null;
        if (step.Magnitude.Sign <= 0)
            return Fail("A step to round to is above zero.", call.Arguments[1].At, "a step such as 1/8");
        return of.Dimension switch
        {
            0 => new(of.Figure.RoundTo(step.Magnitude, way), of.Bare),
            1 => new(of.Figure.RoundTo(Length.FromMillimetres(step.Magnitude), way), Bare: false),
            _ => Fail($"This rounds {of.Kind}.", call.At, "a length or a number"),
        };
    }

    private Worked? Chosen(IfExpression chosen)
    {
        if (Holds(chosen.Condition) is not { } held)
            return null;
        // The side not taken may well divide by zero; it is not worked out.
        return Work(held ? chosen.Then : chosen.Else) is { } value
            ? new(
                new Figure(value.Figure.Quantity, new ConditionReason(Quoted(chosen.Condition.At), held, value.Figure)),
                value.Bare
            )
            : null;
    }

    private bool? Holds(Condition condition)
    {
        switch (condition)
        {
            case NotCondition not:
                return !Holds(not.Of);
            case JoinedCondition joined:
                foreach (var part in joined.Parts)
                {
                    if (Holds(part) is not { } held)
                        return null;
                    if (held != joined.All)
                        return held;
                }
                return joined.All;
            case ComparisonCondition comparison:
                return WordsCompared(comparison, out var known) ? known : SizesCompared(comparison);
            default:
                throw new InvalidOperationException("A condition without meaning.");
        }
    }

    /// <summary>True where a parameter of words stands on one side; the answer is null where the other side is no such word.</summary>
    private bool WordsCompared(ComparisonCondition comparison, out bool? holds)
    {
        holds = null;
        var (subject, other) = (comparison.Left, comparison.Right);
        if (subject is not NameExpression || names.Word(((NameExpression)subject).Name) is null)
            (subject, other) = (other, subject);
        if (subject is not NameExpression name || names.Word(name.Name) is not { } word)
            return false;
        var written = other switch
        {
            WordExpression quoted => quoted.Word,
            NameExpression plain => names.Word(plain.Name)?.Word ?? plain.Name,
            _ => null,
        };
        if (comparison.Comparison is not (Comparison.Equal or Comparison.NotEqual))
            Fail("Words can only be equal or not.", comparison.At, "= or !=");
        else if (written is null || !word.Choices.Contains(written, StringComparer.Ordinal))
            Fail(
                $"'{name.Name}' can never be {Findings.Excerpt.Quote(Quoted(other.At))}.",
                other.At,
                "one of " + string.Join(", ", word.Choices),
                written is null ? null : Findings.NearestWord.To(written, word.Choices)
            );
        else
            holds =
                string.Equals(word.Word, written, StringComparison.Ordinal)
                == (comparison.Comparison == Comparison.Equal);
        return true;
    }

    private bool? SizesCompared(ComparisonCondition comparison)
    {
        var left = Work(comparison.Left);
        var right = Work(comparison.Right);
        if (left is not { } a || right is not { } b || Alike(a, b, comparison.Right.At, "compare") is not var (x, y))
            return null;
        var order = x.Magnitude.CompareTo(y.Magnitude);
        return comparison.Comparison switch
        {
            Comparison.Less => order < 0,
            Comparison.LessOrEqual => order <= 0,
            Comparison.Greater => order > 0,
            Comparison.GreaterOrEqual => order >= 0,
            Comparison.Equal => order == 0,
            _ => order != 0,
        };
    }

    /// <summary>Both in one dimension, bare numbers made to fit; null (and told) where they cannot be.</summary>
    private (Worked, Worked)? Alike(Worked a, Worked b, Stretch at, string verb)
    {
        if (a.Dimension == b.Dimension)
            return (a.Bare && !b.Bare ? a with { Bare = false } : a, b.Bare && !a.Bare ? b with { Bare = false } : b);
        if (a.Bare && b.Dimension == 1)
            return (a.AsLength(unit), b);
        if (b.Bare && a.Dimension == 1)
            return (a, b.AsLength(unit));
        Fail(
            verb switch
            {
                "add" => $"{Worked.KindOf(b.Dimension)} cannot be added to {a.Kind}.",
                "subtract" => $"{Worked.KindOf(b.Dimension)} cannot be taken from {a.Kind}.",
                "round" => $"{a.Kind} cannot be rounded to {b.Kind}.",
                _ => $"{a.Kind} and {b.Kind} cannot be compared.",
            },
            at,
            a.Bare ? "a unit behind the number" : a.Kind
        );
        return null;
    }

    private Worked? Bounded(Worked value, Stretch at)
    {
        var size = Math.Max(value.Magnitude.Numerator.GetBitLength(), value.Magnitude.Denominator.GetBitLength());
        if (size > FormulaLimits.Bits)
            return Fail("The number grows beyond all measure.", at, "a smaller number");
        return value.Dimension is >= 0 and <= 3
            ? value
            : Fail($"This gives {value.Kind}.", at, "a number, a length, an area or a volume");
    }

    private string Quoted(Stretch at) => text.Substring(at.Start, at.Length);

    private Worked? Fail(string message, Stretch at, string? expected = null, string? suggestion = null)
    {
        report(new FormulaFault(char.ToUpperInvariant(message[0]) + message[1..], at, expected, suggestion));
        return null;
    }
}

/// <summary>What names stand for.</summary>
internal interface INames
{
    /// <summary>The figure of a name, worked out if need be; null where there is none, which has then been told.</summary>
    Figure? Figure(string name, Stretch at, Action<FormulaFault> report);

    /// <summary>The word of a parameter of words, or null for every other name.</summary>
    NamedWord? Word(string name);
}

/// <summary>A parameter of words: the one chosen, and all there are.</summary>
internal sealed record NamedWord(string Word, IReadOnlyList<string> Choices);
