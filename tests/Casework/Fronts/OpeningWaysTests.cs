using Dryfit.Casework.Building;
using Dryfit.Casework.Tests.Kit;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Doors that slide, lift, drop, lap half over, sit in a lip or meet in a rebate.</summary>
public sealed class OpeningWaysTests
{
    /// <summary>
    /// Inside 964 x 664 in boards of 18. Height: 664 and 5 in each groove. Width: half of 964 with 25 to pass and 1 of play at
    /// both ends less.
    /// </summary>
    [Fact]
    public void Sliding_doors_pass_one_another_and_stand_in_both_grooves()
    {
        var piece = Frameless("doors: { kind: slab, opens: sliding }");
        piece.MustBeSound();
        piece.Measures("base left door slab", "674 x 493.5 x 18");
        // The left one runs behind: 5 to the face of the right one, its 18, and 3 between them.
        piece.StandsAt("base left door slab", "19, 26, 13");
        piece.StandsAt("base right door slab", "487.5, 5, 13");
        Assert.Equal([FrontMotion.SlidesRight, FrontMotion.SlidesLeft], piece.Fronts.Select(f => f.Motion));
        var up = piece.Joints.Where(j => j.Kind == JointKind.Runs && j.Into == Direction.Up).ToList();
        // The upper groove is 11.5 deep: once 5 to stand in, once 5 to come out below, and 1.5.
        Assert.All(up, joint => Assert.Equal(piece.Read("6.5"), joint.Play));
        Assert.Contains(
            piece.Part("base bottom").Cuts.OfType<SquareCut>(),
            cut => cut.Kind == CutKind.Groove && cut.Extent.Size(Axis.Z) == piece.Read("5")
        );
    }

    [Fact]
    public void Sliding_doors_of_thin_stuff_run_in_their_grooves_whole()
    {
        var piece = Frameless("doors: { kind: slab, opens: sliding, material: thin }", "  thin: mdf 6");
        piece.MustBeSound();
        Assert.Empty(piece.Part("base left door slab").Cuts);
    }

    [Fact]
    public void Shelves_stay_behind_sliding_doors()
    {
        var piece = Frameless("doors: slab sliding", shelves: "shelves: { adjustable: 1 }");
        // 5 + 18 + 3 + 18, and the setback of 10.
        Assert.Equal(piece.Read("54"), piece.Part("base adjustable shelf 1").Extent.Min.Y);
    }

    [Theory]
    [InlineData("lift-up", FrontMotion.TurnsOnTopEdge, "698.5", "base flap slab")]
    [InlineData("drop-front", FrontMotion.TurnsOnBottomEdge, "1.5", "base drop front slab")]
    public void Flap_turns_on_its_level_edge_with_stays(string word, FrontMotion motion, string pivot, string part)
    {
        var piece = Frameless($"doors: slab {word}");
        piece.MustBeSound();
        var front = Assert.Single(piece.Fronts);
        Assert.Equal(motion, front.Motion);
        Assert.Equal(piece.Read(pivot), front.Pivot.Z);
        var stays = piece.Hardware.Where(h => h.Kind.Contains("stay for", StringComparison.Ordinal)).ToList();
        // 997 wide: over 600, so one at each side.
        Assert.Equal(2, stays.Count);
        var cups = piece.Part(part).Cuts.OfType<RoundCut>().Where(c => c.Kind == CutKind.HingeCup).ToList();
        Assert.Equal(piece.Hardware.Count(h => h.Kind.StartsWith("cup hinge", StringComparison.Ordinal)), cups.Count);
        // 22.5 from the edge that turns: near the top of a board whose length runs up, or near its foot.
        var expected = motion == FrontMotion.TurnsOnTopEdge ? piece.Read("674.5") : piece.Read("22.5");
        Assert.All(cups, cup => Assert.Equal(expected, cup.From.X));
    }

