using Dryfit.Measure;
using Superpower.Model;

namespace Dryfit.Parameters.Formulas;

internal enum TokenKind
{
    Number,
    Name,
    Word,
    Plus,
    Minus,
    Times,
    Divide,
    Open,
    Close,
    Comma,
    Compare,
    If,
    Then,
    Else,
    And,
    Or,
    Not,
}

/// <summary>
/// Cuts a formula into tokens. Numbers are read as everywhere else in the recipe (<see cref="LengthText"/>), so
/// <c>2 * 3 1/2"</c> means what it says.
/// </summary>
internal static class Lexer
{
    /// <summary>The tokens, or what is wrong with the characters, the brackets or the spaces around a minus.</summary>
    public static IReadOnlyList<Token<TokenKind>> Cut(string text, out FormulaFault? fault)
    {
        var tokens = new List<Token<TokenKind>>();
        var open = new Stack<int>();
        fault = null;
        var i = 0;
        while (i < text.Length && fault is null)
        {
            if (char.IsWhiteSpace(text[i]))
            {
                i++;
                continue;
            }
            var binary = tokens.Count > 0 && EndsOperand(tokens[^1].Kind);
            if (IsMinus(text[i]) && binary && !HasSpaces(text, i))
                fault = TightMinus(text, i);
            else if (Next(text, i, out fault) is var (kind, length))
            {
                fault ??= Bracket(kind, i, open);
                tokens.Add(new Token<TokenKind>(kind, new TextSpan(text, new Position(i, 1, i + 1), length)));
                i += length;
            }
        }
        if (fault is null && open.Count > 0)
            fault = new FormulaFault(
                "A bracket is opened here and never closed.",
                new(open.Peek(), 1),
                "')'; where a comma stands inside [ ] or { }, quotes around the formula"
            );
        return tokens;
    }

    /// <summary>Whether what follows such a token is an operator, not the beginning of a value.</summary>
    public static bool EndsOperand(TokenKind kind) =>
        kind is TokenKind.Number or TokenKind.Name or TokenKind.Word or TokenKind.Close;

    public static bool IsNameStart(char c) => char.IsLetter(c) || c == '_';

    public static bool IsNamePart(char c) => char.IsLetterOrDigit(c) || c is '_' or '.';

    private static (TokenKind Kind, int Length)? Next(string text, int i, out FormulaFault? fault)
    {
        fault = null;
        var c = text[i];
        if (LengthText.StartsNumber(c))
            return Number(text, i, out fault);
        if (IsNameStart(c))
            return Name(text, i, out fault);
        if (IsQuote(c))
            return Word(text, i, out fault);
        var next = i + 1 < text.Length ? text[i + 1] : '\0';
        switch (c)
        {
            case '+':
                return (TokenKind.Plus, 1);
            case '*' or '×' or '·':
                return (TokenKind.Times, 1);
            case '/' or '÷':
                return (TokenKind.Divide, 1);
            case '(':
                return (TokenKind.Open, 1);
            case ')':
                return (TokenKind.Close, 1);
            case ',':
                return (TokenKind.Comma, 1);
            case '<' or '>' or '=' or '!' when next == '=':
                return (TokenKind.Compare, 2);
            case '<' when next == '>':
                return (TokenKind.Compare, 2);
            case '<' or '>' or '=' or '≤' or '≥' or '≠':
                return (TokenKind.Compare, 1);
            case var _ when IsMinus(c):
                return (TokenKind.Minus, 1);
            default:
                fault = new FormulaFault(
                    $"{Shown(text, i)} has no meaning here.",
                    new(i, 1),
                    "a length, a name, or + - * / ( )"
                );
                return null;
        }
    }

    private static (TokenKind, int)? Number(string text, int i, out FormulaFault? fault)
    {
        fault = null;
        if (LengthText.ReadPrefix(text, i, out var end, out var failure) is null)
        {
            fault = new FormulaFault(
                failure!.Message,
                new(failure.Position, failure.Extent),
                failure.Expected,
                failure.Suggestion
            );
            return null;
        }
        return (TokenKind.Number, end - i);
    }

    private static (TokenKind, int)? Name(string text, int i, out FormulaFault? fault)
    {
        fault = null;
        var end = i;
        while (end < text.Length && IsNamePart(text[end]))
            end++;
        var kind = text[i..end] switch
        {
            "if" => TokenKind.If,
            "then" => TokenKind.Then,
            "else" => TokenKind.Else,
            "and" => TokenKind.And,
            "or" => TokenKind.Or,
            "not" => TokenKind.Not,
            _ => TokenKind.Name,
        };
        return (kind, end - i);
    }

    private static (TokenKind, int)? Word(string text, int i, out FormulaFault? fault)
    {
        fault = null;
        for (var end = i + 1; end < text.Length; end++)
        {
            if (IsQuote(text[end]))
                return (TokenKind.Word, end + 1 - i);
        }
        fault = new FormulaFault(
            "A mark stands here without a number before it.",
            new(i, 1),
            "a length such as 3 1/2\""
        );
        return null;
    }

    private static FormulaFault? Bracket(TokenKind kind, int at, Stack<int> open)
    {
        if (kind == TokenKind.Open)
        {
            open.Push(at);
            return open.Count > FormulaLimits.Nesting
                ? new FormulaFault(
                    $"Brackets are nested more than {FormulaLimits.Nesting} deep.",
                    new(at, 1),
                    "the sum in several named steps"
                )
                : null;
        }
        if (kind != TokenKind.Close)
            return null;
        return open.TryPop(out _) ? null : new FormulaFault("This bracket closes nothing.", new(at, 1));
    }

    private static FormulaFault TightMinus(string text, int i)
    {
        var mended = $"{text[..i].TrimEnd()} - {text[(i + 1)..].TrimStart()}";
        return new FormulaFault(
            "Minus needs a space on both sides; a hyphen only joins a whole number and a fraction, as in 3-1/2.",
            new(i, 1),
            "spaces around the minus (the words of a name are joined with _)",
            mended.Length <= 40 ? mended.Trim() : null
        );
    }

    private static bool HasSpaces(string text, int i) =>
        char.IsWhiteSpace(text[i - 1]) && (i + 1 >= text.Length || char.IsWhiteSpace(text[i + 1]));

    private static bool IsMinus(char c) => c is '-' or '\u2212';

    private static bool IsQuote(char c) => c is '"' or '\'' or '\u2018' or '\u2019' or '\u201C' or '\u201D';

    private static string Shown(string text, int i)
    {
        var length = char.IsHighSurrogate(text[i]) && i + 1 < text.Length ? 2 : 1;
        return Findings.Excerpt.Quote(text.Substring(i, length));
    }
}
