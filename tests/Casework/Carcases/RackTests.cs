using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// Racks in a box of 600 x 720 x 400 with its insides of 564 x 684 x 381.5. House rules in millimetres: bottles of 76 every
/// 100, necks of 30, rails of 45 that stand 165 apart; stems every 100 with slots of 25 and feet of 80; plates of 280 every
/// 40 on rails of 30.
/// </summary>
public sealed class RackTests
{
    [Fact]
    public void Bottles_lie_level_in_hollows_a_third_of_their_diameter_deep()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], front: { rack: { bottles: 6 } } }"));
        var neck = piece.Part("box bottle row 1 neck rail");
        var bottle = piece.Part("box bottle row 1 bottle rail");
        // The axis of the lowest: 45 of rail less 76/3 of hollow plus 38 of radius, and 3 of air, over the floor at 18.
        var axis = piece.Read("18") + piece.Read("45") - (piece.Read("76") / 3) + piece.Read("38") + piece.Read("3");
        Assert.Equal(axis - piece.Read("15") + piece.Read("10"), neck.Extent.Max.Z);
        Assert.Equal(axis - piece.Read("38") + (piece.Read("76") / 3), bottle.Extent.Max.Z);
        Assert.Equal("21", piece.Write(bottle.Extent.Min.Z));
        Assert.Equal(("10", "175"), (piece.Write(neck.Extent.Min.Y), piece.Write(bottle.Extent.Min.Y)));
        // Five across 564, the first 82 from the side.
        Assert.Equal(5, neck.Cuts.Count(c => c.Kind == CutKind.Arch));
        Assert.Equal(5, bottle.Cuts.Count(c => c.Kind == CutKind.Arch));
        var load = Assert.Single(piece.Loads);
        Assert.Equal(("box bottle rack", "bottles", 30, 1400), (load.Name, load.What, load.Count, load.GramsEach));
        Assert.Equal(axis + piece.Read("500"), load.Top);
        piece.MustBeSound();
    }

    [Fact]
    public void What_a_hollow_takes_off_a_rail_is_a_part_of_a_circle()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], front: { rack: { bottles: 1 } } }"));
        var rail = piece.Part("box bottle row 1 bottle rail");
        // Chord c = 76 x 17/18, rise h = 76/3: r = c^2/8h + h/2, area of the segment = r^2 acos((r-h)/r) - (r-h) c/2.
        var (chord, rise) = (76 * 17 / 18.0, 76 / 3.0);
        var radius = (chord * chord / (8 * rise)) + (rise / 2);
        var segment = (radius * radius * Math.Acos((radius - rise) / radius)) - ((radius - rise) * chord / 2);
        var expected = ((564 * 45) - (5 * segment)) * 18;
        var measured = piece.Grid.ToCubicMm(Solids.Round.Volume(rail.Solid));
        Assert.InRange(measured, expected * (1 - 1e-4), expected * (1 + 1e-4));
    }

    [Fact]
    public void Glasses_hang_between_hangers_under_the_ceiling()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], front: { rack: { stemware } } }"));
        // (564 - 75) / 100: four slots between five hangers; 564 - 475 left, half of it before the first.
        Assert.Equal(5, piece.PartsOf(Role.RackRail).Count);
        var hanger = piece.Part("box stem hanger 1");
        piece.Measures("box stem hanger 1", "370.5 x 75 x 18");
        piece.StandsAt("box stem hanger 1", "62.5, 10, 684");
        // A web of 20 in the middle, flanges of 9.
        var rabbets = hanger.Cuts.OfType<SquareCut>().Select(c => hanger.Place.ToPiece(c.Extent)).ToList();
        Assert.Equal(["90", "110"], [piece.Write(rabbets[0].Max.X), piece.Write(rabbets[1].Min.X)]);
        Assert.All(rabbets, r => Assert.Equal("693", piece.Write(r.Min.Z)));
        piece.MustBeSound();
    }

    [Fact]
    public void Shelves_may_stand_under_hanging_glasses_but_not_in_a_rack_that_fills_the_bay()
    {
        var hanging = Built.From(
            Metric("box: { size: [600, 720, 400], shelves: { fixed: 1, at: [300] }, front: { rack: { stemware } } }")
        );
        Assert.Single(hanging.PartsOf(Role.Shelf));
        var filled = Built.From(
            Metric("box: { size: [600, 720, 400], shelves: { fixed: 1 }, front: { rack: { bottles: 2 } } }")
        );
        Assert.Empty(filled.PartsOf(Role.Shelf));
    }

    [Fact]
    public void Plates_stand_between_rods_from_rail_to_rail()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], front: { rack: { plates: 2 } } }"));
        Assert.Equal(8, piece.PartsOf(Role.RackRail).Count);
        // Rows of 342; rails of 18 stand 12 off both ends of a row.
        piece.StandsAt("box plate row 1 lower front rail", "18, 10, 30");
        piece.StandsAt("box plate row 1 upper rear rail", "18, 178, 330");
        piece.StandsAt("box plate row 2 lower front rail", "18, 10, 372");
        // 564 / 40: fourteen rods a rail, thirteen plates a row; the rod goes 9 into rails of 18, over 282 of air.
        Assert.All(piece.PartsOf(Role.RackRail), rail => Assert.Equal(14, rail.Cuts.OfType<RoundCut>().Count()));
        var rods = piece.Hardware.Where(h => h.Kind.StartsWith("rod", StringComparison.Ordinal)).ToList();
        Assert.Equal(
            ["rod 10, 300 long"],
            rods.Select(r => r.Kind.Replace(" mm", "", StringComparison.Ordinal)).Distinct()
        );
        Assert.Equal(4 * 14, rods.Sum(r => r.Count));
        // The first rods stand half of what 13 pitches leave of 564 from the side: 22, less their radius of 5; between the rails.
        var bar = rods.SelectMany(r => r.Bars).MinBy(b => (b.Min.X, b.Min.Z, b.Min.Y));
        Assert.Equal(
            ("35", "48", "10", "282"),
            (piece.Write(bar.Min.X), piece.Write(bar.Min.Z), piece.Write(bar.Width), piece.Write(bar.Height))
        );
        Assert.Equal(26, Assert.Single(piece.Loads).Count);
        piece.MustBeSound();
    }

    [Fact]
    public void Jars_stand_on_shelves_with_a_guard_before_them()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 120], front: { rack: { jars: 3 } } }"));
        // (684 - 3 x 18) / 4 = 157.5; 101.5 inside less 10 and the guard of 18.
        piece.Measures("box jar shelf 1", "564 x 73.5 x 18");
        piece.StandsAt("box jar shelf 1", "18, 28, 175.5");
        piece.Measures("box jar shelf 1 guard", "564 x 38 x 18");
        piece.StandsAt("box jar shelf 1 guard", "18, 10, 175.5");
        piece.MustBeSound();
    }

    [Fact]
    public void A_rail_for_clothes_is_counted_with_sockets_and_supports()
    {
        var piece = Built.From(Metric("box: { size: [1400, 1800, 600], front: { clothes rail } }"));
        var rail = Assert.Single(
            piece.Hardware,
            h => h.Kind.StartsWith("clothes rail 32 mm, 1364 mm", StringComparison.Ordinal)
        );
        // 60 under the top panel at 1782, in the middle of 581.5.
        Assert.Equal(("1722", "290.75"), (piece.Write(rail.At.Z), piece.Write(rail.At.Y)));
        Assert.Equal(2, piece.Hardware.Count(h => h.Kind == "clothes rail socket"));
        // 1364 clear want one support, no more than 1200 apart.
        Assert.Equal(1, piece.Hardware.Where(h => h.Kind == "clothes rail support").Sum(h => h.Count));
    }

    [Theory]
    [InlineData("rack: { bottles: 7 }", "7 rows of bottles")]
    [InlineData("rack: { bottles: 2, pitch: 70 }", "The bottles would touch")]
    [InlineData("rack: { bottles: 2, plates: 2 }", "not for both")]
    [InlineData("rack: { material: body }", "What the rack is for is missing.")]
    [InlineData("rack: { plates: 3 }", "does not go into a row")]
    [InlineData("rack: { jars: 30 }", "so close that nothing goes in")]
    [InlineData("rack: { stemware, pitch: 90 }", "would be too weak")]
    [InlineData("rack: { stemware, material: thin }", "too thin for a foot")]
    [InlineData("drawer, rack: { bottles: 2 }", "no room for a rack behind a drawer")]
    [InlineData("columns: [open, open], clothes rail", "divided into columns")]
    [InlineData("rack: { bottles: 2 }, shelves: { fixed: 1 }", "A rack fills this bay")]
    [InlineData("clothes rail: { from front: 390 }", "stands out of its bay")]
    [InlineData("clothes rail: { down: 690 }", "does not fit into the height")]
    public void What_cannot_be_is_refused(string front, string says)
    {
        Assert.Contains(
            says,
            Built.ErrorOf(Metric($"box: {{ size: [600, 720, 400], front: {{ {front} }} }}", materials: "thin: oak 12")),
            StringComparison.Ordinal
        );
    }
}