    /// <summary>Opening 720 x 620, gaps of 2 and 3 between: 356.5 are seen of each door, and 10 more lie behind the right one.</summary>
    [Fact]
    public void Door_that_closes_first_runs_on_behind_the_other()
    {
        var piece = Framed("doors: { kind: framed, leaves: pair, meeting: { rebate: 10, closes first: left } }");
        piece.MustBeSound();
        piece.Measures("base left door right stile", "616 x 70 x 18");
        piece.Measures("base right door left stile", "616 x 60 x 18");
        piece.Measures("base left door top rail", "256.5 x 60 x 18");
        piece.Measures("base right door top rail", "256.5 x 60 x 18");
        var (left, right) = (piece.Part("base left door right stile"), piece.Part("base right door left stile"));
        // 10 behind it, less the gap of 3 that is left before its shoulder as well.
        Assert.Equal(piece.Read("7"), left.Extent.Max.X - right.Extent.Min.X);
        Assert.Contains(
            left.Cuts.OfType<SquareCut>(),
            c => c.Kind == CutKind.Rabbet && c.Extent.Depth == piece.Read("10")
        );
        Assert.All(piece.Fronts, f => Assert.True(Assert.Single(f.Neighbours).IsRebated));
        Assert.Contains(piece.Hardware, h => h.Kind.StartsWith("bolt", StringComparison.Ordinal) && h.Count == 2);
    }

    /// <summary>Opening 720 x 620: 6 of lip all round. Behind the lip 6 and the gap of 2 are cut away, half of 18 deep.</summary>
    [Fact]
    public void Lip_of_a_rebated_door_laps_over_and_its_back_goes_in()
    {
        var piece = Framed("doors: { kind: slab, hang: rebated }");
        piece.MustBeSound();
        piece.Measures("base door slab", "632 x 732 x 18");
        piece.Holds("base door slab", (632.0 * 732 * 9) + (616.0 * 716 * 9));
        // Its lip stands 2 before the frame, its back 7 behind the frame's face.
        piece.StandsAt("base door slab", "34, -11, 34");
    }

    [Fact]
    public void Lip_of_a_rebated_drawer_front_laps_over_too()
    {
        var piece = Framed("rows: [ { height: 200, drawer: rebated }, { doors: slab } ]");
        piece.MustBeSound();
        // 200 and 720, and 6 of lip all round; the box starts 7 behind the face of the frame.
        piece.Measures("base drawer 1 front", "732 x 212 x 18");
        Assert.Equal(piece.Read("7"), piece.Part("base drawer 1 box front").Extent.Min.Y);
    }

    [Fact]
    public void Panes_that_slide_need_no_frame_and_panes_that_turn_do()
    {
        Frameless("doors: { kind: slab, opens: sliding, material: panes }", "  panes: toughened glass 6").MustBeSound();
        var turning = Metric(
            "base: { size: [1000, 700, 400], front: { doors: { kind: slab, material: panes } } }",
            materials: "panes: toughened glass 6"
        );
        Assert.Contains("single sheet", Built.ErrorOf(turning), StringComparison.Ordinal);
    }

    [Fact]
    public void Half_overlaid_door_leaves_half_of_each_side_to_its_neighbour()
    {
        // 964, and half of 18 less 3 on each side.
        Frameless("doors: 'slab, half overlaid'").Measures("base door slab", "697 x 979 x 18");
    }

    [Fact]
    public void Doors_hinged_outside_make_a_run_the_same_from_both_ends()
    {
        var piece = Frameless("columns: [ { doors: 'slab, hinged outside' }, { doors: 'slab, hinged outside' } ]");
        Assert.Equal([FrontMotion.TurnsOnLeftEdge, FrontMotion.TurnsOnRightEdge], piece.Fronts.Select(f => f.Motion));
        piece = Frameless("columns: [ { doors: { hinged: inside } }, { doors: { hinged: inside } } ]");
        Assert.Equal([FrontMotion.TurnsOnRightEdge, FrontMotion.TurnsOnLeftEdge], piece.Fronts.Select(f => f.Motion));
    }

