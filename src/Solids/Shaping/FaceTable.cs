using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>The faces of the solid that is being written.</summary>
internal sealed class FaceTable
{
    private readonly Store<Vec3> normals = new();
    private static readonly Surface[] OnlyFlat = [PlaneSurface.Instance];

    private readonly List<Surface> surfaces = [];
    private LoneBore known;
    private int knownNormals;
    private int count;

    public Store<FaceRow> Rows { get; } = new();

    public void Clear()
    {
        Rows.Clear();
        normals.Clear();
        surfaces.Clear();
        surfaces.Add(PlaneSurface.Instance);
        knownNormals = -1;
        count = 0;
    }

    /// <summary>Adds a face of its own normal; surface 0 is the flat.</summary>
    public void Add(int cut, int side, int surface, Vec3 normal, int firstTriangle, int triangleCount)
    {
        count++;
        Rows.Add(
            new()
            {
                Cut = cut,
                Side = side,
                Surface = surface,
                Normal = normals.Add(normal),
                Facets = 1,
                FirstTriangle = firstTriangle,
                TriangleCount = triangleCount,
            }
        );
    }

    /// <summary>Adds the walls of a lone bore, two triangles each; bores that look alike share their normals.</summary>
    public void AddWalls(in LoneBore bore, int firstTriangle)
    {
        count += bore.Segments;
        Rows.Add(
            new()
            {
                Cut = bore.Cut,
                Side = -1,
                Surface = FaceRow.OfBore,
                Normal = NormalsOf(in bore),
                Facets = bore.Segments,
                FirstTriangle = firstTriangle,
                TriangleCount = 2 * bore.Segments,
            }
        );
    }

    public int NumberOf(Surface surface)
    {
        var number = surfaces.IndexOf(surface);
        if (number < 0)
        {
            number = surfaces.Count;
            surfaces.Add(surface);
        }

        return number;
    }

    public FaceList ToList(IReadOnlyList<Cut> cuts) =>
        new(Rows.Span.ToArray(), normals.Span.ToArray(), surfaces.Count == 1 ? OnlyFlat : [.. surfaces], cuts, count);

    private int NormalsOf(in LoneBore bore)
    {
        var frame = bore.Bore.Frame;
        if (
            knownNormals >= 0
            && known.Round == bore.Round
            && known.Bore.Frame.U == frame.U
            && known.Bore.Frame.V == frame.V
        )
        {
            return knownNormals;
        }

        (known, knownNormals) = (bore, normals.Count);
        var corners = bore.Round.Corners;
        for (var i = 0; i < corners.Length; i++)
        {
            // Into the hole: against the middle of the side.
            var (a, b) = (corners[i], corners[i + 1 == corners.Length ? 0 : i + 1]);
            var (x, y) = ((b.Y - a.Y) / bore.Round.Side, (a.X - b.X) / bore.Round.Side);
            normals.Add((frame.U * -x) - (frame.V * y));
        }

        return knownNormals;
    }
}
