using System.Globalization;
using Dryfit.Measure;

namespace Dryfit.Outputs.CutList;

/// <summary>Amounts of stock in the maker's own measures. Rounded here, for the eye only.</summary>
internal static class Amounts
{
    private const double SquareMmPerSquareFoot = 304.8 * 304.8; // a foot is 304.8 mm exactly
    private const double SquareMmPerSquareMetre = 1e6;
    private const double KgPerPound = 0.45359237; // international pound, exactly
    private const double MmPerFoot = 304.8;
    private const double MmPerMetre = 1000;

    /// <summary>"5.2 sq ft" or "0.48 m²".</summary>
    public static string Area(double squareMm, LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? Write(squareMm / SquareMmPerSquareFoot, "0.#", "sq ft")
            : Write(squareMm / SquareMmPerSquareMetre, "0.##", "m²");

    /// <summary>"12.4 ft" or "3.8 m", of strips that are bought by their length.</summary>
    public static string Run(double mm, LengthUnit unit) =>
        unit == LengthUnit.Inch ? Write(mm / MmPerFoot, "0.#", "ft") : Write(mm / MmPerMetre, "0.##", "m");

    /// <summary>"3.1 lb" or "1.4 kg".</summary>
    public static string Mass(double kg, LengthUnit unit) =>
        unit == LengthUnit.Inch ? Write(kg / KgPerPound, "0.#", "lb") : Write(kg, "0.#", "kg");

    /// <summary>"7.3 board feet".</summary>
    public static string BoardFeet(Rational boardFeet) => Write(boardFeet.ToDouble(), "0.#", "board feet");

    /// <summary>"0.084 m³".</summary>
    public static string Volume(double cubicMm) => Write(cubicMm / 1e9, "0.###", "m³");

    /// <summary>What rounds to nothing but is something is written as less than the last place.</summary>
    private static string Write(double amount, string digits, string unit)
    {
        var text = amount.ToString(digits, CultureInfo.InvariantCulture);
        if (amount > 0 && string.Equals(text, "0", StringComparison.Ordinal))
            text = "under " + digits[..^1].Replace('#', '0') + "1";
        return $"{text} {unit}";
    }
}
