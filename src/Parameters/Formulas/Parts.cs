namespace Dryfit.Parameters.Formulas;

/// <summary>Walks a formula.</summary>
internal static class Parts
{
    /// <summary>The formula and everything in it, from left to right.</summary>
    public static IEnumerable<Expression> Of(Expression formula)
    {
        var left = new Stack<Expression>([formula]);
        while (left.TryPop(out var part))
        {
            yield return part;
            foreach (var child in Children(part).Reverse())
                left.Push(child);
        }
    }

    /// <summary>The comparisons of a formula's ifs.</summary>
    public static IEnumerable<ComparisonCondition> Comparisons(Expression formula) =>
        Of(formula).OfType<IfExpression>().SelectMany(i => Comparisons(i.Condition));

    private static IEnumerable<ComparisonCondition> Comparisons(Condition condition) =>
        condition switch
        {
            ComparisonCondition comparison => [comparison],
            JoinedCondition joined => joined.Parts.SelectMany(Comparisons),
            NotCondition not => Comparisons(not.Of),
            _ => [],
        };

    private static IEnumerable<Expression> Children(Expression part) =>
        part switch
        {
            NegatedExpression negated => [negated.Of],
            SumExpression sum => [sum.First, .. sum.Rest.Select(s => s.Of)],
            ProductExpression product => [product.First, .. product.Rest.Select(s => s.Of)],
            CallExpression call => call.Arguments,
            IfExpression chosen =>
            [
                .. Comparisons(chosen.Condition).SelectMany(c => new[] { c.Left, c.Right }),
                chosen.Then,
                chosen.Else,
            ],
            _ => [],
        };
}
