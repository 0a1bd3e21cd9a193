using System.Text.RegularExpressions;
using Dryfit.Casework.Tests.Kit;
using Dryfit.Parameters;
using Dryfit.Parameters.Why;

namespace Dryfit.Casework.Tests.Starters;

/// <summary>
/// The sums behind sizes, as a maker would write them on paper. Small goldens, each added up by hand; columns are left
/// out, and the numbers of lines in a starter, which may move.
/// </summary>
public sealed partial class WhyTests
{
    private static readonly Piece Cupboard = Built.From(Built.Starter("studio-cupboard"));
    private static readonly Piece Run = Built.From(Built.Starter("utility-room"));
    private static readonly Piece Chest = Built.From(Built.Starter("alcove-chest"));

    [Fact]
    public void Length_of_the_front_of_a_drawer_box()
    {
        Assert.Equal(
            [
                "box front length | 14 1/2 in",
                "box width | 15",
                "- side thickness | 1/2",
                "- side thickness | 1/2",
                "+ joint depth | 1/4 | shop rule drawers.joint depth (built-in)",
                "+ joint depth | 1/4 | shop rule drawers.joint depth (built-in)",
            ],
            First(Cupboard.Part("base drawer 1 box front").Length, Cupboard)
        );
    }

    [Fact]
    public void Length_of_a_slide_is_rounded_down_and_says_from_what()
    {
        // 19 less a back of 7/32, a front of 3/4 and 1/2 behind it: 17 17/32 is under 18.
        Assert.Equal(
            ["box length | 16 in", "room for the slides | 16 | 17 17/32 rounded down to 2, 1 17/32 left off"],
            First(Cupboard.Part("base drawer 1 left side").Length, Cupboard)
        );
    }

    [Fact]
    public void Length_of_a_rail_of_a_framed_door()
    {
        // The pair shares 33 less three gaps of 3/32: 16 23/64 each.
        Assert.Equal(
            [
                "rail length | 12 39/64 in",
                "door width | 16 23/64",
                "- stile | 2 1/4 | shop rule doors.stiles (built-in)",
                "- stile | 2 1/4 | shop rule doors.stiles (built-in)",
                "+ groove depth | 3/8 | shop rule doors.groove depth (built-in)",
                "+ groove depth | 3/8 | shop rule doors.groove depth (built-in)",
            ],
            First(Cupboard.Part("base left door top rail").Length, Cupboard)
        );
    }

    [Fact]
    public void Width_of_one_door_of_a_pair()
    {
        var lines = All(Run.Part("cupboard left door slab").FinishedWidth!, Run);
        Assert.Contains(
            "(inside width + overlay - pair gap + overlay) / 2 | 447 | (864 + 16.5 - 3 + 16.5) / 2; shop rule gaps.pair (built-in)",
            lines
        );
        Assert.Contains("overlay | 16.5 mm", lines);
        Assert.Contains("- edge gap | 1.5 | shop rule gaps.overlay edge (built-in)", lines);
    }

    [Fact]
    public void Length_of_a_shelf_on_pins()
    {
        Assert.Equal(
            [
                "shelf length | 862 mm",
                "inside width | 864",
                "- play | 1 | shop rule shelves.play (built-in)",
                "- play | 1 | shop rule shelves.play (built-in)",
            ],
            First(Run.Part("cupboard adjustable shelf 1").Length, Run)
        );
    }

    [Fact]
    public void Width_of_a_rabbeted_back()
    {
        Assert.Equal(
            [
                "back width | 53 1/4 in",
                "inside width | 52 1/2",
                "+ rabbet | 3/8 | shop rule joints.back rabbet (built-in)",
                "+ rabbet | 3/8 | shop rule joints.back rabbet (built-in)",
            ],
            First(Cupboard.Part("base back").Width, Cupboard)
        );
    }

    [Fact]
    public void Height_of_the_inside_behind_a_face_frame()
    {
        // 34 less legs of 6 and a top of 1 is 27; less the rail and the boards above: 24 3/4.
        var lines = All(Cupboard.Part("base back").Length, Cupboard);
        Assert.Equal("back height | 26 1/4 in", lines[0]);
        Assert.Contains("inside height | 24 3/4 in", lines);
        Assert.Contains("front height | 27 in", lines);
        Assert.Contains("- leg height | 6 | recipe line", lines);
    }

    [Fact]
    public void A_front_in_a_stack_ends_half_a_gap_short_on_each_side()
    {
        // 900 less a top of 27, a toe space of 100, two boards of 18 and a row of 150 is 587, for two.
        Assert.Equal(
            ["finished width | 290.5 mm", "opening height | 293.5", "- half the gap | 1.5", "- half the gap | 1.5"],
            First(Run.Part("bank drawer 2 front").FinishedWidth!, Run)
        );
    }

    [Fact]
    public void Width_of_a_side_is_cut_less_its_edging()
    {
        Assert.Equal(
            ["cut width | 558 mm", "side width | 560", "- edging | 2"],
            First(Run.Part("bank left side").Width, Run)
        );
    }

    [Fact]
    public void Length_of_an_end_rail_between_legs_of_two_plies()
    {
        // Dressed 2x4 is 38.1 thick: softwood lumber standard PS 20. 380 - 2 x 76.2.
        Assert.Equal(
            [
                "end rail length | 227.6 mm",
                "left wing depth | 380 | recipe line",
                "- leg depth | 76.2",
                "- leg depth | 76.2",
            ],
            First(Chest.Part("left wing stand left end rail").Length, Chest)
        );
    }

    [Theory]
    [InlineData("studio-cupboard")]
    [InlineData("utility-room")]
    [InlineData("alcove-chest")]
    public void No_sum_adds_nothing_or_takes_away_less_than_nothing(string starter)
    {
        var piece = Built.From(Built.Starter(starter));
        foreach (var part in piece.Parts)
        {
            foreach (var size in (Figure?[])[part.Length, part.Width, part.FinishedLength, part.FinishedWidth])
            {
                foreach (var line in size is null ? [] : All(size, piece))
                {
                    Assert.DoesNotContain("nothing said", line, StringComparison.Ordinal);
                    Assert.DoesNotMatch(@"^[+-] .* \| (0|-.*)$", line);
                    Assert.DoesNotMatch(@"(^| )-?1 x ", line);
                }
            }
        }
    }

    /// <summary>The figure and its terms alone.</summary>
    private static IReadOnlyList<string> First(Figure figure, Piece piece) =>
        Lines(WhyText.Write(figure, piece.Format).Split("\n\n")[0]);

    private static IReadOnlyList<string> All(Figure figure, Piece piece) => Lines(WhyText.Write(figure, piece.Format));

    private static IReadOnlyList<string> Lines(string text) =>
        [
            .. text.Split('\n')
                .Where(line => line.Length > 0)
                .Select(line => LineNumber().Replace(Columns().Replace(line.Trim(), " | "), "recipe line")),
        ];

    [GeneratedRegex(" {2,}", RegexOptions.None, 5000)]
    private static partial Regex Columns();

    [GeneratedRegex("recipe line [0-9]+", RegexOptions.None, 5000)]
    private static partial Regex LineNumber();
}
