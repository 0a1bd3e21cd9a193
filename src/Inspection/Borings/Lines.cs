using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Small questions about points and straight lines, in grid units.</summary>
internal static class Lines
{
    public static double Length(Vec3 way) => Math.Sqrt(Vec3.Dot(way, way));

    /// <summary>The point between two ends that is nearest to a point.</summary>
    public static Vec3 Nearest(Vec3 from, Vec3 to, Vec3 point)
    {
        var along = to - from;
        var squared = Vec3.Dot(along, along);
        return squared > 0 ? from + (along * Math.Clamp(Vec3.Dot(point - from, along) / squared, 0, 1)) : from;
    }
}
