using Dryfit.Solids.Shaping;

namespace Dryfit.Solids.Measuring;

/// <summary>What two placed solids share, exactly.</summary>
internal static class SharedVolume
{
    public static Overlap? Measure(Placed a, Placed b)
    {
        if (Common(a, b) is not { } common)
        {
            return null;
        }

        return new(common.Volume, Depth(a, b, common), common.Bounds);
    }

    /// <summary>The solid that both fill, in world coordinates; null where there is none.</summary>
    public static Solid? Common(Placed a, Placed b)
    {
        if (
            a.Solid.PieceCount == 0
            || b.Solid.PieceCount == 0
            || AreApart(a.Solid.Bounds.Carried(a.Frame), b.Solid.Bounds.Carried(b.Frame))
            || SquareTest.ShareNothing(a, b)
        )
        {
            return null;
        }

        var common = Workshop.Mine.Common(a, b);
        return common.Faces.Count == 0 ? null : common;
    }

    private static bool AreApart(Box a, Box b) =>
        a.Max.X <= b.Min.X
        || b.Max.X <= a.Min.X
        || a.Max.Y <= b.Min.Y
        || b.Max.Y <= a.Min.Y
        || a.Max.Z <= b.Min.Z
        || b.Max.Z <= a.Min.Z;

    // Each axis of either board offers a way out as long as the thickest lump that they share; the shortest way that really
    // parts them counts. Where none does (each way runs into something else) the thinnest lump is the measure.
    private static double Depth(Placed a, Placed b, Solid common)
    {
        var ways = new List<(double Length, Vec3 Direction)>();
        foreach (
            var direction in (ReadOnlySpan<Vec3>)[a.Frame.U, a.Frame.V, a.Frame.W, b.Frame.U, b.Frame.V, b.Frame.W]
        )
        {
            var length = ThickestLump(common, direction);
            if (!ways.Exists(way => Math.Abs(Vec3.Dot(way.Direction, direction)) > 1 - 1e-12))
            {
                ways.Add((length, direction));
                ways.Add((length, direction * -1));
            }
        }

        ways.Sort((x, y) => x.Length.CompareTo(y.Length));
        foreach (var (length, direction) in ways)
        {
            var moved = a with { Frame = a.Frame with { Origin = a.Frame.Origin + (direction * length) } };
            if (Common(moved, b) is not { } rest || rest.Volume < common.Volume * 1e-9)
            {
                return length;
            }
        }

        return ways[0].Length;
    }

    private static double ThickestLump(Solid solid, Vec3 direction)
    {
        var lump = new int[solid.Vertices.Count];
        for (var i = 0; i < lump.Length; i++)
        {
            lump[i] = i;
        }

        for (var i = 0; i < solid.Triangles.Count; i++)
        {
            var (x, y) = (Root(lump, solid.Triangles[i]), Root(lump, solid.Triangles[i - (i % 3)]));
            lump[Math.Max(x, y)] = Math.Min(x, y);
        }

        var low = new double[lump.Length];
        var high = new double[lump.Length];
        Array.Fill(low, double.PositiveInfinity);
        Array.Fill(high, double.NegativeInfinity);
        var thickest = 0.0;
        for (var i = 0; i < lump.Length; i++)
        {
            var root = Root(lump, i);
            var along = Vec3.Dot(solid.Vertices[i], direction);
            low[root] = Math.Min(low[root], along);
            high[root] = Math.Max(high[root], along);
            thickest = Math.Max(thickest, high[root] - low[root]);
        }

        return thickest;
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
