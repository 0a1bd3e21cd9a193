using System.Numerics;
using Dryfit.Solids.Exact;
using Plane = Dryfit.Solids.Exact.Plane;

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

    /// <summary>Its point nearest to the origin; where the planes meet too sharply for doubles it says nothing.</summary>
    public Vec3 Start;
    public bool IsSharp;

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
    // A plane whose normal has more than this along a line does not contain it.
    private const double MostAlong = 1e-6;

    // Nor does one that is off it by more than this part of the scale.
    private const double MostOff = 1e-9;

    private readonly KeyTable byPair = new();
    private readonly Store<int> order = new();
    private readonly NormalTable normals = new();
    private int generalCount;

    public Store<Line> Lines { get; } = new();

    public Store<Stretch> Stretches { get; } = new();

    /// <summary>The planes of all lines, a run each.</summary>
    public Store<int> Planes { get; } = new();

    public void Clear()
    {
        byPair.Clear();
        order.Clear();
        Lines.Clear();
        Stretches.Clear();
        Planes.Clear();
        AddToOrder(axial: false);
        generalCount = order.Count;
        AddToOrder(axial: true);
        normals.Fill(planes, order);
    }

    private void AddToOrder(bool axial)
    {
        for (var i = 0; i < planes.Count; i++)
        {
            if (planes[i].Axis >= 0 == axial)
            {
                order.Add(i);
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

        var somewhere = Somewhere(in a, in b, x, y, z);
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
            Start = somewhere,
            IsSharp = isSharp,
            FirstPlane = first,
            Stretches = -1,
        };
        AddFurther(in line, a.Axis >= 0 && b.Axis >= 0);

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

    // Further planes through the line. Of any three one is no axis plane: two axis planes look among the others only, which
    // come first.
    private void AddFurther(in Line line, bool isUpright)
    {
        var count = isUpright ? generalCount : normals.Count;
        var (dx, dy, dz) = (new Vector<double>(line.Dx), new Vector<double>(line.Dy), new Vector<double>(line.Dz));
        var (x, y, z) = (
            new Vector<double>(line.Start.X),
            new Vector<double>(line.Start.Y),
            new Vector<double>(line.Start.Z)
        );
        var mostAlong = new Vector<double>(MostAlong);
        var mostOff = new Vector<double>(line.IsSharp ? double.PositiveInfinity : MostOff * planes.Scale);
        for (var i = 0; i < count; i += Vector<double>.Count)
        {
            // Nearly all planes are not along the line or clear of it: several are asked at once.
            var (nx, ny, nz) = (normals.X(i), normals.Y(i), normals.Z(i));
            var along = (nx * dx) + (ny * dy) + (nz * dz);
            var off = (nx * x) + (ny * y) + (nz * z) - normals.D(i);
            if (
                !Vector.LessThanOrEqualAny(Vector.Abs(along), mostAlong)
                || Vector.EqualsAll(
                    Vector.LessThanOrEqual(Vector.Abs(along), mostAlong)
                        & Vector.LessThanOrEqual(Vector.Abs(off), mostOff),
                    Vector<long>.Zero
                )
            )
            {
                continue;
            }

            for (var j = i; j < Math.Min(i + Vector<double>.Count, count); j++)
            {
                var r = order[j];
                if (r != line.P && r != line.Q && MayContain(in line, r) && Contains(line.P, line.Q, in line, r))
                {
                    Planes.Add(r);
                }
            }
        }
    }

    // Rules out nearly all planes by doubles, with room for a thousand times their error.
    private bool MayContain(in Line line, int r)
    {
        ref var s = ref planes[r];
        if (Math.Abs((s.Nx * line.Dx) + (s.Ny * line.Dy) + (s.Nz * line.Dz)) > MostAlong)
        {
            return false;
        }

        return line.IsSharp || Math.Abs(s.Evaluate(line.Start.X, line.Start.Y, line.Start.Z)) < MostOff * planes.Scale;
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
