using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.FrontView;
using Dryfit.Outputs.Tests.Pieces;
using Dryfit.Recipe;

namespace Dryfit.Outputs.Tests.FrontView;

public class Front_view
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void A_board_1000_mm_wide_measures_200_mm_on_a_sheet_at_one_to_five()
    {
        var drawing = Draw(
            new Sketch("Shelf").Board("shelf", Role.Shelf, (0, 0, 0), (1000, 300, 500)).Build(),
            Cupboards.ReportOf()
        );
        Assert.Contains(Texts(drawing), text => text == "1:5");
        var shelf = Box(Path(drawing, "shelf"));
        Assert.Equal(200, shelf.Width, 0.001);
        Assert.Equal(100, shelf.Height, 0.001);
    }

    [Fact]
    public void The_sheet_is_as_large_on_paper_as_it_says()
    {
        var drawing = Draw(Cupboards.OneDoor(2).Build(), Cupboards.ReportOf());
        Assert.Equal("297mm", drawing.Attribute("width")!.Value); // A4, ISO 216
        Assert.Equal("210mm", drawing.Attribute("height")!.Value);
        Assert.Equal("0 0 297 210", drawing.Attribute("viewBox")!.Value);
    }

    [Fact]
    public void Overall_sizes_are_written_as_the_maker_writes_them()
    {
        var texts = Texts(Draw(DisplayCupboard.Build(0).Build(), Cupboards.ReportOf()));
        Assert.Contains("55 1/2", texts);
        Assert.Contains("74 3/4", texts);
        Assert.Contains("inches", texts);
        Assert.Contains("1\" = 1'-0\" (1:12)", texts);
    }

    [Theory]
    [InlineData(-100, true)]
    [InlineData(100, false)]
    public void A_rod_is_drawn_where_no_board_stands_before_it(int depth, bool isSeen)
    {
        var sketch = new Sketch("Rack").Board("back", Role.Back, (0, 0, 0), (500, 18, 400));
        var min = new Point(Sketch.Mm(90), Sketch.Mm(depth), Sketch.Mm(50));
        sketch.Hardware.Add(
            new("rods", "rod", ["back"], min)
            {
                Bars = [new(min, new(Sketch.Mm(110), Sketch.Mm(depth + 20), Sketch.Mm(350)))],
            }
        );
        // Of 300 at one to five: 60 high and 4 wide.
        var rods = Draw(sketch.Build(), Cupboards.ReportOf())
            .Descendants(Svg + "rect")
            .Where(rect => (rect.Attribute("width")?.Value, rect.Attribute("height")?.Value) == ("4", "60"));
        Assert.Equal(isSeen ? 1 : 0, rods.Count());
    }

    [Fact]
    public void A_knob_is_drawn_round_in_its_place_and_size()
    {
        var sketch = Cupboards.OneDoor(2);
        sketch.Hardware.Add(
            new("knob", "knob", ["case/door/slab"], new(Sketch.Mm(540), default, Sketch.Mm(600)))
            {
                Handle = new(Axis.Z, Sketch.Mm(40), Sketch.Mm(40), Sketch.Mm(25)),
            }
        );
        var drawing = Draw(sketch.Build(), Cupboards.ReportOf());
        var knob = Assert.Single(drawing.Descendants(Svg + "rect"), rect => rect.Attribute("rx") is not null);
        // 40 mm across beside a door of 560: a fourteenth of its width.
        var door = Box(Path(drawing, "case door slab"));
        Assert.Equal(door.Width / 14, Number(knob, "width"), 0.01);
        Assert.Equal(Number(knob, "width"), Number(knob, "height"), 0.001);
        Assert.Equal(Number(knob, "width") / 2, Number(knob, "rx"), 0.001);
        Assert.Equal(door.Left + (door.Width * 520 / 560), Number(knob, "x") + Number(knob, "rx"), 0.01);
    }

    private static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    [Fact]
    public void Every_gap_is_lettered_with_what_the_boards_leave_open()
    {
        // The door of 553 x 660 leaves 2, 2 and 2 mm, and 9 mm at its latch edge.
        var texts = Texts(Draw(Cupboards.OneDoor(9).Build(), Cupboards.ReportOf()));
        Assert.Equal(3, texts.Count(text => text == "2"));
        Assert.Single(texts, text => text == "9");
        Assert.Contains("553 × 660", texts);
    }

    [Fact]
    public void A_gap_no_rule_knows_of_is_measured_all_the_same()
    {
        var gap = new Rational(127, 16); // 5/16 in
        var sketch = Cupboards.OneDoor(gap);
        sketch.Format = LengthFormat.Inches;
        Assert.Contains("5/16", Texts(Draw(sketch.Build(), Cupboards.ReportOf())));
    }

    [Fact]
    public void A_shape_run_round_the_doors_makes_no_gap_wider()
    {
        const string recipe = """
            piece: Cupboard
            units: mm
            materials: { body: birch plywood 18, fronts: oak 20 }
            carcases:
              case: { size: [800, 700, 400], front: { doors: { kind: slab, leaves: pair, pair gap: 4 } }, front edges: round 3 }
            """;
        var read = RecipeReader.Read("cupboard.dryfit.yaml", Encoding.UTF8.GetBytes(recipe));
        var piece = Design.Build(read.Value!, null, DesignOptions.Plain).Value!;
        var texts = Texts(Draw(piece, Cupboards.ReportOf()));
        // The doors stand 4 mm apart at their backs; at their faces, with both rounds, 10.
        Assert.Single(texts, text => text == "4");
        Assert.DoesNotContain("10", texts);
    }

    [Fact]
    public void A_gap_between_two_doors_is_lettered_once()
    {
        // Base: 4 drawers of 4 gaps, 2 doors of 3 and 1 between them; upper: 2 doors of 3 and 1 between them.
        var texts = Texts(Draw(DisplayCupboard.Build(0).Build(), Cupboards.ReportOf()));
        Assert.Equal(16 + 7 + 7, texts.Count(text => text == "3/32"));
    }

    [Fact]
    public void A_door_too_small_leaves_a_hatched_hole_of_its_real_size()
    {
        var drawing = Draw(Cupboards.OneDoor(9).Build(), Cupboards.ReportOf(Cupboards.TooWide(9)));
        Assert.Contains("1:5", Texts(drawing));
        var hole = Box(
            Assert.Single(drawing.Descendants(Svg + "path"), path => Fill(path) == "url(#dryfit-hatch-stop)")
        );
        Assert.Equal(9.0 / 5, hole.Width, 0.001);
        Assert.Equal(660.0 / 5, hole.Height, 0.001);
        Assert.Single(Texts(drawing), text => text == "9"); // on the drawing, beside the sign
        Assert.Contains("gap 9 mm", Texts(drawing)); // in the table
        Assert.Contains("1 to 3 mm", Texts(drawing));
        Assert.Contains("Do not cut yet", Texts(drawing));
    }

    [Fact]
    public void A_finding_behind_a_closed_door_is_marked_at_its_place()
    {
        var finding = new Finding
        {
            Kind = new("part-touches-nothing", Severity.Warn, "Touches nothing", "It would fall."),
            Message = "The shelf rests on nothing.",
            Parts = ["case/shelf"],
        };
        var drawing = Draw(Cupboards.OneDoor(2).Build(), Cupboards.ReportOf(finding));
        Assert.Equal(2, Texts(drawing).Count(text => text == "1")); // on the drawing and in the table
    }

    [Fact]
    public void Nearer_boards_are_painted_after_what_they_hide()
    {
        var piece = new Sketch()
            .Board("near", Role.Side, (0, 0, 0), (100, 18, 100))
            .Board("far", Role.Back, (50, 200, 0), (200, 218, 100))
            .Build();
        var order = Draw(piece, Cupboards.ReportOf())
            .Descendants(Svg + "path")
            .Select(path => path.Element(Svg + "title")?.Value)
            .Where(name => name is not null)
            .ToList();
        Assert.Equal(["far", "near"], order);
    }

    [Fact]
    public void What_stands_wholly_behind_a_board_is_not_drawn()
    {
        var drawing = Draw(Cupboards.OneDoor(2).Build(), Cupboards.ReportOf());
        Assert.DoesNotContain(
            drawing.Descendants(Svg + "title"),
            title => title.Value.Contains("hidden", StringComparison.Ordinal)
        );
        var behind = Cupboards.OneDoor(2).Board("hidden", Role.DrawerSide, (100, 50, 100), (200, 60, 200)).Build();
        Assert.DoesNotContain(
            Draw(behind, Cupboards.ReportOf()).Descendants(Svg + "title"),
            title => title.Value.Contains("hidden", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_shelf_behind_glass_is_seen()
    {
        var drawing = Draw(DisplayCupboard.Build(0).Build(), Cupboards.ReportOf());
        Assert.NotNull(Path(drawing, "upper shelf-1"));
        Assert.NotNull(Path(drawing, "upper left-door panel").Attribute("fill-opacity"));
    }

    [Fact]
    public void The_swing_mark_points_to_the_hinges()
    {
        var drawing = Draw(Cupboards.OneDoor(2).Build(), Cupboards.ReportOf());
        var door = Box(Path(drawing, "case door slab"));
        var swing = Assert
            .Single(drawing.Descendants(Svg + "g"), group => group.Attribute("stroke-dasharray") is not null)
            .Element(Svg + "path")!;
        var points = Points(swing);
        Assert.Equal(4, points.Count);
        Assert.Equal(door.Left, points[0].X, 0.002);
        Assert.Equal((door.Top + door.Bottom) / 2, points[0].Y, 0.002);
        Assert.Equal(door.Right, points[1].X, 0.002);
    }

    [Fact]
    public void Labels_do_not_lie_on_each_other()
    {
        var drawing = Draw(DisplayCupboard.Build(new(5, 8)).Build(), Cupboards.ReportOf());
        var gaps = drawing
            .Descendants(Svg + "text")
            .Where(text => text.Attribute("font-size")!.Value == "1.9")
            .ToList();
        Assert.NotEmpty(gaps);
        for (var i = 0; i < gaps.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (a, b) = (At(gaps[i]), At(gaps[j]));
                Assert.False(
                    Math.Abs(a.X - b.X) < 3 && Math.Abs(a.Y - b.Y) < 1.4,
                    $"{gaps[i].Value} at {a} lies on {gaps[j].Value} at {b}"
                );
            }
        }
    }

    [Fact]
    public void Names_are_escaped_and_the_drawing_stays_well_formed()
    {
        foreach (var name in Cupboards.HostileNames)
        {
            var sketch = Cupboards.OneDoor(9).Change("case/door/slab", part => part with { Name = name });
            sketch.Group("case/door/extra", GroupKind.Door, name, "case");
            var piece = sketch.Build() with { Name = name, Note = name };
            var finding = Cupboards.TooWide(9) with { Message = name, Remedy = new(name, Sure: false) };
            var file = FrontSvg.Write(piece, Cupboards.ReportOf(finding));
            XDocument.Parse(Encoding.UTF8.GetString(file.Bytes.Span));
            Assert.DoesNotContain("<script", Encoding.UTF8.GetString(file.Bytes.Span), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_same_piece_gives_the_same_bytes_in_any_country()
    {
        byte[] Write() => FrontSvg.Write(DisplayCupboard.Build(0).Build(), Cupboards.ReportOf()).Bytes.ToArray();
        var first = Write();
        var before = CultureInfo.CurrentCulture;
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(first, Write());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_piece_of_two_thousand_boards_fits_a_sheet()
    {
        var sketch = new Sketch("Wall of pigeonholes");
        for (var i = 0; i < 2000; i++)
        {
            var (x, z) = (i % 50 * 100, i / 50 * 60);
            sketch.Board($"board-{i}", Role.Shelf, (x, i % 7, z), (x + 90, 300, z + 18));
        }
        var file = FrontSvg.Write(sketch.Build(), Cupboards.ReportOf());
        Assert.InRange(file.Bytes.Length, 100_000, 2_000_000);
        XDocument.Parse(Encoding.UTF8.GetString(file.Bytes.Span));
    }

    [Fact]
    public void A_wall_of_a_thousand_drawers_letters_only_the_gaps_that_have_room()
    {
        var sketch = new Sketch("Wall of drawers").Group("case", GroupKind.Carcase);
        for (var i = 0; i < 1000; i++)
        {
            var (x, z) = (i % 40 * 102, i / 40 * 62);
            var id = $"case/drawer-{i}";
            sketch
                .Group(id, GroupKind.Drawer, $"drawer {i}", "case")
                .Board($"{id}/front", Role.DrawerFront, (x, 0, z), (x + 100, 18, z + 60), group: id)
                .Front(id, "none", FrontMotion.SlidesOut, [$"{id}/front"], Hang.Overlay);
        }
        var texts = Texts(Draw(sketch.Build(), Cupboards.ReportOf()));
        Assert.Contains(texts, text => text.Contains("Gaps without room for a figure: 2 (", StringComparison.Ordinal));
    }

    [Fact]
    public void Edging_is_drawn_as_one_board_with_its_panel()
    {
        var sketch = new Sketch()
            .Board("panel", Role.DoorSlab, (2, 0, 2), (498, 18, 698))
            .Board("top strip", Role.Edging, (2, 0, 698), (498, 18, 700))
            .Board("bottom strip", Role.Edging, (2, 0, 0), (498, 18, 2))
            .Board("left strip", Role.Edging, (0, 0, 0), (2, 18, 700))
            .Board("right strip", Role.Edging, (498, 0, 0), (500, 18, 700));
        foreach (var strip in (string[])["top strip", "bottom strip", "left strip", "right strip"])
            sketch.Joint(JointKind.Edged, "panel", strip);
        var drawing = Draw(sketch.Build(), Cupboards.ReportOf());
        Assert.Contains("1:5", Texts(drawing));
        var door = Path(drawing, "panel");
        Assert.Equal(4, Points(door).Count);
        Assert.Equal(100, Box(door).Width, 0.001);
        Assert.Equal(140, Box(door).Height, 0.001);
        Assert.DoesNotContain(drawing.Descendants(Svg + "title"), title => title.Value == "top strip");
    }

    [Fact]
    public void Carcases_side_by_side_are_dimensioned_in_a_chain()
    {
        var sketch = new Sketch().Group("left", GroupKind.Carcase).Group("right", GroupKind.Carcase);
        sketch.Board("left/side", Role.Side, (0, 0, 0), (600, 18, 700), group: "left");
        sketch.Board("right/side", Role.Side, (603, 0, 0), (1500, 18, 700), group: "right");
        var texts = Texts(Draw(sketch.Build(), Cupboards.ReportOf()));
        foreach (var size in (string[])["600", "3", "897", "1500", "700"])
            Assert.Contains(size, texts);
    }

    [Fact]
    public void A_piece_without_parts_gives_an_empty_sheet_that_says_so()
    {
        var texts = Texts(Draw(new Sketch().Build(), Cupboards.ReportOf()));
        Assert.Contains(texts, text => text.StartsWith("There is nothing to draw", StringComparison.Ordinal));
    }

    [Fact]
    public void A_huge_piece_still_finds_a_scale()
    {
        var piece = new Sketch().Board("long", Role.Shelf, (0, 0, 0), (90_000_000, 300, 18)).Build();
        Assert.Contains("1:500000", Texts(Draw(piece, Cupboards.ReportOf())));
    }

    private static XElement Draw(Piece piece, Report report) =>
        XDocument.Parse(Encoding.UTF8.GetString(FrontSvg.Write(piece, report).Bytes.Span)).Root!;

    private static List<string> Texts(XElement drawing) =>
        [.. drawing.Descendants(Svg + "text").Select(text => text.Value)];

    private static XElement Path(XElement drawing, string name) =>
        Assert.Single(drawing.Descendants(Svg + "path"), path => path.Element(Svg + "title")?.Value == name);

    private static string? Fill(XElement element) => element.Attribute("fill")?.Value;

    private static (double X, double Y) At(XElement text) =>
        (Number(text.Attribute("x")!.Value), Number(text.Attribute("y")!.Value));

    private static (double Left, double Top, double Right, double Bottom, double Width, double Height) Box(
        XElement path
    )
    {
        var points = Points(path);
        var (left, right) = (points.Min(p => p.X), points.Max(p => p.X));
        var (top, bottom) = (points.Min(p => p.Y), points.Max(p => p.Y));
        return (left, top, right, bottom, right - left, bottom - top);
    }

    private static List<(double X, double Y)> Points(XElement path) =>
        [
            .. path.Attribute("d")!
                .Value.Split(['M', 'L', 'Z'], StringSplitOptions.RemoveEmptyEntries)
                .Select(pair => pair.Split(','))
                .Select(pair => (Number(pair[0]), Number(pair[1]))),
        ];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
