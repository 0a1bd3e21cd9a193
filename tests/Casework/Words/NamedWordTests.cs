using Dryfit.Casework.Tests.Kit;
using Dryfit.Parameters;

namespace Dryfit.Casework.Tests.Words;

/// <summary>Parameters that are words, in the places where such words may stand.</summary>
public sealed class NamedWordTests
{
    private const string Doors = """
        piece: Cupboard
        units: mm
        parameters:
          style: { default: slab, choices: [slab, framed] }
          leaves: { default: single, choices: [single, pair] }
          rear: { default: planted, choices: [planted, grooved, none] }
          stuff: { default: body, is: name }
        materials:
          body: pine 18
          oak: oak 20
          backs: birch plywood 6.5
          panels: birch plywood 6.5
        carcases:
          box: { size: [600, 700, 400], back: rear, fronts: stuff, front: { doors: style leaves } }
        """;

    [Theory]
    [InlineData("style", "slab", 1, 0)]
    [InlineData("leaves", "pair", 2, 0)]
    [InlineData("style", "framed", 0, 2)]
    public void Word_stands_in_a_phrase(string name, string word, int slabs, int stiles)
    {
        var piece = Built.From(Doors, settings: new Setting(name, word));

        Assert.Equal(slabs, piece.PartsOf(Role.DoorSlab).Count);
        Assert.Equal(stiles, piece.PartsOf(Role.DoorStile).Count);
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("none", 0)]
    [InlineData("grooved", 1)]
    public void Word_stands_in_a_choice(string word, int backs) =>
        Assert.Equal(backs, Built.From(Doors, settings: new Setting("rear", word)).PartsOf(Role.Back).Count);

    [Fact]
    public void Name_stands_for_a_material()
    {
        var piece = Built.From(Doors, settings: new Setting("stuff", "oak"));

        Assert.Equal("oak", Assert.Single(piece.PartsOf(Role.DoorSlab)).Material.Name);
    }

    [Fact]
    public void Word_stands_in_the_long_form_too()
    {
        var piece = Built.From(
            Doors.Replace("doors: style leaves", "doors: { kind: style, leaves: leaves }", StringComparison.Ordinal),
            settings: new Setting("style", "framed")
        );

        Assert.Equal(2, piece.PartsOf(Role.DoorStile).Count);
    }

    [Fact]
    public void Fixed_word_wins_over_a_parameter_of_its_name()
    {
        var piece = Built.From(
            Doors
                .Replace(
                    "style: { default: slab, choices: [slab, framed] }",
                    "framed: { default: slab, choices: [slab, glazed] }",
                    StringComparison.Ordinal
                )
                .Replace("doors: style leaves", "doors: framed", StringComparison.Ordinal)
        );

        Assert.Equal(2, piece.PartsOf(Role.DoorStile).Count);
    }

    [Fact]
    public void Word_that_does_not_suit_its_place_is_told_there()
    {
        var error = Built.ErrorOf(Doors.Replace("back: rear", "back: leaves", StringComparison.Ordinal));

        Assert.Equal("14:39: 'single' is no word for this place.", error);
    }
}
