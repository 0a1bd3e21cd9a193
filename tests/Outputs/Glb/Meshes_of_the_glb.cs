using System.Text.Json;
using CsCheck;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Glb;
using Dryfit.Outputs.PartsList;

namespace Dryfit.Outputs.Tests.Glb;

public class Meshes_of_the_glb
{
    private static readonly Piece Cupboard = SamplePieces.Cupboard().Build();
    private static readonly GlbFile File = new(GlbWriter.Write(Cupboard).Bytes);
    private static readonly Lie Flat = Lie.Of(Direction.Right, Direction.Up);

    [Fact]
    public void Each_mesh_is_closed_looks_outward_and_has_the_volume_that_the_parts_list_gives()
    {
        var volumes = PartsListVolumes(Cupboard);
        foreach (var node in File.Parts)
        {
            var mesh = File.Meshes[node.Mesh!.Value];
            Assert.Equal(0, GlbLint.OpenEdges(mesh));
            Assert.Equal(0, GlbLint.WrongNormals(mesh));
            var cubicMm = GlbLint.Volume(File.WorldCorners(node)) * 1e9;
            Assert.Equal(1, cubicMm / volumes[node.PartId], 1e-6);
        }
    }

    [Fact]
    public void Small_thin_and_hollow_parts_keep_their_volume_in_inches_too()
    {
        // By the volume of a box and of a box less a box, and not by the solids' own: edging 0.4 mm thick and 2 m long,
        // a strip of 1/64 in, an old carcase of 3 m with walls of 5/8 in (which floats of metres have 4e-6 too large).
        var bench = new Bench(LengthFormat.Inches);
        var sixtyFourth = new Rational(127, 320);
        var wall = new Rational(127, 8);
        var (w, d, h) = (new Rational(27333, 10), new Rational(24501, 10), new Rational(29585, 10));
        bench.Board("edging", Role.Edging, SamplePieces.Board, Bench.Box(0, 0, 0, 2000, new(2, 5), 18), Flat);
        bench.Board("strip", Role.Edging, SamplePieces.Board, Bench.Box(0, 0, 50, sixtyFourth, 7 * wall, 51), Flat);
        bench.Board(
            "old",
            Role.Kept,
            SamplePieces.Maple,
            Bench.Box(0, 0, 100, w, d, 100 + h),
            Flat,
            Bench.Cut(CutKind.Hollow, new(Bench.At(wall, wall, wall), Bench.At(w - wall, d - wall, h - wall)))
        );
        var file = new GlbFile(GlbWriter.Write(bench.Build()).Bytes);
        const double Inner = (2733.3 - 31.75) * (2450.1 - 31.75) * (2958.5 - 31.75);
        Assert.Equal(1, Volume("edging") / (2000 * 0.4 * 18), 1e-6);
        Assert.Equal(1, Volume("strip") / (0.396875 * 7 * 15.875 * 1), 1e-6);
        Assert.Equal(1, Volume("old") / ((2733.3 * 2450.1 * 2958.5) - Inner), 1e-6);

        double Volume(string name) => GlbLint.Volume(file.WorldCorners(file.Node(name))) * 1e9;
    }

