using System.Globalization;
using System.Numerics;
using Dryfit.Measure;

namespace Dryfit.Outputs.PartsList;

/// <summary>Numbers for files that want decimals.</summary>
internal static class ExactNumbers
{
    /// <summary>Millimetres as a decimal: exact where nine decimals hold it (1/128 in takes seven), else rounded to them.</summary>
    public static decimal Millimetres(Length length)
    {
        const decimal Billion = 1_000_000_000;
        return (decimal)(length.Millimetres * new BigInteger(Billion)).Round() / Billion;
    }

    /// <summary>A measured number to so many decimals, without needless zeros.</summary>
    public static string Decimal(double number, int decimals) =>
        number.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
}
