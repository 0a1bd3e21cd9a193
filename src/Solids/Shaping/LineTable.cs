using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>A line in which planes of the construction meet, and the stretches of it that may carry an edge.</summary>
internal struct Line
{
    /// <summary>Its first two planes; the direction is their normals' cross product (unit length here).</summary>
    public int P;
    public int Q;
    public double Dx;
    public double Dy;
    public double Dz;

    /// <summary>Where its run of planes starts in the table, and how many there are (two almost always).</summary>
    public int FirstPlane;
    public int PlaneCount;

    /// <summary>Head of its list of stretches, and a box around them all.</summary>
    public int Stretches;
    public Bounds Bounds;
}

/// <summary>A box in which two faces meet along a line.</summary>
internal readonly record struct Stretch(Bounds Bounds, int Next);

/// <summary>The lines of a construction; lines that coincide exactly have one index.</summary>
internal sealed class LineTable(PlaneTable planes, PointTable points)
{
    private readonly KeyTable byPair = new();
    private readonly Store<int> general = new();
    private int planeCount;

    public Store<Line> Lines { get; } = new();

    public Store<Stretch> Stretches { get; } = new();

    /// <summary>The planes of all lines, a run each.</summary>
    public Store<int> Planes { get; } = new();

    public void Clear()
    {
        byPair.Clear();
        general.Clear();
        planeCount = planes.Count;
        Lines.Clear();
        Stretches.Clear();
        Planes.Clear();
        for (var i = 0; i < planes.Count; i++)
        {
            if (planes[i].Axis < 0)
            {
                general.Add(i);
            }
        }
    }

    /// <summary>Notes that faces in planes p and q meet within a box; parallel planes have no line.</summary>
    public void Note(int p, int q, in Bounds box)
    {
        if (p > q)
        {
            (p, q) = (q, p);
        }

        var index = byPair.Find(Key(p, q), -1, out var isKnown);
        if (!isKnown)
        {
            index = Add(p, q);
            byPair.Find(Key(p, q), -1, out _) = index;
        }

        if (index < 0)
        {
            return;
        }

        ref var line = ref Lines[index];
        line.Bounds = line.Stretches < 0 ? box : line.Bounds.Union(in box);
        line.Stretches = Stretches.Add(new(box, line.Stretches));
    }

    /// <summary>Sign of (a x b)·direction for the normals of two planes that contain the line; exact.</summary>
    public int Turn(in Line line, int a, int b)
    {
        ref var p = ref planes[a];
        ref var q = ref planes[b];
        var value =
            (line.Dx * ((p.Ny * q.Nz) - (p.Nz * q.Ny)))
            + (line.Dy * ((p.Nz * q.Nx) - (p.Nx * q.Nz)))
            + (line.Dz * ((p.Nx * q.Ny) - (p.Ny * q.Nx)));
        if (Math.Abs(value) > 1e-12)
        {
            return Math.Sign(value);
        }

        var (e, f) = (planes.Exactly(a), planes.Exactly(b));
        return Steepest(in line) switch
        {
            0 => ((e.B * f.C) - (e.C * f.B)).Sign * Math.Sign(line.Dx),
            1 => ((e.C * f.A) - (e.A * f.C)).Sign * Math.Sign(line.Dy),
            _ => ((e.A * f.B) - (e.B * f.A)).Sign * Math.Sign(line.Dz),
        };
    }

    private static int Steepest(in Line line) =>
        Math.Abs(line.Dx) >= Math.Max(Math.Abs(line.Dy), Math.Abs(line.Dz)) ? 0
        : Math.Abs(line.Dy) >= Math.Abs(line.Dz) ? 1
        : 2;

