namespace Dryfit.Parameters.Formulas;

/// <summary>Why a text is no formula, and which stretch of it is at fault.</summary>
internal sealed record FormulaFault(string Message, Stretch At, string? Expected = null, string? Suggestion = null);
