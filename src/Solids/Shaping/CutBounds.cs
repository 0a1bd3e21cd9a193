namespace Dryfit.Solids.Shaping;

/// <summary>Boxes around cuts; never too small by more than rounding.</summary>
internal static class CutBounds
{
    public static Bounds Around(this Cut cut) =>
        cut switch
        {
            BoxCut box => Of(box.Min, box.Max),
            BoreCut bore => Of(bore),
            PrismCut prism => Of(prism),
            _ => Bounds.Empty,
        };

    public static double Min(this in Bounds bounds, int axis) =>
        axis switch
        {
            0 => bounds.MinX,
            1 => bounds.MinY,
            _ => bounds.MinZ,
        };

    public static double Max(this in Bounds bounds, int axis) =>
        axis switch
        {
            0 => bounds.MaxX,
            1 => bounds.MaxY,
            _ => bounds.MaxZ,
        };

    public static Bounds ToBounds(this Box box) => Of(box.Min, box.Max);

    private static Bounds Of(Vec3 min, Vec3 max)
    {
        var bounds = Bounds.Empty;
        bounds.Include(min);
        bounds.Include(max);
        return bounds;
    }

    // A disc of radius r across w reaches r sqrt(1 - w_k^2) along axis k.
    private static Bounds Of(BoreCut bore)
    {
        var (w, r) = (bore.Frame.W, bore.Radius);
        var bounds = Of(bore.Frame.Origin, bore.Frame.Origin + (w * bore.Depth));
        var x = r * Math.Sqrt(Math.Max(0, 1 - (w.X * w.X)));
        var y = r * Math.Sqrt(Math.Max(0, 1 - (w.Y * w.Y)));
        var z = r * Math.Sqrt(Math.Max(0, 1 - (w.Z * w.Z)));
        return new()
        {
            MinX = bounds.MinX - x,
            MinY = bounds.MinY - y,
            MinZ = bounds.MinZ - z,
            MaxX = bounds.MaxX + x,
            MaxY = bounds.MaxY + y,
            MaxZ = bounds.MaxZ + z,
        };
    }

    private static Bounds Of(PrismCut prism)
    {
        var bounds = Bounds.Empty;
        for (var i = 0; i < prism.Outline.Count; i++)
        {
            var corner = prism.Outline[i];
            bounds.Include(prism.Frame.ToWorld(new(corner.X, corner.Y, 0)));
            bounds.Include(prism.Frame.ToWorld(new(corner.X, corner.Y, prism.Height)));
        }

        return bounds;
    }
}
