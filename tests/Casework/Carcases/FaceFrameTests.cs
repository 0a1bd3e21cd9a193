using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// A face-framed box of 30 x 30 x 12 in of 3/4 in boards, stiles, rails and mullions 1 1/2 wide: between stiles 30 - 3 =
/// 27, between rails 27; behind it, between the sides, 28 1/2.
/// </summary>
public sealed class FaceFrameTests
{
    private static Piece Divided(string front, string frame = "face frame") =>
        Built.From(Inch($"box: {{ size: [30, 30, 12], {frame}, front: {{ {front} }} }}"));

    [Fact]
    public void The_frame_counts_in_the_depth_and_the_bottom_is_flush_with_its_rail()
    {
        var piece = Divided("open");
        piece.Measures("box left side", "30 x 11 1/4 x 3/4");
        piece.StandsAt("box left side", "0, 3/4, 0");
        piece.Measures("box face frame left stile", "30 x 1 1/2 x 3/4");
        piece.Measures("box face frame bottom rail", "27 x 1 1/2 x 3/4");
        piece.StandsAt("box face frame top rail", "1 1/2, 0, 28 1/2");
        // The clear width and two dados of 1/4; 11 1/4 less the back of 1/4. Its top is 1 1/2 up.
        piece.Measures("box bottom", "29 x 11 x 3/4");
        piece.StandsAt("box bottom", "1/2, 3/4, 3/4");
        // Two laps of 3/8; from under the bottom (3/4) to the top of the sides.
        piece.Measures("box back", "29 1/4 x 29 1/4 x 1/4");
        piece.Opens("box opening", "27 x 27");
        piece.MustBeSound();
    }

    [Fact]
    public void Members_may_have_widths_of_their_own()
    {
        var piece = Divided("columns: [ open, open ]", "face frame: { stiles: 2, rails: 1 3/4, mullions: 1 }");
        piece.Measures("box face frame left stile", "30 x 2 x 3/4");
        piece.Measures("box face frame top rail", "26 x 1 3/4 x 3/4");
        piece.Measures("box face frame mullion 1", "26 1/2 x 1 x 3/4");
        // (26 - 1) / 2.
        piece.Opens("box left bay opening", "12 1/2 x 26 1/2");
        piece.Opens("box right bay opening", "12 1/2 x 26 1/2");
        piece.MustBeSound();
    }

    [Fact]
    public void Equal_columns_share_what_the_mullions_leave()
    {
        var piece = Divided("columns: { equal: 3, of: open }");
        // (27 - 2 x 1 1/2) / 3 = 8.
        piece.Opens("box left bay opening", "8 x 27");
        piece.Opens("box middle bay opening", "8 x 27");
        piece.Opens("box right bay opening", "8 x 27");
        piece.StandsAt("box face frame mullion 1", "9 1/2, 0, 1 1/2");
        piece.StandsAt("box face frame mullion 2", "19, 0, 1 1/2");
        // Behind each mullion, in its middle, a partition between bottom and top panel, let into both:
        // 30 - 1 1/2 - 3/4 + 2 x 1/4 long, and 11 deep to the back.
        piece.Measures("box partition 1", "28 1/4 x 11 x 3/4");
        piece.StandsAt("box partition 1", "9 7/8, 3/4, 1 1/4");
        piece.MustBeSound();
    }

    [Fact]
    public void Columns_in_proportion_keep_it()
    {
        var piece = Divided("columns: [ { share: 1, open }, { share: 2, open } ]");
        // 27 - 1 1/2 = 25 1/2, in three parts of 8 1/2.
        piece.Opens("box left bay opening", "8 1/2 x 27");
        piece.Opens("box right bay opening", "17 x 27");
        piece.MustBeSound();
    }

    [Fact]
    public void A_fixed_column_leaves_the_rest_to_the_others()
    {
        var piece = Divided("columns: [ { width: 10 1/4, open }, { share: 1/2, open }, { share: 3/2, open } ]");
        // 27 - 3 - 10 1/4 = 13 3/4, a quarter and three quarters.
        piece.Opens("box left bay opening", "10 1/4 x 27");
        piece.Opens("box middle bay opening", "3 7/16 x 27");
        piece.Opens("box right bay opening", "10 5/16 x 27");
        piece.MustBeSound();
    }

    [Fact]
    public void A_third_stays_a_third()
    {
        var piece = Divided("columns: { equal: 3, of: open }", "face frame: { mullions: 1 }");
        var openings = piece.Openings.Select(o => o.Clear.Width.Inches);
        Assert.All(openings, width => Assert.Equal(new Dryfit.Measure.Rational(25, 3), width));
        piece.MustBeSound();
    }