    /// <summary>Leaf 63 long and 1.5 thick; 16 wide, but 3 of a door of 18 stay behind it. The first sits 96 from the end.</summary>
    [Fact]
    public void Leaves_of_butt_hinges_are_let_into_door_and_frame()
    {
        var piece = Framed("doors: slab");
        piece.MustBeSound();
        foreach (
            var (part, from, to) in (ReadOnlySpan<(string, string, string)>)
                [("base door slab", "42", "43.5"), ("base face frame left stile", "38.5", "40")]
        )
        {
            var board = piece.Part(part);
            var recess = board.Cuts.OfType<SquareCut>().First(c => c.Kind == CutKind.HingeRecess);
            var room = board.Place.ToPiece(recess.Extent);
            Assert.Equal((piece.Read(from), piece.Read(to)), (room.Min.X, room.Max.X));
            Assert.Equal((piece.Read("0"), piece.Read("15")), (room.Min.Y, room.Max.Y));
            Assert.Equal((piece.Read("106.5"), piece.Read("169.5")), (room.Min.Z, room.Max.Z));
        }
    }

    [Theory]
    [InlineData("doors: { opens: sliding, leaves: single }", "nowhere to slide")]
    [InlineData("doors: { opens: lift-up, leaves: pair }", "one leaf")]
    [InlineData("doors: { opens: drop-front, hinged: left }", "hinged there")]
    [InlineData("doors: { opens: sliding, hang: overlaid }", "within their opening")]
    [InlineData("doors: { opens: sliding, pull: knob }", "passing one another")]
    [InlineData("doors: { meeting: rebated }", "pair")]
    [InlineData("rows: [ { drawer: rebated }, drawer ]", "every side")]
    [InlineData("doors: { leaves: pair, hinged: left }", "both edges")]
    public void What_cannot_open_is_refused(string front, string because)
    {
        var error = Built.ErrorOf(Metric($"base: {{ size: [1000, 700, 400], front: {{ {front} }} }}"));
        Assert.Contains(because, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_rows_a_board_comes_where_a_flap_turns_or_a_leaf_slides_on_it()
    {
        var piece = Frameless("rows: [ { doors: slab lift-up }, { doors: slab drop-front }, { doors: slab sliding } ]");
        piece.MustBeSound();
        Assert.Equal(2, piece.Parts.Count(p => p.Name.Contains("divider", StringComparison.Ordinal)));
        piece = Frameless("rows: [ { doors: slab }, drawer ]");
        Assert.DoesNotContain(piece.Parts, p => p.Name.Contains("divider", StringComparison.Ordinal));
    }

    [Fact]
    public void Stile_too_narrow_for_a_hinge_cup_is_refused()
    {
        // 22.5 to the middle of the cup and 17.5 to its edge: 40.
        var error = Built.ErrorOf(Metric("base: { size: [500, 700, 400], front: { doors: { stiles: 39 } } }"));
        Assert.Contains("inner edge", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Flap_with_nothing_over_it_is_refused()
    {
        var bench = new FrontBench(LengthUnit.Millimetre, "600 mm", "300 mm");
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors("lift-up"));
        Assert.Contains("nothing to hang on", fault.Error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Sliding_doors_want_a_board_thick_enough_for_the_upper_groove()
    {
        var thin = Metric("base: { size: [1000, 700, 400], front: { doors: sliding } }").Replace("pine 18", "pine 12");
        Assert.Contains("groove", Built.ErrorOf(thin), StringComparison.Ordinal);
    }

    [Fact]
    public void Before_a_face_frame_doors_neither_slide_nor_lap_half_over()
    {
        foreach (var (doors, because) in new[] { ("sliding", "grooves"), ("half overlaid", "members") })
        {
            var recipe = Metric($"base: {{ size: [800, 700, 400], face frame: , front: {{ doors: {doors} }} }}");
            Assert.Contains(because, Built.ErrorOf(recipe), StringComparison.Ordinal);
        }
    }

    private static Piece Frameless(string front, string materials = "", string shelves = "") =>
        Built.From(
            Metric(
                $"base: {{ size: [1000, 700, 400], front: {{ {front} }}{(shelves.Length > 0 ? $", {shelves}" : "")} }}",
                materials: materials.Trim()
            )
        );

    private static Piece Framed(string front) =>
        Built.From(
            Metric($"base: {{ size: [800, 700, 400], face frame: {{ stiles: 40, rails: 40 }}, front: {{ {front} }} }}")
        );
}
