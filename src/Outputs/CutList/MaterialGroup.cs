using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.PartsList;

namespace Dryfit.Outputs.CutList;

/// <summary>All parts of one material and one thickness: what is cut from one stack.</summary>
/// <param name="Material">The first of its materials: the recipe may call one stuff by several names.</param>
/// <param name="Names">What the recipe calls it.</param>
internal sealed record MaterialGroup(
    Material Material,
    IReadOnlyList<string> Names,
    Length Thickness,
    IReadOnlyList<PartsRow> Rows,
    int Quantity,
    IReadOnlyList<string> Totals
)
{
    /// <summary>Sorted as a maker walks through the rack: timber, sheets, glass, edging; of each what there is most of first.</summary>
    public static IEnumerable<MaterialGroup> Of(IEnumerable<PartsRow> rows, LengthFormat format) =>
        rows.GroupBy(row =>
                (
                    row.First.Material.Kind,
                    row.First.Material.Stuff,
                    row.First.Material.Called,
                    row.First.Material.HasOneGoodFace,
                    row.First.Thickness.Length
                )
            )
            .OrderBy(group => group.All(IsEdging))
            .ThenBy(group => group.Key.Kind)
            .ThenByDescending(group => group.Sum(row => row.Quantity * row.VolumeCubicMm))
            .Select(group => Of([.. group], format));

    private static MaterialGroup Of(List<PartsRow> rows, LengthFormat format)
    {
        var first = rows[0].First;
        var names = rows.Select(row => row.First.Material.Name).Distinct(StringComparer.Ordinal).ToList();
        var sorted = rows.OrderByDescending(row => row.First.Length.Length)
            .ThenByDescending(row => row.First.Width.Length)
            .ToList();
        var quantity = rows.Sum(row => row.Quantity);
        return new(
            first.Material,
            names,
            first.Thickness.Length,
            sorted,
            quantity,
            [.. TotalsOf(rows, quantity, format)]
        );
    }

    /// <summary>Net amounts, of the blanks as cut: waste, kerf and what does not fit on a board come on top.</summary>
    private static IEnumerable<string> TotalsOf(List<PartsRow> rows, int quantity, LengthFormat format)
    {
        yield return string.Create(CultureInfo.InvariantCulture, $"{quantity} {(quantity == 1 ? "part" : "parts")}");
        var material = rows[0].First.Material;
        if (rows.TrueForAll(IsEdging))
        {
            yield return Amounts.Run(
                rows.Sum(row => row.Quantity * row.First.Length.Length.ToMillimetres()),
                format.Unit
            );
        }
        else if (material.Kind == MaterialKind.Solid)
        {
            yield return format.Unit == LengthUnit.Inch
                ? Amounts.BoardFeet(BoardFeetOf(rows))
                : Amounts.Volume(rows.Sum(row => row.Quantity * BlankCubicMm(row.First)));
        }
        else
        {
            yield return Amounts.Area(rows.Sum(row => row.Quantity * BlankSquareMm(row.First)), format.Unit);
        }
        yield return Amounts.Mass(rows.Sum(row => row.Quantity * row.MassKg), format.Unit);
    }

    private static bool IsEdging(PartsRow row) => row.Roles.All(role => role == Role.Edging);

    private static Rational BoardFeetOf(List<PartsRow> rows) =>
        rows.Aggregate(
            Rational.Zero,
            (sum, row) =>
                sum
                + (
                    row.Quantity
                    * BoardFeet.OfRoughHardwood(
                        row.First.Material.Called ?? row.First.Thickness.Length,
                        row.First.Width.Length,
                        row.First.Length.Length
                    )
                )
        );

    private static double BlankSquareMm(Part part) =>
        part.Length.Length.ToMillimetres() * part.Width.Length.ToMillimetres();

    private static double BlankCubicMm(Part part) => BlankSquareMm(part) * part.Thickness.Length.ToMillimetres();
}
