using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Materials;

/// <summary>How far stock may differ from what it is said to be, against what standards let it.</summary>
public sealed class ThicknessToleranceTests
{
    private const string Rows = "thickness-tolerance.csv";

    /// <summary>Source: PS 1 as quoted from APA: 1/64 in for sanded plywood up to 3/4 in. Rounded to 0.4 mm for metric shops.</summary>
    [Test]
    public void Plywood_varies_by_what_the_standard_for_sanded_plywood_lets_it()
    {
        Assert.That(PublishedTable.Row(Rows, "05-064").Value, Is.EqualTo("1/64"));
        Assert.That(StockRules.Plywood.Inch, Is.EqualTo("1/64\""));
        Assert.That(Metric(StockRules.Plywood), Is.EqualTo(25.4 / 64).Within(0.005));
    }

    /// <summary>Source: particle-board technical data by EN 324-1.</summary>
    [Test]
    public void Particleboard_varies_by_what_its_data_sheet_says() =>
        Assert.That(
            Metric(StockRules.Particleboard),
            Is.EqualTo(Printed.Number(PublishedTable.Row(Rows, "01b-123").Value)).Within(1e-9)
        );

    /// <summary>Source: ASTM C1036, Table 2: half of the range of 1/8 and 3/16 in glass; the table is from memory.</summary>
    [TestCase("05-085")]
    [TestCase("05-086")]
    public void Glass_of_furniture_varies_by_about_half_of_its_printed_range(string row)
    {
        var range = Printed.Decimals(PublishedTable.Row(Rows, row).Value);
        Assert.That(Metric(StockRules.Clear), Is.EqualTo((range[1] - range[0]) / 2).Within(0.011));
    }

    private static double Metric(Rule rule) =>
        LengthText.Parse(rule.Metric, LengthUnit.Millimetre).Length.ToMillimetres();
}
