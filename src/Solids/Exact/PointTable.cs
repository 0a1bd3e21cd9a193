namespace Dryfit.Solids.Exact;

/// <summary>
/// The points where three planes meet. A point is named once: two triples that meet in exactly the same point have one index,
/// whatever the doubles say. Coordinates are approximations with a bound; those fixed by an axis plane are exact.
/// </summary>
internal sealed class PointTable(PlaneTable planes)
{
    private readonly Store<Point> points = new();
    private readonly Store<Incidence> incidences = new();
    private readonly KeyTable byTriple = new();
    private readonly KeyTable cells = new();
    private readonly Dictionary<int, ExactPoint> exact = [];
    private double cellSize;

    public int Count => points.Count;

    public ref Point this[int index] => ref points[index];

    public Vec3 At(int index)
    {
        ref var p = ref points[index];
        return new(p.X, p.Y, p.Z);
    }

    public void Clear()
    {
        points.Clear();
        incidences.Clear();
        byTriple.Clear();
        cells.Clear();
        exact.Clear();
        cellSize = planes.Scale / (1 << 24);
    }

    /// <summary>The point where three planes meet; -1 where they have no single one, or one far from everything.</summary>
    public int Meet(int p, int q, int r)
    {
        if (p > q)
        {
            (p, q) = (q, p);
        }

        if (q > r)
        {
            (q, r) = (r, q);
        }

        if (p > q)
        {
            (p, q) = (q, p);
        }

        var key = ((ulong)p << 42) | ((ulong)q << 21) | (uint)r;
        ref var found = ref byTriple.Find(key, -1, out var isKnown);
        if (!isKnown && Determinant(p, q, r, out var det) != 0)
        {
            found = Locate(p, q, r, det);
        }

        return found;
    }

    /// <summary>On which side of a plane a point lies: 1 where its normal points, -1 behind, 0 exactly on it.</summary>
    public int Side(int index, int plane)
    {
        ref var p = ref points[index];
        if (p.P == plane || p.Q == plane || p.R == plane)
        {
            return 0;
        }

        ref var s = ref planes[plane];
        if (s.Axis >= 0 && (p.ExactMask & (1 << s.Axis)) != 0)
        {
            return p[s.Axis].CompareTo(s.D);
        }

        var value = s.Evaluate(p.X, p.Y, p.Z);
        return Math.Abs(value) > s.Error + p.Error ? Math.Sign(value) : CloseSide(index, plane);
    }

    /// <summary>Sign of the determinant of three normals; 0 where the planes have no single common point.</summary>
    public int Determinant(int p, int q, int r, out double approximate)
    {
        ref var a = ref planes[p];
        ref var b = ref planes[q];
        ref var c = ref planes[r];
        approximate = 0;
        if ((a.Along & b.Along & c.Along) != 0)
        {
            return 0;
        }

        approximate =
            (a.Nx * ((b.Ny * c.Nz) - (b.Nz * c.Ny)))
            + (a.Ny * ((b.Nz * c.Nx) - (b.Nx * c.Nz)))
            + (a.Nz * ((b.Nx * c.Ny) - (b.Ny * c.Nx)));
        if (Math.Abs(approximate) > 1e-13)
        {
            return Math.Sign(approximate);
        }

        // Two planes across one axis are parallel.
        if ((a.Axis >= 0 && (a.Axis == b.Axis || a.Axis == c.Axis)) || (b.Axis >= 0 && b.Axis == c.Axis))
        {
            return 0;
        }

        var (ea, eb, ec) = (planes.Exactly(p), planes.Exactly(q), planes.Exactly(r));
        return ExactPoint.Determinant(ea, eb, ec).Sign;
    }

    /// <summary>A point without rounding; slow.</summary>
    public ExactPoint Exactly(int index)
    {
        if (!exact.TryGetValue(index, out var e))
        {
            ref var p = ref points[index];
            e = new(planes.Exactly(p.P), planes.Exactly(p.Q), planes.Exactly(p.R));
            exact.Add(index, e);
        }

        return e;
    }

    private int CloseSide(int index, int plane)
    {
        ref var p = ref points[index];
        for (var i = p.More; i >= 0; i = incidences[i].Next)
        {
            if (incidences[i].Plane == plane)
            {
                return 0;
            }
        }

        ref var s = ref planes[plane];
        int side;
        if (s.Frame is >= 0 and < 3 && (p.ExactMask | (1 << s.Frame)) == 7)
        {
            // A wall along an axis and a point known exactly across it: a turn of doubles.
            var x = p[(s.Frame + 1) % 3];
            var y = p[(s.Frame + 2) % 3];
            side = -Orientation.Turn(s.Ax, s.Ay, s.Bx, s.By, x, y);
        }
        else if (s.Frame >= 0 && !s.IsCap && OnCornerOf(in p, in s))
        {
            side = 0;
        }
        else
        {
            side = Exactly(index).Side(planes.Exactly(plane));
        }

        if (side == 0)
        {
            p.More = incidences.Add(new(plane, p.More));
        }

        return side;
    }

