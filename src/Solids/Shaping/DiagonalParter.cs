using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Where the solid touches itself, a diagonal within a face may run between the same two corners as an edge elsewhere. Such a
/// diagonal gets a corner in its middle, so that each edge of the mesh has two faces.
/// </summary>
internal static class DiagonalParter
{
    public static void Part(Store<int> triangles, Store<FaceRow> faces, ref Vec3[] vertices)
    {
        var seen = new Dictionary<(int From, int To), int>();
        for (var i = 0; i < triangles.Count; i++)
        {
            var side = (triangles[i], triangles[i % 3 == 2 ? i - 2 : i + 1]);
            seen[side] = seen.GetValueOrDefault(side) + 1;
        }

        var middles = new Dictionary<(int Face, int From, int To), int>();
        var added = new List<Vec3>(vertices);
        for (var f = 0; f < faces.Count; f++)
        {
            var inFace = SidesOf(triangles, faces[f]);
            foreach (var (from, to) in inFace)
            {
                // Only a diagonal has both its ways within one face.
                if (seen[(from, to)] > 1 && inFace.Contains((to, from)) && !middles.ContainsKey((f, from, to)))
                {
                    middles[(f, from, to)] = added.Count;
                    middles[(f, to, from)] = added.Count;
                    added.Add((vertices[from] + vertices[to]) * 0.5);
                }
            }
        }

        if (middles.Count > 0)
        {
            Rewrite(triangles, faces, middles);
            vertices = [.. added];
        }
    }

    private static List<(int From, int To)> SidesOf(Store<int> triangles, FaceRow face)
    {
        var sides = new List<(int From, int To)>();
        for (var t = face.FirstTriangle; t < face.FirstTriangle + face.TriangleCount; t++)
        {
            for (var i = 0; i < 3; i++)
            {
                sides.Add((triangles[(3 * t) + i], triangles[(3 * t) + ((i + 1) % 3)]));
            }
        }

        return sides;
    }

    private static void Rewrite(
        Store<int> triangles,
        Store<FaceRow> faces,
        Dictionary<(int Face, int From, int To), int> middles
    )
    {
        var old = triangles.Span.ToArray();
        triangles.Clear();
        for (var f = 0; f < faces.Count; f++)
        {
            var first = triangles.Count / 3;
            for (var t = faces[f].FirstTriangle; t < faces[f].FirstTriangle + faces[f].TriangleCount; t++)
            {
                Add(triangles, f, old[3 * t], old[(3 * t) + 1], old[(3 * t) + 2], middles);
            }

            faces[f].FirstTriangle = first;
            faces[f].TriangleCount = (triangles.Count / 3) - first;
        }
    }

    private static void Add(
        Store<int> triangles,
        int face,
        int a,
        int b,
        int c,
        Dictionary<(int Face, int From, int To), int> middles
    )
    {
        for (var i = 0; i < 3; i++)
        {
            if (middles.TryGetValue((face, a, b), out var middle))
            {
                Add(triangles, face, a, middle, c, middles);
                Add(triangles, face, middle, b, c, middles);
                return;
            }

            (a, b, c) = (b, c, a);
        }

        triangles.Add(a);
        triangles.Add(b);
        triangles.Add(c);
    }
}
