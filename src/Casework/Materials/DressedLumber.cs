using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>The section of a board, across its length.</summary>
public sealed record LumberSection(Length Thickness, Length Width);

/// <summary>
/// Dressed softwood lumber is sold by its size before planing: a "2x4" measures 1 1/2 x 3 1/2 in. These are the least
/// sizes of dry lumber (19 % moisture content or less).
/// </summary>
/// <remarks>
/// American Softwood Lumber Standard PS 20, as given by a published table of standard sizes; thicknesses of dimension
/// lumber also in NDS Supplement (2018), Table 1A. Widths of dimension lumber are those of boards, from memory.
/// </remarks>
public static class DressedLumber
{
    /// <summary>Boards: nominal and actual thickness in inches.</summary>
    private static readonly (string Nominal, string Actual)[] BoardThicknesses =
    [
        ("3/8", "5/16"),
        ("1/2", "7/16"),
        ("5/8", "9/16"),
        ("3/4", "5/8"),
        ("1", "3/4"),
        ("1 1/4", "1"),
        ("1 1/2", "1 1/4"),
    ];

    /// <summary>Dimension lumber: nominal and actual thickness in inches.</summary>
    private static readonly (string Nominal, string Actual)[] DimensionThicknesses =
    [
        ("2", "1 1/2"),
        ("2 1/2", "2"),
        ("3", "2 1/2"),
        ("3 1/2", "3"),
        ("4", "3 1/2"),
        ("4 1/2", "4"),
    ];

    /// <summary>Nominal and actual width in inches.</summary>
    private static readonly (string Nominal, string Actual)[] Widths =
    [
        ("2", "1 1/2"),
        ("3", "2 1/2"),
        ("4", "3 1/2"),
        ("5", "4 1/2"),
        ("6", "5 1/2"),
        ("7", "6 1/2"),
        ("8", "7 1/4"),
        ("9", "8 1/4"),
        ("10", "9 1/4"),
        ("11", "10 1/4"),
        ("12", "11 1/4"),
        ("14", "13 1/4"),
        ("16", "15 1/4"),
    ];

    private static readonly Dictionary<Length, Length> ThicknessByNominal = Inches([
        .. BoardThicknesses,
        .. DimensionThicknesses,
    ]);

    private static readonly Dictionary<Length, Length> WidthByNominal = Inches(Widths);

    /// <summary>The nominal thicknesses there are, rising.</summary>
    public static IReadOnlyList<Length> NominalThicknesses { get; } = [.. ThicknessByNominal.Keys.Order()];

    /// <summary>The nominal widths there are, rising.</summary>
    public static IReadOnlyList<Length> NominalWidths { get; } = [.. WidthByNominal.Keys.Order()];

    /// <summary>The actual section of lumber sold by a nominal one, or null where none is made.</summary>
    public static LumberSection? Actual(Length nominalThickness, Length nominalWidth) =>
        ThicknessByNominal.TryGetValue(nominalThickness, out var thickness)
        && WidthByNominal.TryGetValue(nominalWidth, out var width)
            ? new LumberSection(thickness, width)
            : null;

    /// <summary>The actual section by its name, in inches: <c>2x4</c>, <c>1 x 6</c>, <c>5/4 x 6</c>; null where none is made.</summary>
    public static LumberSection? Find(string name)
    {
        var sides = name.ToLowerInvariant().Replace('×', 'x').Split('x');
        return
            sides.Length == 2
            && LengthText.Parse(sides[0], LengthUnit.Inch) is { Ok: true } thickness
            && LengthText.Parse(sides[1], LengthUnit.Inch) is { Ok: true } width
            ? Actual(thickness.Length, width.Length)
            : null;
    }

    private static Dictionary<Length, Length> Inches(IEnumerable<(string Nominal, string Actual)> rows) =>
        rows.ToDictionary(row => Inches(row.Nominal), row => Inches(row.Actual));

    private static Length Inches(string text) => LengthText.Parse(text, LengthUnit.Inch).Length;
}
