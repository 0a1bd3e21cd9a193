using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Recipe;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.ShopFile;

/// <summary>The defaults of the shop file against the sources they cite.</summary>
public sealed class HouseRuleTests
{
    private const string Rows = "rows-and-hinges.csv";

    private static IEnumerable<TestCaseData> Published =>
        [
            // Notes on 32 mm practice: pitch, hole, setback, gap between fronts. Set down by no standards body.
            Case(ShelfRules.PinPitch, Rows, "06-001"),
            Case(ShelfRules.PinDiameter, Rows, "06-002"),
            Case(ShelfRules.PinSetback, Rows, "06-003"),
            Case(HingeRules.HingePlateRow, Rows, "06-003"),
            Case(GapRules.StackGap, Rows, "06-007"),
            Case(GapRules.PairGap, Rows, "06-007"),
            // Hinge maker's quick reference: the cup.
            Case(HingeRules.CupDiameter, Rows, "06-011"),
            Case(HingeRules.CupDepth, Rows, "06-012"),
            // Slide practice: 1/2 in each side. Trade forum: inset doors 3/32 in each side.
            Case(DrawerRules.SlideClearance, Rows, "06-023"),
            Case(GapRules.InsetGap, Rows, "06-028"),
            // Worked example: face frames 1 1/2 in wide.
            Case(FaceFrameRules.StileWidth, Rows, "06-029"),
            Case(FaceFrameRules.FrameRailWidth, Rows, "06-029"),
        ];

    [TestCaseSource(nameof(Published))]
    public void A_house_rule_starts_from_its_published_value(Rule rule, PublishedRow row)
    {
        var millimetres = row.Unit.StartsWith("mm", StringComparison.Ordinal);
        var printed = Printed.Number(row.Value.Split(' ')[0]) * (millimetres ? 1 : 25.4);
        var written = millimetres
            ? LengthText.Parse(rule.Metric, LengthUnit.Millimetre)
            : LengthText.Parse(rule.Inch, LengthUnit.Inch);

        Assert.That(written.Length.ToMillimetres(), Is.EqualTo(printed).Within(1e-9), row.ToString());
    }

    /// <summary>
    /// Source: hinge maker's quick reference, table of boring distances: with a boring distance of 5 mm the cup's middle is
    /// 22.5 mm from the edge of the door.
    /// </summary>
    [Test]
    public void A_hinge_cup_sits_where_the_table_of_boring_distances_puts_it()
    {
        var table = PublishedTable.Row(Rows, "06-014").Value;

        Assert.That(table, Does.Contain("5->22.5"));
        Assert.That(Metric(HingeRules.CupSetback).ToMillimetres(), Is.EqualTo(22.5).Within(1e-9));
    }

    /// <summary>Source: published shop guide to cabinet doors, stiles and rails of 1-1/2 to 3 in.</summary>
    [Test]
    public void Door_stiles_and_rails_are_as_wide_as_a_shop_guide_has_them()
    {
        Assert.That(PublishedTable.Row(Rows, "06-030").Value, Is.EqualTo("1-1/2 to 3"));
        foreach (var rule in new[] { DoorRules.DoorStile, DoorRules.DoorRail })
        {
            Assert.That(Inch(rule).Inches.ToDouble(), Is.InRange(1.5, 3));
            Assert.That(Metric(rule).ToMillimetres(), Is.InRange(1.5 * 25.4, 3 * 25.4));
        }
    }

    [Test]
    public void Every_house_rule_of_a_length_reads_in_both_units()
    {
        foreach (var rule in AllRules.InOrder.Where(rule => rule.Shape is LengthShape))
        {
            Assert.That(LengthText.Parse(rule.Inch, LengthUnit.Inch).Failure, Is.Null, rule.Name);
            Assert.That(LengthText.Parse(rule.Metric, LengthUnit.Millimetre).Failure, Is.Null, rule.Name);
            Assert.That(rule.Source, Is.Not.Empty, rule.Name);
        }
    }

    private static Length Inch(Rule rule) => LengthText.Parse(rule.Inch, LengthUnit.Inch).Length;

    private static Length Metric(Rule rule) => LengthText.Parse(rule.Metric, LengthUnit.Millimetre).Length;

    private static TestCaseData Case(Rule rule, string table, string id) =>
        new TestCaseData(rule, PublishedTable.Row(table, id)).SetArgDisplayNames(rule.Name, id);
}
