using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Materials;

/// <summary>Source: published table of hardwood lumber thicknesses, rough to surfaced.</summary>
public sealed class HardwoodThicknessTests
{
    private static IEnumerable<PublishedRow> Rows => PublishedTable.Read("hardwood-thickness.csv");

    [TestCaseSource(nameof(Rows))]
    public void Hardwood_measures_what_the_table_says_when_it_is_surfaced(PublishedRow row)
    {
        var rough = Printed.Number(row.Item.Split(' ')[2]);
        var thickness = HardwoodThickness.Find(Length.FromInches(0, (int)(rough * 64), 64));
        var surfaced = row.Quantity.StartsWith("S1S", StringComparison.Ordinal)
            ? thickness?.SurfacedOneSide
            : thickness?.SurfacedTwoSides;

        Assert.That(surfaced?.Inches.ToDouble(), Is.EqualTo(Printed.Number(row.Value)).Within(1e-12), row.Source);
    }

    [Test]
    public void Every_surfaced_thickness_of_ours_is_in_the_table()
    {
        var ours = HardwoodThickness.All.Sum(thickness => thickness.SurfacedOneSide is null ? 1 : 2);

        Assert.That(ours, Is.EqualTo(Rows.Count()));
    }

    [Test]
    public void A_thickness_that_is_not_sold_is_not_found() =>
        Assert.That(HardwoodThickness.Find(Length.FromInches(9)), Is.Null);
}
