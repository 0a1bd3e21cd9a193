using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>Rows that hold more than drawers: each goes by a name, and keeps its own behind it.</summary>
public sealed class RowTests
{
    private static Piece Divided(string front, string more = "") =>
        Built.From(Metric($"box: {{ size: [600, 1600, 400], {more}front: {{ {front} }} }}"));

    private static IEnumerable<string> Doors(Piece piece) =>
        piece.Groups.Where(g => g.Kind == GroupKind.Door).Select(g => g.Name);

    [Fact]
    public void Doors_one_above_the_other_are_upper_and_lower()
    {
        var piece = Divided("rows: [ { doors: slab pair }, { doors: slab pair } ]");
        Assert.Equal(
            ["box upper left door", "box upper right door", "box lower left door", "box lower right door"],
            Doors(piece)
        );
        piece.MustBeSound();
    }

    [Fact]
    public void A_row_of_drawers_over_doors_needs_no_names()
    {
        var piece = Divided("rows: [ { height: 150, drawer }, { doors: slab pair } ]");
        Assert.Equal(["box left door", "box right door"], Doors(piece));
        Assert.Contains(piece.Groups, g => g.Name == "box drawer 1");
        piece.MustBeSound();
    }

    [Fact]
    public void Rows_of_a_bay_are_named_within_it()
    {
        var piece = Divided("columns: [ { rows: { equal: 4, of: { doors: slab } } }, { doors: slab } ]");
        Assert.Equal(
            [
                "box left bay row 1 door",
                "box left bay row 2 door",
                "box left bay row 3 door",
                "box left bay row 4 door",
                "box right bay door",
            ],
            Doors(piece)
        );
        piece.MustBeSound();
    }

    [Fact]
    public void Shelves_stand_behind_the_doors_they_are_said_for()
    {
        var piece = Divided(
            "rows: [ { height: 500, doors: slab, shelves: { fixed: 1 } }, { doors: slab, shelves: { fixed: 2 } } ]"
        );
        // Between 1600 - 18 - 500 and 1600 - 18.
        var shelf = piece.Part("box upper fixed shelf 1").Extent;
        Assert.True(shelf.Min.Z > piece.Read("1082") && shelf.Max.Z < piece.Read("1582"), piece.Write(shelf.Min.Z));
        Assert.Equal(2, piece.Parts.Count(p => p.Name.StartsWith("box lower fixed shelf", StringComparison.Ordinal)));
        piece.MustBeSound();
    }

    [Fact]
    public void Shelves_stay_behind_a_door_that_stands_in_its_opening()
    {
        var piece = Divided("doors: \"slab, inset\", shelves: { fixed: 1 }");
        // The door of 18 and the setback of 10; 381.5 less 28.
        piece.Measures("box fixed shelf 1", "564 x 353.5 x 18");
        piece.StandsAt("box fixed shelf 1", "18, 28, 791");
        piece.MustBeSound();
    }

    [Fact]
    public void Edging_ends_where_a_panel_goes_into_its_dado()
    {
        var piece = Built.From(
            """
            piece: Edged
            units: mm
            materials: { body: birch plywood 18, lipping: { solid: birch, thickness: 2 } }
            carcases:
              box: { size: [600, 720, 400], edging: lipping, joint: dado, back: none, shelves: { fixed: 1 } }
            """
        );
        piece.Measures("box bottom", "576 x 398 x 18");
        piece.Measures("box bottom front edging", "564 x 18 x 2");
        piece.StandsAt("box bottom front edging", "18, 0, 0");
        piece.Measures("box fixed shelf 1 front edging", "564 x 18 x 2");
        piece.MustBeSound();
    }

    [Fact]
    public void Behind_a_face_frame_only_shelves_are_edged()
    {
        var piece = Built.From(
            """
            piece: Edged
            units: mm
            materials: { body: birch plywood 18, lipping: { solid: birch, thickness: 2 } }
            carcases:
              box: { size: [600, 720, 400], face frame, edging: lipping, shelves: { adjustable: 1 } }
            """
        );
        Assert.Equal(["box adjustable shelf 1 front edging"], piece.PartsOf(Role.Edging).Select(p => p.Name));
        piece.MustBeSound();
    }
}
