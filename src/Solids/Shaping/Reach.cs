namespace Dryfit.Solids.Shaping;

/// <summary>The largest coordinate that anything reaches; all bounds on rounding are fractions of it.</summary>
internal static class Reach
{
    public static double Of(Vec3 p) => Math.Max(Math.Abs(p.X), Math.Max(Math.Abs(p.Y), Math.Abs(p.Z)));

    public static double Of(IReadOnlyList<Cut> cuts)
    {
        var reach = 0.0;
        for (var i = 0; i < cuts.Count; i++)
        {
            reach = Math.Max(reach, Of(cuts[i]));
        }

        return reach;
    }

    public static double Of(Placed placed) =>
        Of(placed.Frame.Origin) + (2 * Math.Max(Of(placed.Solid.Size), Of(placed.Solid.Cuts)));

    private static double Of(Cut cut)
    {
        switch (cut)
        {
            case BoxCut box:
                return Math.Max(Of(box.Min), Of(box.Max));
            case PrismCut prism:
                var across = 0.0;
                for (var i = 0; i < prism.Outline.Count; i++)
                {
                    across = Math.Max(across, Math.Abs(prism.Outline[i].X) + Math.Abs(prism.Outline[i].Y));
                }

                return Of(prism.Frame.Origin) + across + Math.Abs(prism.Height);
            case BoreCut bore:
                return Of(bore.Frame.Origin) + (2 * bore.Radius) + bore.Depth;
            default:
                return 0;
        }
    }
}
