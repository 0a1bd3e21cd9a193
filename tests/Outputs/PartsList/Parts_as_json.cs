using System.Text.Json;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.PartsList;
using Dryfit.Outputs.Tests.Pieces;
using Json.Schema;

namespace Dryfit.Outputs.Tests.PartsList;

public class Parts_as_json
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "parts.schema.json"))
    );

    private static readonly Lie Flat = Lie.Of(Direction.Right, Direction.Up);

    [Fact]
    public void Every_shape_of_part_fits_the_published_schema()
    {
        var bench = Shelves();
        var shelf = bench.Parts[0];
        bench.Replace(
            shelf,
            shelf with
            {
                ShoulderLength = shelf.Length,
                ShoulderWidth = shelf.Width,
                FinishedLength = shelf.Length,
                FinishedWidth = shelf.Width,
                IsAsCut = true,
                Cuts =
                [
                    Bench.Cut(CutKind.Groove, Bench.Box(0, 10, 0, 600, 16, 6)),
                    new RoundCut(
                        "a",
                        CutKind.Bore,
                        null,
                        Bench.At(1, 2, 0),
                        Direction.Up,
                        Bench.Mm(5),
                        Bench.Mm(9),
                        15
                    ),
                    new OutlineCut(
                        "b",
                        CutKind.Bevel,
                        null,
                        Axis.X,
                        [(Bench.Mm(0), Bench.Mm(0)), (Bench.Mm(new(1, 3)), Bench.Mm(0)), (Bench.Mm(0), Bench.Mm(4))],
                        Bench.Mm(0),
                        Bench.Mm(600)
                    ),
                    Arch(),
                ],
            }
        );
        bench.Joints.Add(
            new("j", JointKind.Dado, "one", "two", Direction.Left, Bench.Mm(6), Length.Zero, true, Bench.Somewhere)
        );
        Fits(bench.Build());
    }

    [Fact]
    public void A_part_that_leans_fits_it_too() => Fits(Angles.Splined());

    public static TheoryData<string> AllStarters => Starters.Names;

    [Theory]
    [MemberData(nameof(AllStarters))]
    public void Every_starter_fits_it_too(string starter) => Fits(Starters.Get(starter));

    [Fact]
    public void Hostile_names_stay_names()
    {
        foreach (var name in Cupboards.HostileNames)
        {
            var bench = Shelves();
            bench.Replace(bench.Parts[0], bench.Parts[0] with { Name = name });
            Fits(bench.Build() with { Name = name });
        }
    }

    [Fact]
    public void Sizes_are_exact()
    {
        // 1/128 in is 25.4/128 = 0.1984375 mm; a third of a millimetre has no end.
        var bench = new Bench(LengthFormat.Inches) { Grid = new(1920) };
        bench.Board("strip", Role.Edging, SamplePieces.Board, Bench.Box(0, 0, 0, 600, new(127, 640), new(1, 3)), Flat);
        var row = Fits(bench.Build()).GetProperty("rows")[0];
        Assert.Equal("0.1984375", row.GetProperty("width").GetProperty("mm").GetRawText());
        Assert.Equal("127/640", row.GetProperty("width").GetProperty("exactMm").GetString());
        Assert.Equal("0.333333333", row.GetProperty("thickness").GetProperty("mm").GetRawText());
        Assert.Equal("1/3", row.GetProperty("thickness").GetProperty("exactMm").GetString());
    }

    [Fact]
    public void Every_part_is_in_exactly_one_row_with_its_place()
    {
        var rows = Fits(Shelves().Build()).GetProperty("rows");
        Assert.Equal(2, rows[0].GetProperty("quantity").GetInt32());
        var parts = rows.EnumerateArray().SelectMany(row => row.GetProperty("parts").EnumerateArray()).ToList();
        Assert.Equal(["one", "two", "post"], parts.Select(part => part.GetProperty("id").GetString()));
        var place = parts[2].GetProperty("place");
        Assert.Equal("up", place.GetProperty("along").GetString());
        Assert.Equal("left", place.GetProperty("shows").GetString());
        Assert.Equal("[7,0,0]", Bare(place.GetProperty("minMm")));
        Assert.Equal("[27,100,400]", Bare(place.GetProperty("maxMm")));

        static string Bare(JsonElement list) => $"[{string.Join(',', list.EnumerateArray())}]";
    }

    [Fact]
    public void The_same_piece_gives_the_same_bytes() =>
        Assert.Equal(PartsJson.Write(Shelves().Build()).Bytes.Span, PartsJson.Write(Shelves().Build()).Bytes.Span);

    [Fact]
    public void Cuts_that_are_not_square_are_told_as_they_are_set_out()
    {
        var (zero, end) = (Bench.Mm(0), Bench.Mm(600));
        OutlineCut[] cuts =
        [
            // The left end at 45 degrees through the thickness of 18: the show face (z = 18) is the long one.
            Cut(CutKind.Mitre, Axis.Y, [(zero, zero), (Bench.Mm(18), zero), (zero, Bench.Mm(18))], 285),
            Cut(CutKind.Taper, Axis.Z, [(end, zero), (end, Bench.Mm(30)), (Bench.Mm(200), zero)], 18),
            Cut(
                CutKind.Chamfer,
                Axis.X,
                [(zero, Bench.Mm(18)), (Bench.Mm(3), Bench.Mm(18)), (zero, Bench.Mm(15))],
                600
            ) with
            {
                Called = "chamfer 3",
            },
            Arch(),
        ];
        var bench = Shelves();
        bench.Replace(bench.Parts[0], bench.Parts[0] with { Cuts = cuts });
        var told = Fits(bench.Build()).GetProperty("rows")[0].GetProperty("cuts");
        Assert.Equal(
            [
                "mitre on the left end, 45 degrees; the reverse face comes out 18 shorter",
                "taper on the front edge, 30 off at the right end, over 400; full thickness",
                "chamfer 3 on the front edge of the show face, full length",
                "arch in the front edge, 320 wide, rising 40, 140 from the left end; full thickness",
            ],
            told.EnumerateArray().Select(cut => cut.GetProperty("text").GetString())
        );

        static OutlineCut Cut(CutKind kind, Axis along, OutlineCorner[] outline, int to) =>
            new($"{kind}-1", kind, null, along, outline, Length.Zero, Bench.Mm(to));
    }

    /// <summary>Span 320 and rise 40: the radius is 340, the centre 300 outside the edge.</summary>
    private static OutlineCut Arch() =>
        new(
            "arch-1",
            CutKind.Arch,
            null,
            Axis.Z,
            [
                new(Bench.Mm(140), Length.Zero),
                new(Bench.Mm(460), Length.Zero, new(Bench.Mm(300), Bench.Mm(-300), Clockwise: false)),
            ],
            Length.Zero,
            Bench.Mm(18)
        );

    private static Bench Shelves()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        bench.Board("one", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 0, 600, 285, 18), Flat);
        bench.Board("two", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 100, 600, 285, 118), Flat);
        bench.Board(
            "post",
            Role.Leg,
            SamplePieces.Maple,
            Bench.Box(7, 0, 0, 27, 100, 400),
            Lie.Of(Direction.Up, Direction.Left)
        );
        return bench;
    }

    private static JsonElement Fits(Piece piece)
    {
        var json = JsonDocument.Parse(PartsJson.Write(piece).Bytes).RootElement;
        var result = Schema.Evaluate(json, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, JsonSerializer.Serialize(result));
        return json;
    }
}
