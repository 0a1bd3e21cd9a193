namespace Dryfit.Solids.Shaping;

/// <summary>The polygon that stands for a round hole.</summary>
internal static class BoreOutline
{
    /// <summary>The corners in the bore's frame, the first on U; those on the axes exactly so.</summary>
    public static Vec2[] Corners(this BoreCut bore)
    {
        if (bore.Segments < 3)
        {
            throw new ArgumentException("A bore needs three segments or more.", nameof(bore));
        }

        var corners = new Vec2[bore.Segments];
        for (var i = 0; i < corners.Length; i++)
        {
            corners[i] = new(
                bore.Radius * Cosine(i, corners.Length),
                bore.Radius * Cosine(i - (corners.Length / 4.0), corners.Length)
            );
        }

        return corners;
    }

    private static double Cosine(double i, int count)
    {
        var quarters = 4 * i / count;
        if (quarters != Math.Floor(quarters))
        {
            return Math.Cos(2 * Math.PI * i / count);
        }

        return ((int)quarters & 3) switch
        {
            0 => 1,
            2 => -1,
            _ => 0,
        };
    }
}
