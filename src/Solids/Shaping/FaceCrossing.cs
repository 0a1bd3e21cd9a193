using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Tells by doubles that two faces of different bodies cannot meet, or where at most they do: what the line of their planes
/// has in both bodies. Slanted faces have wide boxes, so that boxes alone leave many pairs in doubt. It only saves work: all
/// margins are far above rounding.
/// </summary>
internal sealed class FaceCrossing(PlaneTable planes, BodyTable bodies)
{
    // Below this sine of the angle between two planes, doubles say too little of their line.
    private const double LeastSine = 1e-3;

    private double Margin => planes.Scale * 1e-9;

    // Farther along a line from its point nearest to the origin there is nothing.
    private double Far => planes.Scale * 4;

    /// <summary>Whether the plane of a face may meet another body, whose box the face's box touches.</summary>
    public bool MayReach(in BodyFace face, in Body body)
    {
        ref var plane = ref planes[face.Plane];
        if (plane.Axis >= 0)
        {
            return true;
        }

        var (isBelow, isAbove) = (false, false);
        foreach (ref readonly var corner in bodies.Corners.Span.Slice(body.FirstCorner, body.CornerCount))
        {
            var height = plane.Evaluate(corner.X, corner.Y, corner.Z);
            isBelow |= height < Margin;
            isAbove |= height > -Margin;
            if (isBelow && isAbove)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether two faces may meet in a box; the box is made smaller where the line of their planes is clear.</summary>
    public bool Narrow(int f, int g, ref Bounds box)
    {
        ref var face = ref bodies.Faces[f];
        ref var other = ref bodies.Faces[g];
        ref var a = ref planes[face.Plane];
        ref var b = ref planes[other.Plane];
        if (a.Axis >= 0 && b.Axis >= 0)
        {
            return true;
        }

        var (n, m) = (new Vec3(a.Nx, a.Ny, a.Nz), new Vec3(b.Nx, b.Ny, b.Nz));
        var along = Vec3.Cross(n, m);
        var square = Vec3.Dot(along, along);
        if (square < LeastSine * LeastSine)
        {
            return MayShare(in a, in b, Vec3.Dot(n, m) > 0 ? 1 : -1, in box);
        }

        // Some point of the line, then what of the line both bodies have.
        var start = ((Vec3.Cross(m, along) * a.D) + (Vec3.Cross(along, n) * b.D)) * (1 / square);
        along *= 1 / Math.Sqrt(square);
        var (low, high) = (-Far, Far);
        if (
            !Clip(in start, in along, face.Body, ref low, ref high)
            || !Clip(in start, in along, other.Body, ref low, ref high)
        )
        {
            return false;
        }

        var part = Bounds.Empty;
        part.Include(start + (along * low));
        part.Include(start + (along * high));
        box = box.Common(part.Grown(Margin));
        return !box.IsEmpty;
    }

    /// <summary>Whether a line may cross a face somewhere within the line's own box.</summary>
    public bool MayCross(in Line line, in BodyFace face)
    {
        ref var plane = ref planes[face.Plane];
        var rise = (plane.Nx * line.Dx) + (plane.Ny * line.Dy) + (plane.Nz * line.Dz);
        if (line.IsSharp)
        {
            return true;
        }

        var height = plane.Evaluate(line.Start.X, line.Start.Y, line.Start.Z);
        if (Math.Abs(rise) < LeastSine)
        {
            // Along the face, or nearly.
            return Math.Abs(height) <= (Math.Abs(rise) * Far) + Margin;
        }

        var t = -height / rise;
        var (x, y, z) = (line.Start.X + (t * line.Dx), line.Start.Y + (t * line.Dy), line.Start.Z + (t * line.Dz));
        var common = face.Bounds.Common(in line.Bounds).Grown(Margin);
        return common.Holds(x, y, z);
    }

    // Almost parallel planes meet in a box only where they are as close there as their angle allows.
    private bool MayShare(in Plane a, in Plane b, int sign, in Bounds box)
    {
        var (x, y, z) = ((box.MinX + box.MaxX) / 2, (box.MinY + box.MaxY) / 2, (box.MinZ + box.MaxZ) / 2);
        var apart = Math.Abs(a.Evaluate(x, y, z) - (sign * b.Evaluate(x, y, z)));
        var closing =
            (Math.Abs(a.Nx - (sign * b.Nx)) * (box.MaxX - x))
            + (Math.Abs(a.Ny - (sign * b.Ny)) * (box.MaxY - y))
            + (Math.Abs(a.Nz - (sign * b.Nz)) * (box.MaxZ - z));
        return apart <= closing + Margin;
    }

    private bool Clip(in Vec3 start, in Vec3 along, int body, ref double low, ref double high)
    {
        ref var whole = ref bodies.Bodies[body];
        for (var f = whole.FirstFace; f < whole.FirstFace + whole.FaceCount; f++)
        {
            ref var face = ref bodies.Faces[f];
            ref var plane = ref planes[face.Plane];
            var height = face.Outward * plane.Evaluate(start.X, start.Y, start.Z);
            var rise = face.Outward * ((plane.Nx * along.X) + (plane.Ny * along.Y) + (plane.Nz * along.Z));
            if (Math.Abs(rise) < LeastSine)
            {
                // Along the face, or nearly: it rules out the line only where that stays clear of it all the way.
                if (height - (Math.Abs(rise) * Far) > Margin)
                {
                    return false;
                }

                continue;
            }

            var at = (Margin - height) / rise;
            if (rise > 0)
            {
                high = Math.Min(high, at);
            }
            else
            {
                low = Math.Max(low, at);
            }

            if (low > high)
            {
                return false;
            }
        }

        return true;
    }
}
