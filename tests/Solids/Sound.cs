namespace Dryfit.Solids.Tests;

/// <summary>What every solid must be: closed, each edge between two faces that go opposite ways along it, no triangle without
/// area, faces that tile the triangles and look where they say.</summary>
internal static class Sound
{
    public static Solid Checked(this Solid solid)
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
                Assert.True(Vec3.Dot(Across(solid, t), face.Normal) > 0, $"triangle {t} has no area or looks inwards");
            }
        }

        Assert.Equal(solid.Triangles.Count / 3, next);
        Assert.Equal(solid.Faces.Count == 0, solid.PieceCount == 0);
        return solid;
    }

    /// <summary>Corners less sides plus triangles: 2 for each closed surface without a tunnel, 2 less for each tunnel.</summary>
    public static int Euler(this Solid solid) =>
        solid.Vertices.Count - (solid.Triangles.Count / 2) + (solid.Triangles.Count / 3);

    private static Vec3 Across(Solid solid, int triangle)
    {
        var a = solid.Vertices[solid.Triangles[3 * triangle]];
        var b = solid.Vertices[solid.Triangles[(3 * triangle) + 1]];
        var c = solid.Vertices[solid.Triangles[(3 * triangle) + 2]];
        return Vec3.Cross(b - a, c - a);
    }
}
