using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Pieces;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Materials;

/// <summary>Source: American Softwood Lumber Standard PS 20, minimum dressed dry sizes, from a published table.</summary>
public sealed class DressedLumberTests
{
    private static readonly Length OneInch = Length.FromInches(1);
    private static readonly Length FourInches = Length.FromInches(4);

    private static IEnumerable<PublishedRow> Thicknesses =>
        PublishedTable
            .Read("dressed-lumber.csv")
            .Where(row => row.Item.Contains("thickness", StringComparison.Ordinal));

    private static IEnumerable<PublishedRow> Widths =>
        PublishedTable.Read("dressed-lumber.csv").Where(row => row.Item.Contains("width", StringComparison.Ordinal));

    [TestCaseSource(nameof(Thicknesses))]
    public void Lumber_is_as_thick_as_the_standard_says(PublishedRow row)
    {
        var section = DressedLumber.Actual(Nominal(row), FourInches);

        Assert.That(
            section?.Thickness.Inches.ToDouble(),
            Is.EqualTo(Printed.Number(row.Value)).Within(1e-12),
            row.Source
        );
    }

    [TestCaseSource(nameof(Widths))]
    public void Lumber_is_as_wide_as_the_standard_says(PublishedRow row)
    {
        var section = DressedLumber.Actual(OneInch, Nominal(row));

        Assert.That(section?.Width.Inches.ToDouble(), Is.EqualTo(Printed.Number(row.Value)).Within(1e-12), row.Source);
    }

    [Test]
    public void Every_size_of_the_standard_is_there_and_no_other()
    {
        Assert.That(DressedLumber.NominalThicknesses, Is.EquivalentTo(Thicknesses.Select(Nominal)));
        Assert.That(DressedLumber.NominalWidths, Is.EquivalentTo(Widths.Select(Nominal)));
    }

    // The two best known sections: NDS Supplement (2018), Table 1A.
    [TestCase("2x4", 1.5, 3.5)]
    [TestCase("2 x 4", 1.5, 3.5)]
    [TestCase("2×6", 1.5, 5.5)]
    [TestCase("1x6", 0.75, 5.5)]
    [TestCase("4x4", 3.5, 3.5)]
    [TestCase("5/4x6", 1.0, 5.5)]
    public void A_section_is_found_by_the_name_the_yard_uses(string name, double thicknessInches, double widthInches)
    {
        var section = DressedLumber.Find(name);

        Assert.That(section, Is.Not.Null);
        Assert.That(section!.Thickness.Inches.ToDouble(), Is.EqualTo(thicknessInches).Within(1e-12));
        Assert.That(section.Width.Inches.ToDouble(), Is.EqualTo(widthInches).Within(1e-12));
    }

    [TestCase("2x13")]
    [TestCase("7x4")]
    [TestCase("2x")]
    [TestCase("x")]
    [TestCase("2x4x6")]
    [TestCase("")]
    public void A_section_that_is_not_made_is_not_found(string name) => Assert.That(DressedLumber.Find(name), Is.Null);

    /// <summary>Source: the same sizes: two 2x4 glued face to face are 3 in thick and stay 3-1/2 in wide.</summary>
    [Test]
    public void Legs_glued_up_from_two_boards_measure_twice_the_dressed_thickness()
    {
        var piece = BuiltPiece.From(
            """
            piece: Worked example
            units: in
            materials: { body: pine 3/4, posts: spruce 2x4 }
            carcases:
              box:
                size: [40, 30, 18]
                stands on: { legs: { of: posts, plies: 2 }, height: 8 }
                front: { open }
            """
        );
        var plies = piece.PartsOf(Role.Leg);
        var corner = plies.Where(ply => ply.Extent.Max.X <= Length.FromInches(10)).ToList();
        var front = corner.Where(ply => ply.Extent.Max.Y <= Length.FromInches(9)).ToList();

        Assert.That(plies, Has.Count.EqualTo(8));
        Assert.That(front, Has.Count.EqualTo(2));
        Assert.That(plies.Select(ply => ply.Thickness.Length.Inches.ToDouble()), Is.All.EqualTo(1.5).Within(1e-12));
        Assert.That(front.Around().Depth.Inches.ToDouble(), Is.EqualTo(3).Within(1e-12));
        Assert.That(front.Around().Width.Inches.ToDouble(), Is.EqualTo(3.5).Within(1e-12));
    }

    private static Length Nominal(PublishedRow row)
    {
        var sixtyFourths = Printed.Number(row.Item.Split(' ')[^1]) * 64;
        return Length.FromInches(0, (int)sixtyFourths, 64);
    }
}
