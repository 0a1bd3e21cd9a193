using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>The corners of one face in two coordinates of its plane, turning as seen from outside. Turns and
/// order are decided on the exact points; the doubles only where they leave no doubt.</summary>
internal sealed class FacePoints(PointTable points)
{
    private readonly Store<double> xs = new();
    private readonly Store<double> ys = new();
    private readonly Store<double> errors = new();
    private readonly Store<int> names = new();
    private readonly Store<int> vertices = new();
    private readonly Store<int> loops = new();
    private int across;
    private bool isSwapped;
    private bool isExact;

    // How the coordinate left out changes along x and y, and by how much areas are larger than they look.
    private double riseX;
    private double riseY;
    private double stretch;

    private readonly Store<int> starts = new();

    public int Count => xs.Count;

    /// <summary>Whether all coordinates are the exact ones, or stand for themselves.</summary>
    public bool IsExact => isExact;

    /// <summary>Where each loop starts: the outer one, counter-clockwise, then holes, clockwise.</summary>
    public ReadOnlySpan<int> Starts => starts.Span;

    public double X(int i) => xs[i];

    public double Y(int i) => ys[i];

    public void Start(in Plane plane, int side)
    {
        var steepest = Across(in plane);
        var towards = steepest switch
        {
            0 => plane.Nx,
            1 => plane.Ny,
            _ => plane.Nz,
        };
        Start(steepest, isSwapped: towards > 0 != (side % 2 == 0));
        var (slopeX, slopeY) = Flatten(
            new(plane.Nx / towards, plane.Ny / towards, plane.Nz / towards),
            across,
            isSwapped
        );
        (riseX, riseY) = (-slopeX, -slopeY);
        stretch = 1 / Math.Abs(towards);
    }

    /// <summary>Starts with one coordinate left out, the other two swapped for a face that looks down it.</summary>
    public void Start(int leftOut, bool isSwapped)
    {
        xs.Clear();
        ys.Clear();
        errors.Clear();
        names.Clear();
        vertices.Clear();
        loops.Clear();
        starts.Clear();
        across = leftOut;
        this.isSwapped = isSwapped;
        isExact = true;
        (riseX, riseY, stretch) = (0, 0, 1);
    }

    public void StartLoop() => starts.Add(xs.Count);

    /// <summary>The vertex of a corner, and its loop.</summary>
    public int Vertex(int i) => vertices[i];

    public int Loop(int i) => loops[i];

    /// <summary>The next corner around the same loop.</summary>
    public int After(int i) => i + 1 < loops.Count && loops[i + 1] == loops[i] ? i + 1 : starts[loops[i]];

    /// <summary>Adds a corner; <paramref name="name"/> is its exact point, or -1 where the position stands for itself.</summary>
    public void Add(Vec3 position, int name, int vertex)
    {
        var error = 0.0;
        if (name >= 0)
        {
            ref var point = ref points[name];
            error = (point.ExactMask | (1 << across)) == 7 ? 0 : point.Error;
        }

        isExact &= error == 0;
        var (x, y) = Flatten(position, across, isSwapped);
        xs.Add(x);
        ys.Add(y);
        errors.Add(error);
        names.Add(name);
        vertices.Add(vertex);
        loops.Add(starts.Count - 1);
    }

    /// <summary>Puts all corners of mouths in place of the few that stood for them. Mouths come after all other loops.</summary>
    public void RestartFrom(ReadOnlySpan<Mouth> mouths, ReadOnlySpan<Vec3> positions)
    {
        var first = 0;
        while (mouths[first].Count == 0)
        {
            first++;
        }

        CutBack(starts[first]);
        starts.CutBack(first);
        for (; first < mouths.Length; first++)
        {
            StartLoop();
            var vertex = mouths[first].First;
            for (var i = 0; i < mouths[first].Count; i++)
            {
                Add(positions[vertex], -1, vertex);
                vertex = mouths[first].After(vertex);
            }
        }
    }

    private void CutBack(int count)
    {
        xs.CutBack(count);
        ys.CutBack(count);
        errors.CutBack(count);
        names.CutBack(count);
        vertices.CutBack(count);
        loops.CutBack(count);
    }

    /// <summary>The turn of two positions and a corner, in doubles.</summary>
    public int Turn(Vec3 a, Vec3 b, int c)
    {
        var (ax, ay) = Flatten(a, across, isSwapped);
        var (bx, by) = Flatten(b, across, isSwapped);
        return Orientation.Turn(ax, ay, bx, by, xs[c], ys[c]);
    }

