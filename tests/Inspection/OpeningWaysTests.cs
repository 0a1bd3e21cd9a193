using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection.Tests;

/// <summary>Sliding doors, rebates, handles and panes: each kind of finding raised once, and one case just inside its limit.</summary>
public sealed class OpeningWaysTests
{
    /// <summary>Inside 964 x 664: leaves 493.5 x 674, 25 past one another, 5 deep in grooves below and above.</summary>
    private const string Sliding = """
        piece: Cupboard
        units: mm
        materials: { body: pine 18, backs: birch plywood 6 }
        carcases:
          base: { size: [1000, 700, 400], front: { doors: { kind: slab, opens: sliding } } }

        """;

    /// <summary>Opening 720 x 620, gaps of 2 and 3 between: 356.5 wide each, 366.5 with the rebate.</summary>
    private const string Pair = """
        piece: Cupboard
        units: mm
        materials: { body: pine 18, backs: birch plywood 6, panes: float glass 3 }
        carcases:
          base:
            size: [800, 700, 400]
            face frame: { stiles: 40, rails: 40 }
            front: { doors: { leaves: pair, WAYS } }

        """;

    [Theory]
    [InlineData("460", "8.5")]
    [InlineData("470", null)]
    public void Sliding_doors_that_do_not_pass_leave_a_slot(string width, string? slot)
    {
        var report = Whole.Recipe($"{Sliding}as cut:\n  base left door slab: {{ width: {width} }}\n");
        if (slot is null)
            Assert.DoesNotContain(report.Findings, f => f.Kind == SlidingDoors.Slot);
        else
            Assert.Equal(new MeasuredLength("slot", Mm(slot)), report.Only(SlidingDoors.Slot).Measured);
    }

    /// <summary>The upper groove is 11.5 deep; a leaf 2 too high leaves 4.5 over it and must come up by 5.</summary>
    [Theory]
    [InlineData("676", "4.5")]
    [InlineData("675", null)]
    public void Sliding_door_too_high_cannot_be_lifted_out(string height, string? room)
    {
        var report = Whole.Recipe($"{Sliding}as cut:\n  base left door slab: {{ length: {height} }}\n");
        if (room is null)
            Assert.DoesNotContain(report.Findings, f => f.Kind == SlidingDoors.StaysIn);
        else
            Assert.Equal(new MeasuredLength("room above", Mm(room)), report.Only(SlidingDoors.StaysIn).Measured);
    }

    [Fact]
    public void Gap_of_doors_that_meet_in_a_rebate_is_told_on_their_faces()
    {
        Assert.Empty(Whole.Recipe(Pair.Replace("WAYS", "meeting: rebated", StringComparison.Ordinal)).Findings);
        var report = Whole.Recipe(
            Pair.Replace("WAYS", "kind: slab, meeting: rebated", StringComparison.Ordinal)
                + "as cut:\n  base right door: { width: 352.5 }\n"
        );
        Assert.Equal(new MeasuredLength("gap", Mm("7")), report.Only(FrontGaps.TooWide).Measured);
    }

    [Theory]
    [InlineData("overlaid")]
    [InlineData("rebated")]
    public void Doors_that_meet_in_a_rebate_cover_their_opening_together(string hang) =>
        Whole
            .Recipe(
                Pair.Replace(
                    "WAYS",
                    $"kind: slab, hang: {hang}, meeting: {{ rebate: 12, closes first: right }}",
                    StringComparison.Ordinal
                )
            )
            .IsClean();

    /// <summary>Knobs of 32 in the middle of stiles of 38 or 40, with a gap of 3 between the doors: 9 or 11 apart.</summary>
    [Theory]
    [InlineData("38", "9")]
    [InlineData("40", null)]
    public void Knobs_of_a_pair_leave_room_for_fingers(string stiles, string? apart)
    {
        var report = Whole.Recipe(
            Pair.Replace("WAYS", $"kind: framed, stiles: {stiles}, pull: knob", StringComparison.Ordinal)
        );
        if (apart is null)
            Assert.Empty(report.Findings);
        else
            Assert.Equal(new MeasuredLength("between them", Mm(apart)), report.Only(Handles.Clash).Measured);
    }

    [Theory]
    [InlineData(16, false)]
    [InlineData(15, true)]
    [InlineData(51, true)]
    public void Knob_of_32_sits_flat_only_where_the_board_is_flat_under_all_of_it(int x, bool isOff)
    {
        var bench = new Bench();
        bench.Group("door", GroupKind.Door);
        // A board 100 wide whose right third lies 2 deeper.
        bench.Add("slab", Role.DoorSlab, "door", Bench.Box(0, 0, 0, 100, 20, 300), Bench.Box(66, 0, 0, 100, 2, 300));
        bench.Knob("slab", x, 0, 150, 32);
        Assert.Equal(isOff, bench.Inspect().Findings.Any(f => f.Kind == Handles.Off));
    }

    [Theory]
    [InlineData("groove", 2)]
    [InlineData("beads", 0)]
    public void Pane_in_a_groove_is_captive_and_one_behind_beads_is_not(string heldBy, int captive)
    {
        var report = Whole.Recipe(
            Pair.Replace("WAYS", $"kind: glazed, panes held by: {heldBy}", StringComparison.Ordinal)
        );
        Assert.Equal(captive, report.Findings.Count(f => f.Kind == CaptivePanes.Captive));
        Assert.DoesNotContain(report.Findings, f => f.Kind != CaptivePanes.Captive);
    }

    [Fact]
    public void Beads_of_a_door_that_is_told_to_be_wrong_are_not_told_besides()
    {
        var report = Whole.Recipe(
            Pair.Replace("WAYS", "kind: glazed", StringComparison.Ordinal)
                + "as cut:\n  base left door rails: { length: 240 }\n"
        );
        Assert.NotEmpty(report.Findings);
        Assert.DoesNotContain(report.Findings, f => f.Message.Contains("bead", StringComparison.Ordinal));
    }

    [Fact]
    public void Inset_door_is_flush_with_the_bands_of_its_carcase()
    {
        const string Banded = """
            piece: Cupboard
            units: mm
            materials: { body: birch plywood 18 mm, fronts: ash 20, backs: birch plywood 6, bands: { solid: ash, thickness: 2 } }
            carcases:
              base: { size: [500, 700, 400], edging: bands, front: { doors: "framed, inset" } }

            """;
        Whole.Recipe(Banded).IsClean();
    }

    private static Length Mm(string mm) => LengthText.Parse(mm, LengthUnit.Millimetre).Length;
}
