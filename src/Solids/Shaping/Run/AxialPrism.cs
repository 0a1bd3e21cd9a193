namespace Dryfit.Solids.Shaping.Run;

/// <summary>A cut along one of the board's axes: its outline, tidy, in the next two axes in turn, and how far it goes.</summary>
internal sealed class AxialPrism
{
    private AxialPrism(int cut, int axis, List<Vec2> corners, double low, double high)
    {
        Cut = cut;
        Axis = axis;
        Corners = corners;
        (Low, High) = (low, high);
    }

    public int Cut { get; }

    public int Axis { get; }

    /// <summary>Counter-clockwise.</summary>
    public List<Vec2> Corners { get; }

    public double Low { get; }

    public double High { get; }

    private PrismCut? Prism { get; init; }

    private bool IsTurned { get; init; }

    /// <summary>Null for a cut that is not along an axis, or whose sides cannot be told from its corners.</summary>
    /// <param name="cut">A box is taken along <paramref name="boxAxis"/>.</param>
    /// <param name="index">Its number.</param>
    /// <param name="boxAxis">The axis for a box.</param>
    public static AxialPrism? Read(Cut cut, int index, int boxAxis) =>
        cut switch
        {
            BoxCut box => Read(box, index, boxAxis),
            PrismCut prism when BodyTable.IsAxial(prism.Frame) => Read(prism, index),
            _ => null,
        };

    /// <summary>The side of the cut's profile that the edge from a corner to the next one belongs to; -1 for a box.</summary>
    public int SideOf(int corner)
    {
        if (Prism is null)
        {
            return -1;
        }

        var count = Corners.Count;
        return Prism.Outline.SideOf(IsTurned ? ((2 * count) - 2 - corner) % count : corner);
    }

    /// <summary>The true surface along that edge; null where it is flat.</summary>
    public Surface? SurfaceOf(int side) => Prism is null || side < 0 ? null : Walls.SurfaceOf(Prism, side);

    public Bounds Around()
    {
        var bounds = Bounds.Empty;
        foreach (var corner in Corners)
        {
            bounds.Include(new(corner.X, corner.Y, Low));
            bounds.Include(new(corner.X, corner.Y, High));
        }

        return bounds;
    }

    private static AxialPrism? Read(BoxCut box, int index, int axis)
    {
        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        var (low, high) = (new Vec2(box.Min.At(u), box.Min.At(v)), new Vec2(box.Max.At(u), box.Max.At(v)));
        return low.X < high.X && low.Y < high.Y
            ? new(index, axis, [low, new(high.X, low.Y), high, new(low.X, high.Y)], box.Min.At(axis), box.Max.At(axis))
            : null;
    }

    private static AxialPrism? Read(PrismCut prism, int index)
    {
        var frame = prism.Frame;
        var axis =
            frame.W.X != 0 ? 0
            : frame.W.Y != 0 ? 1
            : 2;
        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        var given = new Vec2[prism.Outline.Count];
        for (var i = 0; i < given.Length; i++)
        {
            var p = frame.ToWorld(new(prism.Outline[i].X, prism.Outline[i].Y, 0));
            given[i] = new(p.At(u), p.At(v));
        }

        // Where needless corners were dropped, edges and sides no longer go together.
        var corners = Outline.Tidy(given);
        if (corners.Count != given.Length)
        {
            return null;
        }

        var (a, b) = (frame.Origin.At(axis), frame.ToWorld(new(0, 0, prism.Height)).At(axis));
        return new(index, axis, corners, Math.Min(a, b), Math.Max(a, b))
        {
            Prism = prism,
            IsTurned = corners[0] != given[0],
        };
    }
}
