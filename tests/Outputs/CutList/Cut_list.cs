using System.Text;
using System.Text.RegularExpressions;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.CutList;
using Dryfit.Outputs.Tests.Pieces;

namespace Dryfit.Outputs.Tests.CutList;

public class Cut_list
{
    [Fact]
    public void Equal_parts_stand_in_one_row_with_a_box_to_tick_for_each()
    {
        var sketch = new Sketch()
            .Board("twin/left", Role.Side, (0, 0, 0), (700, 18, 300))
            .Board("twin/right", Role.Side, (0, 500, 0), (700, 518, 300));
        var page = Write(sketch.Build());
        Assert.Contains("700 × 300 × 18", page, StringComparison.Ordinal);
        Assert.Contains("twin left, twin right", page, StringComparison.Ordinal);
        Assert.Equal(2, Regex.Count(page, "aria-label=\"twin, [12] of 2\""));
    }

    [Fact]
    public void Stops_stand_before_the_parts_and_other_findings_after_them()
    {
        var note = Cupboards.TooWide(9) with
        {
            Kind = new("drawer-near-its-limit", Severity.Note, "Little room left", "It may rub."),
        };
        var page = Write(Cupboards.OneDoor(9).Build(), Cupboards.ReportOf(Cupboards.TooWide(9), note));
        var order = (
            (string[])["Do not cut yet", "Door gap too wide", "<svg", "<table>", "Little room left", "Cautions"]
        )
            .Select(words =>
                page.IndexOf(words, page.IndexOf("<main>", StringComparison.Ordinal), StringComparison.Ordinal)
            )
            .ToList();
        Assert.DoesNotContain(-1, order);
        Assert.True(order[0] < order[1] && order[1] < order[3] && order[3] < order[4] && order[4] < order[5]);
        Assert.Contains("gap 9 mm", page, StringComparison.Ordinal);
        Assert.Contains("6 mm too much", page, StringComparison.Ordinal);
        Assert.Contains("cupboard.dryfit.yaml:12:5", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Moulded_and_turned_parts_bring_their_cautions()
    {
        var plain = Write(Cupboards.OneDoor(2).Build());
        Assert.DoesNotContain("over a cutter by hand", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("manual of the lathe", plain, StringComparison.Ordinal);
        var sketch = new Sketch().Board("leg", Role.Leg, (0, 0, 0), (700, 50, 50));
        sketch.Change("leg", part => part with { Cuts = [Shape(CutKind.Cove), Shape(CutKind.Turning)] });
        var page = Write(sketch.Build());
        Assert.Contains("over a cutter by hand", page, StringComparison.Ordinal);
        Assert.Contains("of the lathe", page, StringComparison.Ordinal);

        static OutlineCut Shape(CutKind kind) =>
            new(
                "shape",
                kind,
                null,
                Axis.X,
                [(Length.Zero, Length.Zero), (Sketch.Mm(5), Length.Zero), (Length.Zero, Sketch.Mm(5))],
                Length.Zero,
                Sketch.Mm(700)
            );
    }

    [Fact]
    public void Without_a_stop_the_page_does_not_cry()
    {
        var page = Write(Cupboards.OneDoor(2).Build());
        Assert.DoesNotContain("Do not cut yet", page, StringComparison.Ordinal);
        Assert.Contains("Not checked</strong> (not part of this tool yet): tip-over.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Shoulder_and_finished_sizes_are_listed_beside_the_size_to_cut()
    {
        var sketch = Cupboards
            .OneDoor(2)
            .Change(
                "case/shelf",
                shelf => shelf with { ShoulderLength = Sketch.Size("", 552), FinishedWidth = Sketch.Size("", 272) }
            );
        var page = Write(sketch.Build());
        Assert.Contains("552 long", page, StringComparison.Ordinal);
        Assert.Contains("Between shoulders", page, StringComparison.Ordinal);
        Assert.Contains("564 × 272", page, StringComparison.Ordinal); // 564 is the length of the shelf
        Assert.Contains("With edging", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_done_to_both_ends_and_faces_is_told_once()
    {
        // A rail of 400 x 60 x 18 with a tongue of 10 x 6 at each end: four shoulders of one kind.
        var sketch = new Sketch()
            .Board("rail", Role.DoorRail, (0, 0, 0), (400, 18, 60))
            .Change(
                "rail",
                rail =>
                    rail with
                    {
                        Cuts =
                        [
                            Square("1", CutKind.Shoulder, (0, 0, 12), (10, 60, 18)),
                            Square("2", CutKind.Shoulder, (0, 0, 0), (10, 60, 6)),
                            Square("3", CutKind.Shoulder, (390, 0, 12), (400, 60, 18)),
                            Square("4", CutKind.Shoulder, (390, 0, 0), (400, 60, 6)),
                            Square("5", CutKind.Groove, (0, 0, 6), (400, 10, 12)),
                        ],
                    }
            );
        var page = Write(sketch.Build());
        Assert.Contains(
            "<li>4 x shoulder in both faces, 6 deep; 10 long at both ends; full width</li>",
            page,
            StringComparison.Ordinal
        );
        Assert.Equal(1, Regex.Count(page, "<li>groove in the bottom edge"));
    }

    [Fact]
    public void Holes_are_counted_and_pilots_go_with_their_pockets()
    {
        var sketch = new Sketch()
            .Board("rail", Role.FrameRail, (0, 0, 0), (400, 18, 60))
            .Change(
                "rail",
                rail =>
                    rail with
                    {
                        Cuts =
                        [
                            Pocket(CutKind.PocketHole, "screw-1", 20, 9),
                            Pocket(CutKind.Bore, "screw-1", 20, 4),
                            Pocket(CutKind.PocketHole, "screw-2", 40, 9),
                            Pocket(CutKind.Bore, "screw-2", 40, 4),
                        ],
                    }
            );
        var page = Write(sketch.Build());
        Assert.Contains("<li>2 pocket holes, 9 across, in the right end</li>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("bore", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Edges_that_get_edging_are_named()
    {
        var sketch = new Sketch()
            .Board("panel", Role.Shelf, (0, 0, 0), (400, 18, 60))
            .Board("strip", Role.Edging, (0, 0, 60), (400, 18, 62))
            .Joint(JointKind.Edged, "panel", "strip", Direction.Down);
        Assert.Contains("<li>edging on the top edge</li>", Write(sketch.Build()), StringComparison.Ordinal);
    }

    [Fact]
    public void Timber_is_summed_in_board_feet_where_the_maker_works_in_inches()
    {
        // 3/4 in stock counts as 1 in: 12 in x 48 in is 4 board feet (12 * 48 / 144), common practice.
        var inch = new Rational(254, 10);
        var sketch = new Sketch { Format = LengthFormat.Inches }.Board(
            "board",
            Role.Shelf,
            (0, 0, 0),
            (48 * inch, inch * new Rational(3, 4), 12 * inch)
        );
        Assert.Contains("1 part, 4 board feet", Write(sketch.Build()), StringComparison.Ordinal);
    }

    [Fact]
    public void Timber_is_summed_in_cubic_metres_and_kilograms_where_the_maker_works_in_millimetres()
    {
        // 1 m x 0.5 m x 0.02 m is 0.01 m³, at 700 kg/m³ 7 kg.
        var sketch = new Sketch().Board("board", Role.Shelf, (0, 0, 0), (1000, 20, 500));
        Assert.Contains("1 part, 0.01 m³, 7 kg", Write(sketch.Build()), StringComparison.Ordinal);
    }

    [Fact]
    public void Glass_is_summed_by_area()
    {
        var sketch = new Sketch().Board("pane", Role.Glass, (0, 0, 0), (500, 3, 400), Sketch.Glass);
        var page = Write(sketch.Build());
        Assert.Contains("1 part, 0.2 m²", page, StringComparison.Ordinal);
        Assert.Contains("<strong>Glass.</strong>", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("float glass", 0, true)]
    [InlineData("float glass", 900, false)]
    [InlineData("toughened glass", 0, false)]
    public void Plain_glass_low_enough_to_fall_against_is_named(string glass, int height, bool isNamed)
    {
        var stuff = Sketch.Glass with { Stuff = glass };
        var sketch = new Sketch()
            .Board("foot", Role.Plinth, (0, 0, 0), (500, 20, 20))
            .Board("pane", Role.Glass, (0, 0, height), (500, 3, height + 400), stuff);
        Assert.Equal(isNamed, Write(sketch.Build()).Contains("someone could fall against", StringComparison.Ordinal));
    }

    [Fact]
    public void Hardware_is_counted_by_kind()
    {
        var sketch = Cupboards.OneDoor(2);
        sketch.Hardware.Add(new("hinge-1", "cup hinge 35 mm", ["case/door/slab"], default));
        sketch.Hardware.Add(new("hinge-2", "cup hinge 35 mm", ["case/door/slab"], default));
        sketch.Hardware.Add(new("pins", "shelf pin 5 mm", ["case/shelf"], default, 4));
        var page = Write(sketch.Build());
        Assert.Contains("<td class=\"n\">2</td><td>cup hinge 35 mm</td><td>door</td>", page, StringComparison.Ordinal);
        Assert.Contains("<td class=\"n\">4</td><td>shelf pin 5 mm</td>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Kept_parts_are_not_among_the_parts_to_cut()
    {
        var sketch = Cupboards.OneDoor(2).Change("case/back", back => back with { IsKept = true });
        var page = Write(sketch.Build());
        var kept = page.IndexOf("Kept as found", StringComparison.Ordinal);
        Assert.True(kept > 0 && page.IndexOf("case back</td>", StringComparison.Ordinal) > kept);
        Assert.Contains("lead", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_low_piece_has_no_word_of_tipping_over()
    {
        var low = new Sketch().Board("board", Role.Shelf, (0, 0, 0), (500, 20, 400)).Build();
        Assert.DoesNotContain("Tipping over", Write(low), StringComparison.Ordinal);
        Assert.Contains("Tipping over", Write(Cupboards.OneDoor(2).Build()), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_are_text_whatever_they_look_like()
    {
        foreach (var name in Cupboards.HostileNames)
        {
            var sketch = Cupboards.OneDoor(9).Change("case/door/slab", part => part with { Name = name });
            sketch.Hardware.Add(new("hinge", name, ["case/door/slab"], default));
            var piece = sketch.Build() with { Name = name, Note = name };
            var page = Write(piece, Cupboards.ReportOf(Cupboards.TooWide(9) with { Message = name }));
            Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain('\0', page);
            Assert.DoesNotContain('\u202e', page);
        }
    }

    [Fact]
    public void Two_thousand_kinds_of_parts_fill_the_page_within_the_templates_bounds()
    {
        var sketch = new Sketch("Many");
        for (var i = 0; i < 2000; i++)
            sketch.Board($"board-{i}", Role.Shelf, (0, 0, i * 20), (100 + i, 300, (i * 20) + 18));
        Assert.Equal(2000, Regex.Count(Write(sketch.Build()), "<tr class=\"part\">"));
    }

    [Fact]
    public void The_page_asks_for_nothing_from_outside_and_runs_no_script()
    {
        var page = Write(DisplayCupboard.Build(0).Build());
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("src=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", page, StringComparison.Ordinal);
        Assert.Equal(
            ["http://www.w3.org/2000/svg"],
            Regex.Matches(page, "https?://[^\"' <]+").Select(match => match.Value).Distinct()
        );
    }

    [Fact]
    public void The_same_piece_gives_the_same_bytes()
    {
        byte[] Bytes() =>
            CutListHtml.Write(DisplayCupboard.Build(0).Build(), Cupboards.ReportOf()).Value!.Bytes.ToArray();
        Assert.Equal(Bytes(), Bytes());
    }

    private static SquareCut Square(string id, CutKind kind, (int X, int Y, int Z) min, (int X, int Y, int Z) max) =>
        new(id, kind, null, new(At(min), At(max)));

    private static RoundCut Pocket(CutKind kind, string joint, int y, int diameter) =>
        new(
            $"{kind}-{y}",
            kind,
            joint,
            At((400, y, 6)),
            Direction.Left,
            Sketch.Mm(diameter),
            Sketch.Mm(30),
            TiltDegrees: 15,
            Leaning: Direction.Down
        );

    private static Point At((int X, int Y, int Z) mm) => new(Sketch.Mm(mm.X), Sketch.Mm(mm.Y), Sketch.Mm(mm.Z));

    private static string Write(Piece piece, Report? report = null)
    {
        var page = CutListHtml.Write(piece, report ?? Cupboards.ReportOf());
        Assert.True(page.Ok, string.Join('\n', page.Errors));
        Assert.Equal("cutlist.html", page.Value!.Name);
        return Encoding.UTF8.GetString(page.Value.Bytes.Span);
    }
}
