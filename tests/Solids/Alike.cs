namespace Dryfit.Solids.Tests;

/// <summary>Whether two solids are the same but for the order of corners and faces and for rounding.</summary>
internal static class Alike
{
    private static readonly Comparer<Vec3> ByPlace = Comparer<Vec3>.Create(
        (a, b) => (a.X, a.Y, a.Z).CompareTo((b.X, b.Y, b.Z))
    );

    public static void Check(Solid a, Solid b, bool withSides)
    {
        Assert.Equal(a.Volume, b.Volume, 1e-6);
        Assert.Equal(a.Area, b.Area, 1e-6);
        Assert.Equal(Rounded(a.Centroid), Rounded(b.Centroid));
        Assert.Equal(Rounded(a.Bounds.Min), Rounded(b.Bounds.Min));
        Assert.Equal(Rounded(a.Bounds.Max), Rounded(b.Bounds.Max));
        Assert.Equal(a.PieceCount, b.PieceCount);
        Assert.Equal(a.TouchesItself, b.TouchesItself);
        Assert.Equal(a.Triangles.Count, b.Triangles.Count);
        Assert.Equal(a.Vertices.Select(Rounded).Order(ByPlace), b.Vertices.Select(Rounded).Order(ByPlace));
        Assert.Equal(Faces(a, withSides), Faces(b, withSides));
    }

    // Each face by its cut, its surface, where it looks, how much it has, how many corners and where the least of them is.
    private static List<string> Faces(Solid solid, bool withSides)
    {
        var told = new List<string>();
        foreach (var face in solid.Faces)
        {
            var area = 0.0;
            var corners = new HashSet<int>();
            for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i += 3)
            {
                var (a, b, c) = (solid.Triangles[i], solid.Triangles[i + 1], solid.Triangles[i + 2]);
                corners.UnionWith([a, b, c]);
                var from = solid.Vertices[a];
                area += Vec3.Dot(Vec3.Cross(solid.Vertices[b] - from, solid.Vertices[c] - from), face.Normal);
            }

            var least = corners.Select(corner => Rounded(solid.Vertices[corner])).Order(ByPlace).First();
            var side = withSides ? face.Side : -1;
            told.Add(
                FormattableString.Invariant(
                    $"{face.Cut} {side} {face.Surface.GetType().Name} {Rounded(face.Normal)} {Rounded(area, 3)} {corners.Count} {least}"
                )
            );
        }

        told.Sort(StringComparer.Ordinal);
        return told;
    }

    private static Vec3 Rounded(Vec3 p) => new(Rounded(p.X, 6), Rounded(p.Y, 6), Rounded(p.Z, 6));

    // An odd bit is added first, so that no number of the grid lies halfway; adding nothing makes a zero of a negative one.
    private static double Rounded(double number, int decimals) =>
        Math.Round(number + (0.1234567 * Math.Pow(10, -decimals)), decimals) + 0.0;
}
