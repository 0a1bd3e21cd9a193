using Dryfit.Casework.Building;
using Dryfit.Casework.Tests.Kit;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Doors of several panels, barred doors and raised panels.</summary>
public sealed class DividedDoorTests
{
    private static readonly Material[] Stock =
    [
        Stuff("panels", MaterialKind.Solid, "5/8\""),
        Stuff("panes", MaterialKind.Glass, "1/8\"", 2500),
    ];

    public static TheoryData<string> Divided { get; } =
    [
        "{ middle rails: 1 }",
        "{ middle rails: { at: [12] , width: 4 }, muntins: 1 }",
        "{ middle rails: { equal: 2, width: 1 1/2 }, muntins: { count: 1, width: 1 1/4 } }",
        "{ kind: glazed, bars: { columns: 2, rows: 3 } }",
        "{ kind: glazed, bars: { rows: 2, width: 5/8 }, hinged: right }",
        "{ kind: glazed, middle rails: 1, bars: { columns: 3 } }",
        "{ kind: glazed, bars: { columns: 2, rows: 2 }, panes held by: groove }",
    ];

    [Theory]
    [MemberData(nameof(Divided))]
    public void Members_and_what_they_hold_meet_without_sharing_room(string said)
    {
        var bench = Bench();
        var parts = bench.PartsOf(Assert.Single(bench.Doors(said))).ToList();
        Assert.Empty(SquareFit.Overlaps(parts));
        Assert.Empty(SquareFit.Strangers(parts, bench.Piece.Joints));
        var byId = parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        Assert.All(
            bench.Piece.Joints.Where(j => byId.ContainsKey(j.Enters)),
            joint => Assert.Equal(joint.Play, SquareFit.Gap(byId[joint.Receives], byId[joint.Enters], joint.Into))
        );
    }

    /// <summary>
    /// Opening 15 x 27, gap 3/32: door 14 13/16 x 26 13/16. Between stiles of 2 1/4: 10 5/16. Rails of 2 1/4 leave
    /// 22 5/16, the middle one of 2 1/4 leaves 20 1/16: 10 1/32 each.
    /// </summary>
    [Fact]
    public void Two_panels_share_the_height_that_three_rails_leave()
    {
        var bench = Bench();
        bench.Doors("{ middle rails: 1 }");
        var upper = bench["upper door upper panel"];
        // Grooves of 3/8 at both ends, 1/16 of play at each: 10 1/32 + 3/4 - 1/8.
        Assert.Equal(Exact("10 21/32\""), upper.Length.Length);
        Assert.Equal(upper.Length.Length, bench["upper door lower panel"].Length.Length);
        // 3/32 gap, 2 1/4 rail, 10 1/32 panel.
        Assert.Equal(Exact("12 3/8\""), bench["upper door middle rail"].Extent.Min.Z);
        Assert.Equal(
            "panel length = height between rails + groove depth + groove depth - play - play",
            Sums.Of(upper.Length)
        );
    }

    [Fact]
    public void Lock_rail_lies_at_its_height_and_muntins_stand_in_both_rows()
    {
        var bench = Bench();
        bench.Doors("{ middle rails: { at: [12], width: 4 }, muntins: { count: 1, width: 2 } }");
        Assert.Equal(Exact("12 3/32\""), bench["upper door middle rail"].Extent.Min.Z);
        // From the bottom rail's 2 1/4 to 12, and a tenon of 3/8 at each end.
        Assert.Equal(Exact("10 1/2\""), bench["upper door lower muntin"].Length.Length);
        Assert.Equal(Exact("9 3/4\""), bench["upper door lower muntin"].ShoulderLength!.Length);
        // 26 13/16 less the top rail's 2 1/4 and 16, and two tenons.
        Assert.Equal(Exact("9 5/16\""), bench["upper door upper muntin"].Length.Length);
        Assert.Equal(4, bench.Piece.Parts.Count(p => p.Role == Role.DoorPanel));
    }

    /// <summary>
    /// Between stiles 10 5/16, less one bar of 7/8: lights of 4 23/32. A pane lies 3/8 in the stile and 1/4 on the bar, less
    /// 1/16 of play each side.
    /// </summary>
    [Fact]
    public void Each_light_of_a_barred_door_has_its_own_pane_and_beads()
    {
        var bench = Bench();
        bench.Doors("{ kind: glazed, bars: { columns: 2, rows: 3 } }");
        var panes = bench.Piece.Parts.Where(p => p.Role == Role.Glass).ToList();
        Assert.Equal(6, panes.Count);
        Assert.Equal(24, bench.Piece.Parts.Count(p => p.Role == Role.GlassBead));
        Assert.Equal(5, bench.Piece.Parts.Count(p => p.Role == Role.DoorMuntin));
        Assert.Equal(Exact("5 7/32\""), bench["upper door middle left pane"].Width.Length);
        // Between rails 22 5/16, less two bars: 20 9/16 in three, and 1/4 on each bar less the play.
        Assert.Equal(Exact("20 9/16\"") / 3 + Exact("3/8\""), bench["upper door middle left pane"].Length.Length);
        foreach (var pane in panes)
        {
            foreach (var member in bench.Piece.Parts.Where(p => p.Role is not (Role.Glass or Role.GlassBead)))
                Assert.Null(SquareFit.Gap(member, pane, Direction.Back));
        }
    }

