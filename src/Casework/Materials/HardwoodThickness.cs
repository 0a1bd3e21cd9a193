using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// Hardwood is sold rough by quarters of an inch (4/4 is one inch) or surfaced on one side (S1S) or two (S2S), and then
/// measures less.
/// </summary>
/// <param name="Rough">Rough thickness, as sawn and dried.</param>
/// <param name="SurfacedOneSide">S1S; null where the table has none.</param>
/// <param name="SurfacedTwoSides">S2S.</param>
/// <remarks>
/// Published table of hardwood lumber thicknesses (grading rules). What a mill delivers may differ: 4/4 S2S is often
/// 15/16 or 3/4 in (common practice). Measure the stock.
/// </remarks>
public sealed record HardwoodThickness(Length Rough, Length? SurfacedOneSide, Length SurfacedTwoSides)
{
    /// <summary>All thicknesses of the table, rising.</summary>
    public static IReadOnlyList<HardwoodThickness> All { get; } =
    [
        Of("3/8", null, "3/16"),
        Of("1/2", "3/8", "5/16"),
        Of("5/8", "1/2", "7/16"),
        Of("3/4", "5/8", "9/16"),
        Of("4/4", "7/8", "13/16"),
        Of("5/4", "1 1/8", "1 1/16"),
        Of("6/4", "1 3/8", "1 5/16"),
        Of("7/4", null, "1 1/2"),
        Of("8/4", "1 13/16", "1 3/4"),
        Of("12/4", "2 13/16", "2 3/4"),
        Of("16/4", "3 13/16", "3 3/4"),
    ];

    /// <summary>The row of a rough thickness (4/4 is one inch), or null where the table has none.</summary>
    public static HardwoodThickness? Find(Length rough) => All.FirstOrDefault(row => row.Rough == rough);

    private static HardwoodThickness Of(string rough, string? one, string two) =>
        new(Inches(rough), one is null ? null : Inches(one), Inches(two));

    private static Length Inches(string text) => LengthText.Parse(text, LengthUnit.Inch).Length;
}
