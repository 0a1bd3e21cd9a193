namespace Dryfit.Solids.Measuring;

/// <summary>A run of triangles with the box around it, in board coordinates: one flat, or the whole wall of a bore.</summary>
internal readonly record struct FacePatch(int FirstTriangle, int TriangleCount, Box Box);

/// <summary>Parts a solid into patches: few enough to look through all of them, small enough for their boxes to tell.</summary>
internal static class FacePatches
{
    public static FacePatch[] Of(Solid solid)
    {
        var patches = new List<FacePatch>();
        if (solid.Faces is FaceList kept)
        {
            AddWalls(solid, kept.Rows, patches);
        }
        else
        {
            foreach (var face in solid.Faces)
            {
                Add(solid, face.FirstTriangle, face.TriangleCount, patches);
            }
        }

        return [.. patches];
    }

    public static Vec3[] CornerArray(this Solid solid) => solid.Vertices as Vec3[] ?? [.. solid.Vertices];

    public static int[] TriangleArray(this Solid solid) => solid.Triangles as int[] ?? [.. solid.Triangles];

    // Neighbouring facets of one round are one patch; surface 0 is the flat, and a lone bore has all its facets in one row.
    private static void AddWalls(Solid solid, ReadOnlySpan<FaceRow> rows, List<FacePatch> patches)
    {
        for (var f = 0; f < rows.Length; )
        {
            ref readonly var first = ref rows[f];
            var count = first.TriangleCount;
            for (f++; f < rows.Length && first.Surface > 0 && rows[f].Surface == first.Surface; f++)
            {
                count += rows[f].TriangleCount;
            }

            Add(solid, first.FirstTriangle, count, patches);
        }
    }

    private static void Add(Solid solid, int first, int count, List<FacePatch> patches)
    {
        var vertices = solid.CornerArray();
        var corners = solid.TriangleArray().AsSpan(3 * first, 3 * count);
        var (min, max) = (vertices[corners[0]], vertices[corners[0]]);
        foreach (var corner in corners)
        {
            ref var p = ref vertices[corner];
            (min, max) = (Vec3Order.Least(min, p), Vec3Order.Most(max, p));
        }

        patches.Add(new(first, count, new(min, max)));
    }
}
