using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;

namespace Dryfit.Solids.Shaping;

/// <summary>Turns flats and lone bores into triangles and measures what it writes.</summary>
internal sealed class SolidWriter(
    PlaneTable planes,
    PointTable points,
    LoopFinder corners,
    FaceFinder faces,
    PieceCounter pieces
)
{
    private readonly FaceTriangulator triangulator = new(points);
    private readonly Store<int> triangles = new();
    private readonly FaceTable table = new();
    private readonly Store<MouthInFlat> mouths = new();
    private readonly Store<double> volumes = new();

    public Solid Write(Vec3 size, IReadOnlyList<Cut> cuts, Store<LoneBore> bores, bool isDoubled)
    {
        var vertices = WriteVertices(bores);
        triangles.Clear();
        table.Clear();
        AssignMouths(bores);
        var mass = new MassSum(vertices.Length > 0 ? vertices[0] : default);
        WriteFlats(vertices, bores, cuts, ref mass);
        foreach (ref var bore in bores.Span)
        {
            LoneBoreWriter.Write(in bore, vertices, triangles, table);
            LoneBoreWriter.Measure(in bore, ref mass);
        }

        if (isDoubled || corners.HasTouching)
        {
            DiagonalParter.Part(triangles, table.Rows, ref vertices);
        }

        return new()
        {
            Vertices = vertices,
            Triangles = triangles.Span.ToArray(),
            Faces = table.ToList(cuts),
            Volume = mass.Volume,
            Area = mass.Area,
            Centroid = mass.Centroid,
            Bounds = Around(corners.CornerPosition.Span),
            PieceCount = pieces.Count(volumes),
            TouchesItself = isDoubled || corners.HasTwins,
            Size = size,
            Cuts = cuts,
        };
    }

    private Vec3[] WriteVertices(Store<LoneBore> bores)
    {
        var count = corners.CornerPosition.Count;
        foreach (ref var bore in bores.Span)
        {
            bore.FirstVertex = count;
            count += 2 * bore.Segments;
        }

        var vertices = GC.AllocateUninitializedArray<Vec3>(count);
        corners.CornerPosition.Span.CopyTo(vertices);
        foreach (ref var bore in bores.Span)
        {
            bore.WriteCorners(vertices);
        }

        return vertices;
    }

    private void AssignMouths(Store<LoneBore> bores)
    {
        mouths.Clear();
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
        // A blank's face at 0 looks down its axis, the one at its size looks up.
        var side = (2 * planes.AddAxis(bore.Axis, face)) + (face == 0 ? 1 : 0);
        var middle = bore.Bore.Frame.Origin + (bore.Bore.Frame.W * bore.DepthAt(face, default));
        ref var flat = ref faces.Flats[faces.FlatAt(side, middle)];
        flat.Mouths = mouths.Add(new(index, isHigh, flat.Mouths));
    }

    private void WriteFlats(Vec3[] vertices, Store<LoneBore> bores, IReadOnlyList<Cut> cuts, ref MassSum mass)
    {
        volumes.Clear();
        for (var i = 0; i < faces.Flats.Count; i++)
        {
            ref var flat = ref faces.Flats[i];
            ref var plane = ref planes[flat.Side / 2];
            var sign = flat.Side % 2 == 0 ? 1 : -1;
            var normal = new Vec3(sign * plane.Nx, sign * plane.Ny, sign * plane.Nz);
            var volume = 0.0;
            triangulator.Start(in plane, flat.Side);
            for (var l = flat.FirstLoop; l < flat.FirstLoop + flat.LoopCount; l++)
            {
                ref var loop = ref faces.Loops[l];
                var run = faces.LoopCorners.Span.Slice(loop.First, loop.Count);
                triangulator.StartLoop();
                for (var c = 0; c < run.Length; c++)
                {
                    triangulator.Add(vertices[run[c]], corners.CornerPoint[run[c]], run[c]);
                    if (faces.LoopMiddles.Count > 0 && faces.LoopMiddles[loop.First + c] >= 0)
                    {
                        triangulator.PartSide(faces.LoopMiddles[loop.First + c]);
                    }
                }

                volume += mass.Add(run, vertices, normal);
            }

            for (var m = flat.Mouths; m >= 0; m = mouths[m].Next)
            {
                ref var bore = ref bores[mouths[m].Bore];
                var first = bore.FirstVertex + (mouths[m].IsHigh ? bore.Segments : 0);
                triangulator.AddMouth(first, bore.Segments, mouths[m].IsHigh ? -1 : 1, vertices);
            }

            volumes.Add(volume);
            var firstTriangle = triangles.Count / 3;
            triangulator.Run(vertices, triangles);
            var isThere = triangles.Count > 3 * firstTriangle;
            var (side, surface) = isThere
                ? WallOf(flat.Cut, normal, Middle(3 * firstTriangle, vertices), cuts)
                : (-1, 0);
            table.Add(flat.Cut, side, surface, normal, firstTriangle, (triangles.Count / 3) - firstTriangle);
        }
    }

    // Which side of its cut's outline a flat lies on, and the number of its true surface.
    private (int Side, int Surface) WallOf(int cut, Vec3 normal, Vec3 point, IReadOnlyList<Cut> cuts)
    {
        if (cut < 0)
        {
            return (-1, 0);
        }

        switch (cuts[cut])
        {
            case BoreCut bore when Math.Abs(Vec3.Dot(normal, bore.Frame.W)) < 0.5:
                return (-1, table.NumberOf(bore.Wall()));
            case PrismCut prism when Walls.ChordAt(prism, point, normal) is var chord and >= 0:
                var side = prism.Outline.SideOf(chord);
                return (side, Walls.SurfaceOf(prism, side) is { } round ? table.NumberOf(round) : 0);
            default:
                return (-1, 0);
        }
    }

    private Vec3 Middle(int triangle, Vec3[] vertices) =>
        (vertices[triangles[triangle]] + vertices[triangles[triangle + 1]] + vertices[triangles[triangle + 2]])
        * (1 / 3.0);

    private static Box Around(ReadOnlySpan<Vec3> vertices)
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

    private readonly record struct MouthInFlat(int Bore, bool IsHigh, int Next);
}
