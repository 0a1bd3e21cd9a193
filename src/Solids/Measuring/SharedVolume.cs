using Dryfit.Solids.Shaping;

namespace Dryfit.Solids.Measuring;

/// <summary>What two placed solids share, exactly.</summary>
internal static class SharedVolume
{
    public static Overlap? Measure(Placed a, Placed b)
    {
        var cells = default(CellList);
        if (AreFar(a, b))
        {
            return null;
        }

        if (SquareRoom.TryPart(a, b, ref cells))
        {
            return cells.Count == 0 ? null : new(cells.Volume, Depth(a, b, in cells), cells.Bounds);
        }

        return Shaped(a, b) is { } common ? new(common.Volume, Depth(a, b, common), common.Bounds) : null;
    }

    /// <summary>The solid that both fill, in world coordinates; null where there is none.</summary>
    public static Solid? Common(Placed a, Placed b)
    {
        var cells = default(CellList);
        return AreFar(a, b) || (SquareRoom.TryPart(a, b, ref cells) && cells.Count == 0) ? null : Shaped(a, b);
    }

    private static Solid? Shaped(Placed a, Placed b)
    {
        var common = Workshop.Mine.Common(a, b);
        return common.Faces.Count == 0 ? null : common;
    }

    // How much both fill.
    private static double Volume(Placed a, Placed b) => QuickVolume(a, b) ?? Shaped(a, b)?.Volume ?? 0;

    // The same where it comes without shaping a solid, else null.
    private static double? QuickVolume(Placed a, Placed b)
    {
        var cells = default(CellList);
        return AreFar(a, b) ? 0
            : SquareRoom.TryPart(a, b, ref cells) ? cells.Volume
            : null;
    }

    private static Placed Moved(Placed placed, Vec3 way) =>
        placed with
        {
            Frame = placed.Frame with { Origin = placed.Frame.Origin + way },
        };

    private static bool AreFar(Placed a, Placed b) =>
        a.Solid.PieceCount == 0
        || b.Solid.PieceCount == 0
        || AreApart(a.Solid.Bounds.Carried(a.Frame), b.Solid.Bounds.Carried(b.Frame));

    private static bool AreApart(Box a, Box b) =>
        a.Max.X <= b.Min.X
        || b.Max.X <= a.Min.X
        || a.Max.Y <= b.Min.Y
        || b.Max.Y <= a.Min.Y
        || a.Max.Z <= b.Min.Z
        || b.Max.Z <= a.Min.Z;

    // Boards along the axes have three ways out and back.
    private static double Depth(Placed a, Placed b, in CellList cells)
    {
        var lump = cells.LongestLump();
        return LeastWay(a, b, cells.Volume, [(lump.X, new(1, 0, 0)), (lump.Y, new(0, 1, 0)), (lump.Z, new(0, 0, 1))]);
    }

    private static double Depth(Placed a, Placed b, Solid common)
    {
        var ways = new List<(double Length, Vec3 Direction)>();
        foreach (
            var direction in (ReadOnlySpan<Vec3>)[a.Frame.U, a.Frame.V, a.Frame.W, b.Frame.U, b.Frame.V, b.Frame.W]
        )
        {
            if (!ways.Exists(way => Math.Abs(Vec3.Dot(way.Direction, direction)) > 1 - 1e-12))
            {
                ways.Add((ThickestLump(common, direction), direction));
            }
        }

        return LeastWay(a, b, common.Volume, ways);
    }

    // Each axis of either board offers a way out, and one back, as long as the thickest lump that they share; the shortest way
    // that really parts them counts. Where none does (each way runs into something else) the thinnest lump is the measure.
    private static double LeastWay(Placed a, Placed b, double volume, List<(double Length, Vec3 Direction)> ways)
    {
        ways.Sort((x, y) => x.Length.CompareTo(y.Length));
        foreach (var (length, direction) in ways)
        {
            var (ahead, back) = (Moved(a, direction * length), Moved(a, direction * -length));
            var most = volume * 1e-9;
            if (
                QuickVolume(ahead, b) < most
                || QuickVolume(back, b) < most
                || Volume(ahead, b) < most
                || Volume(back, b) < most
            )
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
