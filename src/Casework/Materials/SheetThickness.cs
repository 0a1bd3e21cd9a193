using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// What sheets sold by a nominal thickness measure. A dado or groove cut to the nominal number is loose: measure the sheet
/// before cutting.
/// </summary>
public static class SheetThickness
{
    private static readonly Length OneThirtySecond = Length.FromInches(0, 1, 32);
    private static readonly Length ThirteenSixteenths = Length.FromInches(0, 13, 16);
    private static readonly Rational FivePercent = new(1, 20);

    /// <summary>Birch plywood: nominal and average actual thickness in millimetres.</summary>
    private static readonly Dictionary<Length, Length> Birch = new (string Nominal, string Actual)[]
    {
        ("4", "3.8"),
        ("6.5", "6.4"),
        ("9", "9.2"),
        ("12", "12"),
        ("15", "14.9"),
        ("18", "17.7"),
        ("21", "20.5"),
        ("24", "23.4"),
        ("27", "26.5"),
        ("30", "29.4"),
    }.ToDictionary(row => Millimetres(row.Nominal), row => Millimetres(row.Actual));

    /// <summary>
    /// Average thickness of birch plywood of a nominal one, or null where it is not made. Source: birch plywood data
    /// sheet (distributor).
    /// </summary>
    public static Length? BirchPlywood(Length nominal) => Birch.TryGetValue(nominal, out var actual) ? actual : null;

    /// <summary>
    /// The least and the most a plywood panel of a performance category may measure, unsanded, touch sanded or overlaid:
    /// 1/32 in either way up to 13/16 in, 5 % above. Source: US product standard PS 1, table of performance categories,
    /// note 1, at 9 % moisture content. Furniture panels that are sanded run thinner by common practice.
    /// </summary>
    /// <param name="category">The category, a length: 23/32 in, 3/4 in.</param>
    public static (Length Least, Length Most) PerformanceCategory(Length category)
    {
        var tolerance = category <= ThirteenSixteenths ? OneThirtySecond : category * FivePercent;
        return (category - tolerance, category + tolerance);
    }

    private static Length Millimetres(string text) => LengthText.Parse(text, LengthUnit.Millimetre).Length;
}
