using Dryfit.Findings;
using Dryfit.Measure;
using Superpower.Model;

namespace Dryfit.Parameters.Formulas;

/// <summary>Reads the text of a formula.</summary>
internal static class FormulaText
{
    /// <summary>The formula, or null with what is wrong with its first wrong place.</summary>
    public static Expression? Parse(string text, out FormulaFault? fault)
    {
        if (text.Length > FormulaLimits.Characters)
        {
            fault = new FormulaFault(
                $"A formula has at most {FormulaLimits.Characters} characters.",
                new(0, 1),
                "the sum in several named steps"
            );
            return null;
        }
        if (PlainNumber(text) is { } number)
        {
            fault = null;
            return number;
        }
        var tokens = Lexer.Cut(text, out fault);
        fault ??= CheckIfs(tokens);
        if (fault is null && tokens.Count == 0)
            fault = new FormulaFault("A value is missing here.", new(0, 1), "a length such as 3 1/2, or a formula");
        if (fault is not null)
            return null;

        var result = Grammar.Whole(new TokenList<TokenKind>([.. tokens]));
        if (!result.HasValue)
        {
            fault = Misplaced(text, tokens, result.ErrorPosition);
            return null;
        }
        fault = FormulaRules.Check(result.Value);
        return fault is null ? result.Value : null;
    }

    /// <summary>Most values are a number and nothing else; they need no grammar.</summary>
    private static NumberExpression? PlainNumber(string text) =>
        text.Length > 0
        && LengthText.StartsNumber(text[0])
        && LengthText.ReadPrefix(text, 0, out var end, out _) is { } number
        && end == text.Length
            ? new NumberExpression(number, text, new(0, end))
            : null;

    private static FormulaFault? CheckIfs(IReadOnlyList<Token<TokenKind>> tokens)
    {
        var ifs = tokens.Where(t => t.Kind == TokenKind.If).ToList();
        if (ifs.Count > FormulaLimits.Nesting)
            return new FormulaFault(
                $"A formula has at most {FormulaLimits.Nesting} ifs.",
                At(ifs[FormulaLimits.Nesting]),
                "the sum in several named steps"
            );
        var thens = tokens.Count(t => t.Kind == TokenKind.Then);
        var elses = tokens.Count(t => t.Kind == TokenKind.Else);
        if (thens == ifs.Count && elses == ifs.Count)
            return null;
        var first = tokens.First(t => t.Kind is TokenKind.If or TokenKind.Then or TokenKind.Else);
        return new FormulaFault("An 'if' needs its 'then' and its 'else'.", At(first), "if width > 36 then 3 else 2");
    }

    private static FormulaFault Misplaced(string text, IReadOnlyList<Token<TokenKind>> tokens, Position position)
    {
        var at = position.HasValue ? position.Absolute : text.Length;
        var index = 0;
        while (index < tokens.Count && tokens[index].Position.Absolute < at)
            index++;
        var afterOperand = index > 0 && Lexer.EndsOperand(tokens[index - 1].Kind);
        var expected = afterOperand
            ? "an operator such as + or -, or the end"
            : "a length, a number, a name or a bracket";
        if (index == tokens.Count)
            return new FormulaFault("The formula ends too early.", At(tokens[^1]), expected);
        var found = tokens[index];
        var shown = Excerpt.Quote(found.ToStringValue());
        if (!afterOperand)
            return new FormulaFault($"{shown} cannot stand here; a value is missing.", At(found), expected);
        return Begins(found.Kind)
            ? new FormulaFault(
                $"Something is missing between {Excerpt.Quote(tokens[index - 1].ToStringValue())} and {shown}.",
                At(found),
                expected
            )
            : new FormulaFault($"{shown} cannot stand here.", At(found), expected);
    }

    private static bool Begins(TokenKind kind) =>
        kind is TokenKind.Number or TokenKind.Name or TokenKind.Word or TokenKind.Open;

    private static Stretch At(Token<TokenKind> token) => new(token.Position.Absolute, token.Span.Length);
}
