using System.Buffers.Binary;
using System.Text.Json;

namespace Dryfit.Outputs.Tests.Glb;

/// <summary>
/// A reader of binary glTF 2.0 written from its specification (Khronos, glTF 2.0, sections 3.5, 3.6 and 4.4), so that
/// what is written is not read back by what wrote it. All in doubles.
/// </summary>
internal sealed class GlbFile
{
    private readonly byte[] _buffer = [];

    public GlbFile(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        Assert.Equal("glTF"u8, bytes[..4]);
        Assert.Equal(2u, BinaryPrimitives.ReadUInt32LittleEndian(bytes[4..]));
        Assert.Equal((uint)bytes.Length, BinaryPrimitives.ReadUInt32LittleEndian(bytes[8..]));
        var jsonLength = BinaryPrimitives.ReadInt32LittleEndian(bytes[12..]);
        Assert.Equal("JSON"u8, bytes[16..20]);
        Json = JsonDocument.Parse(file.Slice(20, jsonLength)).RootElement;
        var rest = bytes[(20 + jsonLength)..];
        if (rest.Length > 0)
            _buffer = rest.Slice(8, BinaryPrimitives.ReadInt32LittleEndian(rest)).ToArray();
        Nodes = ReadNodes();
        Meshes = [.. List(Json, "meshes").Select(ReadMesh)];
    }

    public JsonElement Json { get; }

    public IReadOnlyList<GlbNode> Nodes { get; }

    public IReadOnlyList<GlbMesh> Meshes { get; }

    public IEnumerable<GlbNode> Parts => Nodes.Where(node => node.Mesh is not null);

    public GlbNode Node(string name) => Nodes.Single(node => node.Name == name);

    /// <summary>The corners of a node's mesh in metres, three a triangle.</summary>
    public IEnumerable<Place> WorldCorners(GlbNode node)
    {
        var mesh = Meshes[node.Mesh!.Value];
        return mesh.Triangles.Select(corner => node.World.Apply(mesh.Corners[corner]));
    }

    private List<GlbNode> ReadNodes()
    {
        var json = List(Json, "nodes");
        var parents = new int?[json.Length];
        for (var i = 0; i < json.Length; i++)
        {
            foreach (var child in List(json[i], "children"))
                parents[child.GetInt32()] = i;
        }

        var nodes = new List<GlbNode>();
        for (var i = 0; i < json.Length; i++)
        {
            var world = Matrix.Identity;
            for (int? at = i; at is { } n; at = parents[n])
                world = Matrix.OfNode(json[n]) * world;
            nodes.Add(
                new(
                    json[i].GetProperty("name").GetString()!,
                    parents[i],
                    json[i].TryGetProperty("mesh", out var mesh) ? mesh.GetInt32() : null,
                    world,
                    json[i].TryGetProperty("extras", out var extras) ? extras : default
                )
            );
        }

        return nodes;
    }

    private GlbMesh ReadMesh(JsonElement mesh)
    {
        var primitive = List(mesh, "primitives").Single();
        var attributes = primitive.GetProperty("attributes");
        return new(
            mesh.GetProperty("name").GetString()!,
            primitive.GetProperty("material").GetInt32(),
            Places(attributes.GetProperty("POSITION").GetInt32()),
            Places(attributes.GetProperty("NORMAL").GetInt32()),
            Indices(primitive.GetProperty("indices").GetInt32())
        );
    }

    private Place[] Places(int accessorIndex)
    {
        var (accessor, view, at) = Accessor(accessorIndex);
        Assert.Equal(5126, accessor.GetProperty("componentType").GetInt32());
        var stride = view.TryGetProperty("byteStride", out var given) ? given.GetInt32() : 12;
        var places = new Place[accessor.GetProperty("count").GetInt32()];
        for (var i = 0; i < places.Length; i++)
        {
            var bytes = _buffer.AsSpan(at + (i * stride));
            places[i] = new(
                BinaryPrimitives.ReadSingleLittleEndian(bytes),
                BinaryPrimitives.ReadSingleLittleEndian(bytes[4..]),
                BinaryPrimitives.ReadSingleLittleEndian(bytes[8..])
            );
        }

        return places;
    }

