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
            // A quarter turn is count / 4 steps; in quarters of a step everything is whole.
            corners[i] = new(
                bore.Radius * Cosine(4 * i, 4 * corners.Length),
                bore.Radius * Cosine((4 * i) - corners.Length, 4 * corners.Length)
            );
        }

        return corners;
    }

    /// <summary>The true surface of its wall.</summary>
    public static CylinderSurface Wall(this BoreCut bore) => new(bore.Frame.Origin, bore.Frame.W, bore.Radius);

    // The cosine of i / count of a turn: the same to the last bit at all mirrored places, and exact where it is 0, 1/2 or 1.
    private static double Cosine(int i, int count)
    {
        i = Math.Abs(i) % count;
        if (2 * i > count)
        {
            i = count - i;
        }

        if (4 * i > count)
        {
            return -Cosine((count / 2) - i, count);
        }

        return 4 * i == count ? 0
            : 6 * i == count ? 0.5
            : 8 * i <= count ? Math.Cos(2 * Math.PI * i / count)
            : Math.Sin(2 * Math.PI * ((count / 4) - i) / count);
    }
}
