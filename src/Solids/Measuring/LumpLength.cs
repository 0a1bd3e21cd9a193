namespace Dryfit.Solids.Measuring;

/// <summary>How long the longest lump of a solid is along a direction.</summary>
/// <param name="Length">Grid units.</param>
/// <param name="IsExact">Whether a straight line of that length lies within the lump; else the longest line is shorter.</param>
internal readonly record struct LumpLength(double Length, bool IsExact)
{
    public static LumpLength Along(Solid solid, Vec3 direction)
    {
        var (vertices, triangles) = (solid.Vertices, solid.Triangles);
        var lump = new int[vertices.Count];
        var along = new double[lump.Length];
        for (var i = 0; i < lump.Length; i++)
        {
            lump[i] = i;
            along[i] = Vec3.Dot(vertices[i], direction);
        }

        // An edge along the direction is a line within.
        var edge = 0.0;
        for (var i = 0; i < triangles.Count; i++)
        {
            var (from, to) = (triangles[i], triangles[i % 3 == 2 ? i - 2 : i + 1]);
            var (x, y) = (Root(lump, from), Root(lump, to));
            lump[Math.Max(x, y)] = Math.Min(x, y);
            var length = along[to] - along[from];
            var aside = vertices[to] - vertices[from] - (direction * length);
            if (length > edge && Vec3.Dot(aside, aside) <= 1e-24 * length * length)
            {
                edge = length;
            }
        }

        var low = new double[lump.Length];
        var high = new double[lump.Length];
        Array.Fill(low, double.PositiveInfinity);
        Array.Fill(high, double.NegativeInfinity);
        var longest = 0.0;
        for (var i = 0; i < lump.Length; i++)
        {
            var root = Root(lump, i);
            low[root] = Math.Min(low[root], along[i]);
            high[root] = Math.Max(high[root], along[i]);
            longest = Math.Max(longest, high[root] - low[root]);
        }

        return new(longest, edge >= longest * (1 - 1e-12));
    }

    private static int Root(int[] lump, int i)
    {
        while (lump[i] != i)
        {
            lump[i] = lump[lump[i]];
            i = lump[i];
        }

        return i;
    }
}
