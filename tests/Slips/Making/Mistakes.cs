using System.Globalization;
using System.Numerics;
using Dryfit.Measure;

namespace Dryfit.Slips;

/// <summary>A wrong number for a right one: how it came about, and what was cut.</summary>
internal sealed record WrongNumber(string Mistake, Length Cut);

/// <summary>How a maker gets a number wrong, or nearly right. Each gives null where it cannot happen to a size.</summary>
internal static class Mistakes
{
    /// <summary>A mistake that can happen to any length or width.</summary>
    public static WrongNumber? OfASize(Length right, bool inInches, Random chance) =>
        chance.Next(7) switch
        {
            0 => Off("a pencil line off", right, inInches, chance, (1, 32), 1),
            1 => Off("a sixteenth off", right, inInches, chance, (1, 16), 2),
            2 => Off("eighths misread", right, inInches, chance, (chance.Next(1, 5), 8), chance.Next(2, 10)),
            3 => Cut("a kerf", right - (inInches ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3))),
            4 => Off("read from the inch mark", right, inInches, chance, (1, 1), 10),
            5 => DigitsSwapped(right, inInches, chance),
            _ => Off("several inches off", right, inInches, chance, (chance.Next(2, 5), 1), chance.Next(50, 120)),
        };

    /// <summary>A mistake of the planer, or a board of the wrong stack.</summary>
    public static WrongNumber? OfAThickness(Length right, bool inInches, Random chance) =>
        chance.Next(4) switch
        {
            0 => Off("a pencil line off", right, inInches, chance, (1, 32), 1),
            1 => Off("a sixteenth off", right, inInches, chance, (1, 16), 2),
            2 => Off("eighths misread", right, inInches, chance, (1, 8), 3),
            _ => Off("the wrong stack", right, inInches, chance, (1, 4), 6),
        };

    /// <summary>As good as a saw cuts.</summary>
    public static WrongNumber? OfNoWeight(Length right, bool inInches, Random chance) =>
        Moved(
            "a shaving",
            right,
            chance,
            inInches ? Length.FromInches(0, 1, 256) : Length.FromMillimetres(new Rational(1, 10))
        );

    private static WrongNumber? Off(
        string mistake,
        Length right,
        bool inInches,
        Random chance,
        (int Over, int Under) inches,
        int mm
    ) =>
        Moved(
            mistake,
            right,
            chance,
            inInches ? Length.FromInches(0, inches.Over, inches.Under) : Length.FromMillimetres(mm)
        );

    private static WrongNumber? Moved(string mistake, Length right, Random chance, Length by) =>
        Cut(mistake, chance.Next(2) == 0 ? right - by : right + by);

    private static WrongNumber? Cut(string mistake, Length cut) => cut.Sign > 0 ? new(mistake, cut) : null;

    /// <summary>23 written for 32: two digits of the whole inches or millimetres that stand side by side.</summary>
    private static WrongNumber? DigitsSwapped(Length right, bool inInches, Random chance)
    {
        var unit = inInches ? LengthUnit.Inch : LengthUnit.Millimetre;
        var value = right.In(unit);
        var whole = value.Floor();
        if (whole < 10)
            return null;
        var digits = whole.ToString(CultureInfo.InvariantCulture).ToCharArray();
        var at = chance.Next(digits.Length - 1);
        if (digits[at] == digits[at + 1])
            return null;
        (digits[at], digits[at + 1]) = (digits[at + 1], digits[at]);
        var swapped = BigInteger.Parse(new string(digits), CultureInfo.InvariantCulture);
        return Cut("digits swapped", Length.From(value - whole + swapped, unit));
    }
}
