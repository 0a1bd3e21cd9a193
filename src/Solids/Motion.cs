using Dryfit.Solids.Measuring;

namespace Dryfit.Solids;

/// <summary>A movement of a part from where it stands (0) to its end (1).</summary>
public abstract record Motion
{
    /// <summary>The place of the part when <paramref name="share"/> (0 to 1) of the way is done.</summary>
    public abstract Frame At(Frame start, double share);

    /// <summary>No point of a part within <paramref name="around"/> (world coordinates) moves further than this over the
    /// whole motion; grid units.</summary>
    public abstract double Reach(Box around);

    /// <summary>The box around the way of one point that moves with the part.</summary>
    internal abstract Box Around(Vec3 point);
}

/// <summary>A straight slide: a drawer. The way is a vector in world coordinates.</summary>
public sealed record Slide(Vec3 Way) : Motion
{
    public override Frame At(Frame start, double share) => start with { Origin = start.Origin + (Way * share) };

    public override double Reach(Box around) => Math.Sqrt(Vec3.Dot(Way, Way));

    internal override Box Around(Vec3 point) =>
        new(Vec3Order.Least(point, point + Way), Vec3Order.Most(point, point + Way));
}

/// <summary>A turn about an axis: a door on its hinges.</summary>
/// <param name="AxisPoint">A point of the axis, world coordinates.</param>
/// <param name="Axis">The axis' unit direction; the turn is counter-clockwise looking against it.</param>
/// <param name="Angle">Radians.</param>
public sealed record Turn(Vec3 AxisPoint, Vec3 Axis, double Angle) : Motion
{
    public override Frame At(Frame start, double share)
    {
        if (share == 0)
        {
            return start;
        }

        var (sin, cos) = Math.SinCos(Angle * share);
        return new(
            AxisPoint + Turned(start.Origin - AxisPoint, sin, cos),
            Turned(start.U, sin, cos),
            Turned(start.V, sin, cos),
            Turned(start.W, sin, cos)
        );
    }

    public override double Reach(Box around)
    {
        var furthest = 0.0;
        for (var i = 0; i < 8; i++)
        {
            var corner = new Vec3(
                (i & 1) == 0 ? around.Min.X : around.Max.X,
                (i & 2) == 0 ? around.Min.Y : around.Max.Y,
                (i & 4) == 0 ? around.Min.Z : around.Max.Z
            );
            var arm = Vec3.Cross(Axis, corner - AxisPoint);
            furthest = Math.Max(furthest, Math.Sqrt(Vec3.Dot(arm, arm)));
        }

        return furthest * Math.Abs(Angle);
    }

    // On its circle a coordinate is a constant and b cos + c sin: furthest at the angle of (b, c) and opposite.
    internal override Box Around(Vec3 point)
    {
        var arm = point - AxisPoint;
        var middle = Axis * Vec3.Dot(Axis, arm);
        var (b, c) = (arm - middle, Vec3.Cross(Axis, arm));
        var end = At(new(point, Axis, Axis, Axis), 1).Origin;
        var box = new Box(Vec3Order.Least(point, end), Vec3Order.Most(point, end));
        foreach (
            var furthest in (ReadOnlySpan<double>)[Math.Atan2(c.X, b.X), Math.Atan2(c.Y, b.Y), Math.Atan2(c.Z, b.Z)]
        )
        {
            for (var angle = furthest - (2 * Math.PI); angle <= 2 * Math.PI; angle += Math.PI)
            {
                if (angle > Math.Min(0, Angle) && angle < Math.Max(0, Angle))
                {
                    var (sin, cos) = Math.SinCos(angle);
                    var p = AxisPoint + middle + (b * cos) + (c * sin);
                    box = new(Vec3Order.Least(box.Min, p), Vec3Order.Most(box.Max, p));
                }
            }
        }

        return box;
    }

    // Rodrigues' formula.
    private Vec3 Turned(Vec3 p, double sin, double cos) =>
        (p * cos) + (Vec3.Cross(Axis, p) * sin) + (Axis * (Vec3.Dot(Axis, p) * (1 - cos)));
}
