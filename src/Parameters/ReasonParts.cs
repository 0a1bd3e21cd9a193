namespace Dryfit.Parameters;

/// <summary>What a reason is made of, for whoever follows a figure back to where it was said.</summary>
public static class ReasonParts
{
    /// <summary>The figures that a reason is made of, in the order of its sum; none for what was given.</summary>
    public static IEnumerable<Figure> Within(this Reason reason) =>
        reason switch
        {
            NamedReason named => [named.Of],
            SumReason sum => [sum.A, sum.B],
            TimesReason times => [times.A],
            DividedReason divided => [divided.A],
            ProductReason product => [product.A, product.B],
            QuotientReason quotient => [quotient.A, quotient.B],
            ChosenReason chosen => chosen.Among,
            ConditionReason condition => [condition.Chosen],
            RoundedReason rounded => [rounded.Of],
            RoundedNumberReason rounded => [rounded.Of],
            RootReason root => [root.Of],
            FormulaReason { Sum: { } sum } formula => [sum, .. formula.Inputs.Select(input => input.Value)],
            FormulaReason formula => formula.Inputs.Select(input => input.Value),
            _ => [],
        };
}
