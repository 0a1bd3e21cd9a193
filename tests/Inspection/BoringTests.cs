using Dryfit.Casework;
using static Dryfit.Inspection.Tests.Hole;

namespace Dryfit.Inspection.Tests;

/// <summary>Hinge cups and holes in their wood: what is left is worked out by hand.</summary>
public sealed class BoringTests
{
    // The left stile of the door lies from 2 to 62, from 0 to 20 deep, its groove from 52 to 62 and from 7 to 13 deep.
    private static Bench WithCup(decimal x, decimal depth, decimal diameter = 26)
    {
        var bench = Cupboard.Sound();
        bench.Change(
            "door-left-stile",
            stile => stile.Bored(At(CutKind.HingeCup, x, 20, 100, Direction.Front, diameter, depth))
        );
        return bench;
    }

    [Fact]
    public void Cup_with_wood_all_round_is_sound() => WithCup(24, 13).Inspect().IsClean();

    [Fact]
    public void Cup_that_leaves_2_mm_of_the_face_is_sound() => WithCup(24, 18).Inspect().IsClean();

    [Fact]
    public void Cup_that_leaves_less_of_the_face_is_told()
    {
        var finding = WithCup(24, 18.1m).Inspect().Only(CupBores.ThinUnder);
        Assert.Equal(Bench.Mm(1.9m), finding.Length());
        Assert.Equal(1.9, finding.Where!.From.YMm, 1e-6);
        Assert.Equal(0, finding.Where.To.YMm, 1e-6);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(21)]
    public void Cup_as_deep_as_the_door_is_thick_stops(int depth) =>
        WithCup(24, depth).Inspect().Only(CupBores.ComesThrough);

    // The cup's wall is at 24 + 13 = 37 for the sound one; the groove starts at 52: from 37 on there are 2 mm less than wanted.
    [Theory]
    [InlineData(37, false)]
    [InlineData(37.1, true)]
    public void Cup_near_the_groove_is_told(double x, bool told)
    {
        var report = WithCup((decimal)x, 13).Inspect();
        if (told)
            Assert.Equal(1.9, report.Only(CupBores.ThinBeside).Length().ToMillimetres(), 1e-3);
        else
            report.IsClean();
    }

    [Fact]
    public void Cup_that_breaks_into_the_groove_stops()
    {
        var finding = WithCup(40, 13).Inspect().Only(CupBores.BreaksOut);
        Assert.Contains("at the groove", finding.Message, StringComparison.Ordinal);
        Assert.Equal("door-left-stile", finding.Parts[0]);
    }

    // A cup of 5 mm depth ends before the groove, which starts 7 mm behind the face: 20 - 5 - 13 = 2.
    [Theory]
    [InlineData(5, false)]
    [InlineData(5.1, true)]
    public void Shallow_cup_over_the_groove_is_judged_by_the_wood_between(double depth, bool told)
    {
        var report = WithCup(48, (decimal)depth, 20).Inspect();
        if (told)
            Assert.Equal(1.9, report.Only(CupBores.ThinBeside).Length().ToMillimetres(), 1e-3);
        else
            report.IsClean();
    }

    // The hinge edge is at 2: 3 mm of wood when the cup starts at 5.
    [Theory]
    [InlineData(18, false)]
    [InlineData(17.9, true)]
    public void Cup_near_the_edge_of_the_door_is_told(double x, bool told)
    {
        var report = WithCup((decimal)x, 13).Inspect();
        if (told)
            Assert.Equal(2.9, report.Only(CupBores.NearEdge).Length().ToMillimetres(), 1e-3);
        else
            report.IsClean();
    }

    // Holes in the left side of the run: 18 thick, from 0 to 18; 560 deep, 700 high.
    private static Bench WithHoles(params Hole[] holes)
    {
        var bench = Run.Sound();
        bench.Change("left-side", side => holes.Aggregate(side, (board, hole) => board.Bored(hole)));
        return bench;
    }

    private static Hole Pin(decimal y, decimal z, decimal depth = 10) =>
        At(CutKind.ShelfPinHole, 18, y, z, Direction.Left, 5, depth, "pins");

    [Theory]
    [InlineData(16, null)]
    [InlineData(16.1, "hole-leaves-thin-wood")]
    [InlineData(18, "hole-comes-through")]
    [InlineData(19, "hole-comes-through")]
    public void Pin_hole_leaves_wood_before_it(double depth, string? kind) =>
        Holds(kind, WithHoles(Pin(40, 300, (decimal)depth)));

    [Theory]
    [InlineData(4.5, null)]
    [InlineData(4.4, "hole-leaves-thin-wood")]
    [InlineData(2.4, "hole-breaks-out")]
    public void Pin_hole_leaves_wood_at_the_rear_edge(double off, string? kind) =>
        Holds(kind, WithHoles(Pin(560 - (decimal)off, 300)));

    [Fact]
    public void Hole_that_is_bored_right_through_is_no_mistake() =>
        WithHoles(At(CutKind.Bore, 18, 40, 300, Direction.Left, 8, 18)).Inspect().IsClean();

