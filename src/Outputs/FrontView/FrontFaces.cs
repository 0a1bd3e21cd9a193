using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Finds what of the solids looks to the front, and merges its triangles to outlines.</summary>
internal static class FrontFaces
{
    /// <summary>A flat that leans less than this towards the front is seen as an edge.</summary>
    private const double LeastTowardsFront = 1e-6;

    /// <summary>All faces of all parts that look to the front, part by part.</summary>
    public static List<FrontFace> Of(IReadOnlyList<Part> parts)
    {
        var faces = new List<FrontFace>();
        for (var i = 0; i < parts.Count; i++)
            AddFaces(faces, i, parts[i].Placed, parts[i].Unturned);
        return faces;
    }

    /// <summary>The faces of one part that look to the front of its own frame, as they are seen squarely there.</summary>
    /// <param name="part">Index of the part.</param>
    public static List<FrontFace> Square(IReadOnlyList<Part> parts, int part)
    {
        var faces = new List<FrontFace>();
        AddFaces(faces, part, parts[part].Unturned, parts[part].Unturned);
        return faces;
    }

    private static void AddFaces(List<FrontFace> faces, int part, Placed placed, Placed own)
    {
        var solid = placed.Solid;
        // One flat of a board may come as several faces where several cuts made it, and a bore comes as many facets:
        // what lies in one plane square to the view, or on one round, is one outline.
        var groups = new Dictionary<object, Flat>();
        var order = new List<Flat>();
        for (var f = 0; f < solid.Faces.Count; f++)
        {
            var face = solid.Faces[f];
            var towards = TowardsFront(placed.Frame, face.Normal);
            if (towards < LeastTowardsFront || face.TriangleCount == 0)
                continue;
            var corner = World(placed, solid.Triangles[face.FirstTriangle * 3]);
            object key =
                face.Surface is not PlaneSurface ? face.Surface
                : towards > 1 - 1e-12 ? (object)corner.Y
                : f;
            if (!groups.TryGetValue(key, out var group))
            {
                groups.Add(key, group = new([], face.Normal, face.Surface is not PlaneSurface));
                order.Add(group);
            }
            for (var t = face.FirstTriangle; t < face.FirstTriangle + face.TriangleCount; t++)
                group.Triangles.Add(t);
        }
        foreach (var group in order)
            AddFace(faces, part, placed, own, group);
    }

    private static void AddFace(List<FrontFace> faces, int part, Placed placed, Placed own, Flat flat)
    {
        var (nearest, farthest) = (double.PositiveInfinity, double.NegativeInfinity);
        var behind = double.PositiveInfinity;
        var outline = new OutlineBuilder();
        foreach (var triangle in flat.Triangles)
        {
            var a = World(placed, placed.Solid.Triangles[triangle * 3]);
            var b = World(placed, placed.Solid.Triangles[(triangle * 3) + 1]);
            var c = World(placed, placed.Solid.Triangles[(triangle * 3) + 2]);
            nearest = Math.Min(nearest, Math.Min(a.Y, Math.Min(b.Y, c.Y)));
            farthest = Math.Max(farthest, Math.Max(a.Y, Math.Max(b.Y, c.Y)));
            for (var corner = 0; corner < 3; corner++)
                behind = Math.Min(behind, World(own, placed.Solid.Triangles[(triangle * 3) + corner]).Y);
            outline.Add(new(a.X, a.Z), new(b.X, b.Z), new(c.X, c.Z));
        }
        var loops = outline.Loops();
        if (loops.Count == 0)
            return;
        var lean =
            nearest == farthest || flat.IsRound
                ? Lean.Square(nearest)
                : LeanOf(placed.Frame, flat.Normal, World(placed, placed.Solid.Triangles[flat.Triangles[0] * 3]));
        var bounds = Span2.Around(loops.SelectMany(loop => loop));
        faces.Add(new(part, loops, nearest, farthest, bounds, lean, behind, flat.IsRound));
    }

    private static Lean LeanOf(Frame frame, Vec3 normal, Vec3 corner)
    {
        var n = (frame.U * normal.X) + (frame.V * normal.Y) + (frame.W * normal.Z);
        var (toTheRight, up) = (-n.X / n.Y, -n.Z / n.Y);
        return new(corner.Y - (toTheRight * corner.X) - (up * corner.Z), toTheRight, up);
    }

    private static Vec3 World(Placed placed, int vertex) => placed.Frame.ToWorld(placed.Solid.Vertices[vertex]);

    private static double TowardsFront(Frame frame, Vec3 normal) =>
        -((frame.U.Y * normal.X) + (frame.V.Y * normal.Y) + (frame.W.Y * normal.Z));

    /// <summary>Triangles that make one outline.</summary>
    private sealed record Flat(List<int> Triangles, Vec3 Normal, bool IsRound);
}
