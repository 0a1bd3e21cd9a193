namespace Dryfit.Solids.Shaping;

/// <summary>What all bores of one number of corners share: the corners on the unit circle and the triangles of the disc.</summary>
internal sealed class RoundTable
{
    private static readonly RoundTable?[] Known = new RoundTable?[129];

    private RoundTable(int segments)
    {
        Corners = new BoreCut(Frame.Identity, 1, 1, segments).Corners();
        var disc = new List<int>(3 * segments);
        var (a, b) = (segments / 3, 2 * segments / 3);
        disc.AddRange([0, a, b]);
        Fill(disc, 0, a, segments);
        Fill(disc, a, b, segments);
        Fill(disc, b, segments, segments);
        Disc = [.. disc];
        var side = Corners[1];
        Side = Math.Sqrt(((side.X - 1) * (side.X - 1)) + (side.Y * side.Y));
        Area = segments * side.Y / 2;
        Inertia = Area * (6 - (Side * Side)) / 24;
    }

    public Vec2[] Corners { get; }

    /// <summary>Three corners a triangle, counter-clockwise: halved again and again, so that none is thin.</summary>
    public int[] Disc { get; }

    /// <summary>Length of a side, area and second moment about a diameter, for radius 1.</summary>
    public double Side { get; }

    public double Area { get; }

    public double Inertia { get; }

    public static RoundTable Of(int segments) =>
        segments >= Known.Length ? new(segments) : Known[segments] ??= new(segments);

    private static void Fill(List<int> disc, int from, int to, int count)
    {
        if (to - from < 2)
        {
            return;
        }

        var middle = (from + to) / 2;
        disc.AddRange([from, middle, to % count]);
        Fill(disc, from, middle, count);
        Fill(disc, middle, to, count);
    }
}
