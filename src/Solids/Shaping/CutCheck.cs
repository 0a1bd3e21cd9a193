namespace Dryfit.Solids.Shaping;

/// <summary>Refuses cuts that are no shapes at all.</summary>
internal static class CutCheck
{
    /// <exception cref="ArgumentException">A number is not finite, or a frame is not one of unit directions square to each
    /// other.</exception>
    public static void Check(IReadOnlyList<Cut> cuts, double reach)
    {
        for (var i = 0; i < cuts.Count; i++)
        {
            var frame = cuts[i] switch
            {
                BoreCut bore => bore.Frame,
                PrismCut prism => prism.Frame,
                _ => Frame.Identity,
            };
            if (!double.IsFinite(reach) || !IsSquare(in frame))
            {
                throw new ArgumentException(
                    $"Cut {i} has a number that is not finite, or directions that are not of unit length and square to each other.",
                    nameof(cuts)
                );
            }
        }
    }

    /// <exception cref="ArgumentException">The outline of a prism crosses itself.</exception>
    public static void CheckOutlines(IReadOnlyList<Cut> cuts)
    {
        for (var i = 0; i < cuts.Count; i++)
        {
            if (cuts[i] is PrismCut { Outline.Count: > 3 } prism)
            {
                Outline.RefuseCrossing(Outline.Tidy(prism.Outline));
            }
        }
    }

    private static bool IsSquare(in Frame f) =>
        Math.Abs(Vec3.Dot(f.U, f.U) - 1) < 1e-6
        && Math.Abs(Vec3.Dot(f.V, f.V) - 1) < 1e-6
        && Math.Abs(Vec3.Dot(f.W, f.W) - 1) < 1e-6
        && Math.Abs(Vec3.Dot(f.U, f.V)) < 1e-6
        && Math.Abs(Vec3.Dot(f.V, f.W)) < 1e-6
        && Math.Abs(Vec3.Dot(f.W, f.U)) < 1e-6;
}
