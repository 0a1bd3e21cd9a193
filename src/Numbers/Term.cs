using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Numbers;

/// <summary>A named step of the sum behind a size: how often it counts in it, added or taken away.</summary>
/// <param name="Depth">How many sums down it stands; a slip is likelier near the top.</param>
internal sealed record Term(string Name, Rational Times, Length Value, int Depth)
{
    private const int MostTerms = 200;

    /// <summary>The steps of a figure's sum and of the sums behind it, each once with how often it counts in all.</summary>
    public static IReadOnlyList<Term> Of(Figure figure)
    {
        var terms = new Dictionary<(string, Length), Term>();
        var waiting = new Queue<(Figure Figure, Rational Times, int Depth, IReadOnlyList<NamedInput> Inputs)>();
        waiting.Enqueue((figure, Rational.One, 0, []));
        for (var n = 0; n < MostTerms && waiting.TryDequeue(out var next); n++)
        {
            var (of, times, depth, inputs) = next;
            void Then(Figure f, Rational by, int down = 0) => waiting.Enqueue((f, times * by, depth + down, inputs));
            void Tell(string name)
            {
                if (depth == 0 || !of.Quantity.IsLength)
                    return;
                var key = (name, of.Length);
                terms[key] = terms.TryGetValue(key, out var known)
                    ? known with
                    {
                        Times = known.Times + times,
                    }
                    : new(name, times, of.Length, depth);
            }
            switch (of.Reason)
            {
                case NamedReason named:
                    Tell(named.Name);
                    Then(named.Of, Rational.One, 1);
                    break;
                case GivenReason given:
                    Tell(given.Name);
                    break;
                case NameReason name:
                    Tell(name.Name);
                    if (inputs.FirstOrDefault(input => input.Name == name.Name) is { } input)
                        Then(input.Value, Rational.One, 1);
                    break;
                case SumReason sum:
                    Then(sum.A, Rational.One, depth == 0 ? 1 : 0);
                    Then(sum.B, sum.Negated ? -1 : 1, depth == 0 ? 1 : 0);
                    break;
                case TimesReason multiple:
                    Then(multiple.A, multiple.Factor);
                    break;
                case DividedReason divided:
                    Then(divided.A, Rational.One / divided.Divisor);
                    break;
                case RoundedReason rounded:
                    Then(rounded.Of, Rational.One);
                    break;
                case ConditionReason condition:
                    Then(condition.Chosen, Rational.One);
                    break;
                case ChosenReason chosen when chosen.Among.FirstOrDefault(f => f.Quantity == of.Quantity) is { } taken:
                    Then(taken, Rational.One);
                    break;
                case FormulaReason { Sum: { } sum } formula:
                    waiting.Enqueue((sum, times, depth, formula.Inputs));
                    break;
            }
        }
        return [.. terms.Values.Where(term => term.Times.Sign != 0 && term.Value.Sign > 0)];
    }
}
