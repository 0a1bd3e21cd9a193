using Dryfit.Measure;

namespace Dryfit.Parameters.Formulas;

/// <summary>A stretch of a formula's text, counted from 0 in UTF-16 units.</summary>
internal readonly record struct Stretch(int Start, int Length)
{
    public int End => Start + Length;

    public Stretch To(Stretch last) => new(Start, last.End - Start);
}

/// <summary>A formula taken apart. Sums and products hold all their terms in one list, so that long ones are not deep.</summary>
internal abstract record Expression(Stretch At);

/// <summary>A number as written, with its unit if it has one.</summary>
internal sealed record NumberExpression(WrittenNumber Number, string Text, Stretch At) : Expression(At);

/// <summary>A name: <c>width</c>, <c>base.depth</c>.</summary>
internal sealed record NameExpression(string Name, Stretch At) : Expression(At);

/// <summary>A word in quotes, to compare a parameter of words with.</summary>
internal sealed record WordExpression(string Word, Stretch At) : Expression(At);

internal sealed record NegatedExpression(Expression Of, Stretch At) : Expression(At);

internal sealed record SumExpression(Expression First, IReadOnlyList<Step> Rest, Stretch At) : Expression(At);

internal sealed record ProductExpression(Expression First, IReadOnlyList<Step> Rest, Stretch At) : Expression(At);

/// <summary>One more term or factor. <paramref name="Inverse"/> is true for minus and for division.</summary>
internal sealed record Step(bool Inverse, Expression Of);

internal sealed record CallExpression(Function Function, IReadOnlyList<Expression> Arguments, Stretch At)
    : Expression(At);

internal sealed record IfExpression(Condition Condition, Expression Then, Expression Else, Stretch At) : Expression(At);

internal enum Function
{
    Min,
    Max,
    Round,
    RoundDown,
    RoundUp,
    Sqrt,
}

/// <summary>What an if asks.</summary>
internal abstract record Condition(Stretch At);

internal sealed record ComparisonCondition(Expression Left, Comparison Comparison, Expression Right, Stretch At)
    : Condition(At);

/// <summary>All of them, or any of them.</summary>
internal sealed record JoinedCondition(bool All, IReadOnlyList<Condition> Parts, Stretch At) : Condition(At);

internal sealed record NotCondition(Condition Of, Stretch At) : Condition(At);

internal enum Comparison
{
    Less,
    LessOrEqual,
    Greater,
    GreaterOrEqual,
    Equal,
    NotEqual,
}

/// <summary>A name with brackets behind it that is no function; the rules refuse it.</summary>
internal sealed record UnknownCallExpression(string Name, Stretch At) : Expression(At);
