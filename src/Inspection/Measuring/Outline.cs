using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// The edge that some parts show in one direction, drawn as lines: how far each reaches that way (<c>Reach</c>) over its
/// course along another axis. Hidden lines are in it too; whoever reads it takes the outermost or the nearest.
/// </summary>
internal sealed class Outline
{
    private Outline(Direction direction, Axis along, List<OutlineLine> lines)
    {
        Direction = direction;
        Along = along;
        Lines = lines;
    }

    /// <summary>The way in which reach is measured.</summary>
    public Direction Direction { get; }

    /// <summary>The axis along which it runs.</summary>
    public Axis Along { get; }

    public IReadOnlyList<OutlineLine> Lines { get; }

    /// <summary>The edge of the faces that look in <paramref name="direction"/>.</summary>
    /// <param name="slab">The layer of the third axis that counts, from and to; null for all of it.</param>
    public static Outline Facing(
        IEnumerable<SeenSolid> shapes,
        Direction direction,
        Axis along,
        (double From, double To)? slab
    ) => Draw(shapes, direction, direction, along, slab);

    /// <summary>The edge of the faces that look against <paramref name="direction"/>: what one meets, going that way.</summary>
    public static Outline Against(
        IEnumerable<SeenSolid> shapes,
        Direction direction,
        Axis along,
        (double From, double To)? slab
    ) => Draw(shapes, direction.Opposite(), direction, along, slab);

    /// <summary>A single straight edge, for what was measured with a tape and has no solid.</summary>
    public static Outline Straight(Direction direction, Axis along, OutlineLine line) => new(direction, along, [line]);

    private static Outline Draw(
        IEnumerable<SeenSolid> shapes,
        Direction looking,
        Direction direction,
        Axis along,
        (double From, double To)? slab
    )
    {
        var third = Third(direction.Axis(), along).Measured();
        var run = along.Measured();
        var lines = new List<OutlineLine>();
        Span<Vec3> corners = stackalloc Vec3[8];
        foreach (var shape in shapes)
        {
            foreach (var triangle in shape.Facing(looking, SeenSolid.AsAnEdge))
            {
                var count = Clip(triangle, third, slab, corners);
                for (var i = 0; i < count; i++)
                {
                    var a = corners[i];
                    var b = corners[(i + 1) % count];
                    // What stands square to the run has no course along it.
                    if (a.On(run) == b.On(run))
                        continue;
                    if (a.On(run) > b.On(run))
                        (a, b) = (b, a);
                    lines.Add(new(a.On(run), a.Along(direction), b.On(run), b.Along(direction)));
                }
            }
        }
        return new(direction, along, lines);
    }

    public static Axis Third(Axis a, Axis b) => (Axis)(3 - (int)a - (int)b);

    /// <summary>The part of a triangle within a layer, as a convex polygon of at most five corners.</summary>
    private static int Clip(Triangle triangle, Vec3Axis axis, (double From, double To)? slab, Span<Vec3> corners)
    {
        corners[0] = triangle.A;
        corners[1] = triangle.B;
        corners[2] = triangle.C;
        if (slab is not { } layer)
            return 3;
        Span<Vec3> half = stackalloc Vec3[8];
        var count = Above(corners[..3], axis, layer.From, 1, half);
        count = Above(half[..count], axis, layer.To, -1, corners);
        var (low, high) = (double.MaxValue, double.MinValue);
        for (var i = 0; i < count; i++)
        {
            low = Math.Min(low, corners[i].On(axis));
            high = Math.Max(high, corners[i].On(axis));
        }
        // A face that only ends at the layer's skin is not in it.
        return high - low > Skin ? count : 0;
    }

    /// <summary>Far below a grid unit and far above rounding.</summary>
    private const double Skin = 1e-3;

    private static int Above(ReadOnlySpan<Vec3> polygon, Vec3Axis axis, double level, int sign, Span<Vec3> kept)
    {
        var count = 0;
        for (var i = 0; i < polygon.Length; i++)
        {
            var a = polygon[i];
            var b = polygon[(i + 1) % polygon.Length];
            var da = (a.On(axis) - level) * sign;
            var db = (b.On(axis) - level) * sign;
            if (da >= 0)
                kept[count++] = a;
            if ((da > 0 && db < 0) || (da < 0 && db > 0))
                kept[count++] = a + ((b - a) * (da / (da - db)));
        }
        return count;
    }
}

/// <summary>One line of an outline: its course from <c>From</c> to <c>To</c> (rising) and its reach at both ends.</summary>
internal readonly record struct OutlineLine(double From, double ReachAtFrom, double To, double ReachAtTo)
{
    public double Farthest => Math.Max(ReachAtFrom, ReachAtTo);

    public double Nearest => Math.Min(ReachAtFrom, ReachAtTo);

    public double ReachAt(double course) =>
        course == From ? ReachAtFrom
        : course == To ? ReachAtTo
        : ReachAtFrom + ((ReachAtTo - ReachAtFrom) * ((course - From) / (To - From)));
}
