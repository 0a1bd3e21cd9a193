namespace Dryfit.Solids.Measuring;

/// <summary>
/// Adds up volume, surface and first moments of a solid from its flats, each as the base of a cone with its tip at a point near
/// by (the divergence theorem), and of prisms that are taken away.
/// </summary>
internal struct MassSum(Vec3 origin)
{
    // Six times the volume and twice the surface: whole numbers stay whole.
    private double sixfold;
    private double twofold;
    private Vec3 moments;

    public readonly double Volume => sixfold / 6;

    public readonly double Area => twofold / 2;

    public readonly Vec3 Centroid => Volume == 0 ? origin : origin + (moments * (1 / Volume));

    /// <summary>Adds a triangle of the surface, counter-clockwise from outside.</summary>
    public void Add(Vec3 a, Vec3 b, Vec3 c)
    {
        (a, b, c) = (a - origin, b - origin, c - origin);
        var cross = Vec3.Cross(b - a, c - a);
        var six = Vec3.Dot(a, cross);
        sixfold += six;
        twofold += Math.Sqrt(Vec3.Dot(cross, cross));
        moments += (a + b + c) * (six / 24);
    }

    /// <summary>Adds surface and takes a volume with its middle away.</summary>
    public void Take(double volume, double area, Vec3 middle)
    {
        sixfold -= 6 * volume;
        twofold += 2 * area;
        moments -= (middle - origin) * volume;
    }

    /// <summary>Adds a loop of a flat (holes run the other way) with the outward unit normal; tells the volume of its cone.</summary>
    public double Add(ReadOnlySpan<int> loop, ReadOnlySpan<Vec3> vertices, Vec3 normal)
    {
        var first = vertices[loop[0]] - origin;
        var (x, y, z) = (Math.Abs(normal.X), Math.Abs(normal.Y), Math.Abs(normal.Z));
        var cross = default(Vec3);
        var weighted = default(Vec3);
        var a = vertices[loop[1]] - origin - first;
        for (var i = 2; i < loop.Length; i++)
        {
            // A fan from the first corner; signs take care of corners that fold back.
            var b = vertices[loop[i]] - origin - first;
            var turn = Vec3.Cross(a, b);
            var twice =
                z >= x && z >= y ? turn.Z / normal.Z
                : x >= y ? turn.X / normal.X
                : turn.Y / normal.Y;
            cross += turn;
            weighted += (a + b) * twice;
            a = b;
        }

        var twiceArea =
            z >= x && z >= y ? cross.Z / normal.Z
            : x >= y ? cross.X / normal.X
            : cross.Y / normal.Y;
        var height = Vec3.Dot(normal, first);
        twofold += twiceArea;
        sixfold += height * twiceArea;

        // The middle of a cone is three quarters of the way to its base.
        moments += ((first * (twiceArea / 2)) + (weighted * (1 / 6.0))) * (height / 4);
        return height * twiceArea / 6;
    }
}
