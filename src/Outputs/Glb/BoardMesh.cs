using System.Numerics;
using Dryfit.Solids;

namespace Dryfit.Outputs.Glb;

/// <summary>
/// A solid as corners with normals, in board coordinates. Flats have their own corners, so that edges stay hard; the
/// facets of one bore or arc share theirs and look as the true round does, so that it looks round.
/// </summary>
/// <param name="Corners">Place and unit normal of each corner.</param>
/// <param name="Triangles">Three corners each, counter-clockwise from outside.</param>
internal sealed record BoardMesh(IReadOnlyList<(Vector3 Place, Vector3 Normal)> Corners, IReadOnlyList<int> Triangles)
{
    public static BoardMesh Of(Solid solid, GlbFrame frame)
    {
        Vector3[] places = [.. solid.Vertices.Select(frame.BoardPoint)];
        var corners = new List<(Vector3, Vector3)>();
        var triangles = new List<int>(solid.Triangles.Count);
        var shared = new Dictionary<(Surface Surface, int Vertex), int>();
        for (var f = 0; f < solid.Faces.Count; f++)
        {
            var face = solid.Faces[f];
            // A flat is a surface of its own; facets of an equal round are one.
            var surface = face.Surface is PlaneSurface ? new Flat(f) : face.Surface;
            for (var t = face.FirstTriangle; t < face.FirstTriangle + face.TriangleCount; t++)
            {
                if (Vanishes(3 * t))
                    continue;
                for (var i = 3 * t; i < 3 * (t + 1); i++)
                    triangles.Add(Corner(face, surface, solid.Triangles[i]));
            }
        }

        return new(corners, triangles);

        // Slivers between corners that are one and the same as floats. What is left stays closed: its two long sides
        // have become one edge.
        bool Vanishes(int first)
        {
            var (a, b, c) = (
                places[solid.Triangles[first]],
                places[solid.Triangles[first + 1]],
                places[solid.Triangles[first + 2]]
            );
            return a == b || b == c || c == a;
        }

        int Corner(Face face, Surface surface, int vertex)
        {
            if (!shared.TryGetValue((surface, vertex), out var corner))
            {
                corner = corners.Count;
                shared.Add((surface, vertex), corner);
                corners.Add((places[vertex], Unit(face.Surface.NormalAt(solid.Vertices[vertex], face.Normal))));
            }

            return corner;
        }
    }

    private static Vector3 Unit(Vec3 d)
    {
        var unit = d * (1 / Math.Sqrt(Vec3.Dot(d, d)));
        // Adding zero turns -0 into 0.
        return new((float)(unit.X + 0), (float)(unit.Y + 0), (float)(unit.Z + 0));
    }

    private sealed record Flat(int Face) : Surface
    {
        public override Vec3 NormalAt(Vec3 point, Vec3 facet) => facet;
    }
}
