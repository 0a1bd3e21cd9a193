using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Words;

/// <summary>Materials: spoken in a line, or written out.</summary>
public sealed class MaterialTests
{
    private static string Recipe(string material, string unit = "mm") =>
        $"piece: P\nunits: {unit}\nmaterials:\n  body: {material}\ncarcases:\n  box: {{ size: [600 mm, 700 mm, 300 mm], back: none, joint: screws }}\n";

    private static Material Body(string material, string unit = "mm") =>
        Built.From(Recipe(material, unit)).Part("box left side").Material;

    [Theory]
    [InlineData("hard maple 3/4", "in", "19.05", MaterialKind.Solid)]
    [InlineData("pine 18", "mm", "18", MaterialKind.Solid)]
    [InlineData("birch plywood 18 mm", "in", "18", MaterialKind.Sheet)]
    [InlineData("birch plywood 1 1/8\"", "mm", "28.575", MaterialKind.Sheet)]
    // A dressed 1x4 is 3/4 in thick: softwood lumber standard PS 20.
    [InlineData("scots pine 1x4", "mm", "19.05", MaterialKind.Solid)]
    [InlineData("{ dressed: scots pine 2x6 }", "mm", "38.1", MaterialKind.Solid)]
    [InlineData("{ solid: oak, thickness: 22 }", "mm", "22", MaterialKind.Solid)]
    [InlineData("{ sheet: birch plywood, called: 3/4\", actual: 18.2 mm }", "in", "18.2", MaterialKind.Sheet)]
    [InlineData("{ sheet: honeycomb board, thickness: 30, density: 120 }", "mm", "30", MaterialKind.Sheet)]
    [InlineData("{ plastic: acrylic, thickness: 8 }", "mm", "8", MaterialKind.Plastic)]
    [InlineData("{ glass: float glass, thickness: 10 }", "mm", "10", MaterialKind.Glass)]
    public void Stuff_is_as_thick_as_it_is_said_to_be(string said, string unit, string mm, MaterialKind kind)
    {
        var body = Body(said, unit);
        Assert.Equal(Measure.LengthText.Parse(mm, Measure.LengthUnit.Millimetre).Length, body.Thickness.Length);
        Assert.Equal(kind, body.Kind);
        Assert.True(body.DensityKgPerM3 > 0);
    }

    /// <summary>House rules: plywood 0.4 as sold, particleboard 0.3, planed timber 0.1, what was measured 0.1.</summary>
    [Theory]
    [InlineData("birch plywood 18", "0.4", false)]
    [InlineData("melamine 18", "0.3", false)]
    [InlineData("mdf 18", "0.2", false)]
    [InlineData("pine 18", "0.1", false)]
    [InlineData("{ sheet: birch plywood, called: 18, actual: 17.7 }", "0.1", true)]
    [InlineData("{ sheet: birch plywood, thickness: 18, varies by: 0.25 }", "0.25", true)]
    public void Stock_varies_as_published_unless_it_was_measured(string said, string mm, bool isMeasured)
    {
        var body = Body(said);
        Assert.Equal(Measure.LengthText.Parse(mm, Measure.LengthUnit.Millimetre).Length, body.Varies?.Length);
        Assert.Equal(isMeasured, body.IsMeasured);
    }

    [Fact]
    public void What_a_sheet_is_called_is_kept_beside_what_it_measures()
    {
        var body = Body("{ sheet: birch plywood, called: 3/4\", actual: 18.2 mm }");
        Assert.Equal(Measure.Length.FromInches(0, 3, 4), body.Called);
    }

    [Fact]
    public void Stuff_of_the_makers_own_weighs_what_the_recipe_says()
    {
        var body = Body("{ sheet: honeycomb board, thickness: 30, density: 120 }");
        Assert.Equal((120.0, "the recipe"), (body.DensityKgPerM3, body.DensitySource));
    }

    [Fact]
    public void Grain_is_as_the_stuff_has_it_unless_the_recipe_says_otherwise()
    {
        Assert.True(Body("{ solid: oak, thickness: 22 }").HasGrain);
        Assert.False(Body("{ sheet: birch plywood, thickness: 18, grain: no }").HasGrain);
    }

    [Theory]
    [InlineData("mapel 3/4", "4:9: 'mapel' is no timber, sheet, glass or plastic that is known here.", "maple")]
    [InlineData("birch plywod 18", "4:9: 'birch plywod' is no timber", "birch plywood")]
    [InlineData("maple", "4:9: The thickness is missing.", null)]
    [InlineData("18 mm", "4:9: The kind of stuff is missing.", null)]
    [InlineData("pine 0", "4:9: The pine has no thickness.", null)]
    [InlineData("pine banana", "4:9: The thickness is missing.", null)]
    [InlineData("pine 3/0", "4:16: A fraction cannot be of zero parts.", null)]
    [InlineData("scots pine 2x99", "4:9: No dressed lumber is sold as 2x99.", null)]
    [InlineData("{ dressed: pine }", "The size is missing.", null)]
    [InlineData("{ solid: oak }", "The thickness is missing.", null)]
    [InlineData("{ solid: oak, sheet: birch plywood, thickness: 18 }", "The material is said to be two things.", null)]
    [InlineData("{ thickness: 18 }", "What the material is made of is missing.", null)]
    [InlineData("{ solid: birch plywood, thickness: 18 }", "'birch plywood' is a sheet, not solid timber.", null)]
    [InlineData("{ sheet: oak, thickness: 18 }", "'oak' is solid timber, not a sheet.", null)]
    public void What_is_no_material_is_refused_at_its_place(string said, string says, string? suggestion)
    {
        var errors = Built.ErrorsOf(Recipe(said));
        Assert.Contains(errors, e => Built.Said(e).Contains(says, StringComparison.Ordinal));
        if (suggestion is not null)
            Assert.Contains(suggestion, errors.Select(e => e.Suggestion));
    }

    [Fact]
    public void A_material_that_is_not_there_is_told_with_those_that_are()
    {
        var error = Assert.Single(
            Built.ErrorsOf(
                "piece: P\nunits: mm\nmaterials: { body: pine 18 }\ncarcases:\n  box: { size: [600, 700, 300], material: oak }\n"
            )
        );
        Assert.Equal("5:43: There is no material called 'oak'.", Built.Said(error));
        Assert.Equal("one of body", error.Expected);
    }

    [Fact]
    public void Without_a_word_parts_are_of_the_material_named_for_them()
    {
        var piece = Built.From(
            """
            piece: P
            units: mm
            materials: { body: pine 18, tops: beech 27, backs: birch plywood 6.5, fronts: oak 20, shelves: ash 16, boxes: birch plywood 12, bottoms: birch plywood 6.5 }
            carcases:
              box: { size: [800, 700, 400], top, shelves: { fixed: 1 }, front: { columns: [ drawer, { doors: slab } ] } }
            """
        );
        string Of(Role role) => string.Join(' ', piece.PartsOf(role).Select(p => p.Material.Name).Distinct());
        Assert.Equal("body", Of(Role.Side));
        Assert.Equal("tops", Of(Role.Top));
        Assert.Equal("backs", Of(Role.Back));
        Assert.Equal("fronts", Of(Role.DoorSlab));
        Assert.Equal("fronts", Of(Role.DrawerFront));
        Assert.Equal("shelves", Of(Role.Shelf));
        Assert.Equal("boxes", Of(Role.DrawerSide));
        Assert.Equal("bottoms", Of(Role.DrawerBottom));
        piece.MustBeSound();
    }
}
