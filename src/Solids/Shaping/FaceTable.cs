using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>The faces of the solid that is being written.</summary>
internal sealed class FaceTable
{
    private readonly Store<Vec3> normals = new();
    private readonly List<Surface> surfaces = [];
    private LoneBore known;
    private int knownNormals;

    public Store<FaceRow> Rows { get; } = new();

    public void Clear()
    {
        Rows.Clear();
        normals.Clear();
        surfaces.Clear();
        surfaces.Add(PlaneSurface.Instance);
        knownNormals = -1;
    }

    /// <summary>Adds a face of its own normal; surface 0 is the flat.</summary>
    public void Add(int cut, int side, int surface, Vec3 normal, int firstTriangle, int triangleCount) =>
        Rows.Add(
            new()
            {
                Cut = cut,
                Side = side,
                Surface = surface,
                Normal = normals.Add(normal),
                FirstTriangle = firstTriangle,
                TriangleCount = triangleCount,
            }
        );

    /// <summary>Adds the walls of a lone bore, two triangles each; bores that look alike share their normals.</summary>
    public void AddWalls(in LoneBore bore, int firstTriangle)
    {
        var frame = bore.Bore.Frame;
        surfaces.Add(new CylinderSurface(frame.Origin, frame.W, bore.Bore.Radius));
        var normal = NormalsOf(in bore);
        var walls = Rows.Extend(bore.Segments);
        for (var i = 0; i < walls.Length; i++)
        {
            walls[i] = new()
            {
                Cut = bore.Cut,
                Side = -1,
                Surface = surfaces.Count - 1,
                Normal = normal + i,
                FirstTriangle = firstTriangle + (2 * i),
                TriangleCount = 2,
            };
        }
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

    public FaceList ToList() => new(Rows.Span.ToArray(), normals.Span.ToArray(), [.. surfaces]);

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
