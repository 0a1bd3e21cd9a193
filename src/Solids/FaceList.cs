using System.Collections;

namespace Dryfit.Solids;

/// <summary>A face as it is kept: surface and normal are numbers; the record is made when it is asked for.</summary>
internal struct FaceRow
{
    public int Cut;
    public int Side;
    public int Surface;
    public int Normal;
    public int FirstTriangle;
    public int TriangleCount;
}

/// <summary>The faces of a solid.</summary>
internal sealed class FaceList(FaceRow[] rows, Vec3[] normals, Surface[] surfaces) : IReadOnlyList<Face>
{
    private Face?[]? made;

    public int Count => rows.Length;

    public ReadOnlySpan<FaceRow> Rows => rows;

    public Face this[int index]
    {
        get
        {
            var known = made ??= new Face?[rows.Length];
            if (known[index] is { } face)
            {
                return face;
            }

            ref var row = ref rows[index];
            return known[index] = new(
                row.Cut,
                surfaces[row.Surface],
                normals[row.Normal],
                row.FirstTriangle,
                row.TriangleCount,
                row.Side
            );
        }
    }

    public IEnumerator<Face> GetEnumerator()
    {
        for (var i = 0; i < rows.Length; i++)
        {
            yield return this[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