    [Fact]
    public void Captive_pane_is_closed_in_and_has_no_beads()
    {
        var bench = Bench();
        bench.Doors("{ kind: glazed, panes held by: groove }");
        Assert.DoesNotContain(bench.Piece.Parts, p => p.Role == Role.GlassBead);
        Assert.NotNull(SquareFit.Gap(bench["upper door top rail"], bench["upper door pane"], Direction.Back));
    }

    /// <summary>
    /// Acrylic grows by 70 millionths of its length a degree (typical value, from memory). Over 40 K the seat of 600 mm
    /// grows by 1.68 mm, half of it on each side, besides the play of 1.5 mm.
    /// </summary>
    [Fact]
    public void Plastic_pane_has_room_to_grow()
    {
        // 704 less two gaps of 2 and two stiles of 60 is 580, and two rabbets of 10 make 600.
        var acrylic = Stuff("panes", MaterialKind.Plastic, "3 mm") with
        {
            Stuff = "acrylic",
        };
        var bench = new FrontBench(LengthUnit.Millimetre, "704 mm", "704 mm", materials: acrylic);
        bench.Doors("glazed");
        Assert.Equal(Exact("595.32 mm"), bench["upper door pane"].Width.Length);
    }

    /// <summary>
    /// A panel 300 x 200 x 16 with a tongue of 6 x 10: 10 stand before it, or 6 where the lip has no more, and the rest
    /// behind. Bevel 30, fillet 2. Worked as a plate, a frustum of four slopes and two plates.
    /// </summary>
    [Fact]
    public void Raised_panel_keeps_the_volume_of_its_field_bevels_and_tongue()
    {
        var piece = Built.From(
            """
            piece: Raised
            units: mm
            materials: { body: pine 19, panels: pine 16, backs: birch plywood 6 }
            carcases:
              base:
                size: [400, 500, 300]
                face frame: { stiles: 40, rails: 40 }
                front: { doors: { kind: framed, raised: { bevel: 30, fillet: 2 }, stiles: 60, rails: 60 } }
            """
        );
        piece.MustBeSound();
        // Opening 320 x 420; door 316 x 416; between its members 196 x 296; grooves 10 deep, play 2 across, 1 along.
        piece.Measures("base door panel", "314 x 212 x 16");
        const double Tongue = 314.0 * 212 * 6;
        // Of the 10 over the tongue's 6, 6 stand before it (the lip) and 4 behind.
        const double Behind = 294.0 * 192 * 4;
        const double Fillet = 234.0 * 132 * 2;
        const double Slopes = 4.0 / 6 * ((294.0 * 192) + (4 * 264.0 * 162) + (234.0 * 132));
        piece.Holds("base door panel", Tongue + Behind + Fillet + Slopes);
        Assert.Equal(
            0,
            (piece.Part("base door panel").Extent.Min.Y - piece.Part("base door left stile").Extent.Min.Y).Sign
        );
    }

    [Theory]
    [InlineData("{ kind: slab, bars: { rows: 2 } }", "slab")]
    [InlineData("{ kind: framed, bars: { rows: 2 } }", "panels")]
    [InlineData("{ kind: glazed, muntins: 1 }", "glass")]
    [InlineData("{ kind: glazed, bars: { rows: 1 } }", "undivided")]
    [InlineData("{ kind: glazed, bars: { rows: 2, width: 1/2 } }", "rabbets")]
    [InlineData("{ muntins: 8 }", "no room")]
    [InlineData("{ kind: glazed, raised }", "raised")]
    [InlineData("{ middle rails: { at: [30] } }", "one above the other")]
    [InlineData("{ middle rails: { at: [10], equal: 1 } }", "either")]
    [InlineData("{ middle rails: { equal: 1, width: 3/4 } }", "grooves")]
    [InlineData("{ muntins: { count: 1, width: 3/4 } }", "grooves")]
    [InlineData("{ raised: { bevel: 6 } }", "field")]
    [InlineData("{ raised: { fillet: 1/2 } }", "fillet")]
    public void What_cannot_be_divided_or_raised_is_refused(string said, string because)
    {
        var bench = Bench();
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors(said));
        Assert.Contains(because, fault.Error.Message, StringComparison.Ordinal);
        Assert.NotNull(fault.Error.Expected);
    }

    private static FrontBench Bench() => new(LengthUnit.Inch, "15\"", "27\"", materials: Stock);
}
