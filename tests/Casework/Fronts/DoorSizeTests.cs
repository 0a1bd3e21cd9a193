using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Sizes of doors and their members, against worked examples of the trade.</summary>
public sealed class DoorSizeTests
{
    /// <summary>
    /// Rail = door - 2 stiles + 2 tenons: 14 in, stiles 2 1/2, tenons 3/8 give 9 3/4 (PrecisionBits, Building
    /// frame-and-panel doors, 2019). Door 27 x 45 1/2 of stiles 3 1/2 with 3/8 tongues: the rule "+ 3/4" is printed, 20 3/4
    /// is its sum, and stiles run the full height (Instructables, A DIY guide to frame and panel doors).
    /// </summary>
    [Theory]
    [InlineData("14\"", "30\"", "2 1/2", "9 3/4\"")]
    [InlineData("27\"", "45 1/2\"", "3 1/2", "20 3/4\"")]
    public void Rail_is_the_door_less_its_stiles_and_more_by_its_tenons(
        string width,
        string height,
        string stile,
        string rail
    )
    {
        var bench = new FrontBench(LengthUnit.Inch, width, height);
        bench.Doors($"{{ kind: framed, gap: 0, stiles: {stile}, rails: {stile} }}");
        Assert.Equal(Exact(rail), bench["upper door top rail"].Length.Length);
        Assert.Equal(Exact(rail), bench["upper door bottom rail"].Length.Length);
        Assert.Equal(Exact(height), bench["upper door left stile"].Length.Length);
        Assert.Equal(Exact(height), bench["upper door right stile"].Length.Length);
    }

