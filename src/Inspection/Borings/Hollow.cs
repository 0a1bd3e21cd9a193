using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// What a drill or a slot cutter takes, or a flat of the wood that is left: something convex that knows its point nearest to
/// any other, so that the wood between two of them can be measured. Board coordinates, grid units.
/// </summary>
internal abstract class Hollow
{
    /// <summary>Rounds after which two that only creep towards each other are taken as they are.</summary>
    private const int MostRounds = 400;

    /// <summary>A box it lies in.</summary>
    public abstract Box Box { get; }

    /// <summary>The point of it that is nearest to a point; the point itself where that lies inside.</summary>
    public abstract Vec3 Nearest(Vec3 point);

    /// <summary>
    /// The least distance between two, with its ends: each is asked in turn for its point nearest to the other's last one, which
    /// leads to the nearest pair of two convex bodies (Cheney and Goldstein, Proximity maps for convex sets, 1959). Never less
    /// than the true distance; 0 or next to it where they meet.
    /// </summary>
    /// <param name="settled">A step below which the search is at its end.</param>
    public static (double Distance, Vec3 OnA, Vec3 OnB) Between(Hollow a, Hollow b, double settled)
    {
        var onA = a.Nearest(b.Box.Centre());
        var onB = b.Nearest(onA);
        for (var n = 0; n < MostRounds; n++)
        {
            var next = a.Nearest(onB);
            var step = Lines.Length(next - onA);
            onA = next;
            onB = b.Nearest(onA);
            if (step < settled)
                break;
        }
        return (Lines.Length(onB - onA), onA, onB);
    }
}

/// <summary>A round hole.</summary>
internal sealed class RoundHollow : Hollow
{
    private readonly BoreCut _bore;

    public RoundHollow(BoreCut bore)
    {
        _bore = bore;
        var (from, to) = (bore.Frame.Origin, bore.Frame.Origin + (bore.Frame.W * bore.Depth));
        var reach = new Vec3(Aside(bore.Frame.W.X), Aside(bore.Frame.W.Y), Aside(bore.Frame.W.Z));
        Box = new Box(from - reach, from + reach).Around(new(to - reach, to + reach));
    }

    public override Box Box { get; }

    public override Vec3 Nearest(Vec3 point)
    {
        var arm = point - _bore.Frame.Origin;
        var along = Vec3.Dot(arm, _bore.Frame.W);
        var across = arm - (_bore.Frame.W * along);
        var off = Lines.Length(across);
        if (off > _bore.Radius)
            across *= _bore.Radius / off;
        return _bore.Frame.Origin + (_bore.Frame.W * Math.Clamp(along, 0, _bore.Depth)) + across;
    }

    /// <summary>How far a disc across the axis reaches along a coordinate.</summary>
    private double Aside(double axis) => _bore.Radius * Math.Sqrt(Math.Max(0, 1 - (axis * axis)));
}

/// <summary>A square slot.</summary>
internal sealed class SquareHollow(Box box) : Hollow
{
    public override Box Box { get; } = box;

    public override Vec3 Nearest(Vec3 point) =>
        new(
            Math.Clamp(point.X, Box.Min.X, Box.Max.X),
            Math.Clamp(point.Y, Box.Min.Y, Box.Max.Y),
            Math.Clamp(point.Z, Box.Min.Z, Box.Max.Z)
        );
}

/// <summary>A triangle of the skin of the wood.</summary>
internal sealed class Patch(Vec3 a, Vec3 b, Vec3 c) : Hollow
{
    public override Box Box { get; } = Boxes.Of([a, b, c]);

    public override Vec3 Nearest(Vec3 point)
    {
        var normal = Vec3.Cross(b - a, c - a);
        var size = Vec3.Dot(normal, normal);
        if (size > 0)
        {
            var foot = point - (normal * (Vec3.Dot(point - a, normal) / size));
            if (Left(a, b, foot, normal) && Left(b, c, foot, normal) && Left(c, a, foot, normal))
                return foot;
        }
        var (first, second, third) = (
            Lines.Nearest(a, b, point),
            Lines.Nearest(b, c, point),
            Lines.Nearest(c, a, point)
        );
        var nearest = Lines.Length(first - point) <= Lines.Length(second - point) ? first : second;
        return Lines.Length(nearest - point) <= Lines.Length(third - point) ? nearest : third;
    }

    private static bool Left(Vec3 from, Vec3 to, Vec3 point, Vec3 normal) =>
        Vec3.Dot(Vec3.Cross(to - from, point - from), normal) >= 0;
}