    /// <summary>Whether two corners are in one place.</summary>
    public bool AreSame(int a, int b) =>
        a == b || (names[a] >= 0 && names[b] >= 0 ? names[a] == names[b] : xs[a] == xs[b] && ys[a] == ys[b]);

    /// <summary>1 where a, b, c turn left, -1 right, 0 where they lie on one line; exact.</summary>
    public int Turn(int a, int b, int c)
    {
        if (isExact)
        {
            return Orientation.Turn(xs[a], ys[a], xs[b], ys[b], xs[c], ys[c]);
        }

        var (abx, aby, acx, acy) = (xs[b] - xs[a], ys[b] - ys[a], xs[c] - xs[a], ys[c] - ys[a]);
        var det = (abx * acy) - (aby * acx);
        var error = errors[a] + errors[b] + errors[c];
        var reach = Math.Abs(abx) + Math.Abs(aby) + Math.Abs(acx) + Math.Abs(acy);
        if (Math.Abs(det) > (2 * error * (reach + error)) + (1e-15 * reach * reach))
        {
            return Math.Sign(det);
        }

        if (AreSame(a, b) || AreSame(b, c) || AreSame(c, a))
        {
            return 0;
        }

        return ExactPoint.Turn(Exactly(a), Exactly(b), Exactly(c), across) * (isSwapped ? -1 : 1);
    }

    /// <summary>Whether the angles at which c and d look at a-b from either side are together more than half a turn: then c-d
    /// is the better diagonal of the four. In doubles; not by so little that it may be rounding.</summary>
    public bool LookWidelyAt(int a, int b, int c, int d)
    {
        var (sinC, cosC) = Angle(c, a, b);
        var (sinD, cosD) = Angle(d, b, a);
        var sum = (sinC * cosD) + (cosC * sinD);
        return sum < -1e-12 * (Math.Abs(sinC * cosD) + Math.Abs(cosC * sinD));
    }

    // Sine and cosine, to one scale, of the turn at a tip from one corner to another in the face itself.
    private (double Sin, double Cos) Angle(int tip, int from, int to)
    {
        var (ax, ay) = (xs[from] - xs[tip], ys[from] - ys[tip]);
        var (bx, by) = (xs[to] - xs[tip], ys[to] - ys[tip]);
        var (az, bz) = ((riseX * ax) + (riseY * ay), (riseX * bx) + (riseY * by));
        return (((ax * by) - (ay * bx)) * stretch, (ax * bx) + (ay * by) + (az * bz));
    }

    /// <summary>The order of two corners along x, where that is the same along y; 0 for one place. Exact.</summary>
    public int Compare(int a, int b)
    {
        if (isExact)
        {
            return xs[a] != xs[b] ? xs[a].CompareTo(xs[b]) : ys[a].CompareTo(ys[b]);
        }

        if (AreSame(a, b))
        {
            return 0;
        }

        var doubt = errors[a] + errors[b];
        var apart = xs[a] - xs[b];
        var order = Math.Abs(apart) > doubt ? Math.Sign(apart) : CompareExactly(a, b, isSwapped ? 2 : 1);
        if (order != 0)
        {
            return order;
        }

        apart = ys[a] - ys[b];
        return Math.Abs(apart) > doubt ? Math.Sign(apart) : CompareExactly(a, b, isSwapped ? 1 : 2);
    }

    private int CompareExactly(int a, int b, int turn) =>
        errors[a] + errors[b] > 0 ? ExactPoint.Compare(Exactly(a), Exactly(b), (across + turn) % 3) : 0;

    private ExactPoint Exactly(int i)
    {
        if (names[i] >= 0)
        {
            return points.Exactly(names[i]);
        }

        var (x, y) = isSwapped ? (ys[i], xs[i]) : (xs[i], ys[i]);
        return new(
            across switch
            {
                0 => new(0, x, y),
                1 => new(y, 0, x),
                _ => new Vec3(x, y, 0),
            }
        );
    }

    /// <summary>The coordinate to leave out: the one the plane is steepest to.</summary>
    public static int Across(in Plane plane)
    {
        var (x, y, z) = (Math.Abs(plane.Nx), Math.Abs(plane.Ny), Math.Abs(plane.Nz));
        return z >= x && z >= y ? 2
            : x >= y ? 0
            : 1;
    }

    /// <summary>The two coordinates that are left, in turn.</summary>
    public static (double X, double Y) Flatten(Vec3 p, int across, bool isSwapped)
    {
        var (a, b) = across switch
        {
            0 => (p.Y, p.Z),
            1 => (p.Z, p.X),
            _ => (p.X, p.Y),
        };
        return isSwapped ? (b, a) : (a, b);
    }
}
