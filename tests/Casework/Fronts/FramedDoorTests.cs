using Dryfit.Casework.Building;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>How the members of framed and glazed doors meet.</summary>
public sealed class FramedDoorTests
{
    private static readonly Material Ply = Stuff("panels", MaterialKind.Sheet, "5.2 mm");
    private static readonly Material Thick = Stuff("panels", MaterialKind.Solid, "5/8\"");
    private static readonly Material Glass = Stuff("panes", MaterialKind.Glass, "1/8\"", 2500);

    public static TheoryData<string, string, string> Doors =>
        new()
        {
            { "framed", "panels", "5.2 mm" },
            { "framed", "panels", "1/4\"" },
            { "framed", "panels", "5/8\"" },
            { "framed", "panels", "3/4\"" },
            { "{ kind: framed, top rail: 1 1/2, bottom rail: 3, hinged: right }", "panels", "1/4\"" },
            { "glazed", "panes", "1/8\"" },
            { "{ kind: glazed, stiles: 1 3/4, hang: overlaid }", "panes", "3 mm" },
        };

    [Theory]
    [MemberData(nameof(Doors))]
    public void No_two_parts_of_a_door_want_the_same_room_and_none_touch_unasked(
        string said,
        string infill,
        string thickness
    )
    {
        var kind = infill == "panes" ? MaterialKind.Glass : MaterialKind.Sheet;
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", materials: Stuff(infill, kind, thickness));
        var parts = bench.PartsOf(Assert.Single(bench.Doors(said))).ToList();
        Assert.Empty(SquareFit.Overlaps(parts));
        Assert.Empty(SquareFit.Strangers(parts, bench.Piece.Joints));
    }

    [Theory]
    [MemberData(nameof(Doors))]
    public void Joints_of_a_door_stay_apart_by_their_play_and_no_more(string said, string infill, string thickness)
    {
        var kind = infill == "panes" ? MaterialKind.Glass : MaterialKind.Sheet;
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", materials: Stuff(infill, kind, thickness));
        bench.Doors(said);
        Assert.NotEmpty(bench.Piece.Joints);
        Assert.All(
            bench.Piece.Joints,
            joint => Assert.Equal(joint.Play, SquareFit.Gap(Part(joint.Receives), Part(joint.Enters), joint.Into))
        );

        PartDraft Part(string id) => bench.Piece.Parts.Single(p => p.Id == id);
    }

    /// <summary>Room for a panel: 1/8 in each side, 1/16 in above and below (published raised-panel tutorial).</summary>
    [Fact]
    public void Solid_panel_has_the_published_room_to_move()
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "27\"",
            materials: Stuff("panels", MaterialKind.Solid, "1/4\"")
        );
        bench.Doors("framed");
        var panel = bench["upper door panel"];
        Assert.Equal(Exact("1/8\""), SquareFit.Gap(bench["upper door left stile"], panel, Direction.Left));
        Assert.Equal(Exact("1/8\""), SquareFit.Gap(bench["upper door right stile"], panel, Direction.Right));
        Assert.Equal(Exact("1/16\""), SquareFit.Gap(bench["upper door top rail"], panel, Direction.Up));
        Assert.Equal(Exact("1/16\""), SquareFit.Gap(bench["upper door bottom rail"], panel, Direction.Down));
    }

    [Fact]
    public void Groove_is_cut_to_a_panel_of_sheet_goods_thinner_than_it()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", materials: Ply);
        bench.Doors("framed");
        var groove = bench["upper door left stile"].Cuts.OfType<SquareCut>().Single(c => c.Kind == CutKind.Groove);
        Assert.Equal(Exact("5.2 mm"), groove.Extent.Size(Axis.Z));
    }

    [Fact]
    public void Panel_thicker_than_the_groove_gets_a_tongue_and_stays_within_the_door()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", materials: Thick);
        bench.Doors("framed");
        var panel = bench["upper door panel"];
        Assert.Contains(panel.Cuts, c => c.Kind == CutKind.Shoulder);
        // Less 2 x 3/8 of tongue.
        Assert.Equal(panel.Width.Length - Exact("3/4\""), panel.ShoulderWidth!.Length);
        Assert.Equal(panel.Length.Length - Exact("3/4\""), panel.ShoulderLength!.Length);
        Assert.True(panel.Extent.Min.Y >= Length.Zero);
        Assert.True(panel.Extent.Max.Y <= Exact("3/4\""));
    }

    [Fact]
    public void Pane_goes_in_from_behind()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"", materials: Glass);
        bench.Doors("glazed");
        var pane = bench["upper door pane"];
        foreach (var member in (string[])["left stile", "right stile", "top rail", "bottom rail"])
            Assert.Null(SquareFit.Gap(bench[$"upper door {member}"], pane, Direction.Back));
        Assert.Equal(Length.Zero, SquareFit.Gap(bench["upper door left stile"], pane, Direction.Front));
        Assert.Equal(4, bench.Piece.Parts.Count(p => p.Role == Role.GlassBead));
    }

    [Fact]
    public void Glazed_door_needs_glass()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "27\"");
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors("glazed"));
        Assert.Contains("glass", fault.Error.Message, StringComparison.Ordinal);
        Assert.Equal(1, fault.Error.Place!.Line);
    }

    [Theory]
    [InlineData("4\"", "27\"", "framed", "stiles")]
    [InlineData("15\"", "4\"", "framed", "rails")]
    [InlineData("1/8\"", "27\"", "slab", "no room")]
    [InlineData("15\"", "27\"", "{ stiles: 1/4, rails: 1/4 }", "groove")]
    public void What_has_no_room_is_refused_with_what_takes_it(string width, string height, string said, string because)
    {
        var bench = new FrontBench(LengthUnit.Inch, width, height);
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors(said));
        Assert.Contains(because, fault.Error.Message, StringComparison.Ordinal);
        Assert.NotNull(fault.Error.Expected);
    }

    [Fact]
    public void Panel_thicker_than_its_frame_is_refused()
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "27\"",
            materials: Stuff("panels", MaterialKind.Solid, "1\"")
        );
        var fault = Assert.Throws<CannotBuildException>(() => bench.Doors("framed"));
        Assert.Contains("panel", fault.Error.Message, StringComparison.Ordinal);
    }
}
