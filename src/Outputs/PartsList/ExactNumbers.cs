using System.Globalization;
using System.Numerics;
using Dryfit.Measure;

namespace Dryfit.Outputs.PartsList;

/// <summary>Numbers for files that want decimals.</summary>
internal static class ExactNumbers
{
    private const int MostDecimals = 9;

    /// <summary>Millimetres as a decimal: exact where nine decimals hold it (1/128 in takes seven), else rounded to them.</summary>
    public static string Millimetres(Length length)
    {
        var scaled = (length.Millimetres * BigInteger.Pow(10, MostDecimals)).Round();
        var digits = BigInteger.Abs(scaled).ToString(CultureInfo.InvariantCulture).PadLeft(MostDecimals + 1, '0');
        var text = $"{digits[..^MostDecimals]}.{digits[^MostDecimals..]}".TrimEnd('0').TrimEnd('.');
        return scaled.Sign < 0 ? "-" + text : text;
    }

    /// <summary>A measured number to so many decimals, without needless zeros.</summary>
    public static string Decimal(double number, int decimals) =>
        number.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
}
