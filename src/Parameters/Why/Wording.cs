using System.Globalization;
using System.Numerics;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Parameters.Why;

/// <summary>Numbers and origins in words.</summary>
internal sealed class Wording(LengthFormat format, string? recipeFile)
{
    /// <summary>Parts of a unit that people still say: thirds, sevenths, sixtieths.</summary>
    private const int MostParts = 99;

    /// <summary>Halves of halves go further: 1/1024.</summary>
    private const int MostHalvings = 1024;

    /// <summary>As it stands in the column of numbers: no unit.</summary>
    public string Number(Quantity quantity) =>
        quantity.Dimension switch
        {
            0 => Mixed(quantity.Magnitude) ?? Decimals(quantity.Magnitude),
            1 => format.Write(Length.FromMillimetres(quantity.Magnitude)),
            _ => Decimals(quantity.Magnitude / PerUnit(quantity.Dimension)),
        };

    /// <summary>The same with its unit.</summary>
    public string NumberWithUnit(Quantity quantity)
    {
        var unit = format.Unit == LengthUnit.Inch ? "in" : "mm";
        return quantity.Dimension switch
        {
            0 => Number(quantity),
            1 => $"{Number(quantity)} {unit}",
            2 => $"{Number(quantity)} sq {unit}",
            _ => $"{Number(quantity)} cu {unit}",
        };
    }

    /// <summary>"exactly 17 2/3" where the column's number hides something that can be said; else nothing.</summary>
    public string Exactly(Quantity quantity)
    {
        if (!quantity.IsLength || !format.Hides(Length.FromMillimetres(quantity.Magnitude)))
            return "";
        return Exact(Length.FromMillimetres(quantity.Magnitude)) is { } exact ? $"exactly {exact}" : "";
    }

    /// <summary>What rounding to a step did: "17 2/3 rounded to 1/8, 1/24 left off".</summary>
    public string Rounding(Quantity before, Quantity after, Quantity step, RoundingWay way)
    {
        var how = way switch
        {
            RoundingWay.Down => "rounded down to",
            RoundingWay.Up => "rounded up to",
            _ => "rounded to",
        };
        var hidden = after.Magnitude - before.Magnitude;
        var what = hidden.Sign switch
        {
            0 => "nothing lost",
            < 0 => $"{Said(before with { Magnitude = -hidden })} left off",
            _ => $"{Said(before with { Magnitude = hidden })} added",
        };
        return $"{Said(before)} {how} {Said(step)}, {what}";
    }

    /// <summary>A number inside a remark: exact where that can be said.</summary>
    public string Said(Quantity quantity) =>
        quantity.IsLength && format.Hides(Length.FromMillimetres(quantity.Magnitude))
            ? Exact(Length.FromMillimetres(quantity.Magnitude)) ?? Number(quantity)
            : Number(quantity);

    public string Place(SourcePlace place) => string.Join(", used on ", place.Uses.Prepend(place).Select(LineOf));

    private string LineOf(SourcePlace place) =>
        place.File == ParameterSection.SettingFile ? "set on the command line"
        : recipeFile is null || place.File == recipeFile
            ? string.Create(CultureInfo.InvariantCulture, $"recipe line {place.Line}")
        : string.Create(CultureInfo.InvariantCulture, $"{FileName(place.File)} line {place.Line}");

    public string Origin(Origin origin) =>
        origin switch
        {
            WrittenOrigin written => Place(written.Place),
            RuleOrigin { Place: null } rule => $"shop rule {rule.Rule} (built-in)",
            RuleOrigin rule => $"shop rule {rule.Rule} ({Place(rule.Place)})",
            SetOrigin => "set on the command line",
            TradeOrigin trade => trade.Source,
            _ => throw new InvalidOperationException($"An origin without words: {origin.GetType().Name}"),
        };

    /// <summary>The exact length in as few signs as it takes, with a unit where it is not the maker's own; or null.</summary>
    private string? Exact(Length length)
    {
        if (format.Unit == LengthUnit.Millimetre)
            return Ending(length.Millimetres) ?? Mixed(length.Millimetres) ?? With(" in", Mixed(length.Inches));
        return Mixed(length.Inches)
            ?? With(" mm", Ending(length.Millimetres))
            ?? With(" mm", Mixed(length.Millimetres));
    }

    private static string? With(string unit, string? number) => number is null ? null : number + unit;

    /// <summary><c>17 2/3</c>; null where nobody would say the parts: not halved down from one, and more than 99.</summary>
    private static string? Mixed(Rational number)
    {
        var parts = number.Denominator;
        if (parts > (parts.IsPowerOfTwo ? MostHalvings : MostParts))
            return null;
        var size = Rational.Abs(number);
        var whole = size.Floor();
        var rest = size - whole;
        var sign = number.Sign < 0 ? "-" : "";
        return rest.Sign == 0 ? $"{sign}{whole}"
            : whole.IsZero ? $"{sign}{rest}"
            : $"{sign}{whole} {rest}";
    }

    /// <summary>A decimal of up to four places, or null where it does not end by then.</summary>
    private static string? Ending(Rational number) => (number * 10_000).IsWhole ? Decimals(number, 4) : null;

    /// <summary>Rounded to some places; for areas and numbers that are no sizes.</summary>
    private static string Decimals(Rational number, int places = 2)
    {
        var scaled = (Rational.Abs(number) * BigInteger.Pow(10, places)).Round();
        var figures = scaled.ToString(CultureInfo.InvariantCulture).PadLeft(places + 1, '0');
        var text = $"{figures[..^places]}.{figures[^places..]}".TrimEnd('0').TrimEnd('.');
        return number.Sign < 0 ? "-" + text : text;
    }

    private Rational PerUnit(int dimension)
    {
        var one = Length.From(1, format.Unit).Millimetres;
        return dimension == 2 ? one * one : one * one * one;
    }

    private static string FileName(string path) => path[(path.LastIndexOfAny(['/', '\\']) + 1)..];
}
