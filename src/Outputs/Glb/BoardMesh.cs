using System.Numerics;
using Dryfit.Solids;

namespace Dryfit.Outputs.Glb;

/// <summary>
/// A solid as corners with normals, in board coordinates. Flats have their own corners, so that edges stay hard; the
/// facets of one bore share theirs and look towards its axis, so that it looks round.
/// </summary>
/// <param name="Corners">Place and unit normal of each corner.</param>
/// <param name="Triangles">Three corners each, counter-clockwise from outside.</param>
internal sealed record BoardMesh(IReadOnlyList<(Vector3 Place, Vector3 Normal)> Corners, IReadOnlyList<int> Triangles)
{
    public static BoardMesh Of(Solid solid, GlbFrame frame)
    {
        var corners = new List<(Vector3, Vector3)>();
        var triangles = new List<int>(solid.Triangles.Count);
        var shared = new Dictionary<(Surface Surface, int Vertex), int>();
        for (var f = 0; f < solid.Faces.Count; f++)
        {
            var face = solid.Faces[f];
            // A flat is a surface of its own; bores of equal surface are one.
            var surface = face.Surface is CylinderSurface ? face.Surface : new Flat(f);
            for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i++)
            {
                var vertex = solid.Triangles[i];
                if (!shared.TryGetValue((surface, vertex), out var corner))
                {
                    corner = corners.Count;
                    shared.Add((surface, vertex), corner);
                    var place = solid.Vertices[vertex];
                    corners.Add((frame.BoardPoint(place), Normal(face, place)));
                }

                triangles.Add(corner);
            }
        }

        return new(corners, triangles);
    }

    private static Vector3 Normal(Face face, Vec3 at)
    {
        if (face.Surface is not CylinderSurface round)
            return Unit(face.Normal);
        var fromAxis = at - round.AxisPoint;
        var along = round.AxisDirection;
        var radial = fromAxis - (along * (Vec3.Dot(fromAxis, along) / Vec3.Dot(along, along)));
        var side = Vec3.Dot(radial, face.Normal);
        return side == 0 ? Unit(face.Normal) : Unit(radial * Math.Sign(side));
    }

    private static Vector3 Unit(Vec3 d)
    {
        var unit = d * (1 / Math.Sqrt(Vec3.Dot(d, d)));
        // Adding zero turns -0 into 0.
        return new((float)(unit.X + 0), (float)(unit.Y + 0), (float)(unit.Z + 0));
    }

    private sealed record Flat(int Face) : Surface;
}
