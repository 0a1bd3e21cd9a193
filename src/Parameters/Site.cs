using Dryfit.Parameters.Formulas;
using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>A value of the recipe that is a number or formula, with what became of it.</summary>
/// <param name="names">The names its formula may use.</param>
internal sealed class Site(Scalar scalar, Expression? expression, NameTable names)
{
    public Scalar Scalar { get; } = scalar;

    public NameTable Names { get; } = names;

    /// <summary>Null where the text is no formula.</summary>
    public Expression? Expression { get; } = expression;

    /// <summary>What its place allows; null where that was never said.</summary>
    public Shape? Shape { get; set; }

    public bool NamesChecked { get; set; }

    public bool IsWorked { get; set; }

    /// <summary>An error was reported for it.</summary>
    public bool Refused { get; set; }

    public Worked? Value { get; set; }

    /// <summary>A plain number was asked for, so a number without a unit is one.</summary>
    public bool WantsNumber { get; set; }

    public IReadOnlyList<NamedInput> Inputs { get; set; } = [];

    /// <summary>A number with or without a unit and minus, and nothing else.</summary>
    public bool IsPlainNumber => Expression is NumberExpression or NegatedExpression { Of: NumberExpression };
}
