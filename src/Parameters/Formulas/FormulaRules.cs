using Dryfit.Findings;

namespace Dryfit.Parameters.Formulas;

/// <summary>What the grammar lets through and a reader would still get wrong.</summary>
internal static class FormulaRules
{
    public static FormulaFault? Check(Expression formula)
    {
        foreach (var part in Parts.Of(formula))
        {
            var fault = part switch
            {
                NameExpression name when name.Name.Contains(' ', StringComparison.Ordinal) => TwoNames(name),
                UnknownCallExpression call => new FormulaFault(
                    $"There is no function {Excerpt.Quote(call.Name)}.",
                    call.At,
                    "one of " + string.Join(", ", Functions.Names) + "; times is written *",
                    NearestWord.To(call.Name, Functions.Names)
                ),
                CallExpression call => ArgumentCount(call),
                ProductExpression product => DividedByFraction(product),
                _ => null,
            };
            if (fault is not null)
                return fault;
        }
        return null;
    }

    private static FormulaFault TwoNames(NameExpression name) =>
        new(
            $"Something is missing between the words of {Excerpt.Quote(name.Name)}.",
            name.At,
            "an operator such as + or -; the words of a name are joined with _",
            name.Name.Replace(' ', '_')
        );

    private static FormulaFault? ArgumentCount(CallExpression call)
    {
        var (least, most, form) = Functions.Takes(call.Function);
        return call.Arguments.Count >= least && call.Arguments.Count <= most
            ? null
            : new FormulaFault(
                $"The brackets hold {call.Arguments.Count} values; that is not what is wanted here.",
                call.At,
                form
            );
    }

    /// <summary><c>width / 1/2</c> may be half of the width or twice the width: nobody should have to guess.</summary>
    private static FormulaFault? DividedByFraction(ProductExpression product)
    {
        foreach (var step in product.Rest)
        {
            if (!step.Inverse || step.Of is not NumberExpression { Number.HasUnit: false } number)
                continue;
            var slash = number.Text.IndexOf('/', StringComparison.Ordinal);
            // A bracketed fraction reaches from bracket to bracket and is clear; so is 3 1/2.
            if (slash > 0 && number.At.Length == number.Text.Length && number.Text[..slash].All(char.IsAsciiDigit))
                return new FormulaFault(
                    $"Divided by {number.Text} can be read in two ways.",
                    number.At,
                    "brackets around what belongs together",
                    $"({number.Text})"
                );
        }
        return null;
    }
}
