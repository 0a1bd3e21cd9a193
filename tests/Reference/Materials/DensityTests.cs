using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Materials;

/// <summary>What materials weigh: timber from the Wood Handbook, sheets and glass from data sheets and weight tables.</summary>
public sealed class DensityTests
{
    /// <summary>Square metres of a sheet of 1220 x 2440 mm.</summary>
    private const double SheetM2 = 1.22 * 2.44;

    /// <summary>Kilograms a square metre in a pound a square foot: 0.45359237 / 0.3048^2, exact by definition.</summary>
    private const double KgPerM2InLbPerFt2 = 0.45359237 / (0.3048 * 0.3048);

    /// <summary>Handbook names that are not a species before its family.</summary>
    private static readonly Dictionary<string, string> OwnNames = new(StringComparer.Ordinal)
    {
        ["Cottonwood, balsam poplar"] = "balsam poplar",
        ["Magnolia, cucumbertree"] = "cucumbertree",
        ["Cedar, eastern redcedar"] = "eastern redcedar",
        ["Cedar, western redcedar"] = "western redcedar",
    };

    private static IEnumerable<PublishedRow> Gravities =>
        PublishedTable
            .Read("species-gravity.csv")
            .Where(row => row.Quantity.Contains("12% MC", StringComparison.Ordinal));

    private static IEnumerable<PublishedRow> SheetMasses =>
        PublishedTable
            .Read("birch-plywood.csv")
            .Where(row => row.Quantity.StartsWith("sheet mass", StringComparison.Ordinal));

    private static IEnumerable<PublishedRow> GlassMasses =>
        PublishedTable.Read("glass-weight.csv").Where(row => row.Quantity.Equals("mass", StringComparison.Ordinal));

    /// <summary>
    /// Source: Wood Handbook FPL-GTR-190 (2010), Table 5-3a, and 1000 G x 1.12, equation 4-14; to the kilogram.
    /// </summary>
    [TestCaseSource(nameof(Gravities))]
    public void Timber_weighs_what_its_specific_gravity_says_at_twelve_percent(PublishedRow row)
    {
        var stuff = KnownStuff.Find(OwnNames.GetValueOrDefault(row.Item, row.Item));

        Assert.That(stuff, Is.Not.Null, row.Item);
        Assert.That(stuff!.Kind, Is.EqualTo(MaterialKind.Solid));
        Assert.That(stuff.DensityKgPerM3, Is.EqualTo(Printed.Number(row.Value) * 1120).Within(0.5 + 1e-9), row.Source);
    }

    /// <summary>Source: Wood Handbook, Table 4-6a: gravity 0.60 at 12 % is 672 kg/m3. White ash has 0.60 in Table 5-3a.</summary>
    [Test]
    public void White_ash_weighs_672_kilograms_a_cubic_metre()
    {
        var row = PublishedTable.Row("timber-density.csv", "02b-098");

        Assert.That(KnownStuff.Find("white ash")?.DensityKgPerM3, Is.EqualTo(Printed.Number(row.Value)).Within(0.5));
    }

    /// <summary>
    /// Source: Wood Handbook FPL-GTR-113 (1999), Table 4-5b, basic gravities 0.45 and 0.42; equations 4-13 and 4-14
    /// worked out by hand: 0.45 / (1 - 0.265 x 0.45 x 0.6) = 0.4847, 0.42 / (1 - 0.265 x 0.42 x 0.6) = 0.4501.
    /// </summary>
    [TestCase("mahogany", 542.8)]
    [TestCase("african mahogany", 504.1)]
    public void Imported_timber_known_by_its_basic_gravity_is_taken_to_twelve_percent(string name, double kgPerM3) =>
        Assert.That(KnownStuff.Find(name)?.DensityKgPerM3, Is.EqualTo(kgPerM3).Within(0.5));

    /// <summary>
    /// Source: Wood Handbook FPL-GTR-190 (2010), Table 12-1, range of specific gravity; a panel holds up to 12 % of water
    /// besides.
    /// </summary>
    [TestCase("hardboard", "01b-001")]
    [TestCase("tempered hardboard", "01b-001")]
    [TestCase("mdf", "01b-006")]
    [TestCase("particleboard", "01b-011")]
    [TestCase("melamine board", "01b-011")]
    [TestCase("oriented strand board", "01b-016")]
    [TestCase("plywood", "01b-021")]
    public void A_panel_weighs_within_the_range_of_its_kind(string name, string id)
    {
        var range = Printed.Decimals(PublishedTable.Row("panel-products.csv", id).Value);

        Assert.That(KnownStuff.Find(name)?.DensityKgPerM3, Is.InRange(range[0] * 1000, range[1] * 1000 * 1.12));
    }

