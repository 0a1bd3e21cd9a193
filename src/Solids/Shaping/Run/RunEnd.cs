namespace Dryfit.Solids.Shaping.Run;

/// <summary>
/// One end of a board whose cuts run along it: the end of the blank, or the one wall of a cut that takes that end off, square or
/// at a slant. Along the axis it lies at a place that depends on one of the two other coordinates.
/// </summary>
internal readonly struct RunEnd
{
    private readonly Vec2 from;
    private readonly Vec2 to;
    private readonly double blankEnd;

    private RunEnd(int axis, double end)
    {
        blankEnd = end;
        Cut = -1;
        Side = -1;
        Slope = (axis + 1) % 3;
    }

    private RunEnd(AxialPrism cut, int edge, int axis, double end)
    {
        blankEnd = end;
        Cut = cut.Cut;
        Side = cut.SideOf(edge);
        Slope = 3 - axis - cut.Axis;
        var (a, b) = (cut.Corners[edge], cut.Corners[(edge + 1) % cut.Corners.Count]);
        (from, to) = (cut.Axis + 1) % 3 == axis ? (a, b) : (new(a.Y, a.X), new(b.Y, b.X));
    }

    /// <summary>The cut that made it; -1 for the blank.</summary>
    public int Cut { get; }

    /// <summary>The side of the cut's profile; -1 where there is none.</summary>
    public int Side { get; }

    /// <summary>The coordinate on which its place depends.</summary>
    public int Slope { get; }

    public static RunEnd Blank(int axis, double at) => new(axis, at);

    /// <summary>
    /// Whether a cut across the axis takes all of one end of the blank and nothing of the other one: all but one of its walls
    /// have the blank wholly on their inner side. Exact.
    /// </summary>
    /// <param name="cut">The cut.</param>
    /// <param name="size">The blank.</param>
    /// <param name="axis">Which axis has the ends.</param>
    /// <param name="isHigh">Which end it takes.</param>
    /// <param name="end">What it leaves there.</param>
    public static bool TryTake(AxialPrism cut, Vec3 size, int axis, out bool isHigh, out RunEnd end)
    {
        isHigh = false;
        end = default;
        if (cut.Axis == axis || cut.Low > 0 || cut.High < size.At(cut.Axis))
        {
            return false;
        }

        var (p, q) = (size.At((cut.Axis + 1) % 3), size.At((cut.Axis + 2) % 3));
        ReadOnlySpan<Vec2> blank = [new(0, 0), new(p, 0), new(p, q), new(0, q)];
        var isFirst = (cut.Axis + 1) % 3 == axis;
        var wall = -1;
        for (var i = 0; i < cut.Corners.Count; i++)
        {
            var (a, b) = (cut.Corners[i], cut.Corners[(i + 1) % cut.Corners.Count]);
            if (Outline.Turn(a, b, cut.Corners[(i + 2) % cut.Corners.Count]) <= 0)
            {
                return false;
            }

            // The corners of the blank beyond the wall, a bit each.
            var beyond = 0;
            for (var k = 0; k < 4; k++)
            {
                beyond |= Outline.Turn(a, b, blank[k]) < 0 ? 1 << k : 0;
            }

            if (beyond == 0)
            {
                continue;
            }

            var (lows, highs) = isFirst ? (0b1001, 0b0110) : (0b0011, 0b1100);
            if (wall >= 0 || (beyond != lows && beyond != highs))
            {
                return false;
            }

            wall = i;
            isHigh = beyond == lows;
        }

        if (wall >= 0)
        {
            end = new(cut, wall, axis, isHigh ? size.At(axis) : 0);
        }

        return wall >= 0;
    }

    /// <summary>Where along the axis it lies, for a value of <see cref="Slope"/>; never past the blank.</summary>
    public double At(double value)
    {
        if (Cut < 0)
        {
            return blankEnd;
        }

        var place = from.X + ((to.X - from.X) * ((value - from.Y) / (to.Y - from.Y)));
        return blankEnd == 0 ? Math.Max(place, 0) : Math.Min(place, blankEnd);
    }

    /// <summary>The unit normal out of the board.</summary>
    public Vec3 Normal(int axis, bool isHigh)
    {
        var (along, across) = (1.0, 0.0);
        if (Cut >= 0)
        {
            (along, across) = (to.Y - from.Y, from.X - to.X);
            var length = Math.Sqrt((along * along) + (across * across));
            (along, across) = (along / length, across / length);
        }

        var sign = along > 0 == isHigh ? 1 : -1;
        return Unit(axis) * (sign * along) + Unit(Slope) * (sign * across);
    }

    private static Vec3 Unit(int axis) => new(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
}
