using System.Numerics;
using System.Text;
using System.Text.RegularExpressions;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Gltf;

/// <summary>
/// The written file against the glTF 2.0 specification (Khronos Group), fact by fact; the row of <c>gltf.csv</c> is named
/// beside each check.
/// </summary>
public sealed partial class GltfFactTests
{
    private static readonly GlbFile File = GltfSample.File;

    /// <summary>Rows 11-020 to 11-023: "glTF", version 2, and the length of the whole file.</summary>
    [Test]
    public void The_file_begins_with_the_header_of_a_binary_glTF()
    {
        Assert.That(Fact("11-020"), Does.StartWith("0x46546C67"));
        Assert.That(File.Magic, Is.EqualTo(0x46546C67u));
        Assert.That(File.Version, Is.EqualTo(uint.Parse(Fact("11-021"), null)));
        Assert.That(File.Length, Is.EqualTo(12 + File.Chunks.Sum(chunk => 8 + chunk.Data.Length)));
        Assert.That(File.Length, Is.EqualTo(GltfSample.Bytes.Length));
    }

    /// <summary>Rows 11-024 to 11-026: one JSON chunk, then at most one binary one, each on four bytes.</summary>
    [Test]
    public void A_JSON_chunk_comes_first_and_one_binary_chunk_behind_it()
    {
        Assert.That(File.Chunks.Select(chunk => chunk.Type), Is.EqualTo(new[] { 0x4E4F534Au, 0x004E4942u }));
        Assert.That(File.Chunks.Select(chunk => chunk.Start % 4), Is.All.Zero);
        Assert.That(File.Chunks.Select(chunk => chunk.Data.Length % 4), Is.All.Zero);
    }

    /// <summary>Rows 11-027 and 11-028: JSON is padded with spaces, binary data with zeros.</summary>
    [Test]
    public void Chunks_are_padded_with_spaces_and_zeros()
    {
        var json = Encoding.UTF8.GetString(File.Chunks[0].Data.Span);
        var used = File.Array("buffers")[0].GetProperty("byteLength").GetInt32();

        Assert.That(json.TrimEnd(' '), Does.EndWith("}"));
        Assert.That(File.Chunks[1].Data.Length - used, Is.InRange(0, 3));
        Assert.That(File.Chunks[1].Data[used..].ToArray(), Is.All.Zero);
    }

    /// <summary>Row 11-040: the version is there and of the schema's form.</summary>
    [Test]
    public void The_asset_says_its_version()
    {
        var version = File.Root.GetProperty("asset").GetProperty("version").GetString();

        Assert.That(version, Is.EqualTo("2.0"));
        Assert.That(AssetVersion().IsMatch(version!), Is.True);
    }

    /// <summary>Rows 11-008, 11-009 and 11-014: vectors of floats, as many normals as positions.</summary>
    [Test]
    public void Every_corner_has_a_position_and_a_normal_of_three_floats()
    {
        foreach (var primitive in File.Primitives)
        {
            var position = File.Accessor(GlbFile.Attribute(primitive, "POSITION"));
            var normal = File.Accessor(GlbFile.Attribute(primitive, "NORMAL"));
            foreach (var accessor in new[] { position, normal })
            {
                Assert.That(accessor.GetProperty("type").GetString(), Is.EqualTo("VEC3"));
                Assert.That(accessor.GetProperty("componentType").GetInt32(), Is.EqualTo(5126));
            }
            Assert.That(normal.GetProperty("count").GetInt32(), Is.EqualTo(position.GetProperty("count").GetInt32()));
        }
    }

    /// <summary>Row 11-009; the tolerance is that of the Khronos validator, row 11-051 of the source table, from memory.</summary>
    [Test]
    public void Normals_are_one_long()
    {
        foreach (var primitive in File.Primitives)
        {
            foreach (var normal in File.Vectors(GlbFile.Attribute(primitive, "NORMAL")))
                Assert.That(normal.Length(), Is.EqualTo(1).Within(0.00005));
        }
    }