    [Fact]
    public void Rows_have_rails_between_and_are_counted_from_the_top()
    {
        var piece = Divided("rows: [ { height: 5, drawer }, drawer, drawer ]");
        // 27 - 5 - 2 x 1 1/2 = 19, in two.
        piece.Opens("box opening", "27 x 5");
        piece.Opens("box opening 2", "27 x 9 1/2");
        piece.Opens("box opening 3", "27 x 9 1/2");
        // The top row ends 1 1/2 under the top, the rail begins 5 + 1 1/2 under that.
        piece.StandsAt("box face frame rail 1", "1 1/2, 0, 22");
        piece.StandsAt("box face frame rail 2", "1 1/2, 0, 11");
        piece.MustBeSound();
    }

    [Fact]
    public void Between_a_drawer_and_an_open_row_a_shelf_closes_flush_with_the_rail()
    {
        var piece = Divided("rows: [ { height: 5, drawer }, open ]");
        piece.StandsAt("box face frame rail 1", "1 1/2, 0, 22");
        piece.Measures("box divider 1", "29 x 11 x 3/4");
        // Its upper face in the plane of the rail's upper edge: 22 + 1 1/2 - 3/4.
        piece.StandsAt("box divider 1", "1/2, 3/4, 22 3/4");
        piece.MustBeSound();
    }

    [Fact]
    public void Rows_within_a_column_have_rails_from_stile_to_mullion()
    {
        var piece = Divided("columns: [ { width: 10, rows: { equal: 2, of: drawer } }, open ]");
        piece.Measures("box face frame left bay rail 1", "10 x 1 1/2 x 3/4");
        // (27 - 1 1/2) / 2.
        piece.Opens("box left bay opening", "10 x 12 3/4");
        piece.Opens("box left bay opening 2", "10 x 12 3/4");
        piece.Opens("box right bay opening", "15 1/2 x 27");
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("dowels", JointKind.Dowel)]
    [InlineData("pocket screws", JointKind.PocketScrewed)]
    public void Members_are_put_together_as_the_recipe_says(string joint, JointKind kind)
    {
        var piece = Divided("columns: [ open, open ]", $"face frame: {{ joint: {joint} }}");
        // Two ends of two rails and a mullion.
        Assert.Equal(6, piece.Joints.Count(j => j.Kind == kind));
        piece.MustBeSound();
    }

    [Fact]
    public void Pocket_holes_are_cut_into_the_back_of_the_rails()
    {
        var piece = Divided("open", "face frame: { joint: pocket screws }");
        var rail = piece.Part("box face frame bottom rail");
        Assert.Equal(4, rail.Cuts.Count(c => c.Kind == CutKind.PocketHole));
        Assert.True(piece.Grid.ToCubicMm(rail.Solid.Volume) < 27 * 1.5 * 0.75 * 25.4 * 25.4 * 25.4);
        Assert.DoesNotContain(
            rail.Solid.Faces,
            // Nothing is bored into the show face: every face that looks forward is the blank's own.
            f => f.Normal.Z > 0.999 && f.Cut >= 0
        );
    }

    [Theory]
    [InlineData(
        "columns: [ { width: 14, open }, { width: 13, open } ]",
        "take 1 1/2 in (38.1 mm) more than the width there is"
    )]
    [InlineData("columns: [ { width: 10, open }, { width: 10, open } ]", "leave 5 1/2 in (139.7 mm) of the width over")]
    [InlineData("columns: [ { width: 26, open }, open ]", "the fixed ones take all of it")]
    [InlineData("rows: [ { height: 26, open }, open ]", "Nothing is left for the regions that share the height")]
    [InlineData("width: 5, open", "takes its width from the carcase")]
    [InlineData("columns: [ { height: 5, open }, open ]", "takes its height from the whole")]
    [InlineData("columns: [ { share: 0, open }, open ]", "A share is above zero.")]
    [InlineData("columns: [ { doors: slab, drawer }, open ]", "cannot be both doors and drawer")]
    public void What_cannot_be_shared_out_is_refused(string front, string says)
    {
        Assert.Contains(
            says,
            Built.ErrorOf(Inch($"box: {{ size: [30, 30, 12], face frame, front: {{ {front} }} }}")),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("stiles: 15", "The box face frame bottom rail would have a length of 0 mm")]
    [InlineData("rails: 14", "The")]
    [InlineData("stiles: 1/2", "")]
    [InlineData("rails: 1/2", "")]
    [InlineData("mullions: 1/2", "")]
    public void A_frame_that_leaves_no_room_is_refused(string frame, string says)
    {
        var tried = Built.Try(
            Inch(
                $"box: {{ size: [30, 30, 12], face frame: {{ {frame} }}, front: {{ columns: [ open, {{ doors: framed }} ] }} }}"
            )
        );
        if (tried.Ok)
            tried.Value!.MustBeSound();
        else
            Assert.Contains(says, Built.Said(Assert.Single(tried.Errors)), StringComparison.Ordinal);
    }
}
