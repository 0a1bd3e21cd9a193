using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Glb;

namespace Dryfit.Outputs.Tests.Glb;

public partial class Piece_as_glb
{
    private static readonly Piece Cupboard = SamplePieces.Cupboard().Build();
    private static readonly GlbFile File = new(GlbWriter.Write(Cupboard).Bytes);

    [Fact]
    public async Task The_Khronos_validator_has_nothing_to_say_of_it() =>
        await KhronosValidator.HasNothingToSayOf(GlbWriter.Write(Cupboard).Bytes);

    [Fact]
    public async Task The_validator_has_nothing_to_say_of_a_piece_without_parts() =>
        await KhronosValidator.HasNothingToSayOf(GlbWriter.Write(Cupboard with { Parts = [] }).Bytes);

    [Fact]
    public async Task The_validator_is_really_asked()
    {
        var glb = GlbWriter.Write(Cupboard).Bytes.ToArray();
        glb[^1] = 0x7F; // the last index reaches past the last corner
        var report = await KhronosValidator.Judge(glb);
        Assert.NotEqual(0, report.GetProperty("issues").GetProperty("numErrors").GetInt32());
    }

    [Fact]
    public void It_is_in_metres_with_Y_up_the_front_to_positive_Z_and_stands_on_the_middle_of_its_base()
    {
        // 600 wide; from the door's face at -18 to the back at 300; 700 high.
        var (min, max) = Reach(File.Parts.SelectMany(File.WorldCorners));
        Assert.Equal(-0.300, min.X, 6);
        Assert.Equal(0.300, max.X, 6);
        Assert.Equal(0, min.Y); // exactly
        Assert.Equal(0.700, max.Y, 6);
        Assert.Equal(-0.159, min.Z, 6);
        Assert.Equal(0.159, max.Z, 6);
        var (doorMin, doorMax) = Reach(File.WorldCorners(File.Node("case_door_left-stile")));
        Assert.Equal(0.159, doorMax.Z, 6);
        Assert.Equal(0.141, doorMin.Z, 6);
        Assert.True(doorMax.X < 0);
    }

    [Fact]
    public void A_board_that_hangs_from_its_upper_end_stands_exactly_on_the_floor()
    {
        // 1/64 in more than 29 in has no short decimal; readers may reckon in doubles.
        var bench = new Bench(LengthFormat.Inches);
        var height = 29 * new Rational(127, 5) + new Rational(127, 320);
        bench.Board(
            "leg",
            Role.Leg,
            SamplePieces.Maple,
            Bench.Box(0, 0, 0, 30, 30, height),
            Lie.Of(Direction.Down, Direction.Left)
        );
        var file = new GlbFile(GlbWriter.Write(bench.Build()).Bytes);
        Assert.Equal(0, file.WorldCorners(file.Node("leg")).Min(corner => corner.Y));
    }

    [Fact]
    public void The_tree_of_nodes_is_that_of_the_groups_and_an_empty_group_is_left_out()
    {
        var paths = File.Nodes.Select(node =>
            node.Parent is { } parent ? $"{File.Nodes[parent].Name} > {node.Name}" : node.Name
        );
        Assert.Equal(
            [
                "cupboard",
                "cupboard > case",
                "case > case_left-side",
                "case > case_right-side",
                "case > case_bottom",
                "case > case_edging",
                "case > case_door",
                "case_door > case_door_left-stile",
                "case_door > case_door_right-stile",
                "case_door > case_door_glass",
            ],
            paths.Order(StringComparer.Ordinal).OrderBy(path => Array.IndexOf(Order, path.Split(" > ")[^1]))
        );
    }

    private static readonly string[] Order =
    [
        "cupboard",
        "case",
        "case_left-side",
        "case_right-side",
        "case_bottom",
        "case_edging",
        "case_door",
        "case_door_left-stile",
        "case_door_right-stile",
        "case_door_glass",
    ];

    [Fact]
    public void A_front_hangs_on_its_pivot()
    {
        var pivot = File.Node("case_door").World.Origin;
        Assert.Equal(-0.280, pivot.X, 6);
        Assert.Equal(0, pivot.Y, 6);
        Assert.Equal(0.159, pivot.Z, 6);
        Assert.Equal("turns on left edge", File.Node("case_door").Extras.GetProperty("motion").GetString());
    }