    /// <summary>Rows 11-013 and 11-019: positions carry their least and greatest corner, three numbers each.</summary>
    [Test]
    public void Positions_carry_the_box_around_them()
    {
        foreach (var primitive in File.Primitives)
        {
            var index = GlbFile.Attribute(primitive, "POSITION");
            var corners = File.Vectors(index);

            Assert.That(Bound(index, "min"), Is.EqualTo(corners.Aggregate(Vector3.Min)));
            Assert.That(Bound(index, "max"), Is.EqualTo(corners.Aggregate(Vector3.Max)));
        }

        static Vector3 Bound(int index, string name)
        {
            var numbers = File.Accessor(index).GetProperty(name).EnumerateArray().Select(n => n.GetSingle()).ToArray();
            Assert.That(numbers, Has.Length.EqualTo(3));
            return new Vector3(numbers[0], numbers[1], numbers[2]);
        }
    }

    /// <summary>Rows 11-015 and 11-031: no index is the restart value of its type, and none points beyond the corners.</summary>
    [Test]
    public void Indices_point_at_corners_and_never_restart()
    {
        foreach (var primitive in File.Primitives)
        {
            var accessor = File.Accessor(primitive.GetProperty("indices").GetInt32());
            var restart = accessor.GetProperty("componentType").GetInt32() switch
            {
                5121 => byte.MaxValue,
                5123 => ushort.MaxValue,
                5125 => uint.MaxValue,
                var other => throw new AssertionException($"Indices of type {other}."),
            };
            var corners = File.Accessor(GlbFile.Attribute(primitive, "POSITION")).GetProperty("count").GetInt32();
            var indices = File.Indices(primitive.GetProperty("indices").GetInt32());

            Assert.That(indices.Max(), Is.LessThan(restart).And.LessThan(corners));
            Assert.That(indices.Count % 3, Is.Zero);
        }
    }

    /// <summary>Rows 11-017 and 11-018: attributes lie on four bytes, every accessor on its component's size.</summary>
    [Test]
    public void Data_is_aligned()
    {
        var attributes = File
            .Primitives.SelectMany(primitive => primitive.GetProperty("attributes").EnumerateObject())
            .Select(attribute => attribute.Value.GetInt32())
            .ToHashSet();
        foreach (var (accessor, index) in File.Array("accessors").Select((accessor, index) => (accessor, index)))
        {
            var view = File.Array("bufferViews")[accessor.GetProperty("bufferView").GetInt32()];
            var offset = GlbFile.Number(accessor, "byteOffset", 0);
            var total = offset + GlbFile.Number(view, "byteOffset", 0);
            var size = accessor.GetProperty("componentType").GetInt32() switch
            {
                5120 or 5121 => 1,
                5122 or 5123 => 2,
                _ => 4,
            };

            Assert.That(total % size, Is.Zero);
            if (attributes.Contains(index))
            {
                Assert.That(offset % 4, Is.Zero);
                Assert.That(GlbFile.Number(view, "byteStride", 4) % 4, Is.Zero);
            }
        }
    }

    /// <summary>Row 11-032: 34962 for corners, 34963 for indices (names from memory).</summary>
    [Test]
    public void Buffer_views_say_what_they_are_for()
    {
        foreach (var primitive in File.Primitives)
        {
            Assert.That(Target(GlbFile.Attribute(primitive, "POSITION")), Is.EqualTo(34962).Or.Zero);
            Assert.That(Target(primitive.GetProperty("indices").GetInt32()), Is.EqualTo(34963).Or.Zero);
        }

        static int Target(int accessor) =>
            GlbFile.Number(
                File.Array("bufferViews")[File.Accessor(accessor).GetProperty("bufferView").GetInt32()],
                "target",
                0
            );
    }

    /// <summary>Row 11-016: a scene names root nodes only; here it reaches every node, each once.</summary>
    [Test]
    public void The_scene_names_root_nodes_and_reaches_every_node_once()
    {
        var children = File.Array("nodes")
            .SelectMany(node => node.TryGetProperty("children", out var list) ? list.EnumerateArray() : [])
            .Select(child => child.GetInt32())
            .ToList();
        var roots = File.Array("scenes")[0].GetProperty("nodes").EnumerateArray().Select(root => root.GetInt32());

        Assert.That(roots.Intersect(children), Is.Empty);
        Assert.That(
            File.Nodes().Select(node => node.Index),
            Is.EquivalentTo(Enumerable.Range(0, File.Array("nodes").Count))
        );
    }

