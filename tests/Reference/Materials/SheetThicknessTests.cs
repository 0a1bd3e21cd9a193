using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Materials;

public sealed class SheetThicknessTests
{
    private static IEnumerable<PublishedRow> Categories => PublishedTable.Read("plywood-categories.csv");

    private static IEnumerable<PublishedRow> BirchThicknesses =>
        PublishedTable
            .Read("birch-plywood.csv")
            .Where(row => row.Quantity.Equals("average thickness", StringComparison.Ordinal));

    /// <summary>Source: PS 1, table of performance categories; printed to 0.001 in and 0.01 mm.</summary>
    [TestCaseSource(nameof(Categories))]
    public void Plywood_of_a_performance_category_measures_within_its_printed_limits(PublishedRow row)
    {
        var category = Length.FromInches(0, (int)(Printed.Number(row.Item.Split(' ')[^1]) * 64), 64);
        var printed = Printed.Decimals(row.Value);

        var (least, most) = SheetThickness.PerformanceCategory(category);

        Assert.That(least.Inches.ToDouble(), Is.EqualTo(printed[0]).Within(0.00051), row.Source);
        Assert.That(least.ToMillimetres(), Is.EqualTo(printed[1]).Within(0.015), row.Source);
        Assert.That(most.Inches.ToDouble(), Is.EqualTo(printed[2]).Within(0.00051), row.Source);
        Assert.That(most.ToMillimetres(), Is.EqualTo(printed[3]).Within(0.015), row.Source);
    }

    /// <summary>Source: birch plywood data sheet (distributor), average thickness.</summary>
    [TestCaseSource(nameof(BirchThicknesses))]
    public void Birch_plywood_measures_what_its_data_sheet_says(PublishedRow row)
    {
        var nominal = Printed.Decimals(row.Item)[0];

        var actual = SheetThickness.BirchPlywood(Length.FromMillimetres(new Rational((int)(nominal * 10), 10)));

        Assert.That(actual?.ToMillimetres(), Is.EqualTo(Printed.Number(row.Value)).Within(1e-12), row.Source);
    }

    [Test]
    public void A_birch_plywood_that_is_not_made_has_no_thickness() =>
        Assert.That(SheetThickness.BirchPlywood(Length.FromMillimetres(17)), Is.Null);
}
