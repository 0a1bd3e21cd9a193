using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.PartsList;

namespace Dryfit.Outputs.CutList;

/// <summary>All parts of one material and one thickness: what is cut from one stack.</summary>
internal sealed record MaterialGroup(
    Material Material,
    Length Thickness,
    IReadOnlyList<PartsRow> Rows,
    int Quantity,
    IReadOnlyList<string> Totals
)
{
    /// <summary>Sorted as a maker walks through the rack: timber, sheets, glass; thick before thin; long before short.</summary>
    public static IEnumerable<MaterialGroup> Of(IEnumerable<PartsRow> rows, LengthFormat format) =>
        rows.GroupBy(row => (row.First.Material.Name, row.First.Thickness.Length))
            .Select(group => Of([.. group], format))
            .OrderBy(group => group.Material.Kind)
            .ThenBy(group => group.Material.Name, StringComparer.Ordinal)
            .ThenByDescending(group => group.Thickness);

    private static MaterialGroup Of(List<PartsRow> rows, LengthFormat format)
    {
        var first = rows[0].First;
        var sorted = rows.OrderByDescending(row => row.First.Length.Length)
            .ThenByDescending(row => row.First.Width.Length)
            .ToList();
        var quantity = rows.Sum(row => row.Quantity);
        return new(first.Material, first.Thickness.Length, sorted, quantity, [.. TotalsOf(rows, quantity, format)]);
    }

    /// <summary>Net amounts, of the blanks as cut: waste, kerf and what does not fit on a board come on top.</summary>
    private static IEnumerable<string> TotalsOf(List<PartsRow> rows, int quantity, LengthFormat format)
    {
        yield return string.Create(CultureInfo.InvariantCulture, $"{quantity} {(quantity == 1 ? "part" : "parts")}");
        var material = rows[0].First.Material;
        if (rows.TrueForAll(row => row.Roles.All(role => role == Role.Edging)))
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
