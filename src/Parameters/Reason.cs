using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Parameters;

/// <summary>Why a figure is what it is.</summary>
public abstract record Reason;

/// <summary>It was said somewhere: the recipe, a parameter, a shop rule, a measurement, the maker's own cut.</summary>
public sealed record GivenReason(string Name, Origin Origin) : Reason;

/// <summary>A number that stands in a formula, as written there.</summary>
public sealed record LiteralReason(string Text) : Reason;

/// <summary>A named step: the name heads the sum of <paramref name="Of"/>.</summary>
public sealed record NamedReason(string Name, Figure Of) : Reason;

/// <summary>A + B, or A - B.</summary>
public sealed record SumReason(Figure A, Figure B, bool Negated) : Reason;

public sealed record TimesReason(Figure A, Rational Factor) : Reason;

public sealed record DividedReason(Figure A, Rational Divisor) : Reason;

/// <summary>A x B where both have reasons of their own.</summary>
public sealed record ProductReason(Figure A, Figure B) : Reason;

/// <summary>A / B where both have reasons of their own.</summary>
public sealed record QuotientReason(Figure A, Figure B) : Reason;

/// <summary>One of several: "the smaller of", "the larger of", "if wider than".</summary>
public sealed record ChosenReason(string How, IReadOnlyList<Figure> Among) : Reason;

/// <summary>What a condition chose: "since width > 900".</summary>
/// <param name="Condition">The condition as written in the formula.</param>
/// <param name="Held">Whether it held.</param>
/// <param name="Chosen">The side that was taken.</param>
public sealed record ConditionReason(string Condition, bool Held, Figure Chosen) : Reason;

/// <summary>Rounded to a step, by request.</summary>
public sealed record RoundedReason(Figure Of, Length Step, RoundingWay Way = RoundingWay.Nearest) : Reason;

/// <summary>A plain number rounded to a step, by request.</summary>
public sealed record RoundedNumberReason(Figure Of, Rational Step, RoundingWay Way) : Reason;

/// <summary>Which multiple of the step is taken.</summary>
public enum RoundingWay
{
    /// <summary>The nearest; a half step goes away from zero.</summary>
    Nearest,

    /// <summary>The next below, or the figure itself.</summary>
    Down,

    /// <summary>The next above, or the figure itself.</summary>
    Up,
}

/// <summary>A square root, exact where there is an exact one and otherwise rounded once to <see cref="Roots"/>' step.</summary>
public sealed record RootReason(Figure Of, bool Exact) : Reason;

/// <summary>A formula of the recipe: its text as written and the figures its names stood for.</summary>
public sealed record FormulaReason(string Text, IReadOnlyList<NamedInput> Inputs, SourcePlace Place) : Reason
{
    /// <summary>The same sum step by step, its names standing as <see cref="NameReason"/>; null where it is not known.</summary>
    public Figure? Sum { get; init; }
}

/// <summary>A name in a formula; its own sum stands under <see cref="FormulaReason.Inputs"/>.</summary>
public sealed record NameReason(string Name) : Reason;

/// <summary>A name in a formula with the figure it stood for.</summary>
public sealed record NamedInput(string Name, Figure Value);

/// <summary>Where a given figure was said.</summary>
public abstract record Origin;

/// <summary>A line of the recipe or of the shop file.</summary>
public sealed record WrittenOrigin(SourcePlace Place) : Origin;

/// <summary>A rule of the shop, by its name in the shop file; the place is null where it is the built-in default.</summary>
public sealed record RuleOrigin(string Rule, SourcePlace? Place) : Origin;

/// <summary>A parameter's value set on the command line.</summary>
public sealed record SetOrigin(string Text) : Origin;

/// <summary>A figure of the trade built into the tool, with its source ("common practice", a standard, a table).</summary>
public sealed record TradeOrigin(string Source) : Origin;
