namespace Dryfit.Solids.Tests;

/// <summary>What every solid must be: closed, each edge between two faces that go opposite ways along it, no triangle without
/// area, faces that tile the triangles and look where they say.</summary>
internal static class Sound
{
    public static Solid Checked(this Solid solid, bool mayHaveSlivers = false)
    {
        var ways = new Dictionary<(int, int), int>();
        for (var i = 0; i < solid.Triangles.Count; i += 3)
        {
            for (var j = 0; j < 3; j++)
            {
                var way = (solid.Triangles[i + j], solid.Triangles[i + ((j + 1) % 3)]);
                Assert.True(ways.TryAdd(way, i), $"edge {way} is there twice");
            }
        }

        foreach (var (from, to) in ways.Keys)
        {
            Assert.True(ways.ContainsKey((to, from)), $"edge {from}-{to} has one face only");
        }

        var next = 0;
        foreach (var face in solid.Faces)
        {
            Assert.Equal(next, face.FirstTriangle);
            next += face.TriangleCount;
            Assert.Equal(1, Vec3.Dot(face.Normal, face.Normal), 1e-12);
            for (var t = face.FirstTriangle; t < next; t++)
            {
                // A tilted cut may leave a sliver thinner than the rounding of its corners.
                var across = Across(solid, t);
                var least = mayHaveSlivers ? -1e-9 * Reach(solid) * Reach(solid) : 0;
                Assert.True(Vec3.Dot(across, face.Normal) > least, $"triangle {t} has no area or looks inwards");
            }
        }

        Assert.Equal(solid.Triangles.Count / 3, next);
        Assert.Equal(solid.Faces.Count == 0, solid.PieceCount == 0);
        return solid;
    }

    /// <summary>Holds two solids to be alike in all that is counted, and in volume and surface.</summary>
    public static void AssertSame(this Solid a, Solid b)
    {
        Assert.Equal(a.Volume, b.Volume, 1e-6);
        Assert.Equal(a.Area, b.Area, 1e-6);
        Assert.Equal(a.PieceCount, b.PieceCount);
        Assert.Equal(a.TouchesItself, b.TouchesItself);
        Assert.Equal(a.Faces.Count, b.Faces.Count);
        Assert.Equal(a.Euler(), b.Euler());

        // Where a solid touches itself a diagonal that runs along an edge elsewhere is parted; of two as good as each other
        // only one may.
        if (!a.TouchesItself)
        {
            Assert.Equal(a.Vertices.Count, b.Vertices.Count);
        }
    }

    /// <summary>Corners less sides plus triangles: 2 for each closed surface without a tunnel, 2 less for each tunnel.</summary>
    public static int Euler(this Solid solid) =>
        solid.Vertices.Count - (solid.Triangles.Count / 2) + (solid.Triangles.Count / 3);

    /// <summary>How many closed surfaces the mesh falls into: pieces and hollows.</summary>
    public static int Shells(this Solid solid)
    {
        var root = Enumerable.Range(0, solid.Vertices.Count).ToArray();
        for (var i = 0; i < solid.Triangles.Count; i++)
        {
            root[Root(solid.Triangles[i])] = Root(solid.Triangles[i - (i % 3)]);
        }

        return solid.Triangles.Select(Root).Distinct().Count();

        int Root(int corner)
        {
            while (root[corner] != corner)
            {
                corner = root[corner] = root[root[corner]];
            }

            return corner;
        }
    }

    private static double Reach(Solid solid) => Vec3.Dot(solid.Bounds.Max, new(1, 1, 1));

    private static Vec3 Across(Solid solid, int triangle)
    {
        var a = solid.Vertices[solid.Triangles[3 * triangle]];
        var b = solid.Vertices[solid.Triangles[(3 * triangle) + 1]];
        var c = solid.Vertices[solid.Triangles[(3 * triangle) + 2]];
        return Vec3.Cross(b - a, c - a);
    }
}
