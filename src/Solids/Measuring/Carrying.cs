namespace Dryfit.Solids.Measuring;

/// <summary>Where a place carries boxes.</summary>
internal static class Carrying
{
    /// <summary>The box around a box carried by a frame; exact where the frame only swaps axes.</summary>
    public static Box Carried(this Box box, in Frame frame)
    {
        var (min, max) = (frame.Origin, frame.Origin);
        Add(ref min, ref max, frame.U * box.Min.X, frame.U * box.Max.X);
        Add(ref min, ref max, frame.V * box.Min.Y, frame.V * box.Max.Y);
        Add(ref min, ref max, frame.W * box.Min.Z, frame.W * box.Max.Z);
        return new(min, max);
    }

    /// <summary>The box around a box of the world, in board coordinates.</summary>
    public static Box CarriedBack(this Box box, in Frame frame)
    {
        var (o, u, v, w) = (frame.Origin, frame.U, frame.V, frame.W);
        var back = new Frame(
            new(-Vec3.Dot(o, u), -Vec3.Dot(o, v), -Vec3.Dot(o, w)),
            new(u.X, v.X, w.X),
            new(u.Y, v.Y, w.Y),
            new(u.Z, v.Z, w.Z)
        );
        return box.Carried(in back);
    }

    private static void Add(ref Vec3 min, ref Vec3 max, Vec3 a, Vec3 b)
    {
        min += Vec3Order.Least(a, b);
        max += Vec3Order.Most(a, b);
    }
}
