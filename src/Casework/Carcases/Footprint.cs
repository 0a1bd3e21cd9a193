using Dryfit.Casework.Building;
using Dryfit.Solids;

namespace Dryfit.Casework.Carcases;

/// <summary>Where a part stands in plan, turned as it is: four corners, millimetres of the piece.</summary>
internal readonly record struct Footprint(Vec3 A, Vec3 B, Vec3 C, Vec3 D)
{
    /// <summary>Less shared than this is a touch along an edge; doubles are good to far less.</summary>
    private const double LeastMm = 0.01;

    public static Footprint Of(PartDraft part)
    {
        var (min, max) = (part.Reckoned.Min, part.Reckoned.Max);
        return new(At(min.X, min.Y), At(max.X, min.Y), At(max.X, max.Y), At(min.X, max.Y));

        Vec3 At(Measure.Length x, Measure.Length y) =>
            new Vec3(x.ToMillimetres(), y.ToMillimetres(), 0).Seen(part.Turn, null, 1);
    }

    /// <summary>Whether the two share some area: no side of either has the whole of the other beyond it.</summary>
    public bool Meets(Footprint other) => !IsParted(this, other) && !IsParted(other, this);

    private static bool IsParted(Footprint a, Footprint b)
    {
        Vec3[] corners = [a.A, a.B, a.C, a.D];
        Vec3[] others = [b.A, b.B, b.C, b.D];
        for (var i = 0; i < 4; i++)
        {
            var (from, along) = (corners[i], corners[(i + 1) % 4] - corners[i]);
            var length = Math.Sqrt(Vec3.Dot(along, along));
            if (length <= 0)
                return true;
            // Corners run counter-clockwise seen from above, so what is outside lies to the right of a side.
            var outward = new Vec3(along.Y / length, -along.X / length, 0);
            if (Array.TrueForAll(others, p => Vec3.Dot(p - from, outward) > -LeastMm))
                return true;
        }
        return false;
    }
}
