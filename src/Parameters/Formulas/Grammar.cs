using Dryfit.Measure;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;

namespace Dryfit.Parameters.Formulas;

/// <summary>
/// The grammar of formulas, loosest first:
/// <code>
/// formula    = "if" condition "then" formula "else" formula | sum
/// condition  = both { "or" both }          both = asked { "and" asked }
/// asked      = "not" asked | sum ( &lt; | &lt;= | &gt; | &gt;= | = | != ) sum
/// sum        = product { ( + | - ) product }
/// product    = value { ( * | / ) value }
/// value      = [ - ] ( number | name | word | function "(" formula { "," formula } ")" | "(" formula ")" )
/// function   = min | max | round | round down | round up | sqrt
/// </code>
/// Each choice is settled by the next token, so nothing is read twice.
/// </summary>
internal static class Grammar
{
    private static readonly TokenListParser<TokenKind, Expression> Nested = Parse.Ref(() => Formula!);

    private static readonly TokenListParser<TokenKind, Expression> Number = Token
        .EqualTo(TokenKind.Number)
        .Select(t => (Expression)new NumberExpression(ReadNumber(t), t.ToStringValue(), At(t)));

    private static readonly TokenListParser<TokenKind, Expression> Word = Token
        .EqualTo(TokenKind.Word)
        .Select(t => (Expression)new WordExpression(t.ToStringValue()[1..^1].Trim(), At(t)));

    private static readonly TokenListParser<TokenKind, Expression> Bracketed =
        from open in Token.EqualTo(TokenKind.Open)
        from inner in Nested
        from close in Token.EqualTo(TokenKind.Close)
        select inner with
        {
            At = At(open).To(At(close)),
        };

    private static readonly TokenListParser<TokenKind, (Expression[] Items, Token<TokenKind> Close)> Arguments =
        from open in Token.EqualTo(TokenKind.Open)
        from items in Nested.AtLeastOnceDelimitedBy(Token.EqualTo(TokenKind.Comma))
        from close in Token.EqualTo(TokenKind.Close)
        select (items, close);

    // "round down (...)" is two words; whether the words are a function's is judged when they are put together.
    private static readonly TokenListParser<TokenKind, Expression> NameOrCall =
        from first in Token.EqualTo(TokenKind.Name)
        from second in IfNext(TokenKind.Name, Token.EqualTo(TokenKind.Name).Select(t => (Token<TokenKind>?)t))
        from arguments in IfNext(TokenKind.Open, Arguments.Select(a => ((Expression[], Token<TokenKind>)?)a))
        select NameOrFunction(first, second, arguments);

    private static readonly TokenListParser<TokenKind, Expression> Bare = input =>
        Next(input) switch
        {
            TokenKind.Number => Number(input),
            TokenKind.Name => NameOrCall(input),
            TokenKind.Word => Word(input),
            _ => Bracketed(input),
        };

    private static readonly TokenListParser<TokenKind, Expression> Negated =
        from minus in Token.EqualTo(TokenKind.Minus)
        from of in Bare
        select (Expression)new NegatedExpression(of, At(minus).To(of.At));

    private static readonly TokenListParser<TokenKind, Expression> Value = input =>
        Next(input) == TokenKind.Minus ? Negated(input) : Bare(input);

    private static readonly TokenListParser<TokenKind, Expression> Product =
        from first in Value
        from rest in Steps(TokenKind.Times, TokenKind.Divide, Value)
        select rest.Length == 0 ? first : new ProductExpression(first, rest, first.At.To(rest[^1].Of.At));

    private static readonly TokenListParser<TokenKind, Expression> Sum =
        from first in Product
        from rest in Steps(TokenKind.Plus, TokenKind.Minus, Product)
        select rest.Length == 0 ? first : new SumExpression(first, rest, first.At.To(rest[^1].Of.At));

    private static readonly TokenListParser<TokenKind, Condition> Compared =
        from left in Sum
        from sign in Token.EqualTo(TokenKind.Compare)
        from right in Sum
        select (Condition)new ComparisonCondition(left, ReadComparison(sign), right, left.At.To(right.At));

