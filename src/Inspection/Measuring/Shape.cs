using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>A part's solid with its points as one frame sees them, worked out once: grid units.</summary>
/// <param name="placed">The part's solid in the frame that looks at it.</param>
internal sealed class Shape(Part part, Placed placed) : SeenSolid(placed)
{
    public Part Part { get; } = part;
}

/// <summary>A solid with its points as one frame sees them: grid units.</summary>
internal class SeenSolid
{
    /// <param name="placed">The solid in the frame that looks at it.</param>
    public SeenSolid(Placed placed)
    {
        Placed = placed;
        var solid = placed.Solid;
        var frame = placed.Frame;
        var points = new Vec3[solid.Vertices.Count];
        for (var i = 0; i < points.Length; i++)
            points[i] = frame.ToWorld(solid.Vertices[i]);
        Points = points;
        Box = points.Length > 0 ? Boxes.Of(points) : new(frame.Origin, frame.Origin);
    }

    /// <summary>Its solid in the frame that looks at it.</summary>
    public Placed Placed { get; }

    public IReadOnlyList<Vec3> Points { get; }

    public Box Box { get; }

    /// <summary>A face seen edge-on looks no way at all; unit normals carry rounding of about 1e-16.</summary>
    public const double AtAnySlant = 1e-9;

    /// <summary>Within some 41 degrees: a face at 45 degrees is a chamfer or a corner, and no edge of either side.</summary>
    public const double AsAnEdge = 0.75;

    /// <summary>All triangles of the faces that look in a direction.</summary>
    /// <param name="atLeast">How squarely: the cosine of the angle between normal and direction must be above it.</param>
    public IEnumerable<Triangle> Facing(Direction direction, double atLeast)
    {
        var solid = Placed.Solid;
        var frame = Placed.Frame;
        var unit = direction.Unit();
        // The direction as the board sees it, so that each face costs one product.
        var onBoard = new Vec3(Vec3.Dot(unit, frame.U), Vec3.Dot(unit, frame.V), Vec3.Dot(unit, frame.W));
        foreach (var face in solid.Faces)
        {
            if (Vec3.Dot(face.Normal, onBoard) <= atLeast)
                continue;
            for (var t = face.FirstTriangle; t < face.FirstTriangle + face.TriangleCount; t++)
            {
                yield return new(
                    Points[solid.Triangles[3 * t]],
                    Points[solid.Triangles[(3 * t) + 1]],
                    Points[solid.Triangles[(3 * t) + 2]]
                );
            }
        }
    }
}

/// <summary>Three corners in the piece, grid units.</summary>
internal readonly record struct Triangle(Vec3 A, Vec3 B, Vec3 C);
