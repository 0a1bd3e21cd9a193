namespace Dryfit.Solids;

/// <summary>
/// Draws a profile side by side, as a pencil goes: <c>Profile.From(0, 0).LineTo(40, 0).ArcTo(new(0, 40), 40, Bend.Left,
/// 12).Close()</c> is a quarter of a disc. Grid units.
/// </summary>
public sealed class ProfileBuilder
{
    private const int MostChords = 4096;

    private readonly List<ProfileSide> sides = [];
    private readonly Vec2 start;
    private Vec2 at;

    internal ProfileBuilder(Vec2 start) => at = this.start = start;

    /// <summary>A straight side. One of no length is left out.</summary>
    public ProfileBuilder LineTo(double x, double y) => LineTo(new(x, y));

    /// <inheritdoc cref="LineTo(double, double)"/>
    public ProfileBuilder LineTo(Vec2 to)
    {
        Finite(to.X + to.Y, nameof(to));
        if (to != at)
        {
            Add(new StraightSide(at, to));
        }

        return this;
    }

    /// <summary>An arc of a radius: the shorter of the two that bend that way, or the longer one.</summary>
    /// <exception cref="ArgumentException">The end is where the arc starts, or further off than two radii.</exception>
    public ProfileBuilder ArcTo(Vec2 to, double radius, Bend bend, int chords, bool isLonger = false)
    {
        var half = HalfWay(to, chords);
        Finite(radius, nameof(radius));

        // An end that is two radii away but for rounding is that of a half circle.
        if (radius < half * (1 - 1e-12))
        {
            throw new ArgumentException("The ends of an arc are further apart than two radii.", nameof(radius));
        }

        var height = Math.Sqrt(Math.Max(0, (radius - half) * (radius + half)));
        return Add(to, radius, isLonger ? -height : height, half, bend, chords);
    }

    /// <summary>An arc by its rise, as an arched rail is set out: how far its middle stands off the straight way between its
    /// ends, to the right for an arc that bends left.</summary>
    /// <exception cref="ArgumentException">The rise is not above zero, or the end is where the arc starts.</exception>
    public ProfileBuilder ArchTo(Vec2 to, double rise, Bend bend, int chords)
    {
        var half = HalfWay(to, chords);
        Finite(rise, nameof(rise));
        if (!(rise > 0))
        {
            throw new ArgumentException("An arch needs a rise above zero.", nameof(rise));
        }

        // By the theorem of intersecting chords: half x half = rise x (2 radius - rise).
        var radius = ((half * half / rise) + rise) / 2;
        return Add(to, radius, radius - rise, half, bend, chords);
    }

    /// <summary>An arc around a centre. The end must lie as far from it as the start, but for rounding to the grid.</summary>
    /// <exception cref="ArgumentException">It does not, or the end is where the arc starts.</exception>
    public ProfileBuilder ArcAround(Vec2 centre, Vec2 to, Bend bend, int chords)
    {
        HalfWay(to, chords);
        var (radius, other) = (Distance(centre, at), Distance(centre, to));
        Finite(radius, nameof(centre));
        if (!(Math.Abs(radius - other) <= 2 + (1e-9 * radius)))
        {
            throw new ArgumentException("The ends of an arc are not equally far from its centre.", nameof(centre));
        }

        Add(new ArcSide(at, to, centre, (radius + other) / 2, bend, chords));
        return this;
    }

    /// <summary>A smooth curve through points; the first one given comes after where the pencil is.</summary>
    public ProfileBuilder CurveTo(params ReadOnlySpan<Vec2> points)
    {
        var all = new List<Vec2> { at };
        foreach (var point in points)
        {
            Finite(point.X + point.Y, nameof(points));
            if (point != all[^1])
            {
                all.Add(point);
            }
        }

        if (all.Count > 1)
        {
            Add(new CurveSide(all));
        }

        return this;
    }

    /// <summary>The profile, closed by a straight side where the pencil is not back at its start.</summary>
    public Profile Close() => new([.. LineTo(start).sides]);

    private ProfileBuilder Add(Vec2 to, double radius, double height, double half, Bend bend, int chords)
    {
        // The centre lies as high above the chord, on the side to which the arc bends, as the root says.
        var share = (bend == Bend.Left ? height : -height) / (2 * half);
        var centre = new Vec2(
            ((at.X + to.X) / 2) - (share * (to.Y - at.Y)),
            ((at.Y + to.Y) / 2) + (share * (to.X - at.X))
        );
        Add(new ArcSide(at, to, centre, radius, bend, chords));
        return this;
    }

    private void Add(ProfileSide side)
    {
        sides.Add(side);
        at = side.To;
    }

    private double HalfWay(Vec2 to, int chords)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(chords);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(chords, MostChords);
        Finite(to.X + to.Y, nameof(to));
        return to != at
            ? Distance(at, to) / 2
            : throw new ArgumentException("An arc needs two ends: a whole circle is two arcs.", nameof(to));
    }

    private static double Distance(Vec2 a, Vec2 b)
    {
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        return Math.Sqrt((x * x) + (y * y));
    }

    private static void Finite(double number, string name)
    {
        if (!double.IsFinite(number))
        {
            throw new ArgumentException("A profile has a number that is not finite.", name);
        }
    }
}
