using System.Buffers.Binary;
using System.Numerics;
using System.Text.Json;

namespace Dryfit.Reference.Tests.Gltf;

/// <summary>
/// A binary glTF file taken apart by the letter of the specification, without the library that wrote it.
/// </summary>
public sealed class GlbFile
{
    private readonly ReadOnlyMemory<byte> _bytes;
    private readonly Dictionary<string, IReadOnlyList<JsonElement>> _arrays = new(StringComparer.Ordinal);

    public GlbFile(ReadOnlyMemory<byte> bytes)
    {
        _bytes = bytes;
        var chunks = new List<GlbChunk>();
        for (var at = 12; at < bytes.Length; at += 8 + chunks[^1].Data.Length)
            chunks.Add(new GlbChunk(at, WordAt(at + 4), bytes.Slice(at + 8, (int)WordAt(at))));
        Chunks = chunks;
        Root = JsonDocument.Parse(chunks[0].Data).RootElement;
    }

    public uint Magic => WordAt(0);

    public uint Version => WordAt(4);

    public uint Length => WordAt(8);

    public IReadOnlyList<GlbChunk> Chunks { get; }

    /// <summary>The JSON of the first chunk.</summary>
    public JsonElement Root { get; }

    /// <summary>A top-level array by its name; nothing where the file has none.</summary>
    public IReadOnlyList<JsonElement> Array(string name)
    {
        if (!_arrays.TryGetValue(name, out var array))
            _arrays[name] = array = Root.TryGetProperty(name, out var json) ? [.. json.EnumerateArray()] : [];
        return array;
    }

    /// <summary>All primitives of all meshes.</summary>
    public IEnumerable<JsonElement> Primitives =>
        Array("meshes").SelectMany(mesh => mesh.GetProperty("primitives").EnumerateArray());

    public JsonElement Accessor(int index) => Array("accessors")[index];

    /// <summary>The vectors of a float VEC3 accessor.</summary>
    public IReadOnlyList<Vector3> Vectors(int accessor) =>
        [.. Elements(accessor, 12).Select(at => new Vector3(FloatAt(at), FloatAt(at + 4), FloatAt(at + 8)))];

    /// <summary>The numbers of an index accessor.</summary>
    public IReadOnlyList<uint> Indices(int accessor)
    {
        // 5121 unsigned byte, 5123 unsigned short, 5125 unsigned int.
        var type = Accessor(accessor).GetProperty("componentType").GetInt32();
        var size =
            type == 5121 ? 1
            : type == 5123 ? 2
            : 4;
        return [.. Elements(accessor, size).Select(at => IndexAt(at, size))];
    }

    /// <summary>Every node with its way to the scene, the parents' transforms included.</summary>
    public IReadOnlyList<GlbNode> Nodes()
    {
        var nodes = Array("nodes");
        var found = new List<GlbNode>();
        foreach (var root in Array("scenes")[0].GetProperty("nodes").EnumerateArray())
            Walk(root.GetInt32(), Matrix4x4.Identity);
        return found;

        void Walk(int index, Matrix4x4 above)
        {
            var node = nodes[index];
            var world = Local(node) * above;
            found.Add(new GlbNode(index, node, world));
            if (node.TryGetProperty("children", out var children))
            {
                foreach (var child in children.EnumerateArray())
                    Walk(child.GetInt32(), world);
            }
        }
    }

    /// <summary>The corners of a node's mesh in the scene, in metres; nothing where it has none.</summary>
    public IReadOnlyList<Vector3> CornersOf(GlbNode node) =>
        node.Json.TryGetProperty("mesh", out var mesh)
            ?
            [
                .. Array("meshes")[mesh.GetInt32()]
                    .GetProperty("primitives")
                    .EnumerateArray()
                    .SelectMany(primitive => Vectors(Attribute(primitive, "POSITION")))
                    .Select(corner => Vector3.Transform(corner, node.World)),
            ]
            : [];

    public static int Attribute(JsonElement primitive, string name) =>
        primitive.GetProperty("attributes").GetProperty(name).GetInt32();

    private static Matrix4x4 Local(JsonElement node)
    {
        if (node.TryGetProperty("matrix", out var matrix))
        {
            // Column-major with column vectors is row-major with row vectors, as System.Numerics has it.
            var m = matrix.EnumerateArray().Select(number => number.GetSingle()).ToArray();
            return new Matrix4x4(
                m[0],
                m[1],
                m[2],
                m[3],
                m[4],
                m[5],
                m[6],
                m[7],
                m[8],
                m[9],
                m[10],
                m[11],
                m[12],
                m[13],
                m[14],
                m[15]
            );
        }

        var scale = Numbers(node, "scale", [1, 1, 1]);
        var turn = Numbers(node, "rotation", [0, 0, 0, 1]);
        var move = Numbers(node, "translation", [0, 0, 0]);
        return Matrix4x4.CreateScale(scale[0], scale[1], scale[2])
            * Matrix4x4.CreateFromQuaternion(new Quaternion(turn[0], turn[1], turn[2], turn[3]))
            * Matrix4x4.CreateTranslation(move[0], move[1], move[2]);
    }

    private static float[] Numbers(JsonElement node, string name, float[] otherwise) =>
        node.TryGetProperty(name, out var array)
            ? [.. array.EnumerateArray().Select(number => number.GetSingle())]
            : otherwise;

    /// <summary>Where each element of an accessor begins in the binary chunk.</summary>
    private IEnumerable<int> Elements(int accessor, int size)
    {
        var json = Accessor(accessor);
        var view = Array("bufferViews")[json.GetProperty("bufferView").GetInt32()];
        var start = Number(view, "byteOffset", 0) + Number(json, "byteOffset", 0);
        var stride = Number(view, "byteStride", size);
        return Enumerable.Range(0, json.GetProperty("count").GetInt32()).Select(i => start + (i * stride));
    }

    public static int Number(JsonElement json, string name, int otherwise) =>
        json.TryGetProperty(name, out var number) ? number.GetInt32() : otherwise;

    private float FloatAt(int at) => BinaryPrimitives.ReadSingleLittleEndian(Chunks[1].Data.Span[at..]);

    private uint IndexAt(int at, int size)
    {
        var data = Chunks[1].Data.Span[at..];
        return size switch
        {
            1 => data[0],
            2 => BinaryPrimitives.ReadUInt16LittleEndian(data),
            _ => BinaryPrimitives.ReadUInt32LittleEndian(data),
        };
    }

    private uint WordAt(int at) => BinaryPrimitives.ReadUInt32LittleEndian(_bytes.Span[at..]);
}

/// <summary>A chunk of a binary glTF file.</summary>
/// <param name="Start">Where its length stands in the file.</param>
public sealed record GlbChunk(int Start, uint Type, ReadOnlyMemory<byte> Data);

/// <summary>A node in its place.</summary>
/// <param name="World">From its own coordinates to the scene's, for row vectors.</param>
public sealed record GlbNode(int Index, JsonElement Json, Matrix4x4 World)
{
    public string Name => Json.GetProperty("name").GetString()!;

    /// <summary>The part it stands for, or null.</summary>
    public string? Part =>
        Json.TryGetProperty("extras", out var extras) && extras.TryGetProperty("part", out var part)
            ? part.GetString()
            : null;
}