    private int[] Indices(int accessorIndex)
    {
        var (accessor, _, at) = Accessor(accessorIndex);
        var isWide = accessor.GetProperty("componentType").GetInt32() == 5125;
        return
        [
            .. Enumerable
                .Range(0, accessor.GetProperty("count").GetInt32())
                .Select(i =>
                    isWide
                        ? BinaryPrimitives.ReadInt32LittleEndian(_buffer.AsSpan(at + (i * 4)))
                        : BinaryPrimitives.ReadUInt16LittleEndian(_buffer.AsSpan(at + (i * 2)))
                ),
        ];
    }

    private (JsonElement Accessor, JsonElement View, int At) Accessor(int index)
    {
        var accessor = Json.GetProperty("accessors")[index];
        var view = Json.GetProperty("bufferViews")[accessor.GetProperty("bufferView").GetInt32()];
        return (accessor, view, Offset(accessor) + Offset(view));
    }

    private static int Offset(JsonElement element) =>
        element.TryGetProperty("byteOffset", out var offset) ? offset.GetInt32() : 0;

    private static JsonElement[] List(JsonElement element, string name) =>
        element.TryGetProperty(name, out var list) ? [.. list.EnumerateArray()] : [];
}

internal sealed record GlbNode(string Name, int? Parent, int? Mesh, Matrix World, JsonElement Extras)
{
    public string PartId => Extras.GetProperty("part").GetString()!;
}

internal sealed record GlbMesh(string Name, int Material, Place[] Corners, Place[] Normals, int[] Triangles);

internal readonly record struct Place(double X, double Y, double Z)
{
    public static Place operator -(Place a, Place b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Place operator *(Place a, double by) => new(a.X * by, a.Y * by, a.Z * by);

    public double Length => Math.Sqrt(Dot(this, this));

    public static double Dot(Place a, Place b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static Place Cross(Place a, Place b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));
}

/// <summary>An affine map: three columns and where the origin goes.</summary>
internal readonly record struct Matrix(Place X, Place Y, Place Z, Place Origin)
{
    public static Matrix Identity { get; } = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), default);

    public static Matrix operator *(Matrix a, Matrix b) =>
        new(a.Turn(b.X), a.Turn(b.Y), a.Turn(b.Z), a.Apply(b.Origin));

    public Place Apply(Place p) => Turn(p) - (Origin * -1);

    private Place Turn(Place d) => (X * d.X) - (Y * -d.Y) - (Z * -d.Z);

    /// <summary>The turn of a node at rest: groups are turned about the upright line alone.</summary>
    private static (double Sin, double Cos) AboutY(JsonElement node)
    {
        if (!node.TryGetProperty("rotation", out var rotation))
            return (0, 1);
        double[] q = [.. rotation.EnumerateArray().Select(number => number.GetDouble())];
        Assert.Equal((0, 0), (q[0], q[2]));
        return (2 * q[1] * q[3], (q[3] * q[3]) - (q[1] * q[1]));
    }

    public static Matrix OfNode(JsonElement node)
    {
        if (node.TryGetProperty("matrix", out var matrix))
        {
            double[] m = [.. matrix.EnumerateArray().Select(number => number.GetDouble())];
            return new(new(m[0], m[1], m[2]), new(m[4], m[5], m[6]), new(m[8], m[9], m[10]), new(m[12], m[13], m[14]));
        }

        var scale = Vector("scale", 1);
        var (sin, cos) = AboutY(node);
        return new(
            new(cos * scale.X, 0, -sin * scale.X),
            new(0, scale.Y, 0),
            new(sin * scale.Z, 0, cos * scale.Z),
            Vector("translation", 0)
        );

        Place Vector(string name, double otherwise)
        {
            if (!node.TryGetProperty(name, out var v))
                return new(otherwise, otherwise, otherwise);
            return new(v[0].GetDouble(), v[1].GetDouble(), v[2].GetDouble());
        }
    }
}
