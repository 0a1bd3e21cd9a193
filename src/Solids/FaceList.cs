using System.Collections;
using Dryfit.Solids.Shaping;

namespace Dryfit.Solids;

/// <summary>A face as it is kept, or all facets of a lone bore, two triangles each: surface and normal are numbers, and the record is
/// made when it is asked for.</summary>
internal struct FaceRow
{
    /// <summary>The surface of a lone bore, which its cut tells.</summary>
    public const int OfBore = -1;

    public int Cut;
    public int Side;
    public int Surface;

    /// <summary>The normal; facets have one after the other.</summary>
    public int Normal;
    public int Facets;
    public int FirstTriangle;

    /// <summary>Of all facets together.</summary>
    public int TriangleCount;
}

/// <summary>The faces of a solid.</summary>
internal sealed class FaceList(FaceRow[] rows, Vec3[] normals, Surface[] surfaces, IReadOnlyList<Cut> cuts, int count)
    : IReadOnlyList<Face>
{
    private Face[]? made;

    public int Count => count;

    public ReadOnlySpan<FaceRow> Rows => rows;

    public Face this[int index] => (made ??= Make())[index];

    public IEnumerator<Face> GetEnumerator() => ((IEnumerable<Face>)(made ??= Make())).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private Face[] Make()
    {
        var faces = new Face[count];
        var at = 0;
        foreach (ref var row in rows.AsSpan())
        {
            var surface = row.Surface == FaceRow.OfBore ? ((BoreCut)cuts[row.Cut]).Wall() : surfaces[row.Surface];
            var each = row.TriangleCount / row.Facets;
            for (var i = 0; i < row.Facets; i++)
            {
                faces[at++] = new(
                    row.Cut,
                    surface,
                    normals[row.Normal + i],
                    row.FirstTriangle + (i * each),
                    each,
                    row.Side
                );
            }
        }

        return faces;
    }
}
