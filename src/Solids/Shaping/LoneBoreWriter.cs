using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;

namespace Dryfit.Solids.Shaping;

/// <summary>Writes the walls and the bottom of a lone bore straight from its corners.</summary>
internal static class LoneBoreWriter
{
    public static void Write(in LoneBore bore, ReadOnlySpan<Vec3> vertices, Store<int> triangles, FaceTable faces)
    {
        var count = bore.Segments;
        var (low, high) = (bore.FirstVertex, bore.FirstVertex + count);
        faces.AddWalls(in bore, triangles.Count / 3);

        // Sides of a bore along an axis are square: either diagonal will do.
        var isSquare = Math.Abs(bore.Bore.Frame.W.At(bore.Axis)) == 1;
        var into = triangles.Extend(6 * count);
        for (var i = 0; i < count; i++)
        {
            var j = i + 1 == count ? 0 : i + 1;
            var six = into.Slice(6 * i, 6);
            if (isSquare || !LookWidely(vertices, low + i, high + j, high + i, low + j))
            {
                (six[0], six[1], six[2]) = (low + i, high + i, high + j);
                (six[3], six[4], six[5]) = (low + i, high + j, low + j);
            }
            else
            {
                (six[0], six[1], six[2]) = (low + i, high + i, low + j);
                (six[3], six[4], six[5]) = (high + i, high + j, low + j);
            }
        }

        var along = bore.Bore.Frame.W;
        if (!bore.IsHighMouth)
        {
            WriteBottom(in bore, high, along * -1, isTurned: true, triangles, faces);
        }
        else if (!bore.IsLowMouth)
        {
            WriteBottom(in bore, low, along, isTurned: false, triangles, faces);
        }
    }

    // Whether the angles at c and d that look at the diagonal a-b are together more than half a turn.
    private static bool LookWidely(ReadOnlySpan<Vec3> vertices, int a, int b, int c, int d)
    {
        var (sinC, cosC) = Angle(vertices[c], vertices[a], vertices[b]);
        var (sinD, cosD) = Angle(vertices[d], vertices[b], vertices[a]);
        var sum = (sinC * cosD) + (cosC * sinD);
        return sum < -1e-12 * (Math.Abs(sinC * cosD) + Math.Abs(cosC * sinD));
    }

    private static (double Sin, double Cos) Angle(Vec3 tip, Vec3 from, Vec3 to)
    {
        var cross = Vec3.Cross(from - tip, to - tip);
        return (Math.Sqrt(Vec3.Dot(cross, cross)), Vec3.Dot(from - tip, to - tip));
    }

    /// <summary>
    /// What the bore takes: a prism cut off by faces, with sides of length l(a, b), linear over its section. The section is a
    /// regular polygon, so mean and middle are those of the axis, and its second moment I is the same in all directions.
    /// </summary>
    public static void Measure(in LoneBore bore, ref MassSum mass)
    {
        var frame = bore.Bore.Frame;
        var radius = bore.Bore.Radius;
        var section = bore.Round.Area * radius * radius;
        var inertia = bore.Round.Inertia * radius * radius * radius * radius;
        var w = frame.W.At(bore.Axis);
        var (slopeU, slopeV) = (-frame.U.At(bore.Axis) / w, -frame.V.At(bore.Axis) / w);
        var (isLow, isHigh) = (bore.IsLowMouth ? 1 : 0, bore.IsHighMouth ? 1 : 0);
        var from = bore.IsLowMouth ? bore.DepthAt(bore.LowFace, default) : 0;
        var to = bore.IsHighMouth ? bore.DepthAt(bore.HighFace, default) : bore.Bore.Depth;
        var length = to - from;
        var volume = section * length;
        var mouths = isLow + isHigh;
        var bottoms = 2 - mouths;
        var area =
            (bore.Segments * bore.Round.Side * radius * length)
            + (section * bottoms)
            - (section / Math.Abs(w) * mouths);

        // First moments over the section: a (to - from), b (to - from) and (to^2 - from^2) / 2 with their slopes.
        var skew = isHigh - isLow;
        var momentU = slopeU * skew * inertia;
        var momentV = slopeV * skew * inertia;
        var momentW =
            ((section * ((to * to) - (from * from))) + (skew * ((slopeU * slopeU) + (slopeV * slopeV)) * inertia)) / 2;
        var middle = frame.ToWorld(new(momentU / volume, momentV / volume, momentW / volume));
        mass.Take(volume, area, middle);
    }

    private static void WriteBottom(
        in LoneBore bore,
        int ring,
        Vec3 normal,
        bool isTurned,
        Store<int> triangles,
        FaceTable faces
    )
    {
        var first = triangles.Count;
        var disc = bore.Round.Disc;
        var into = triangles.Extend(disc.Length);
        for (var i = 0; i < disc.Length; i += 3)
        {
            into[i] = ring + disc[i];
            into[i + 1] = ring + disc[isTurned ? i + 2 : i + 1];
            into[i + 2] = ring + disc[isTurned ? i + 1 : i + 2];
        }

        faces.Add(bore.Cut, -1, 0, normal, first / 3, disc.Length / 3);
    }
}