    // "not not not ..." is read in one go, so that it costs no depth.
    private static readonly TokenListParser<TokenKind, Condition> Asked =
        from nots in Token.EqualTo(TokenKind.Not).Many()
        from asked in Compared
        select nots.Length % 2 == 0 ? asked : new NotCondition(asked, At(nots[0]).To(asked.At));

    private static readonly TokenListParser<TokenKind, Condition> Both = Joined(Asked, TokenKind.And, all: true);

    private static readonly TokenListParser<TokenKind, Condition> Any = Joined(Both, TokenKind.Or, all: false);

    private static readonly TokenListParser<TokenKind, Expression> Chosen =
        from start in Token.EqualTo(TokenKind.If)
        from condition in Any
        from then in Token.EqualTo(TokenKind.Then)
        from yes in Nested
        from otherwise in Token.EqualTo(TokenKind.Else)
        from no in Nested
        select (Expression)new IfExpression(condition, yes, no, At(start).To(no.At));

    private static readonly TokenListParser<TokenKind, Expression> Formula = input =>
        Next(input) == TokenKind.If ? Chosen(input) : Sum(input);

    /// <summary>A whole text as one formula.</summary>
    public static TokenListParser<TokenKind, Expression> Whole { get; } = Formula.AtEnd();

    private static TokenListParser<TokenKind, Step[]> Steps(
        TokenKind plain,
        TokenKind inverse,
        TokenListParser<TokenKind, Expression> operand
    ) =>
        (
            from sign in Token.Matching<TokenKind>(k => k == plain || k == inverse, "an operator")
            from of in operand
            select new Step(sign.Kind == inverse, of)
        ).Many();

    /// <summary>A parser that is only tried where its first token stands; else it gives nothing and takes nothing.</summary>
    private static TokenListParser<TokenKind, T?> IfNext<T>(TokenKind first, TokenListParser<TokenKind, T?> parser) =>
        input => Next(input) == first ? parser(input) : TokenListParserResult.Value(default(T), input, input);

    /// <summary>The kind of the next token, to choose by: a choice that is tried and fails costs more than the rest of the reading.</summary>
    private static TokenKind? Next(TokenList<TokenKind> input) =>
        input.IsAtEnd ? null : input.ConsumeToken().Value.Kind;

    private static TokenListParser<TokenKind, Condition> Joined(
        TokenListParser<TokenKind, Condition> part,
        TokenKind by,
        bool all
    ) =>
        part.AtLeastOnceDelimitedBy(Token.EqualTo(by))
            .Select(parts =>
                parts.Length == 1 ? parts[0] : new JoinedCondition(all, parts, parts[0].At.To(parts[^1].At))
            );

    private static Expression NameOrFunction(
        Token<TokenKind> first,
        Token<TokenKind>? second,
        (Expression[] Items, Token<TokenKind> Close)? arguments
    )
    {
        var name = second is { } more ? $"{first.ToStringValue()} {more.ToStringValue()}" : first.ToStringValue();
        var named = second is { } last ? At(first).To(At(last)) : At(first);
        if (arguments is not { } given)
            return new NameExpression(name, named);
        return Functions.Find(name) is { } function
            ? new CallExpression(function, given.Items, named.To(At(given.Close)))
            : new UnknownCallExpression(name, named);
    }

    private static Comparison ReadComparison(Token<TokenKind> sign) =>
        sign.ToStringValue() switch
        {
            "<" => Comparison.Less,
            "<=" or "≤" => Comparison.LessOrEqual,
            ">" => Comparison.Greater,
            ">=" or "≥" => Comparison.GreaterOrEqual,
            "!=" or "<>" or "≠" => Comparison.NotEqual,
            _ => Comparison.Equal,
        };

    private static WrittenNumber ReadNumber(Token<TokenKind> token) =>
        LengthText.ReadPrefix(token.Span.Source, token.Position.Absolute, out _, out _)
        ?? throw new InvalidOperationException("The lexer took a number for one that is none.");

    private static Stretch At(Token<TokenKind> token) => new(token.Position.Absolute, token.Span.Length);
}
