using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;

namespace Dryfit.Solids.Shaping.Square;

/// <summary>The short way for boards whose cuts are all square, or bores that meet nothing but a face of the blank: cells of a
/// grid instead of planes and points. It gives the same solid as the general way.</summary>
internal sealed class SquareShaper
{
    private readonly SquareGrid grid = new();
    private readonly SquareCorners corners;
    private readonly SquareFaces faces;
    private readonly FaceTriangulator triangulator;
    private readonly Store<int> triangles = new();
    private readonly Store<FaceRow> rows = new();
    private readonly List<Surface> surfaces = [];
    private readonly Store<MouthInFlat> mouths = new();
    private readonly Store<int> firstMouth = new();

    public SquareShaper(PointTable points)
    {
        corners = new(grid);
        faces = new(grid, corners);
        triangulator = new(points);
    }

    /// <summary>Null where the board is not square, or touches itself.</summary>
    /// <param name="size">The blank.</param>
    /// <param name="cuts">All cuts, of which <paramref name="rest"/> are not lone bores.</param>
    /// <param name="rest">Which cuts to go by.</param>
    /// <param name="bores">The others.</param>
    public Solid? Shape(Vec3 size, IReadOnlyList<Cut> cuts, List<int> rest, Store<LoneBore> bores)
    {
        if (!grid.Lay(size, cuts, rest) || !corners.Find())
        {
            return null;
        }

        faces.Find();
        var vertices = WriteVertices(bores);
        triangles.Clear();
        rows.Clear();
        surfaces.Clear();
        surfaces.Add(PlaneSurface.Instance);
        AssignMouths(bores);
        var area = WriteFlats(vertices, bores);
        var mass = new MassSum(default);
        var volume = grid.Volume(out var moments);
        if (volume > 0)
        {
            // What is taken with a minus is put in.
            mass.Take(-volume, area, moments * (1 / volume));
        }

        foreach (ref var bore in bores.Span)
        {
            LoneBoreWriter.Write(in bore, vertices, triangles, rows, surfaces);
            LoneBoreWriter.Measure(in bore, ref mass);
        }

        return new()
        {
            Vertices = vertices,
            Triangles = triangles.Span.ToArray(),
            Faces = new FaceList(rows.Span.ToArray(), [.. surfaces]),
            Volume = mass.Volume,
            Area = mass.Area,
            Centroid = mass.Centroid,
            Bounds = Bounds.Around(corners.Positions.Span),
            PieceCount = grid.CountPieces(),
            TouchesItself = false,
            Size = size,
            Cuts = cuts,
        };
    }

    private Vec3[] WriteVertices(Store<LoneBore> bores)
    {
        var count = corners.Positions.Count;
        foreach (ref var bore in bores.Span)
        {
            bore.FirstVertex = count;
            count += 2 * bore.Segments;
        }

        var vertices = GC.AllocateUninitializedArray<Vec3>(count);
        corners.Positions.Span.CopyTo(vertices);
        foreach (ref var bore in bores.Span)
        {
            bore.WriteCorners(vertices);
        }

        return vertices;
    }

    private void AssignMouths(Store<LoneBore> bores)
    {
        mouths.Clear();
        firstMouth.Clear();
        firstMouth.Resize(faces.Flats.Count, -1);
        for (var i = 0; i < bores.Count; i++)
        {
            ref var bore = ref bores[i];
            if (bore.IsLowMouth)
            {
                AssignMouth(i, isHigh: false, in bore, bore.LowFace);
            }

            if (bore.IsHighMouth)
            {
                AssignMouth(i, isHigh: true, in bore, bore.HighFace);
            }
        }
    }

    private void AssignMouth(int index, bool isHigh, in LoneBore bore, double face)
    {
        var middle = bore.Bore.Frame.Origin + (bore.Bore.Frame.W * bore.DepthAt(face, default));
        ref var first = ref firstMouth[faces.FlatAt(bore.Axis, isUp: face != 0, middle)];
        first = mouths.Add(new(index, isHigh, first));
    }

    private double WriteFlats(ReadOnlySpan<Vec3> vertices, Store<LoneBore> bores)
    {
        var area = 0.0;
        for (var i = 0; i < faces.Flats.Count; i++)
        {
            ref var flat = ref faces.Flats[i];
            var plane = new Plane
            {
                Axis = flat.Axis,
                Nx = flat.Axis == 0 ? 1 : 0,
                Ny = flat.Axis == 1 ? 1 : 0,
                Nz = flat.Axis == 2 ? 1 : 0,
            };
            var sign = flat.IsUp ? 1 : -1;
            triangulator.Start(in plane, flat.IsUp ? 0 : 1);
            for (var l = flat.FirstLoop; l < flat.FirstLoop + flat.LoopCount; l++)
            {
                var loop = faces.Loop(l);
                triangulator.StartLoop();
                foreach (var corner in loop)
                {
                    triangulator.Add(vertices[corner], -1, corner);
                }

                area += sign * AreaOf(loop, vertices, flat.Axis);
            }

            for (var m = firstMouth[i]; m >= 0; m = mouths[m].Next)
            {
                ref var bore = ref bores[mouths[m].Bore];
                var first = bore.FirstVertex + (mouths[m].IsHigh ? bore.Segments : 0);
                triangulator.AddMouth(first, bore.Segments, mouths[m].IsHigh ? -1 : 1, vertices);
            }

            var firstTriangle = triangles.Count / 3;
            triangulator.Run(vertices, triangles);
            rows.Add(
                new()
                {
                    Cut = flat.Cut,
                    Side = -1,
                    Surface = 0,
                    Normal = new(sign * plane.Nx, sign * plane.Ny, sign * plane.Nz),
                    FirstTriangle = firstTriangle,
                    TriangleCount = (triangles.Count / 3) - firstTriangle,
                }
            );
        }

        return area;
    }

    private static double AreaOf(ReadOnlySpan<int> loop, ReadOnlySpan<Vec3> vertices, int axis)
    {
        var twice = 0.0;
        var (originU, originV) = FacePoints.Flatten(vertices[loop[0]], axis, isSwapped: false);
        var (u, v) = (0.0, 0.0);
        foreach (var corner in loop[1..])
        {
            var (nextU, nextV) = FacePoints.Flatten(vertices[corner], axis, isSwapped: false);
            (nextU, nextV) = (nextU - originU, nextV - originV);
            twice += (u * nextV) - (nextU * v);
            (u, v) = (nextU, nextV);
        }

        return twice / 2;
    }

    private readonly record struct MouthInFlat(int Bore, bool IsHigh, int Next);
}