    // Dowel holes of joint-1 from the inside against one from the outside: 12 + 5 of 18 leave 1.
    [Theory]
    [InlineData(9, 7, null)]
    [InlineData(9, 7.1, "holes-near-each-other")]
    [InlineData(9, 9, "holes-meet")]
    [InlineData(12, 12, "holes-meet")]
    public void Holes_from_both_sides_keep_apart(double inner, double outer, string? kind) =>
        Holds(
            kind,
            WithHoles(
                At(CutKind.Bore, 18, 40, 300, Direction.Left, 8, (decimal)inner, "a"),
                At(CutKind.Bore, 0, 42, 300, Direction.Right, 8, (decimal)outer, "b")
            )
        );

    // Side by side from both sides and past each other: 10 between their middles leaves 2.
    [Theory]
    [InlineData(10, null)]
    [InlineData(9.9, "holes-near-each-other")]
    [InlineData(7.9, "holes-meet")]
    public void Holes_beside_each_other_keep_apart(double off, string? kind) =>
        Holds(
            kind,
            WithHoles(
                At(CutKind.Bore, 18, 40, 300, Direction.Left, 8, 12, "a"),
                At(CutKind.Bore, 0, 40 + (decimal)off, 300, Direction.Right, 8, 12, "b")
            )
        );

    // Square to each other: one along the side at 9 deep, 8 wide, so from 5 to 13; the other ends at 18 - 3 = 15 or 14.9.
    [Theory]
    [InlineData(3, null)]
    [InlineData(3.1, "holes-near-each-other")]
    [InlineData(5.1, "holes-meet")]
    public void Holes_square_to_each_other_keep_apart(double depth, string? kind) =>
        Holds(
            kind,
            WithHoles(
                At(CutKind.Bore, 9, 0, 300, Direction.Back, 8, 60, "a"),
                At(CutKind.Bore, 18, 40, 300, Direction.Left, 8, (decimal)depth, "b")
            )
        );

    [Fact]
    public void Cam_may_meet_the_hole_of_its_own_bolt() =>
        WithHoles(
                At(CutKind.Bore, 9, 0, 300, Direction.Back, 8, 34, "a"),
                At(CutKind.Bore, 18, 34, 300, Direction.Left, 15, 13, "a")
            )
            .Inspect()
            .IsClean();

    [Fact]
    public void Holes_of_one_row_too_near_are_told_once()
    {
        var finding = WithHoles(Pin(40, 300), Pin(40, 306), Pin(40, 312)).Inspect().Only(BoresMeet.Near);
        Assert.Equal(1, finding.Length().ToMillimetres(), 1e-3);
    }

    [Fact]
    public void Mirrored_and_moved_cups_and_holes_are_told_alike()
    {
        Assert.Equal(
            "hinge-cup-breaks-out",
            Assert.Single(WithCup(40, 13).Mirrored().Moved(1000, -500, 30).Inspect().Findings).Kind.Id
        );
        Assert.Equal(
            "hinge-cup-near-edge",
            Assert.Single(WithCup(17, 13).Mirrored().Moved(-1000, 500, 30).Inspect().Findings).Kind.Id
        );
        Assert.Equal("hole-breaks-out", Assert.Single(WithHoles(Pin(558, 300)).Mirrored().Inspect().Findings).Kind.Id);
    }

    /// <summary>Two shelves at one height on both sides of a partition: their fastenings pass each other.</summary>
    [Theory]
    [InlineData("dowels")]
    [InlineData("biscuits")]
    [InlineData("connectors")]
    public void Fastenings_from_both_sides_of_a_partition_are_staggered(string joint) =>
        Whole
            .Recipe(
                $$"""
                piece: Cabinet
                units: mm
                materials: { body: birch plywood 18, backs: birch plywood 6.5 }
                carcases:
                  box:
                    size: [818, 600, 400]
                    joint: {{joint}}
                    front: { columns: [ { open, shelves: { fixed: 1 } }, { open, shelves: { fixed: 1 } } ] }
                """
            )
            .IsClean();

    /// <summary>Shelves on pins in the row that the plates of the hinges stand in, at any height.</summary>
    [Theory]
    [InlineData(80)]
    [InlineData(85)]
    [InlineData(96)]
    [InlineData(110)]
    public void Hinges_keep_clear_of_pins_and_shelves(int at) =>
        Whole
            .Recipe(
                $$"""
                piece: Cabinet
                units: mm
                materials: { body: birch plywood 18, backs: birch plywood 6.5, fronts: birch plywood 18 }
                carcases:
                  box:
                    size: [500, 600, 400]
                    front: { doors: slab }
                    shelves: { adjustable: 1, at: [{{at}}] }
                """
            )
            .IsClean();

    private static void Holds(string? kind, Bench bench) =>
        Assert.Equal(kind is null ? [] : [kind], bench.Inspect().Findings.Select(finding => finding.Kind.Id));
}