    // Two of the point's planes are walls of the same frame meeting in a corner that the plane also runs through.
    private bool OnCornerOf(in Point p, in Plane s) =>
        CornerOf(p.P, p.Q, in s) || CornerOf(p.Q, p.R, in s) || CornerOf(p.P, p.R, in s);

    private bool CornerOf(int p, int q, in Plane s)
    {
        ref var a = ref planes[p];
        ref var b = ref planes[q];
        return a.Frame == s.Frame
            && b.Frame == s.Frame
            && !a.IsCap
            && !b.IsCap
            && Plane.ShareCorner(in a, in b, out var x, out var y)
            && s.HasCorner(x, y);
    }

    private int Locate(int p, int q, int r, double det)
    {
        var point = new Point
        {
            P = p,
            Q = q,
            R = r,
            More = -1,
        };
        PointPlacer.Place(ref point, planes, det);
        var far = 4 * planes.Scale;
        if (!(Math.Abs(point.X) < far && Math.Abs(point.Y) < far && Math.Abs(point.Z) < far))
        {
            return -1;
        }

        var index = points.Add(point);
        var known = FindEqual(index);
        if (known >= 0)
        {
            points.CutBack(index);
            exact.Remove(index);
            return known;
        }

        ref var stored = ref points[index];
        var (x, y, z) = Cell(stored.X, stored.Y, stored.Z);
        ref var head = ref cells.Find(Key(x, y, z), -1, out _);
        stored.NextInCell = head;
        head = index;
        return index;
    }

    private int FindEqual(int index)
    {
        ref var p = ref points[index];
        var reach = 2 * p.Error;
        if (reach > cellSize / 8)
        {
            reach = cellSize / 8;
        }

        // Almost always one cell; its neighbours too where the point is within its error of their border.
        var low = Cell(p.X - reach, p.Y - reach, p.Z - reach);
        var high = Cell(p.X + reach, p.Y + reach, p.Z + reach);
        for (var x = low.X; x <= high.X; x++)
        {
            for (var y = low.Y; y <= high.Y; y++)
            {
                for (var z = low.Z; z <= high.Z; z++)
                {
                    for (var other = cells.Find(Key(x, y, z), -1, out _); other >= 0; other = points[other].NextInCell)
                    {
                        if (Same(index, other))
                        {
                            return other;
                        }
                    }
                }
            }
        }

        return -1;
    }

    private bool Same(int index, int other)
    {
        ref var p = ref points[index];
        ref var o = ref points[other];
        var error = p.Error + o.Error;
        if (Math.Abs(p.X - o.X) > error || Math.Abs(p.Y - o.Y) > error || Math.Abs(p.Z - o.Z) > error)
        {
            return false;
        }

        if (Side(other, p.P) != 0 || Side(other, p.Q) != 0 || Side(other, p.R) != 0)
        {
            return false;
        }

        // The other now knows these planes as its own; take over exact coordinates as well.
        for (var axis = 0; axis < 3; axis++)
        {
            if ((p.ExactMask & (1 << axis)) != 0)
            {
                o[axis] = p[axis];
            }
        }

        o.ExactMask |= p.ExactMask;
        Remember(other, p.P);
        Remember(other, p.Q);
        Remember(other, p.R);
        return true;
    }

    private void Remember(int index, int plane)
    {
        ref var p = ref points[index];
        if (p.P == plane || p.Q == plane || p.R == plane)
        {
            return;
        }

        for (var i = p.More; i >= 0; i = incidences[i].Next)
        {
            if (incidences[i].Plane == plane)
            {
                return;
            }
        }

        p.More = incidences.Add(new(plane, p.More));
    }

    // Cells that share a key are only looked through in vain.
    private static ulong Key(long x, long y, long z) =>
        ((ulong)x * 0x8DA6B343ul) ^ ((ulong)y * 0xD8163841D8163841ul) ^ ((ulong)z * 0xCB1AB31F5ul);

    // The offset keeps whole coordinates away from the borders of cells.
    private (long X, long Y, long Z) Cell(double x, double y, double z) =>
        (
            (long)Math.Floor((x / cellSize) + 0.381966),
            (long)Math.Floor((y / cellSize) + 0.381966),
            (long)Math.Floor((z / cellSize) + 0.381966)
        );

    private readonly record struct Incidence(int Plane, int Next);
}
