using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;

namespace Dryfit.Solids.Shaping;

/// <summary>Tells flats of the blank's own faces by a point in them.</summary>
internal interface IFlats
{
    /// <summary>The flat on one side of an axis that has the point in it.</summary>
    int FlatAt(int axis, bool isUp, Vec3 point);
}

/// <summary>
/// Writes a solid whose flats are known from one of the short ways: corners first, then flat by flat with the mouths of lone
/// bores in them, then the bores. Positions of corners stand for themselves here.
/// </summary>
internal sealed class BoardWriter(PointTable points)
{
    private readonly FaceTriangulator triangulator = new(points);
    private readonly FaceTable table = new();
    private readonly Store<MouthInFlat> mouths = new();
    private readonly Store<int> firstMouth = new();
    private Store<LoneBore> bores = new();
    private Vec3[] vertices = [];
    private int cornerCount;
    private int faceFrom;

    public ReadOnlySpan<Vec3> Vertices => vertices;

    public Store<int> Triangles { get; } = new();

    public void Start(ReadOnlySpan<Vec3> corners, Store<LoneBore> lone, int flatCount, IFlats flats)
    {
        bores = lone;
        Triangles.Clear();
        table.Clear();
        faceFrom = 0;
        cornerCount = corners.Length;
        var count = cornerCount;
        foreach (ref var bore in bores.Span)
        {
            bore.FirstVertex = count;
            count += 2 * bore.Segments;
        }

        vertices = GC.AllocateUninitializedArray<Vec3>(count);
        corners.CopyTo(vertices);
        mouths.Clear();
        firstMouth.Clear();
        firstMouth.Resize(flatCount, -1);
        for (var i = 0; i < bores.Count; i++)
        {
            ref var bore = ref bores[i];
            bore.WriteCorners(vertices);
            if (bore.IsLowMouth)
            {
                AddMouth(i, isHigh: false, in bore, bore.LowFace, flats);
            }

            if (bore.IsHighMouth)
            {
                AddMouth(i, isHigh: true, in bore, bore.HighFace, flats);
            }
        }
    }

    public bool HasMouths(int flat) => firstMouth[flat] >= 0;

    /// <summary>Starts a flat that is to be parted into triangles; loops follow, the outer one first.</summary>
    /// <param name="axis">The coordinate to leave out.</param>
    /// <param name="isUp">Whether the flat looks up that axis.</param>
    public void StartFlat(int axis, bool isUp) => triangulator.Start(axis, isUp);

    public void AddLoop(ReadOnlySpan<int> loop)
    {
        triangulator.StartLoop();
        foreach (var corner in loop)
        {
            triangulator.Add(vertices[corner], -1, corner);
        }
    }

    /// <summary>Writes the triangles of the flat started last.</summary>
    public void Part(int flat)
    {
        for (var m = firstMouth[flat]; m >= 0; m = mouths[m].Next)
        {
            ref var bore = ref bores[mouths[m].Bore];
            var first = bore.FirstVertex + (mouths[m].IsHigh ? bore.Segments : 0);
            triangulator.AddMouth(first, bore.Segments, mouths[m].IsHigh ? -1 : 1, vertices);
        }

        triangulator.Run(vertices, Triangles);
    }

    /// <summary>Makes the triangles written since the last face a face.</summary>
    public void AddFace(int cut, Vec3 normal, int side = -1, Surface? surface = null)
    {
        var end = Triangles.Count / 3;
        table.Add(cut, side, surface is null ? 0 : table.NumberOf(surface), normal, faceFrom, end - faceFrom);
        faceFrom = end;
    }

    /// <summary>Writes the bores and gives the solid.</summary>
    /// <param name="size">The blank.</param>
    /// <param name="cuts">All cuts.</param>
    /// <param name="mass">What the board is without its lone bores.</param>
    /// <param name="pieces">How many pieces it makes.</param>
    public Solid Finish(Vec3 size, IReadOnlyList<Cut> cuts, MassSum mass, int pieces)
    {
        foreach (ref var bore in bores.Span)
        {
            LoneBoreWriter.Write(in bore, vertices, Triangles, table);
            LoneBoreWriter.Measure(in bore, ref mass);
        }

        var solid = new Solid
        {
            Vertices = vertices,
            Triangles = Triangles.Span.ToArray(),
            Faces = table.ToList(cuts),
            Volume = mass.Volume,
            Area = mass.Area,
            Centroid = mass.Centroid,
            Bounds = Bounds.Around(vertices.AsSpan(0, cornerCount)),
            PieceCount = pieces,
            TouchesItself = false,
            Size = size,
            Cuts = cuts,
        };
        vertices = [];
        return solid;
    }

    private void AddMouth(int index, bool isHigh, in LoneBore bore, double face, IFlats flats)
    {
        var middle = bore.Bore.Frame.Origin + (bore.Bore.Frame.W * bore.DepthAt(face, default));
        ref var first = ref firstMouth[flats.FlatAt(bore.Axis, isUp: face != 0, middle)];
        first = mouths.Add(new(index, isHigh, first));
    }

    private readonly record struct MouthInFlat(int Bore, bool IsHigh, int Next);
}