    [Theory]
    [InlineData(FrontMotion.TurnsOnTopEdge, "turns on top edge")]
    [InlineData(FrontMotion.TurnsOnBottomEdge, "turns on bottom edge")]
    [InlineData(FrontMotion.SlidesLeft, "slides left")]
    public void Every_motion_is_told_in_words(FrontMotion motion, string words)
    {
        var piece = Cupboard with { Fronts = [.. Cupboard.Fronts.Select(front => front with { Motion = motion })] };
        var file = new GlbFile(GlbWriter.Write(piece).Bytes);
        Assert.Equal(words, file.Node("case_door").Extras.GetProperty("motion").GetString());
    }

    [Fact]
    public void Node_names_are_unique_and_plain()
    {
        var bench = SamplePieces.Cupboard();
        bench.Board("a/ß b", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 800, 9, 9, 818), Flat);
        bench.Board("a/é b", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 900, 9, 9, 918), Flat);
        foreach (var part in bench.Parts.Where(part => part.Id.StartsWith("a/", StringComparison.Ordinal)).ToList())
            bench.Replace(part, part with { Group = "cupboard" });
        var names = new GlbFile(GlbWriter.Write(bench.Build()).Bytes).Nodes.Select(node => node.Name).ToList();
        Assert.Contains("a_--b", names);
        Assert.Contains("a_--b-2", names);
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
        Assert.All(names, name => Assert.Matches(PlainName(), name));
    }

    [Fact]
    public void Equal_parts_share_a_mesh_and_a_mirrored_one_has_its_own()
    {
        Assert.Equal(File.Node("case_door_left-stile").Mesh, File.Node("case_door_right-stile").Mesh);
        Assert.NotEqual(File.Node("case_left-side").Mesh, File.Node("case_right-side").Mesh);
        Assert.Equal(6, File.Meshes.Count);
    }

    [Fact]
    public void A_part_turned_end_for_end_lies_where_it_belongs()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        var notch = Bench.Box(0, 0, 0, 100, 30, 20);
        // The same board twice, one lying to the right and one to the left: its notch is at the other end.
        bench.Board(
            "one",
            Role.Shelf,
            SamplePieces.Maple,
            Bench.Box(0, 0, 0, 500, 100, 20),
            Flat,
            Bench.Cut(CutKind.Notch, notch)
        );
        bench.Board(
            "two",
            Role.Shelf,
            SamplePieces.Maple,
            Bench.Box(0, 0, 50, 500, 100, 70),
            Flat,
            Bench.Cut(CutKind.Notch, Bench.Box(400, 70, 0, 500, 100, 20))
        );
        var file = new GlbFile(GlbWriter.Write(bench.Build()).Bytes);
        Assert.Single(file.Meshes);
        var corners = file.WorldCorners(file.Node("two")).Distinct().ToList();
        // x from the middle of 500; the notch leaves an inner corner at x = 400, y = 70.
        Assert.Contains(corners, p => Near(p, 0.150, 0.050, -0.020));
        Assert.DoesNotContain(corners, p => Near(p, 0.250, 0.050, -0.050));
        Assert.Contains(corners, p => Near(p, -0.250, 0.050, -0.050));

        static bool Near(Place p, double x, double y, double z) => (p - new Place(x, y, z)).Length < 1e-6;
    }

    [Fact]
    public void A_board_without_grain_turned_a_quarter_lies_where_it_belongs()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        var (one, two) = (Bench.Box(0, 0, 0, 50, 30, 20), Bench.Box(70, 0, 0, 100, 50, 20));
        bench.Board(
            "one",
            Role.Shelf,
            SamplePieces.Board,
            Bench.Box(0, 0, 0, 400, 100, 20),
            Flat,
            Bench.Cut(CutKind.Notch, one)
        );
        bench.Board(
            "two",
            Role.Shelf,
            SamplePieces.Board,
            Bench.Box(0, 0, 50, 100, 400, 70),
            Flat,
            Bench.Cut(CutKind.Notch, two)
        );
        var piece = bench.Build();
        var file = new GlbFile(GlbWriter.Write(piece).Bytes);
        Assert.Single(file.Meshes);
        // The same corners as the solid that was cut in its place: base 400 x 400, middle at (200, 200).
        var wanted = piece
            .Parts[1]
            .Solid.Vertices.Select(v => (X: (v.X / 640) - 200, Y: (v.Z / 640) + 50, Z: 200 - (v.Y / 640)))
            .Distinct()
            .Order();
        var found = file.WorldCorners(file.Node("two"))
            .Select(p => (X: Math.Round(p.X * 1000, 3), Y: Math.Round(p.Y * 1000, 3), Z: Math.Round(p.Z * 1000, 3)))
            .Distinct()
            .Order();
        Assert.Equal(wanted, found);
    }

    [Fact]
    public void Glass_is_clear_and_the_rest_is_not()
    {
        var materials = File.Json.GetProperty("materials").EnumerateArray().ToList();
        var glass = materials.Single(material => material.GetProperty("name").GetString() == "panes");
        Assert.Equal("BLEND", glass.GetProperty("alphaMode").GetString());
        Assert.All(
            materials.Where(material => material.GetProperty("name").GetString() != "panes"),
            material => Assert.False(material.TryGetProperty("alphaMode", out _))
        );
    }

    [Fact]
    public void Colours_are_linear()
    {
        // IEC 61966-2-1: screen value 0xE4 = 228/255 is ((0.89412 + 0.055) / 1.055)^2.4 = 0.7758 of full light.
        var maple = File
            .Json.GetProperty("materials")
            .EnumerateArray()
            .Single(m => m.GetProperty("name").GetString() == "body");
        var factor = maple.GetProperty("pbrMetallicRoughness").GetProperty("baseColorFactor");
        Assert.Equal(0.7758, factor[0].GetDouble(), 4);
    }

    [Fact]
    public void Parts_of_one_material_share_it()
    {
        var names = File.Json.GetProperty("materials").EnumerateArray().Select(m => m.GetProperty("name").GetString());
        Assert.Equal(["board", "body", "panes"], names.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_was_there_before_is_a_shade_darker_than_new_work_of_the_same_stuff()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        bench.Board("new", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 0, 500, 100, 20), Flat);
        var old = bench.Board("old", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 50, 500, 100, 70), Flat);
        bench.Replace(old, old with { IsKept = true });
        var materials = new GlbFile(GlbWriter.Write(bench.Build()).Bytes).Json.GetProperty("materials");
        Assert.Equal(["body", "body-2"], materials.EnumerateArray().Select(m => m.GetProperty("name").GetString()));
        Assert.True(Green(materials[1]) < Green(materials[0]));

        static double Green(JsonElement material) =>
            material.GetProperty("pbrMetallicRoughness").GetProperty("baseColorFactor")[1].GetDouble();
    }

    [Fact]
    public void A_part_says_what_it_is()
    {
        var extras = File.Node("case_left-side").Extras;
        Assert.Equal("case/left-side", extras.GetProperty("part").GetString());
        Assert.Equal("side", extras.GetProperty("role").GetString());
        Assert.Equal("body", extras.GetProperty("material").GetString());
        Assert.Equal("700 mm x 300 mm x 18 mm", extras.GetProperty("blank").GetString());
        Assert.Equal("[700,300,18]", extras.GetProperty("blankMm").GetRawText());
    }

    [Fact]
    public void No_two_faces_of_different_parts_lie_in_one_plane_look_the_same_way_and_overlap() =>
        Assert.Empty(GlbLint.CoincidentFaces(File));

    [Fact]
    public void Faces_that_coincide_are_found_and_faces_side_by_side_are_not()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        bench.Board("one", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 0, 500, 100, 20), Flat);
        bench.Board("beside", Role.Shelf, SamplePieces.Maple, Bench.Box(500, 0, 0, 900, 100, 20), Flat);
        bench.Board("inside", Role.Shelf, SamplePieces.Maple, Bench.Box(400, 10, 5, 450, 90, 20), Flat);
        var file = new GlbFile(GlbWriter.Write(bench.Build()).Bytes);
        Assert.Equal([("one", "inside")], GlbLint.CoincidentFaces(file));
    }

    [Fact]
    public void The_same_piece_gives_the_same_bytes_in_any_culture()
    {
        var first = GlbWriter.Write(SamplePieces.Cupboard().Build()).Bytes.ToArray();
        var culture = CultureInfo.CurrentCulture;
        try
        {
            var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            commas.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = commas;
            Assert.Equal(first, GlbWriter.Write(SamplePieces.Cupboard().Build()).Bytes.ToArray());
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }

        Assert.Equal("dryfit", File.Json.GetProperty("asset").GetProperty("generator").GetString());
    }

    private static readonly Lie Flat = Lie.Of(Direction.Right, Direction.Up);

    private static (Place Min, Place Max) Reach(IEnumerable<Place> places)
    {
        var all = places.ToList();
        return (
            new(all.Min(p => p.X), all.Min(p => p.Y), all.Min(p => p.Z)),
            new(all.Max(p => p.X), all.Max(p => p.Y), all.Max(p => p.Z))
        );
    }

    [GeneratedRegex("^[A-Za-z0-9_-]+$")]
    private static partial Regex PlainName();
}
