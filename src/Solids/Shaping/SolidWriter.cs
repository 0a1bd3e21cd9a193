using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;

namespace Dryfit.Solids.Shaping;

/// <summary>Turns faces into triangles and measures what it writes.</summary>
internal sealed class SolidWriter(
    PlaneTable planes,
    PointTable points,
    Store<HalfEdge> edges,
    LoopFinder corners,
    FaceFinder faces
)
{
    private readonly FacePoints shape = new(points);
    private Triangulator? triangulator;
    private readonly Store<int> triangles = new();
    private readonly Store<int> shell = new();
    private readonly Store<double> shellVolume = new();

    public Solid Write(Vec3 size, IReadOnlyList<Cut> cuts, bool mayDouble)
    {
        var vertices = corners.CornerPosition.Span.ToArray();
        triangles.Clear();
        var written = new Face[faces.Flats.Count];
        for (var i = 0; i < written.Length; i++)
        {
            written[i] = WriteFace(faces.Flats[i], vertices, cuts);
        }

        if (mayDouble)
        {
            DiagonalParter.Part(triangles, written, ref vertices);
        }

        var mass = new MassSum(vertices.Length > 0 ? vertices[0] : default);
        var indices = triangles.Span.ToArray();
        for (var i = 0; i < indices.Length; i += 3)
        {
            mass.Add(vertices[indices[i]], vertices[indices[i + 1]], vertices[indices[i + 2]]);
        }

        return new()
        {
            Vertices = vertices,
            Triangles = indices,
            Faces = written,
            Volume = mass.Volume,
            Area = mass.Area,
            Centroid = mass.Centroid,
            Bounds = Around(vertices),
            PieceCount = CountPieces(written, vertices, indices),
            Size = size,
            Cuts = cuts,
        };
    }

    private Face WriteFace(in Flat flat, Vec3[] vertices, IReadOnlyList<Cut> cuts)
    {
        ref var plane = ref planes[flat.Side / 2];
        triangulator ??= new(shape);
        triangulator.Clear();
        shape.Start(in plane, flat.Side);
        for (var l = flat.FirstLoop; l < flat.FirstLoop + flat.LoopCount; l++)
        {
            ref var loop = ref faces.Loops[l];
            triangulator.StartLoop();
            for (var i = 0; i < loop.Count; i++)
            {
                var corner = faces.LoopCorners[loop.First + i];
                shape.Add(vertices[corner], corners.CornerPoint[corner]);
            }
        }

        triangulator.Run();
        var firstTriangle = triangles.Count / 3;
        foreach (var point in triangulator.Triangles.Span)
        {
            triangles.Add(CornerOf(in flat, point));
        }

        var sign = flat.Side % 2 == 0 ? 1 : -1;
        var normal = new Vec3(sign * plane.Nx, sign * plane.Ny, sign * plane.Nz);
        return new(
            flat.Cut,
            SurfaceOf(flat.Cut, normal, cuts),
            normal,
            firstTriangle,
            (triangles.Count / 3) - firstTriangle
        );
    }

    private int CornerOf(in Flat flat, int point)
    {
        for (var l = flat.FirstLoop; ; l++)
        {
            ref var loop = ref faces.Loops[l];
            if (point < loop.Count)
            {
                return faces.LoopCorners[loop.First + point];
            }

            point -= loop.Count;
        }
    }

    private static Surface SurfaceOf(int cut, Vec3 normal, IReadOnlyList<Cut> cuts) =>
        cut >= 0 && cuts[cut] is BoreCut bore && Math.Abs(Vec3.Dot(normal, bore.Frame.W)) < 0.5
            ? new CylinderSurface(bore.Frame.Origin, bore.Frame.W, bore.Radius)
            : PlaneSurface.Instance;

    private static Box Around(Vec3[] vertices)
    {
        if (vertices.Length == 0)
        {
            return default;
        }

        var bounds = Bounds.Empty;
        foreach (var vertex in vertices)
        {
            bounds.Include(vertex);
        }

        return new(new(bounds.MinX, bounds.MinY, bounds.MinZ), new(bounds.MaxX, bounds.MaxY, bounds.MaxZ));
    }

    // Faces that share an edge are of one shell; a shell around material is a piece, one around a void is not.
    private int CountPieces(Face[] written, Vec3[] vertices, int[] indices)
    {
        shell.Clear();
        for (var i = 0; i < written.Length; i++)
        {
            shell.Add(i);
        }

        for (var e = 0; e < edges.Count; e++)
        {
            var (a, b) = (Root(faces.FlatOfEdge[e]), Root(faces.FlatOfEdge[edges[e].Mate]));
            shell[Math.Max(a, b)] = Math.Min(a, b);
        }

        shellVolume.Resize(0, 0);
        shellVolume.Resize(written.Length, 0);
        for (var i = 0; i < written.Length; i++)
        {
            var root = Root(i);
            var origin = vertices[indices[3 * written[root].FirstTriangle]];
            for (var t = written[i].FirstTriangle; t < written[i].FirstTriangle + written[i].TriangleCount; t++)
            {
                var (a, b, c) = (
                    vertices[indices[3 * t]],
                    vertices[indices[(3 * t) + 1]],
                    vertices[indices[(3 * t) + 2]]
                );
                shellVolume[root] += Vec3.Dot(a - origin, Vec3.Cross(b - origin, c - origin));
            }
        }

        var pieces = 0;
        for (var i = 0; i < written.Length; i++)
        {
            pieces += Root(i) == i && shellVolume[i] > 0 ? 1 : 0;
        }

        return pieces;
    }

    private int Root(int i)
    {
        while (shell[i] != i)
        {
            shell[i] = shell[shell[i]];
            i = shell[i];
        }

        return i;
    }
}
