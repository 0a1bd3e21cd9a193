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
            if (cells.Count == 0)
            {
                return null;
            }

            var away = WayOut.Least(a, b, cells);
            return new(cells.Volume, away.Depth, away.Way, cells.Bounds);
        }

        if (Shaped(a, b) is not { } common)
        {
            return null;
        }

        var (depth, way) = WayOut.Least(a, b, common);
        return new(common.Volume, depth, way, common.Bounds);
    }

    /// <summary>The solid that both fill, in world coordinates; null where there is none.</summary>
    public static Solid? Common(Placed a, Placed b)
    {
        var cells = default(CellList);
        return AreFar(a, b) || (SquareRoom.TryPart(a, b, ref cells) && cells.Count == 0) ? null : Shaped(a, b);
    }

    /// <summary>The same, always by shaping it.</summary>
    public static Solid? Shaped(Placed a, Placed b)
    {
        var common = Workshop.Mine.Common(a, b);
        return common.Faces.Count == 0 ? null : common;
    }

    /// <summary>Whether two solids share nothing, by the boxes around them.</summary>
    public static bool AreFar(Placed a, Placed b) =>
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
}