    /// <summary>
    /// Rows 11-001, 11-007 and 11-030: where a node does not mirror, front faces run counter-clockwise; faces seen from
    /// behind are culled, so every part must be wound outwards and no node may mirror.
    /// </summary>
    [Test]
    public void Faces_run_counter_clockwise_seen_from_outside()
    {
        foreach (var node in File.Nodes())
            Assert.That(node.World.GetDeterminant(), Is.GreaterThan(0), node.Name);
        foreach (var mesh in File.Array("meshes"))
        {
            var sixfoldVolume = 0.0;
            foreach (var primitive in mesh.GetProperty("primitives").EnumerateArray())
            {
                // 4 is triangles, which is also the default.
                Assert.That(GlbFile.Number(primitive, "mode", 4), Is.EqualTo(4));
                var corners = File.Vectors(GlbFile.Attribute(primitive, "POSITION"));
                var normals = File.Vectors(GlbFile.Attribute(primitive, "NORMAL"));
                foreach (var triangle in File.Indices(primitive.GetProperty("indices").GetInt32()).Chunk(3))
                {
                    var (a, b, c) = (corners[(int)triangle[0]], corners[(int)triangle[1]], corners[(int)triangle[2]]);
                    sixfoldVolume += Vector3.Dot(a, Vector3.Cross(b, c));
                    Assert.That(Vector3.Dot(Vector3.Cross(b - a, c - a), normals[(int)triangle[0]]), Is.Positive);
                }
            }
            Assert.That(sixfoldVolume, Is.Positive);
        }
    }

    /// <summary>Rows 11-002 and 11-005: metres, and +Y up: the piece stands on 0 and is as high as it was asked to be.</summary>
    [Test]
    public void The_piece_stands_upright_in_metres()
    {
        var corners = File.Nodes().SelectMany(File.CornersOf).ToList();
        var (least, most) = (corners.Aggregate(Vector3.Min), corners.Aggregate(Vector3.Max));
        var size = (most - least) * 1000;

        Assert.That(least.Y, Is.Zero);
        Assert.That(size.X, Is.EqualTo(GltfSample.WidthMm).Within(0.01));
        Assert.That(size.Y, Is.EqualTo(GltfSample.HeightMm).Within(0.01));
        Assert.That(size.Z, Is.EqualTo(GltfSample.DepthMm).Within(0.01));
    }

    /// <summary>Row 11-003: the front looks to +Z, so that the back stands at the other end.</summary>
    [Test]
    public void The_front_looks_towards_plus_Z()
    {
        Assert.That(Middle(GltfSample.FrontPart).Z, Is.GreaterThan(Middle(GltfSample.BackPart).Z + 0.1));
    }

    /// <summary>
    /// Row 11-004: the asset's own left, which is the right hand of whoever stands before it, is +X. A maker's "left side"
    /// is named from before the piece.
    /// </summary>
    [Test]
    public void The_left_side_as_a_maker_sees_it_is_towards_minus_X()
    {
        Assert.That(Middle(GltfSample.LeftPart).X, Is.LessThan(Middle(GltfSample.RightPart).X - 0.1));
    }

    /// <summary>Rows 11-030, 11-037 and 11-039: parts are closed, so that nothing needs to be two-sided; timber is opaque.</summary>
    [Test]
    public void Materials_are_one_sided_and_timber_is_opaque()
    {
        foreach (var material in File.Array("materials"))
        {
            Assert.That(material.TryGetProperty("doubleSided", out var twoSided) && twoSided.GetBoolean(), Is.False);
            Assert.That(
                material.TryGetProperty("alphaMode", out var mode) ? mode.GetString() : Fact("11-037"),
                Is.EqualTo("OPAQUE")
            );
        }
    }

    private static string Fact(string id) => PublishedTable.Row("gltf.csv", id).Value;

    private static Vector3 Middle(string part)
    {
        var corners = File.CornersOf(
            File.Nodes().Single(node => string.Equals(node.Part, part, StringComparison.Ordinal))
        );
        return (corners.Aggregate(Vector3.Min) + corners.Aggregate(Vector3.Max)) / 2;
    }

    /// <summary>The pattern of the JSON schema of the specification, row 11-040.</summary>
    [GeneratedRegex(@"^(0|[1-9][0-9]{0,8})\.(0|[1-9][0-9]{0,8})$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AssetVersion();
}
