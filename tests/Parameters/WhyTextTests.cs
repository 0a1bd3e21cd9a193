using Dryfit.Measure;
using Dryfit.Parameters.Why;

namespace Dryfit.Parameters.Tests;

/// <summary>Small goldens; every number was added up by hand.</summary>
public sealed class WhyTextTests
{
    private const string Bays = """
        parameters:
          width: { default: 54, from: 36 }
          side: 7/8
          bays: { is: count, default: 3 }
          inner: width - 2 * side
          bay: (inner - (bays - 1) * side) / bays
          slat: round down(bay / 7, 1/8)
          rail: if bay > 12 then min(bay, 20 mm) else 2
          brace: sqrt(width * width + side * side)
          door: bay

        """;

    private static Figure Inches(string name, int whole, int numerator, int denominator, Origin origin) =>
        Figure.Given(name, Length.FromInches(whole, numerator, denominator), origin);

    private static string Why(string name, LengthFormat? format = null) =>
        WhyText.Write(Recipes.Bind(Bays).Named(name)!, format ?? LengthFormat.Inches);

    [Fact]
    public void Terms_stand_below_their_figure_with_wholes_and_fractions_aligned_and_each_sum_once()
    {
        var opening = Inches("opening width", 16, 0, 1, new WrittenOrigin(new("shelf.dryfit.yaml", 12, 7, 2)));
        var gap = Inches("gap", 0, 3, 32, new RuleOrigin("gaps.inset", null));
        var stile = Inches("stile", 1, 3, 4, new RuleOrigin("doors.stile", new("shop.yaml", 4, 3, 3)));
        var tongue = Inches("tongue", 0, 3, 8, new TradeOrigin("common practice"));
        var door = (opening - gap - gap).As("door width");
        var play = Inches("play", 0, 1, 8, new SetOrigin("1/8"));
        var panel = (door - 2 * stile + 2 * tongue - play).As("panel width");

        Assert.Equal(
            """
            left door, panel width  12 15/16 in
                door width          15 13/16
              - 2 x stile            3 1/2   2 x 1 3/4; shop rule doors.stile (shop.yaml line 4)
              + 2 x tongue             3/4   2 x 3/8; common practice
              - play                   1/8   set on the command line

            door width              15 13/16 in
                opening width       16       recipe line 12
              - gap                    3/32  shop rule gaps.inset (built-in)
              - gap                    3/32  shop rule gaps.inset (built-in)

            """,
            WhyText.Write(panel, LengthFormat.Inches, "left door, panel width", "shelf.dryfit.yaml")
        );
    }

    [Fact]
    public void A_sixth_is_told_exactly_and_a_formula_with_its_line()
    {
        Assert.Equal(
            """
            bay                                     16 53/64 + 0.3/64 in  exactly 16 5/6; recipe line 6: (inner - (bays - 1) * side) / bays
                (inner - (bays - 1) x side) / bays  16 53/64 + 0.3/64     (52 1/4 - (3 - 1) x 7/8) / 3; bays: recipe line 4, side: recipe line 3

            inner                                   52 1/4 in             recipe line 5: width - 2 * side
                width                               54                    recipe line 2
              - 2 x side                             1 3/4                2 x 7/8; recipe line 3

            """,
            Why("bay")
        );
    }

    [Fact]
    public void What_rounding_left_off_is_told()
    {
        Assert.StartsWith(
            """
            slat                                     2 3/8 in             recipe line 7: round down(bay / 7, 1/8)
                bay / 7                              2 3/8                2 17/42 rounded down to 1/8, 1/32 - 0.1/64 left off

            bay 
            """,
            Why("slat"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_choice_tells_what_it_chose_from_and_why()
    {
        Assert.StartsWith(
            """
            rail                                       25/32 + 0.4/64 in  exactly 20 mm; recipe line 8: if bay > 12 then min(bay, 20 mm) else 2
                the smaller of bay and 20 mm           25/32 + 0.4/64     since bay > 12; the smaller of 16 5/6 and 20 mm

            """,
            Why("rail"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_root_says_that_it_was_rounded_once()
    {
        // 54² + (7/8)² = 2916.765625; the root is 54.00709 in.
        Assert.Equal(
            """
            brace                                      54 + 0.5/64 in  recipe line 9: sqrt(width * width + side * side)
                root of (width x width + side x side)  54 + 0.5/64     root of 2916.77 sq in, rounded to 1/640 mm

            """,
            Why("brace")
        );
    }

    [Fact]
    public void Sizes_in_millimetres_are_told_exactly_where_tenths_hide_something()
    {
        // 52 1/4 in is 1327.15 mm, 54 in is 1371.6 mm, 7/8 in is 22.225 mm.
        Assert.Equal(
            """
            inner         1327.2 - 0.05 mm  exactly 1327.15; recipe line 5: width - 2 * side
                width     1371.6            recipe line 2
              - 2 x side    44.5 - 0.05     exactly 44.45; 2 x 22.225; recipe line 3

            """,
            Why("inner", LengthFormat.Millimetres)
        );
    }

    [Fact]
    public void Numbers_of_a_formula_and_plain_multiples_are_not_said_twice()
    {
        var opening = Inches("opening", 20, 0, 1, new SetOrigin("20"));
        var mullion = Inches("mullion", 1, 1, 2, new TradeOrigin("common practice"));
        var share = (new Rational(1, 4) * (opening - 1 * mullion)).As("share");
        var formula = Recipes.Size("w - 1 1/2", "{ w: 6 }");

        Assert.Equal(
            """
            share                        4 5/8 in
                (opening - mullion) / 4  4 5/8  (20 - 1 1/2) / 4; opening: set on the command line, mullion: common practice

            """,
            WhyText.Write(share, LengthFormat.Inches)
        );
        Assert.Equal(
            """
            a      4 1/2 in  recipe line 3: w - 1 1/2
                w  6         recipe line 1
              -    1 1/2

            """,
            WhyText.Write(formula, LengthFormat.Inches)
        );
    }

    [Fact]
    public void A_sum_of_ten_thousand_terms_is_long_but_not_deep()
    {
        var one = Inches("board", 0, 3, 4, new SetOrigin("3/4"));
        var stack = one;
        for (var i = 1; i < 10_000; i++)
            stack += one;

        // 10,000 times 3/4 in is 7,500 in.
        Assert.StartsWith(
            "stack      7500 in\n    board       3/4  set on the command line\n  + board",
            WhyText.Write(stack.As("stack"), LengthFormat.Inches),
            StringComparison.Ordinal
        );
    }
}
