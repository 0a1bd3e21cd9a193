namespace Dryfit.Parameters;

/// <summary>
/// What a figure rests on, for whoever asks whether two figures that nearly agree were meant to: where they are worked out
/// in one way, a number written twice made the difference, and one of the two is likely a slip; where they are worked out
/// in different ways it is meant.
/// </summary>
/// <param name="Named">The names that stand in formulas, of parameters and of sizes; each once, in order.</param>
/// <param name="IsRounded">Whether something in it was rounded to a step by request.</param>
public sealed record Grounds(IReadOnlyList<string> Named, bool IsRounded)
{
    public static Grounds Of(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var named = new SortedSet<string>(StringComparer.Ordinal);
        var isRounded = false;
        // One figure goes into many sums: each is looked at once.
        var seen = new HashSet<Reason>(ReferenceEqualityComparer.Instance);
        var waiting = new Stack<Figure>([figure]);
        while (waiting.TryPop(out var next))
        {
            if (!seen.Add(next.Reason))
                continue;
            isRounded |= next.Reason is RoundedReason or RoundedNumberReason;
            if (next.Reason is FormulaReason formula)
                named.UnionWith(formula.Inputs.Select(input => input.Name));
            foreach (var inner in next.Reason.Within())
                waiting.Push(inner);
        }
        return new([.. named], isRounded);
    }

    /// <summary>
    /// Whether two figures are the same sum of the same things: only the numbers that were written for them, in the recipe or in a
    /// formula, may differ.
    /// </summary>
    public static bool AreAlike(Figure a, Figure b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var seen = new HashSet<(Reason, Reason)>(ByReference.Instance);
        var waiting = new Stack<(Figure, Figure)>([(a, b)]);
        while (waiting.TryPop(out var pair))
        {
            var (one, other) = (pair.Item1.Reason, pair.Item2.Reason);
            if (ReferenceEquals(one, other) || !seen.Add((one, other)))
                continue;
            if (!Equals(Kind(one), Kind(other)))
                return false;
            var (within, theirs) = (one.Within().ToList(), other.Within().ToList());
            if (within.Count != theirs.Count)
                return false;
            foreach (var inner in within.Zip(theirs))
                waiting.Push(inner);
        }
        return true;
    }

    /// <summary>What is done in one step, without the figures it is done with.</summary>
    private static object Kind(Reason reason) =>
        reason switch
        {
            // What is written is named after what it is written for: "base height", "upper height".
            GivenReason { Origin: WrittenOrigin } given => ("written", given.Name[(given.Name.LastIndexOf(' ') + 1)..]),
            GivenReason given => ("given", given.Name),
            NameReason name => ("name", name.Name),
            SumReason sum => ("sum", sum.Negated),
            TimesReason times => ("times", times.Factor),
            DividedReason divided => ("divided", divided.Divisor),
            ChosenReason chosen => ("chosen", chosen.How),
            ConditionReason condition => ("condition", condition.Held),
            FormulaReason formula => ("formula", string.Join(' ', formula.Inputs.Select(input => input.Name))),
            _ => reason.GetType(),
        };

    /// <summary>Reasons are compared as the things they are: to compare all they hold would go through whole sums again and again.</summary>
    private sealed class ByReference : IEqualityComparer<(Reason, Reason)>
    {
        public static ByReference Instance { get; } = new();

        public bool Equals((Reason, Reason) x, (Reason, Reason) y) =>
            ReferenceEquals(x.Item1, y.Item1) && ReferenceEquals(x.Item2, y.Item2);

        public int GetHashCode((Reason, Reason) pair) =>
            HashCode.Combine(
                System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(pair.Item1),
                System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(pair.Item2)
            );
    }
}