    /// <summary>
    /// Stiles 2.38 wide with a groove of 0.38: rail = door - 4.00, the "magic number" (widths printed in a raised panel
    /// tutorial, crookedlittletree; the number named on routerforums.com).
    /// </summary>
    [Theory]
    [InlineData("14\"")]
    [InlineData("17 5/8\"")]
    public void Rail_is_the_door_less_four_inches_for_the_stiles_of_a_published_tutorial(string width)
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            width,
            "30\"",
            shop: "shop: x\nunits: in\ndoors:\n  groove depth: 0.38\n"
        );
        bench.Doors("{ gap: 0, stiles: 2.38 }");
        Assert.Equal(Exact(width) - Length.FromInches(4), bench["upper door top rail"].Length.Length);
    }

    /// <summary>Opening 15 x 27 with 1/2 in overlay: door 16 x 28 (door supplier's how-to guide, p. 3).</summary>
    [Fact]
    public void Overlaid_door_is_larger_than_its_opening_by_both_overlays()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", hang: Hang.Overlay, reach: "1/2\"");
        var door = bench.Around(Assert.Single(bench.Doors("framed")));
        Assert.Equal(Exact("16\""), door.Width);
        Assert.Equal(Exact("28\""), door.Height);
        Assert.Equal(-Exact("1/2\""), door.Min.X);
        Assert.Equal(-Exact("1/2\""), door.Min.Z);
    }

    /// <summary>
    /// Pair with 1/2 in overlay: each (opening + 1) / 2 - 1/16, which leaves 1/8 between (door supplier's how-to guide,
    /// p. 3).
    /// </summary>
    [Fact]
    public void Overlaid_pair_shares_the_opening_and_its_overlays_and_leaves_a_gap_between()
    {
        var bench = new FrontBench(LengthUnit.Inch, "30\"", "27\"", hang: Hang.Overlay, reach: "1/2\"");
        var doors = bench.Doors("{ leaves: pair, pair gap: 1/8 }");
        var (left, right) = (bench.Around(doors[0]), bench.Around(doors[1]));
        var each = ((Exact("30\"") + Exact("1\"")) / 2) - Exact("1/16\"");
        Assert.Equal(each, left.Width);
        Assert.Equal(each, right.Width);
        Assert.Equal(Exact("1/8\""), right.Min.X - left.Max.X);
    }

    /// <summary>
    /// Inset with gaps of 3/32: a single door is 3/16 less than its opening, a pair 9/32 in all (Woodweb, Inset Cabinet
    /// Door Clearance, 2006).
    /// </summary>
    [Fact]
    public void Inset_doors_take_the_published_deductions_from_their_opening()
    {
        var single = new FrontBench(LengthUnit.Inch, "16\"", "24\"");
        Assert.Equal(Exact("16\"") - Exact("3/16\""), single.Around(single.Doors("framed")[0]).Width);

        var pair = new FrontBench(LengthUnit.Inch, "32\"", "24\"");
        var doors = pair.Doors("framed pair");
        Assert.Equal(Exact("32\"") - Exact("9/32\""), pair.Around(doors[0]).Width + pair.Around(doors[1]).Width);
    }

    [Theory]
    [InlineData("framed")]
    [InlineData("glazed")]
    [InlineData("slab")]
    [InlineData("framed, hinged right")]
    public void Inset_door_keeps_its_gap_on_all_four_edges(string said)
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15 1/3\"",
            "27\"",
            materials: Stuff("panes", MaterialKind.Glass, "1/8\"")
        );
        var front = Assert.Single(bench.Doors(said));
        var door = bench.Around(front);
        var gap = Exact("3/32\"");
        Assert.Equal(gap, door.Min.X);
        Assert.Equal(gap, Exact("15 1/3\"") - door.Max.X);
        Assert.Equal(gap, door.Min.Z);
        Assert.Equal(gap, Exact("27\"") - door.Max.Z);
        Assert.Equal(Length.Zero, door.Min.Y);
        Assert.Equal(new WantedSides(gap, gap, gap, gap), front.Wanted);
    }

    [Fact]
    public void Doors_of_a_pair_are_neighbours_and_want_nothing_else_of_the_carcase_there()
    {
        var bench = new FrontBench(LengthUnit.Inch, "30\"", "27\"");
        var doors = bench.Doors("framed pair");
        var (gap, between) = (Exact("3/32\""), Exact("3/32\""));
        Assert.Equal(new WantedSides(gap, null, gap, gap), doors[0].Wanted);
        Assert.Equal(new WantedSides(null, gap, gap, gap), doors[1].Wanted);
        Assert.Equal([new FrontNeighbour(doors[1].Group, Direction.Right, between)], doors[0].Neighbours);
        Assert.Equal([new FrontNeighbour(doors[0].Group, Direction.Left, between)], doors[1].Neighbours);
        Assert.Equal(between, bench.Around(doors[1]).Min.X - bench.Around(doors[0]).Max.X);
        Assert.Equal([FrontMotion.TurnsOnLeftEdge, FrontMotion.TurnsOnRightEdge], doors.Select(d => d.Motion));
    }

    [Fact]
    public void Front_stops_half_a_gap_short_where_another_follows()
    {
        var bench = new FrontBench(
            LengthUnit.Millimetre,
            "400 mm",
            "300 mm",
            hang: Hang.Overlay,
            reach: "1.5 mm",
            openSides: [Direction.Up]
        );
        var front = Assert.Single(bench.Doors("slab"));
        Assert.Null(front.Wanted.Top);
        Assert.Equal(Exact("298.5 mm"), bench.Around(front).Max.Z);
    }

    [Fact]
    public void Why_prints_the_sums_a_maker_would_write()
    {
        var bench = new FrontBench(LengthUnit.Inch, "30\"", "27\"");
        bench.Doors("framed pair");
        var rail = bench["upper left door top rail"];
        Assert.Equal("rail length = door width - stile - stile + groove depth + groove depth", Sums.Of(rail.Length));
        Assert.Equal("shoulder to shoulder = rail length - groove depth - groove depth", Sums.Of(rail.ShoulderLength!));
        var panel = bench["upper left door panel"];
        Assert.Equal("panel width = inside width + groove depth + groove depth - play - play", Sums.Of(panel.Width));
        Assert.Equal("panel length = inside height + groove depth + groove depth - play - play", Sums.Of(panel.Length));
    }

    [Fact]
    public void Why_divides_a_pair_as_a_maker_does()
    {
        var bench = new FrontBench(LengthUnit.Inch, "30\"", "27\"");
        bench.Doors("slab pair");
        Assert.Equal(
            "door width = (opening width - gap - pair gap - gap) / 2",
            Sums.Of(bench["upper left door slab"].Width)
        );
    }
}