    private int Add(int p, int q)
    {
        ref var a = ref planes[p];
        ref var b = ref planes[q];
        if (a.Axis >= 0 && a.Axis == b.Axis)
        {
            return -1;
        }

        var x = (a.Ny * b.Nz) - (a.Nz * b.Ny);
        var y = (a.Nz * b.Nx) - (a.Nx * b.Nz);
        var z = (a.Nx * b.Ny) - (a.Ny * b.Nx);
        var length = Math.Sqrt((x * x) + (y * y) + (z * z));
        var isSharp = length < 1e-3;
        if (length < 1e-7)
        {
            if (AreParallel(p, q))
            {
                return -1;
            }

            (x, y, z) = ExactDirection(p, q);
            length = Math.Sqrt((x * x) + (y * y) + (z * z));
        }

        var first = Planes.Count;
        Planes.Add(p);
        Planes.Add(q);
        var line = new Line
        {
            P = p,
            Q = q,
            Dx = x / length,
            Dy = y / length,
            Dz = z / length,
            FirstPlane = first,
            Stretches = -1,
        };
        // Further planes through the line: one of any three is no axis plane.
        var somewhere = Somewhere(in a, in b, x, y, z);
        var isUpright = a.Axis >= 0 && b.Axis >= 0;
        var candidates = isUpright ? general.Count : planeCount;
        for (var i = 0; i < candidates; i++)
        {
            var r = isUpright ? general[i] : i;
            if (r != p && r != q && MayContain(in line, somewhere, isSharp, r) && Contains(p, q, in line, r))
            {
                Planes.Add(r);
            }
        }

        line.PlaneCount = Planes.Count - first;
        var index = Lines.Add(line);

        // All pairs of its planes have this line.
        for (var i = 0; line.PlaneCount > 2 && i < line.PlaneCount; i++)
        {
            for (var j = 0; j < line.PlaneCount; j++)
            {
                var (low, high) = (Planes[first + i], Planes[first + j]);
                if (low < high)
                {
                    ref var known = ref byPair.Find(Key(low, high), index, out _);
                    known = known < 0 ? index : known;
                }
            }
        }

        return index;
    }

    // The cross product of two almost parallel normals, scaled to about unit length without loss.
    private (double X, double Y, double Z) ExactDirection(int p, int q)
    {
        var (a, b) = (planes.Exactly(p), planes.Exactly(q));
        var (x, y, z) = ((a.B * b.C) - (a.C * b.B), (a.C * b.A) - (a.A * b.C), (a.A * b.B) - (a.B * b.A));
        var largest = Dyadic.Largest(x, Dyadic.Largest(y, z));

        return (Dyadic.Divide(x, largest), Dyadic.Divide(y, largest), Dyadic.Divide(z, largest));
    }

    private static ulong Key(int p, int q) => ((ulong)p << 32) | (uint)q;

    private bool AreParallel(int p, int q)
    {
        var (a, b) = (planes.Exactly(p), planes.Exactly(q));
        return ((a.A * b.B) - (a.B * b.A)).Sign == 0
            && ((a.A * b.C) - (a.C * b.A)).Sign == 0
            && ((a.B * b.C) - (a.C * b.B)).Sign == 0;
    }

    // Some point of the line: (d_a (n_b x D) + d_b (D x n_a)) / D^2 with D = n_a x n_b.
    private static Vec3 Somewhere(in Plane a, in Plane b, double x, double y, double z)
    {
        var along = new Vec3(x, y, z);
        var p = (Vec3.Cross(new(b.Nx, b.Ny, b.Nz), along) * a.D) + (Vec3.Cross(along, new(a.Nx, a.Ny, a.Nz)) * b.D);
        return p * (1 / Vec3.Dot(along, along));
    }

    // Rules out nearly all planes by doubles, with room for a thousand times their error.
    private bool MayContain(in Line line, Vec3 somewhere, bool isSharp, int r)
    {
        ref var s = ref planes[r];
        if (Math.Abs((s.Nx * line.Dx) + (s.Ny * line.Dy) + (s.Nz * line.Dz)) > 1e-6)
        {
            return false;
        }

        return isSharp || Math.Abs(s.Evaluate(somewhere.X, somewhere.Y, somewhere.Z)) < 1e-9 * planes.Scale;
    }

    // A plane contains the line where it is parallel to it and some point of the line lies on it.
    private bool Contains(int p, int q, in Line line, int r)
    {
        if (points.Determinant(p, q, r, out _) != 0)
        {
            return false;
        }

        // Where the line crosses the coordinate plane that it is steepest to.
        var point = points.Meet(p, q, planes.AddAxis(Steepest(in line), 0));
        return point >= 0 && points.Side(point, r) == 0;
    }
}
