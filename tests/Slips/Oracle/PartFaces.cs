using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Slips;

/// <summary>The flat faces of a part that look squarely along an axis, in the frame of its group; millimetres.</summary>
internal sealed class PartFaces
{
    /// <summary>Faces nearer to each other than this are one plane.</summary>
    public const double SameMm = 1e-3;

    private static readonly Direction[] Ways = Enum.GetValues<Direction>();

    private readonly Lazy<List<FlatFace>[]> _byWay;

    public PartFaces(Part part, Grid grid)
    {
        Part = part;
        var frame = part.Unturned.Frame;
        var points = part.Solid.Vertices.Select(v => frame.ToWorld(v) * (1.0 / grid.UnitsPerMm)).ToArray();
        // A slip may take all of a part.
        if (points.Length == 0)
            points = [frame.Origin * (1.0 / grid.UnitsPerMm)];
        Min = new(points.Min(p => p.X), points.Min(p => p.Y), points.Min(p => p.Z));
        Max = new(points.Max(p => p.X), points.Max(p => p.Y), points.Max(p => p.Z));
        _byWay = new(() => Find(part, points));
    }

    private static List<FlatFace>[] Find(Part part, Vec3[] points)
    {
        var byWay = Array.ConvertAll(Ways, _ => new List<FlatFace>());
        var (solid, frame) = (part.Solid, part.Unturned.Frame);
        foreach (var face in solid.Faces)
        {
            var normal = (frame.U * face.Normal.X) + (frame.V * face.Normal.Y) + (frame.W * face.Normal.Z);
            foreach (var way in Ways)
            {
                if (On(normal, way.Axis()) * way.Sign() < 1 - 1e-9)
                    continue;
                var triangles = new List<FlatTriangle>();
                for (var t = 3 * face.FirstTriangle; t < 3 * (face.FirstTriangle + face.TriangleCount); t += 3)
                {
                    triangles.Add(
                        FlatTriangle.Of(
                            points[solid.Triangles[t]],
                            points[solid.Triangles[t + 1]],
                            points[solid.Triangles[t + 2]],
                            way.Axis()
                        )
                    );
                }
                byWay[(int)way].Add(new(On(points[solid.Triangles[3 * face.FirstTriangle]], way.Axis()), triangles));
            }
        }
        return byWay;
    }

    public Part Part { get; }

    public Vec3 Min { get; }

    public Vec3 Max { get; }

    /// <summary>The faces that look one way.</summary>
    public IReadOnlyList<FlatFace> Looking(Direction way) => _byWay.Value[(int)way];

    /// <summary>Where its outermost points lie, one way.</summary>
    public double End(Direction way) => On(way.Sign() > 0 ? Max : Min, way.Axis());

    public bool HasFaceAt(Direction way, double at) =>
        _byWay.Value[(int)way].Exists(face => Math.Abs(face.At - at) < SameMm);

    public static double On(Vec3 point, Axis axis) =>
        axis switch
        {
            Axis.X => point.X,
            Axis.Y => point.Y,
            _ => point.Z,
        };
}

/// <summary>A face square to an axis: where it stands on it, and its triangles in the two other axes.</summary>
internal sealed record FlatFace(double At, IReadOnlyList<FlatTriangle> Triangles)
{
    /// <summary>Whether the two cover each other when looked at along the axis, by more than a line.</summary>
    public bool Covers(FlatFace other) => Triangles.Any(a => other.Triangles.Any(a.Shares));
}
