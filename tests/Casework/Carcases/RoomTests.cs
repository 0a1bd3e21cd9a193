using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// A bookcase of pine 18 between walls 1812 apart at the floor and 1800 at 2000, the left one leaning in by 4, over a floor
/// that rises by 8 to the right.
/// </summary>
public sealed class RoomTests
{
    private const string Space =
        "room:\n  alcove:\n    widths: [[0, 1812], [2000, 1800]]\n    left wall: [[0, 0], [2000, 4]]\n    floor: [[0, 0], [1812, 8]]\n    depth: 400\n";

    [Fact]
    public void A_carcase_stands_in_the_middle_of_the_room_that_the_walls_leave()
    {
        // The left wall comes in to 4 at 2000, the right one stands at 1804 there and at 1812 at the floor: up to 1500 the
        // furthest in are 3 and 1806.
        var piece = Built.From(Metric("bookcase: { size: [1780, 1500, 300], between: alcove }", Space));
        piece.StandsAt("bookcase left side", "14.5, 0, 0");
    }

    [Fact]
    public void Formulas_know_the_narrowest_width()
    {
        var piece = Built.From(
            Metric("bookcase: { size: [alcove.narrowest - 24, 1500, 300], between: alcove }", Space)
        );
        piece.StandsAt("bookcase right side", "1774.5, 0, 0");
    }

    [Fact]
    public void Scribes_are_as_wide_as_the_worst_place_and_sawn_to_the_wall()
    {
        var piece = Built.From(Metric("bookcase: { size: [1776, 2000, 300], between: alcove, scribes }", Space));
        // At 2000 the walls stand at 4 and 1804: 16 are left before and behind 1776. The gaps are 16 and 20 at the floor, 12 above.
        var (left, right) = (piece.Part("bookcase left scribe"), piece.Part("bookcase right scribe"));
        piece.Measures("bookcase left scribe", "2000 x 16 x 18");
        piece.StandsAt("bookcase left scribe", "0, 0, 0");
        piece.Measures("bookcase right scribe", "2000 x 20 x 18");
        // What is sawn off is a wedge: 4 x 2000 / 2 on the left, 8 x 2000 / 2 on the right.
        Assert.Equal(((16 * 2000) - 4000) * 18.0, piece.Grid.ToCubicMm(left.Solid.Volume), 1e-3);
        Assert.Equal(((20 * 2000) - 8000) * 18.0, piece.Grid.ToCubicMm(right.Solid.Volume), 1e-3);
        piece.MustBeSound();
    }

    [Fact]
    public void A_strip_along_the_floor_goes_down_to_its_lowest_place()
    {
        var piece = Built.From(
            Metric(
                "bookcase: { size: [1776, 2000, 300], stands on: { plinth: 90 }, between: alcove, floor scribe }",
                Space
            )
        );
        var strip = piece.Part("bookcase floor scribe");
        // 90 over the highest place and 8 more.
        Assert.Equal("98", piece.Write(strip.Width.Length));
        Assert.Equal("-8", piece.Write(strip.Extent.Min.Z));
        // The floor rises by 8 over 1812: the wedge below it is sawn off from the left end on.
        var (x0, x1) = (strip.Extent.Min.X.ToMillimetres(), strip.Extent.Max.X.ToMillimetres());
        var wedge = (x1 - x0) * (x0 + x1) / 2 * 8 / 1812;
        Assert.Equal((((x1 - x0) * 98) - wedge) * 18, piece.Grid.ToCubicMm(strip.Solid.Volume), 1);
    }

    [Fact]
    public void What_stands_on_a_carcase_between_walls_is_scribed_to_the_same_walls()
    {
        var piece = Built.From(
            Metric(
                "lower: { size: [1776, 800, 300], between: alcove }\nupper: { on: lower, size: [1776, 1000, 300], scribes }",
                Space
            )
        );
        // From 800 to 1800 the left wall comes in from 1.6 to 3.6; the lower one stands in the middle of what 800 leaves:
        // 1.6 and 1808.8, so that both begin at 17.2.
        piece.StandsAt("upper left side", "17.2, 0, 800");
        piece.Measures("upper left scribe", "1000 x 15.6 x 18");
        piece.StandsAt("upper left scribe", "1.6, 0, 800");
    }

    [Fact]
    public void What_was_measured_since_stands_in_place_of_what_the_recipe_took()
    {
        var piece = Built.From(
            Metric(
                "bookcase: { size: [1760, 1500, 300], between: alcove }",
                Space
                    + "as measured:\n  alcove: { widths: [[0, 1790], [2000, 1790]], left wall: [[0, 0], [2000, 0]] }\n"
            )
        );
        piece.StandsAt("bookcase left side", "15, 0, 0");
    }

    [Theory]
    [InlineData("size: [1776, 2100, 300], between: alcove, scribes", "is measured up to")]
    [InlineData("size: [1798, 1500, 300], between: alcove, scribes", "are left between the bookcase and the")]
    [InlineData("size: [1776, 1500, 300], scribes", "the carcase stands in none")]
    [InlineData("size: [1776, 1500, 300], between: alcove, floor scribe", "no plinth and no toe space")]
    [InlineData("size: [1776, 1500, 300], between: alkove", "There is no space between walls called 'alkove'.")]
    public void What_cannot_be_is_refused(string bookcase, string says) =>
        Assert.Contains(says, Built.ErrorOf(Metric($"bookcase: {{ {bookcase} }}", Space)), StringComparison.Ordinal);

    [Theory]
    [InlineData("widths: [[900, 1800], [0, 1800]]", "do not rise")]
    [InlineData("depth: 400", "The width of the alcove is missing.")]
    public void Readings_that_tell_nothing_are_refused(string readings, string says) =>
        Assert.Contains(
            says,
            Built.ErrorOf(
                Metric("bookcase: { size: [900, 900, 300], between: alcove }", $"room:\n  alcove: {{ {readings} }}\n")
            ),
            StringComparison.Ordinal
        );
}
