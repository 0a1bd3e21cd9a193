using System.Numerics;
using Dryfit.Casework;
using Dryfit.Outputs.Alike;
using Dryfit.Solids;
using SharpGLTF.Schema2;
using SharpGLTF.Transforms;
using SharpGLTF.Validation;
using Material = SharpGLTF.Schema2.Material;
using Turn = Dryfit.Outputs.Alike.Turn;

namespace Dryfit.Outputs.Glb;

/// <summary>
/// The piece as one binary glTF 2.0 file, <c>piece.glb</c>: a tree of named nodes (piece, carcases, units, parts) in which
/// every front hangs on a node of its own at its pivot, so that a door turns about +Y, a flap about +X, and a drawer slides along +Z.
/// Parts that are alike share one mesh in board coordinates. See <see cref="GlbFrame"/> for its numbers.
/// </summary>
public sealed class GlbWriter
{
    private readonly Piece _piece;
    private readonly ModelRoot _model = ModelRoot.CreateModel();
    private readonly GlbFrame _frame;
    private readonly NodeNames _nodeNames = new();
    private readonly MeshBuffer _buffer = new();
    private readonly Dictionary<(string Name, bool IsKept), Material> _materials = [];
    private readonly Dictionary<string, (AlikeParts Kind, Turn Turn)> _kinds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Mesh> _meshes = new(StringComparer.Ordinal);
    private readonly NodeNames _materialNames = new();
    private readonly NodeNames _meshNames = new();

    private GlbWriter(Piece piece, IReadOnlyList<Part> parts)
    {
        _piece = piece;
        _frame = GlbFrame.Of(piece.Grid, parts);
        foreach (var kind in AlikeParts.Of(parts))
        {
            foreach (var member in kind.Members)
                _kinds.Add(member.Part.Id, (kind, member.Turn));
        }
    }

    public static OutputFile Write(Piece piece)
    {
        // Where the cuts leave nothing there is nothing to show.
        var parts = piece.Parts.Where(part => part.Solid.Triangles.Count > 0).ToList();
        return new("piece.glb", new GlbWriter(piece, parts).Write(parts));
    }

    private ReadOnlyMemory<byte> Write(List<Part> parts)
    {
        _model.Asset.Generator = "dryfit";
        _model.Asset.Copyright = null;
        var scene = _model.UseScene(0);
        _model.DefaultScene = scene;
        var tree = PieceTree.Of(_piece, parts);
        if (tree is not null)
        {
            var root = scene.CreateNode(_nodeNames.Take(tree.Group.Id));
            root.LocalTransform = new AffineTransform(new Vector3(_frame.RootScale), Quaternion.Identity, Vector3.Zero);
            root.Extras = NodeExtras.Of(_piece);
            Fill(root, tree, Vector3.Zero);
        }

        _buffer.Fill(_model);
        // Judged by the Khronos validator in the tests; the library's own look costs as much as all the rest.
        return GlbText.WithExactPlaces(_model.WriteGLB(new WriteSettings { Validation = ValidationMode.Skip }));
    }

    /// <param name="node">The group's node.</param>
    /// <param name="tree">The group.</param>
    /// <param name="origin">Where the node stands, under the root's scale.</param>
    private void Fill(Node node, PieceTree tree, Vector3 origin)
    {
        foreach (var part in tree.Parts)
            Fill(node.CreateNode(_nodeNames.Take(part.Id)), part, tree.Group.Turn, origin);
        foreach (var unit in tree.Units)
        {
            var child = node.CreateNode(_nodeNames.Take(unit.Group.Id));
            var childOrigin = origin;
            var turn = unit.Group.Turn;
            if (Anchor(unit, tree.Group.Turn) is { } anchor)
            {
                childOrigin = _frame.Point(anchor);
                var stands = _frame.Point(anchor.Seen(turn, tree.Group.Turn, _piece.Grid.UnitsPerMm));
                var turned = GlbFrame.Turned(Turned.Degrees(turn, tree.Group.Turn));
                child.LocalTransform = new AffineTransform(Vector3.One, turned, stands - origin);
            }

            child.Extras = NodeExtras.Of(unit);
            Fill(child, unit, childOrigin);
        }
    }

    /// <summary>Where the node of a unit stands, in the unit's own frame: a front at its pivot, what is turned at that of the
    /// turn; null for units that stand as the one around them.</summary>
    private Vec3? Anchor(PieceTree unit, PlanTurn? around)
    {
        if (unit.Front is { } front)
            return _piece.Grid.ToUnits(front.Pivot);
        return unit.Group.Turn == around ? null : _piece.Grid.ToUnits(unit.Group.Turn?.Pivot ?? default);
    }

    private void Fill(Node node, Part part, PlanTurn? around, Vector3 origin)
    {
        var (kind, turn) = _kinds[part.Id];
        node.Mesh = MeshOf(kind);
        node.Extras = NodeExtras.Of(part, _piece.Format);

        // The prototype's board is turned onto this one's, and this one's stands in its place.
        var board = new TurnedBoard(turn, kind.Prototype.Length.Length, kind.Prototype.Width.Length);
        var place = part.Unturned.Frame.Seen(part.Turn, around, _piece.Grid.UnitsPerMm);
        var corner = _frame.Point(place.ToWorld(_piece.Grid.ToUnits(board.Of(default(Point))))) - origin;
        var x = Way(Direction.Right);
        var y = Way(Direction.Back);
        var z = Way(Direction.Up);
        // A matrix, since a quaternion would tilt boards by the rounding of its square roots.
        node.LocalTransform = new AffineTransform(
            new Matrix4x4(x.X, x.Y, x.Z, 0, y.X, y.Y, y.Z, 0, z.X, z.Y, z.Z, 0, corner.X, corner.Y, corner.Z, 1)
        );

        Vector3 Way(Direction direction)
        {
            var turned = board.Of(direction);
            var way = turned.Axis() switch
            {
                Axis.X => place.U,
                Axis.Y => place.V,
                _ => place.W,
            };
            return GlbFrame.Direction(way * turned.Sign());
        }
    }

    private Mesh MeshOf(AlikeParts kind)
    {
        if (_meshes.TryGetValue(kind.Prototype.Id, out var mesh))
            return mesh;
        mesh = _model.CreateMesh(_meshNames.Take(kind.Prototype.Id));
        _meshes.Add(kind.Prototype.Id, mesh);
        _buffer.Add(mesh, MaterialOf(kind.Prototype), BoardMesh.Of(kind.Prototype.Solid, _frame));
        return mesh;
    }

    private Material MaterialOf(Part part)
    {
        var key = (part.Material.Name, part.IsKept);
        if (_materials.TryGetValue(key, out var material))
            return material;
        var look = part.IsKept ? Look.Of(part.Material).Aged : Look.Of(part.Material);
        material = _model.CreateMaterial(_materialNames.Take(part.Material.Name));
        material.InitializePBRMetallicRoughness();
        var colour = material.FindChannel("BaseColor")!.Value;
        colour.Color = look.LinearColour;
        var surface = material.FindChannel("MetallicRoughness")!.Value;
        surface.SetFactor("MetallicFactor", 0);
        surface.SetFactor("RoughnessFactor", look.Roughness);
        material.Alpha = look.IsClear ? AlphaMode.BLEND : AlphaMode.OPAQUE;
        _materials.Add(key, material);
        return material;
    }
}