    [Fact]
    public void Boards_with_any_cuts_and_bores_stay_closed_and_keep_their_volume() =>
        Gen.Select(Gen.Int[1, 900], Gen.Int[1, 300], Gen.Int[-50, 600], Gen.Int[-30, 200], Gen.Int[1, 40])
            .Select(n =>
                Bench.Cut(
                    CutKind.Notch,
                    Bench.Box(n.Item3, n.Item4, n.Item5 - 20, n.Item3 + n.Item1, n.Item4 + n.Item2, n.Item5)
                )
            )
            .Array[0, 4]
            .Select(
                Gen.Select(Gen.Int[0, 600], Gen.Int[0, 200], Gen.Int[1, 25])
                    .Select(n => new RoundCut(
                        "bore",
                        CutKind.Bore,
                        null,
                        Bench.At(n.Item1, n.Item2, 0),
                        Direction.Up,
                        Bench.Mm(n.Item3),
                        Bench.Mm(n.Item3)
                    ))
                    .Array[0, 3]
            )
            .Sample(
                (squares, bores) =>
                {
                    var bench = new Bench(LengthFormat.Millimetres);
                    var box = Bench.Box(0, 0, 0, 600, 200, 20);
                    bench.Board("board", Role.Shelf, SamplePieces.Maple, box, Flat, [.. squares, .. bores]);
                    var piece = bench.Build();
                    var file = new GlbFile(GlbWriter.Write(piece).Bytes);
                    if (file.Nodes.Count == 0)
                        return; // nothing of it is left
                    Assert.Equal(0, GlbLint.OpenEdges(file.Meshes[0]));
                    var cubicMm = GlbLint.Volume(file.WorldCorners(file.Node("board"))) * 1e9;
                    var listed = PartsListVolumes(piece)["board"];
                    // Corners of bores are rounded to floats: of a crumb under a cubic centimetre that is more.
                    Assert.Equal(listed, cubicMm, 1e-6 * Math.Max(listed, 1000));
                },
                iter: 100
            );

    [Fact]
    public void Holes_bored_from_both_faces_that_meet_in_the_middle_leave_no_slivers()
    {
        // The corners of the two differ in the last place of a double, which is nothing to a float.
        var bench = new Bench(LengthFormat.Millimetres);
        RoundCut[] bores =
        [
            new("a", CutKind.Bore, null, Bench.At(100, 30, 0), Direction.Up, Bench.Mm(5), Bench.Mm(10)),
            new("b", CutKind.Bore, null, Bench.At(100, 30, 20), Direction.Down, Bench.Mm(5), Bench.Mm(10)),
        ];
        bench.Board("board", Role.Partition, SamplePieces.Maple, Bench.Box(0, 0, 0, 600, 200, 20), Flat, bores);
        var mesh = Assert.Single(new GlbFile(GlbWriter.Write(bench.Build()).Bytes).Meshes);
        Assert.Equal(0, GlbLint.OpenEdges(mesh));
        Assert.Equal(0, GlbLint.WrongNormals(mesh));
    }

    [Fact]
    public void Bores_look_round_and_edges_stay_hard()
    {
        var mesh = File.Meshes[File.Node("case_left-side").Mesh!.Value];
        var isRound = mesh.Normals.Count(n => Math.Max(Math.Abs(n.X), Math.Max(Math.Abs(n.Y), Math.Abs(n.Z))) < 0.999);
        Assert.NotEqual(0, isRound);
        // Facets of a bore share corners: where two meet, one normal serves both and is square to the bore's axis.
        var corners = mesh.Corners.Zip(mesh.Normals).Where(c => Math.Abs(c.Second.X) is > 0.001 and < 0.999).ToList();
        Assert.All(corners, c => Assert.Equal(0, c.Second.Z, 6));
        Assert.Equal(corners.Count, corners.Select(c => c.First).Distinct().Count());
        // A plain board has 4 corners a face, each with the face's own normal.
        var plain = File.Meshes[File.Node("case_door_left-stile").Mesh!.Value];
        Assert.Equal(24, plain.Corners.Length);
    }

    private static Dictionary<string, double> PartsListVolumes(Piece piece)
    {
        using var json = JsonDocument.Parse(PartsJson.Write(piece).Bytes);
        return json
            .RootElement.GetProperty("rows")
            .EnumerateArray()
            .SelectMany(row => row.GetProperty("parts").EnumerateArray().Select(part => (row, part)))
            .ToDictionary(
                pair => pair.part.GetProperty("id").GetString()!,
                pair => pair.row.GetProperty("volumeMm3").GetDouble()
            );
    }
}
