using System.Text;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.PartsList;

namespace Dryfit.Outputs.Tests.PartsList;

public class Parts_as_csv
{
    private static readonly Lie Flat = Lie.Of(Direction.Right, Direction.Up);

    [Fact]
    public void There_is_one_line_per_kind_of_equal_parts_with_the_ids_of_all()
    {
        var rows = Rows(DoorRails(LengthFormat.Inches).Build());
        var row = Assert.Single(rows);
        Assert.Equal("door/top-rail", row["id"]);
        Assert.Equal("door rail", row["name"]);
        Assert.Equal("2", row["quantity"]);
        Assert.Equal("door rail", row["role"]);
        Assert.Equal("door/top-rail door/bottom-rail", row["all ids"]);
    }

    [Fact]
    public void Tongued_parts_have_both_lengths_and_edged_parts_both_sizes()
    {
        // 11 1/8 in over the tongues, 10 3/8 in between the shoulders; 285 mm cut and 287 mm with two edges of 1 mm.
        var bench = DoorRails(LengthFormat.Inches);
        var row = Assert.Single(Rows(bench.Build()));
        Assert.Equal("11 1/8 in", row["length"]);
        Assert.Equal("282.575", row["length mm"]);
        Assert.Equal("10 3/8 in", row["shoulder length"]);
        Assert.Equal("263.525", row["shoulder length mm"]);
        Assert.Equal("", row["finished length"]);
        bench = new Bench(LengthFormat.Millimetres);
        var shelf = bench.Board("shelf", Role.Shelf, SamplePieces.Board, Bench.Box(0, 0, 0, 600, 285, 18), Flat);
        bench.Replace(shelf, shelf with { FinishedWidth = Bench.Given(Bench.Mm(287)) });
        row = Assert.Single(Rows(bench.Build()));
        Assert.Equal(("285 mm", "287 mm", "287"), (row["width"], row["finished width"], row["finished width mm"]));
        Assert.Equal("any way", row["grain"]);
    }