    /// <summary>Sources: data sheet of particleboard to EN 312 type P2, 18 and 19 mm; the others are from memory.</summary>
    [TestCase("particleboard", "01b-107", 0)]
    [TestCase("particleboard", "01b-109", 0)]
    public void Particleboard_weighs_what_its_data_sheet_says(string name, string id, int tolerance)
    {
        var row = PublishedTable.Row("panel-products.csv", id);

        Assert.That(
            KnownStuff.Find(name)?.DensityKgPerM3,
            Is.EqualTo(Printed.Number(row.Value)).Within(tolerance),
            row.Source
        );
    }

    /// <summary>Values from memory, marked so in the table and in ours.</summary>
    [TestCase("mdf", 770)]
    [TestCase("tempered hardboard", 1000)]
    [TestCase("acrylic", 1190)]
    [TestCase("polycarbonate", 1200)]
    public void What_is_known_from_memory_says_so(string name, double kgPerM3)
    {
        var stuff = KnownStuff.Find(name);

        Assert.That(stuff?.DensityKgPerM3, Is.EqualTo(kgPerM3));
        Assert.That(stuff?.DensitySource, Does.Contain("memory"));
    }

    /// <summary>From memory: typical values of clear plastics are about 7e-5 a degree (05-091), glass grows by an eighth of it.</summary>
    [TestCase("acrylic", 70)]
    [TestCase("polycarbonate", 70)]
    [TestCase("float glass", 0)]
    public void Clear_plastics_grow_with_warmth_by_what_is_known_from_memory(string name, int millionths) =>
        Assert.That(KnownStuff.Find(name)?.GrowthPerMillionK, Is.EqualTo(millionths));

    /// <summary>
    /// Source: birch plywood data sheet (distributor), mass of a sheet; one density stands for all thicknesses, the sheet's
    /// own run from 660 to 710 kg/m3, so 4 % either way and the rounding of the printed mass.
    /// </summary>
    [TestCaseSource(nameof(SheetMasses))]
    public void A_sheet_of_birch_plywood_weighs_what_its_data_sheet_says(PublishedRow row)
    {
        var nominal = Length.FromMillimetres(new Rational((int)(Printed.Decimals(row.Item)[0] * 10), 10));
        var actual = SheetThickness.BirchPlywood(nominal);

        var mass = KnownStuff.Find("birch plywood")!.KgPerM2(actual!.Value) * SheetM2;

        Assert.That(mass, Is.EqualTo(Printed.Number(row.Value)).Within(4.5).Percent, row.Source);
    }

    /// <summary>
    /// Source: published glass weight tables, 2500 kg/m3. Rows by true millimetres agree to 0.01 lb/ft2; rows by the
    /// fraction of an inch reckon with 157 lb/ft3 (0.6 % more).
    /// </summary>
    [TestCaseSource(nameof(GlassMasses))]
    public void Glass_weighs_what_weight_tables_say(PublishedRow row)
    {
        var size = row.Item.Split(' ')[1];
        var byMillimetres = row.Item.Contains(" mm ", StringComparison.Ordinal);
        var thickness = byMillimetres
            ? Length.FromMillimetres((int)Printed.Number(size))
            : Length.FromInches(0, (int)(Printed.Number(size) * 64), 64);

        var mass = KnownStuff.Find("float glass")!.KgPerM2(thickness) / KgPerM2InLbPerFt2;

        var published = Is.EqualTo(Printed.Number(row.Value));
        Assert.That(mass, byMillimetres ? published.Within(0.01) : published.Within(0.7).Percent, row.Source);
    }

    /// <summary>Source: the same tables, kg/m2 = 2.5 x thickness in millimetres.</summary>
    [Test]
    public void Four_millimetres_of_glass_weigh_ten_kilograms_a_square_metre() =>
        Assert.That(
            KnownStuff.Find("toughened glass")!.KgPerM2(Length.FromMillimetres(4)),
            Is.EqualTo(10).Within(1e-9)
        );
}
