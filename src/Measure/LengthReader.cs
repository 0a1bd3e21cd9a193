namespace Dryfit.Measure;

/// <summary>
/// Reads one number with its unit, left to right, looking a fraction or a unit ahead and never further back. It stops
/// before whatever cannot belong to the number, and fails on what can only be a slip.
/// </summary>
internal ref struct LengthReader
{
    /// <summary>Enough for any length to a nanometre, and few enough for exact 64-bit sums.</summary>
    private const int MostDigits = 12;

    private readonly ReadOnlySpan<char> _text;

    public LengthReader(ReadOnlySpan<char> text, int start)
    {
        _text = text;
        Position = start;
    }

    /// <summary>The first position not yet read.</summary>
    public int Position { get; private set; }

    public LengthFailure? Failure { get; private set; }

    public WrittenNumber? Read()
    {
        var start = Position;
        if (ReadAmount() is not { } amount || ReadUnit() is not { } unit)
            return null;
        var number = new WrittenNumber(amount, unit);
        if (unit == WrittenUnit.Foot && InchesFollow())
        {
            if (ReadInches(start, amount) is not { } inches)
                return null;
            number = new WrittenNumber((amount * 12) + inches, WrittenUnit.Inch);
        }
        if (LengthSigns.IsWordCharacter(Peek()) || LengthSigns.IsVulgarFraction(Peek()))
            return Fail(LengthMessages.Unexpected(_text, Position));
        if (number.HasUnit && number.ToLength(LengthUnit.Millimetre) > LengthText.Longest)
            return Fail(LengthMessages.TooLong(start, Position - start));
        return number;
    }

    /// <summary>A number without its unit: whole, decimal, fraction, or whole and fraction.</summary>
    private Rational? ReadAmount()
    {
        var first = Peek();
        if (LengthSigns.IsVulgarFraction(first))
        {
            Position++;
            return LengthSigns.VulgarFraction(first);
        }
        if (first == LengthSigns.OneOver)
            return ReadOneOver();
        if (first == '.')
            return ReadDecimals(0);
        if (!char.IsAsciiDigit(first))
            return FailAmount(LengthMessages.NoNumber(_text, Position));

        if (ReadDigits() is not { } whole)
            return null;
        if (Peek() == '.')
            return ReadDecimals(whole);
        if (FractionFollows(Position))
            return ReadFractionOf(whole);
        return ReadJoinedFraction(whole);
    }

    /// <summary>What follows a whole number as its fraction: a sign at once, or a space or hyphen and a fraction.</summary>
    private Rational? ReadJoinedFraction(long whole)
    {
        var hyphen = LengthSigns.IsHyphen(Peek());
        var next = hyphen ? Position + 1 : AfterSpaces();
        var sign = At(next);
        if (LengthSigns.IsVulgarFraction(sign))
        {
            Position = next + 1;
            return whole + LengthSigns.VulgarFraction(sign);
        }
        if (sign == LengthSigns.OneOver)
        {
            Position = next;
            return whole + ReadOneOver();
        }
        var digits = AfterDigits(next);
        if (next == Position || digits == next || !FractionFollows(digits))
            return whole;

        Position = next;
        if (ReadDigits() is not { } numerator || ReadFractionOf(numerator) is not { } fraction)
            return null;
        if (fraction >= 1)
            return FailAmount(LengthMessages.ImproperAfterWhole(_text, next, Position - next, hyphen));
        return whole + fraction;
    }

    /// <summary>The slash and the number under it; the position is at the slash.</summary>
    private Rational? ReadFractionOf(long numerator)
    {
        Position++;
        return ReadDenominator() is { } denominator ? new Rational(numerator, denominator) : null;
    }

    private Rational? ReadOneOver()
    {
        Position++;
        if (!char.IsAsciiDigit(Peek()))
            return FailAmount(LengthMessages.NoDenominator(Position));
        return ReadDenominator() is { } denominator ? new Rational(1L, denominator) : null;
    }

    private long? ReadDenominator()
    {
        var start = Position;
        if (ReadDigits() is not { } denominator)
            return null;
        if (denominator == 0)
            Failure = LengthMessages.ZeroDenominator(start, Position - start);
        else if (LengthSigns.IsSlash(Peek()) && char.IsAsciiDigit(At(Position + 1)))
            Failure = LengthMessages.SecondSlash(Position);
        return Failure is null ? denominator : null;
    }

    /// <summary>The point and the digits behind it; the position is at the point.</summary>
    private Rational? ReadDecimals(long whole)
    {
        Position++;
        if (!char.IsAsciiDigit(Peek()))
            return FailAmount(LengthMessages.NoDigitAfterPoint(_text, Position));
        var start = Position;
        if (ReadDigits() is not { } decimals)
            return null;
        if (Peek() == '.')
            return FailAmount(LengthMessages.SecondPoint(Position));
        var scale = 1L;
        for (var i = start; i < Position; i++)
            scale *= 10;
        return whole + new Rational(decimals, scale);
    }

    private long? ReadDigits()
    {
        var start = Position;
        var end = AfterDigits(start);
        if (end - start > MostDigits)
        {
            Failure = LengthMessages.TooManyDigits(start, end - start, MostDigits);
            return null;
        }
        var value = 0L;
        for (; Position < end; Position++)
            value = (value * 10) + (_text[Position] - '0');
        return value;
    }

    /// <summary>The unit behind the number, if there is one; null where something stuck to the number is no unit.</summary>
    private WrittenUnit? ReadUnit()
    {
        var start = AfterSpaces();
        var mark = At(start);
        if (LengthSigns.IsInchMark(mark))
            return Take(start + 1, WrittenUnit.Inch);
        if (LengthSigns.IsFootMark(mark))
        {
            // Two foot marks of a kind are how an inch mark is typed where there is none.
            return At(start + 1) == mark ? Take(start + 2, WrittenUnit.Inch) : Take(start + 1, WrittenUnit.Foot);
        }

        var end = start;
        while (char.IsLetter(At(end)))
            end++;
        var unit = UnitWords.Find(_text[start..end]);
        var goesOn = LengthSigns.IsWordCharacter(At(end)) && !(unit == WrittenUnit.Foot && char.IsAsciiDigit(At(end)));
        if (unit == WrittenUnit.None || goesOn)
        {
            // After a space it is a word of the text around; stuck to the number it can only be a slip.
            if (end == start || start > Position)
                return WrittenUnit.None;
            Failure = LengthMessages.UnknownUnit(_text, start);
            return null;
        }
        var abbreviated = unit is WrittenUnit.Inch or WrittenUnit.Foot && end - start == 2 && At(end) == '.';
        return Take(abbreviated ? end + 1 : end, unit);
    }

    private bool InchesFollow() => LengthSigns.StartsNumber(At(InchesStart()));

    private readonly int InchesStart() => LengthSigns.IsHyphen(Peek()) ? Position + 1 : AfterSpaces();

    /// <summary>The inches behind feet; the position is behind the feet.</summary>
    private Rational? ReadInches(int feetStart, Rational feet)
    {
        if (!feet.IsWhole)
            return FailAmount(LengthMessages.BrokenFeet(feetStart, Position - feetStart));
        var start = Position = InchesStart();
        if (ReadAmount() is not { } inches || ReadUnit() is not { } unit)
            return null;
        if (unit is not (WrittenUnit.Inch or WrittenUnit.None))
            return FailAmount(LengthMessages.NotInchesAfterFeet(start, Position - start));
        if (inches >= 12)
            return FailAmount(LengthMessages.TwelveInches(start, Position - start));
        return inches;
    }

    /// <summary>Whether a slash and a whole number stand at a position; with a decimal there it is no fraction.</summary>
    private readonly bool FractionFollows(int position)
    {
        var end = AfterDigits(position + 1);
        return LengthSigns.IsSlash(At(position))
            && end > position + 1
            && !(At(end) == '.' && char.IsAsciiDigit(At(end + 1)));
    }

    private readonly char Peek() => At(Position);

    /// <summary>The character at a position; NUL behind the end, which no number contains.</summary>
    private readonly char At(int position) => position < _text.Length ? _text[position] : '\0';

    private readonly int AfterSpaces()
    {
        var end = Position;
        while (LengthSigns.IsSpace(At(end)))
            end++;
        return end;
    }

    private readonly int AfterDigits(int position)
    {
        while (char.IsAsciiDigit(At(position)))
            position++;
        return position;
    }

    private WrittenUnit Take(int end, WrittenUnit unit)
    {
        Position = end;
        return unit;
    }

    private Rational? FailAmount(LengthFailure failure)
    {
        Failure = failure;
        return null;
    }

    private WrittenNumber? Fail(LengthFailure failure)
    {
        Failure = failure;
        return null;
    }
}
