using System.Globalization;
using System.Text.RegularExpressions;

namespace Dryfit.Reference.Tests.Published;

/// <summary>
/// Reads numbers as sources print them (<c>1-1/2</c>, <c>3/4</c>, <c>0.688</c>), apart from the code under test.
/// </summary>
public static partial class Printed
{
    public static double Number(string text)
    {
        var sum = 0.0;
        foreach (var part in text.Split('-'))
        {
            var sides = part.Split('/');
            var number = double.Parse(sides[0], CultureInfo.InvariantCulture);
            sum += sides.Length == 2 ? number / double.Parse(sides[1], CultureInfo.InvariantCulture) : number;
        }
        return sum;
    }

    /// <summary>All decimal numbers of a text, in order: <c>0.219 (5.56) - 0.281 (7.14)</c> holds four.</summary>
    public static IReadOnlyList<double> Decimals(string text) =>
        [.. Decimal().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"\d+(\.\d+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Decimal();
}