    [Fact]
    public void Finishes_are_told_scheme_by_scheme()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        var shelf = bench.Board("shelf", Role.Shelf, SamplePieces.Board, Bench.Box(0, 0, 0, 600, 285, 18), Flat);
        var schemes = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["two tone"] = "milk paint",
            ["plain"] = "clear wax",
        };
        bench.Replace(shelf, shelf with { Finishes = schemes });
        Assert.Equal("plain: clear wax; two tone: milk paint", Assert.Single(Rows(bench.Build()))["finishes"]);
    }

    [Fact]
    public void Volume_and_mass_are_those_of_one_part()
    {
        // 600 x 285 x 18 mm is 3078 cm3; at 700 kg/m3 that is 2.1546 kg.
        var bench = new Bench(LengthFormat.Millimetres);
        bench.Board("shelf", Role.Shelf, SamplePieces.Board, Bench.Box(0, 0, 0, 600, 285, 18), Flat);
        var row = Assert.Single(Rows(bench.Build()));
        Assert.Equal("3078", row["volume cm3"]);
        Assert.Equal("2.155", row["mass kg"]);
    }

    [Fact]
    public void Cuts_read_as_a_maker_would_say_them()
    {
        var cuts = Cuts(
            Bench.Cut(CutKind.Dado, Bench.Box(100, 0, 14, 118, 285, 18)),
            Bench.Cut(CutKind.Groove, Bench.Box(-1, 10, 0, 601, 16, 6)),
            Bench.Cut(CutKind.Shoulder, Bench.Box(0, 0, 12, 9, 285, 18)),
            Bench.Cut(CutKind.StoppedDado, Bench.Box(200, 0, 0, 218, 250, 6)),
            Bench.Cut(CutKind.Notch, Bench.Box(560, 0, 0, 600, 50, 18)),
            new RoundCut(
                "a",
                CutKind.ShelfPinHole,
                null,
                Bench.At(64, 37, 18),
                Direction.Down,
                Bench.Mm(5),
                Bench.Mm(10)
            ),
            new RoundCut(
                "b",
                CutKind.ShelfPinHole,
                null,
                Bench.At(96, 37, 18),
                Direction.Down,
                Bench.Mm(5),
                Bench.Mm(10)
            ),
            new RoundCut("c", CutKind.Bore, null, Bench.At(300, 100, 0), Direction.Up, Bench.Mm(35), Bench.Mm(20))
        );
        Assert.Equal(
            [
                "dado in the show face, 4 deep; 18 wide, 100 from the left end; full width",
                "groove in the reverse face, 6 deep; full length; 6 wide, 10 from the front edge",
                "shoulder in the show face, 6 deep; 9 long at the left end; full width",
                "stopped dado in the reverse face, 6 deep; 18 wide, 200 from the left end; 250 long at the front edge",
                "notch in the front edge, 50 deep; 40 wide at the right end; full thickness",
                "2 x shelf pin hole in the show face, 5 across, 10 deep; 64, 96 from the left end by 37 from the front edge",
                "bore in the reverse face, 35 across, through; 300 from the left end, 100 from the front edge",
            ],
            cuts
        );
    }

    [Fact]
    public void Holes_are_told_from_the_nearer_edge()
    {
        var cup = new RoundCut(
            "a",
            CutKind.HingeCup,
            null,
            Bench.At(500, 262, 0),
            Direction.Up,
            Bench.Mm(35),
            Bench.Mm(13)
        );
        Assert.Equal(
            ["hinge cup in the reverse face, 35 across, 13 deep; 100 from the right end, 23 from the back edge"],
            Cuts(cup)
        );
    }

    [Fact]
    public void What_is_metric_in_a_piece_in_inches_is_told_in_millimetres()
    {
        var inch = new Rational(127, 5);
        var bench = new Bench(LengthFormat.Inches);
        var shelf = bench.Board(
            "shelf",
            Role.Shelf,
            SamplePieces.Maple,
            Bench.Box(0, 0, 0, 20 * inch, 10 * inch, inch),
            Flat
        );
        var hole = new RoundCut(
            "a",
            CutKind.Bore,
            null,
            Bench.At(2 * inch, inch / 3, 0),
            Direction.Up,
            Bench.Mm(new(19, 2)),
            Bench.Mm(12)
        );
        bench.Replace(shelf, shelf with { Cuts = [hole] });
        Assert.Equal(
            "bore in the reverse face, 9.5 mm across, 12 mm deep; 2 from the left end, 21/64 + 0.3/64 from the front edge",
            Assert.Single(Rows(bench.Build()))["cuts"]
        );
    }

    [Fact]
    public void Equal_boards_that_serve_as_different_things_are_named_for_all_of_them()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        var top = bench.Board("a", Role.Top, SamplePieces.Maple, Bench.Box(0, 0, 700, 600, 285, 718), Flat);
        bench.Replace(top, top with { Name = "left wing top" });
        bench.Replace(
            top = bench.Board("b", Role.Bottom, SamplePieces.Maple, Bench.Box(0, 0, 0, 600, 285, 18), Flat),
            top with
            {
                Name = "right wing bottom",
            }
        );
        var row = Assert.Single(Rows(bench.Build()));
        Assert.Equal("wing top, bottom", row["name"]);
        Assert.Equal("top, bottom", row["role"]);
    }

    [Fact]
    public void Joints_are_told_from_both_sides()
    {
        var bench = DoorRails(LengthFormat.Inches);
        foreach (var side in (string[])["left", "right"])
            bench.Joints.Add(Joint($"door/{side}-stile", "door/top-rail", JointKind.StubTenon));
        bench.Joints.Add(Joint("door/top-rail", "door/panel", JointKind.Loose));
        bench.Board("door/panel", Role.DoorPanel, SamplePieces.Maple, Bench.Box(0, 0, 9, 100, 90, 12), Flat);
        bench.Board("door/left-stile", Role.DoorStile, SamplePieces.Maple, Bench.Box(0, 0, 29, 100, 80, 42), Flat);
        bench.Board("door/right-stile", Role.DoorStile, SamplePieces.Maple, Bench.Box(0, 0, 39, 100, 80, 52), Flat);
        var rows = Rows(bench.Build());
        // The bottom rail was given no joints here.
        Assert.Equal("2 x stub tenon in door stile, takes door panel (loose) | none", rows[0]["joints"]);
        Assert.Equal("loose in door rail", rows[1]["joints"]);
        Assert.Equal("takes door rail (stub tenon)", rows[2]["joints"]);

        static Joint Joint(string receives, string enters, JointKind kind) =>
            new(
                $"{receives}-{enters}",
                kind,
                receives,
                enters,
                Direction.Left,
                Length.Zero,
                Length.Zero,
                true,
                Bench.Somewhere
            );
    }

    [Theory]
    [InlineData("=1+1", "\"'=1+1\"")]
    [InlineData("+1", "\"'+1\"")]
    [InlineData("-1", "\"'-1\"")]
    [InlineData("@x", "\"'@x\"")]
    [InlineData("  =1", "\"'  =1\"")]
    [InlineData("\t=1", "\"' =1\"")]
    [InlineData("\uFF1D1", "\"'\uFF1D1\"")]
    [InlineData("a \"b\", c", "\"a \"\"b\"\", c\"")]
    [InlineData("two\nlines", "two lines")]
    [InlineData("plain-name 3/4", "plain-name 3/4")]
    public void Names_stay_text_whatever_they_hold(string name, string cell)
    {
        // RFC 4180 for quotes; that formulas in CSV run is common knowledge (OWASP, "CSV Injection").
        var bench = new Bench(LengthFormat.Millimetres);
        var shelf = bench.Board("shelf", Role.Shelf, SamplePieces.Board, Bench.Box(0, 0, 0, 600, 285, 18), Flat);
        bench.Replace(shelf, shelf with { Name = name, Material = SamplePieces.Board with { Stuff = name } });
        var text = Encoding.UTF8.GetString(PartsCsv.Write(bench.Build()).Bytes.Span);
        Assert.Contains($",board,{cell},600 mm,", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_is_plain_UTF8_with_line_feeds()
    {
        var bytes = PartsCsv.Write(DoorRails(LengthFormat.Inches).Build()).Bytes.Span;
        Assert.Equal("id,"u8, bytes[..3]);
        Assert.DoesNotContain((byte)'\r', bytes.ToArray());
        Assert.Equal((byte)'\n', bytes[^1]);
        Assert.Equal(bytes, PartsCsv.Write(DoorRails(LengthFormat.Inches).Build()).Bytes.Span);
    }

    /// <summary>Two rails of a door, the one the other turned end for end: 11 1/8 x 2 x 3/4 in with 3/8 in tongues.</summary>
    private static Bench DoorRails(LengthFormat format)
    {
        var inch = new Rational(127, 5);
        var bench = new Bench(format).Group("door", GroupKind.Door);
        foreach (var (id, z) in (ReadOnlySpan<(string, int)>)[("top", 20), ("bottom", 0)])
        {
            var rail = bench.Board(
                $"door/{id}-rail",
                Role.DoorRail,
                SamplePieces.Maple,
                Bench.Box(0, 0, z * inch, new Rational(89, 8) * inch, new Rational(3, 4) * inch, (z + 2) * inch),
                Lie.Of(Direction.Right, Direction.Front)
            );
            bench.Replace(rail, rail with { ShoulderLength = Bench.Given(Length.FromInches(10, 3, 8)) });
        }

        return bench;
    }

    private static string[] Cuts(params PartCut[] cuts)
    {
        var bench = new Bench(LengthFormat.Millimetres);
        var shelf = bench.Board("shelf", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 0, 600, 285, 18), Flat);
        bench.Replace(shelf, shelf with { Cuts = cuts });
        return Assert.Single(Rows(bench.Build()))["cuts"].Split(" | ");
    }

    private static List<Dictionary<string, string>> Rows(Piece piece)
    {
        var lines = Encoding.UTF8.GetString(PartsCsv.Write(piece).Bytes.Span).TrimEnd('\n').Split('\n');
        var heads = Cells(lines[0]);
        return [.. lines.Skip(1).Select(line => heads.Zip(Cells(line)).ToDictionary(c => c.First, c => c.Second))];
    }

    /// <summary>RFC 4180: cells in quotes may hold commas, and quotes written twice.</summary>
    private static List<string> Cells(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var isQuoted = false;
        for (var i = 0; i <= line.Length; i++)
        {
            if (i == line.Length || (line[i] == ',' && !isQuoted))
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else if (line[i] != '"')
            {
                cell.Append(line[i]);
            }
            else if (isQuoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append(line[i++]);
            }
            else
            {
                isQuoted = !isQuoted;
            }
        }

        return cells;
    }
}
