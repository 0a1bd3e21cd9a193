using Dryfit.Casework.Building;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Doors put together from what the maker really cut.</summary>
public sealed class DoorAsCutTests
{
    // Opening 15 x 27, gap 3/32, stiles 2 1/4, grooves 3/8: door 14 13/16, rails 10 5/16 between shoulders, 11 1/16 overall.
    private const string Rail = "11 1/16\"";

    [Fact]
    public void Rails_cut_without_their_tongues_make_the_door_narrower_by_both()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", asCut: "door rails: { length: 10 5/16 }");
        var front = Assert.Single(bench.Doors("framed"));
        var door = bench.Around(front);
        Assert.Equal(Exact("14 1/16\""), door.Width);
        Assert.Equal(Exact("3/32\""), door.Min.X);
        Assert.Equal(Exact("3/32\""), door.Min.Z);
        Assert.True(bench["upper door top rail"].IsAsCut);
        // The panel was cut for the door as reckoned: 3/4 in less room than it wants, 1/8 play a side.
        Assert.Equal(
            [("upper door left stile", "upper door panel"), ("upper door right stile", "upper door panel")],
            SquareFit.Overlaps([.. bench.PartsOf(front)]).Select(p => (p.A.Name, p.B.Name))
        );
    }

    [Fact]
    public void Hinge_edge_stays_where_it_is_on_the_right_as_well()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", asCut: "rails: { length: 10 }");
        var door = bench.Around(Assert.Single(bench.Doors("framed, hinged right")));
        Assert.Equal(Exact("3/32\""), Exact("15\"") - door.Max.X);
    }

    [Fact]
    public void Shorter_of_two_rails_leaves_its_joint_open_away_from_the_hinges()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", asCut: "top rail: { length: 11 }");
        var door = bench.Around(Assert.Single(bench.Doors("framed")));
        Assert.Equal(Exact("14 13/16\""), door.Width);
        var rail = bench["upper door top rail"];
        Assert.Equal(Length.Zero, SquareFit.Gap(bench["upper door left stile"], rail, Direction.Left));
        Assert.Equal(
            Exact(Rail) - Exact("11\""),
            SquareFit.Gap(bench["upper door right stile"], rail, Direction.Right)
        );
    }

    [Theory]
    [InlineData("left stile", "26")]
    [InlineData("stiles", "26")]
    [InlineData("stiles", "28")]
    public void Stiles_of_another_length_keep_the_gap_below(string which, string length)
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", asCut: $"{which}: {{ length: {length} }}");
        var front = Assert.Single(bench.Doors("framed"));
        Assert.Equal(Exact("3/32\""), bench.Around(front).Min.Z);
        Assert.Equal(bench["upper door left stile"].Extent.Max.Z, bench["upper door top rail"].Extent.Max.Z);
        Assert.Equal(Exact($"{length}\"") + Exact("3/32\""), bench["upper door left stile"].Extent.Max.Z);
    }

    [Fact]
    public void Wider_stile_makes_the_door_wider()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", asCut: "right stile: { width: 2 1/2 }");
        var door = bench.Around(Assert.Single(bench.Doors("framed")));
        Assert.Equal(Exact("15 1/16\""), door.Width);
        Assert.Equal(
            Length.Zero,
            SquareFit.Gap(bench["upper door right stile"], bench["upper door top rail"], Direction.Right)
        );
    }

    [Fact]
    public void Panel_too_narrow_stands_in_the_middle_of_its_frame()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", asCut: "panel: { width: 10 }");
        var front = Assert.Single(bench.Doors("framed"));
        Assert.Empty(SquareFit.Overlaps([.. bench.PartsOf(front)]));
        var (left, right) = (bench["upper door left stile"], bench["upper door right stile"]);
        var panel = bench["upper door panel"];
        Assert.Equal(panel.Extent.Min.X - left.Extent.Max.X, right.Extent.Min.X - panel.Extent.Max.X);
    }

    [Fact]
    public void Whole_door_of_another_size_is_built_so_and_keeps_hinge_edge_and_bottom_gap()
    {
        var bench = new FrontBench(LengthUnit.Inch, "30\"", "27\"", asCut: "right door: { width: 14, height: 26 }");
        var doors = bench.Doors("framed pair");
        var (left, right) = (bench.Around(doors[0]), bench.Around(doors[1]));
        Assert.Equal((Exact("14\""), Exact("26\"")), (right.Width, right.Height));
        Assert.Equal(Exact("3/32\""), Exact("30\"") - right.Max.X);
        Assert.Equal(Exact("3/32\""), right.Min.Z);
        Assert.Equal((Exact("30\"") - Exact("9/32\"")) / 2, left.Width);
        // Its members follow: 14 - 4 1/2 + 3/4.
        Assert.Equal(Exact("10 1/4\""), bench["upper right door top rail"].Length.Length);
        Assert.Empty(SquareFit.Overlaps([.. bench.PartsOf(doors[1])]));
    }

    [Fact]
    public void Whole_door_and_its_members_may_both_be_overruled()
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "27\"",
            asCut: "upper door: { width: 14 }\nupper door top rail: { length: 10 }\n"
        );
        var door = bench.Around(Assert.Single(bench.Doors("framed")));
        Assert.Equal(Exact("14\""), door.Width);
        Assert.Equal(Exact("10\""), bench["upper door top rail"].Length.Length);
    }

    [Fact]
    public void Edged_slab_cut_short_keeps_its_bands_on()
    {
        var bench = new FrontBench(
            LengthUnit.Millimetre,
            "400 mm",
            "600 mm",
            asCut: "door slab: { width: 380 }",
            materials: [Stuff("fronts", MaterialKind.Sheet, "19 mm"), Stuff("edging", MaterialKind.Solid, "1 mm")]
        );
        var front = Assert.Single(bench.Doors("slab"));
        Assert.Equal(Exact("382 mm"), bench.Around(front).Width);
        Assert.Equal(Exact("2 mm"), bench.Around(front).Min.X);
        var parts = bench.PartsOf(front).ToList();
        Assert.Equal(5, parts.Count);
        Assert.Empty(SquareFit.Overlaps(parts));
    }

    [Theory]
    [InlineData("rails: { length: 1/2 }")]
    [InlineData("rails: { width: 14 }")]
    public void Members_that_leave_nothing_inside_are_refused_at_the_line_that_says_so(string asCut)
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", asCut: asCut);
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors("framed"));
        Assert.Contains("as its members were cut", fault.Error.Message, StringComparison.Ordinal);
        Assert.Equal(1, fault.Error.Place!.Line);
    }
}
