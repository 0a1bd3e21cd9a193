namespace Dryfit.Solids.Exact;

/// <summary>All planes of one construction; two that coincide exactly have one index.</summary>
internal sealed class PlaneTable
{
    /// <summary>2^-53.</summary>
    public const double UnitRoundOff = 1.1102230246251565e-16;

    private readonly Store<Plane> planes = new();
    private readonly Store<FrameAt> frames = new();
    private ExactPlane?[] exact = [];

    public int Count => planes.Count;

    /// <summary>No coordinate that takes part is larger than this.</summary>
    public double Scale { get; private set; }

    public ref Plane this[int index] => ref planes[index];

    public void Clear(double scale)
    {
        Scale = scale;
        Array.Clear(exact, 0, Math.Min(exact.Length, planes.Count));
        planes.Clear();
        frames.Clear();
        for (var axis = 0; axis < 3; axis++)
        {
            frames.Add(new(Upright(axis), Frame.Identity, IsPlaced: false));
        }
    }

    /// <summary>The frame along an axis: its own two coordinates are the next two axes in turn.</summary>
    public static Frame Upright(int axis) =>
        axis switch
        {
            0 => new(default, new(0, 1, 0), new(0, 0, 1), new(1, 0, 0)),
            1 => new(default, new(0, 0, 1), new(1, 0, 0), new(0, 1, 0)),
            _ => Frame.Identity,
        };

    /// <summary>Adds a frame for walls and caps. With <paramref name="place"/> the frame is itself in board coordinates
    /// that the place carries to the world.</summary>
    public int AddFrame(in Frame frame, in Frame? place) =>
        frames.Add(new(frame, place ?? Frame.Identity, place is not null));

    public Vec3 ToWorld(int frame, Vec3 point)
    {
        ref var at = ref frames[frame];
        var inner = at.Frame.ToWorld(point);
        return at.IsPlaced ? at.Place.ToWorld(inner) : inner;
    }

    public int AddAxis(int axis, double value)
    {
        for (var i = 0; i < planes.Count; i++)
        {
            ref var known = ref planes[i];
            if (known.Axis == axis && known.D == value)
            {
                return i;
            }
        }

        return planes.Add(
            new()
            {
                Axis = axis,
                Nx = axis == 0 ? 1 : 0,
                Ny = axis == 1 ? 1 : 0,
                Nz = axis == 2 ? 1 : 0,
                D = value,
                Along = 7 & ~(1 << axis),
                Frame = -1,
            }
        );
    }

    /// <summary>The wall through corners a and b of a frame; outside is to the right of the way from a to b.
    /// The sign is 1 where the plane's own normal points outside, -1 where it points inside.</summary>
    public int AddWall(int frame, double ax, double ay, double bx, double by, out int sign)
    {
        if (frame < 3 && ax == bx)
        {
            sign = by > ay ? 1 : -1;
            return AddAxis((frame + 1) % 3, ax);
        }

        if (frame < 3 && ay == by)
        {
            sign = ax > bx ? 1 : -1;
            return AddAxis((frame + 2) % 3, ay);
        }

        ref var at = ref frames[frame];
        var (nx, ny) = (by - ay, ax - bx);
        var length = Math.Sqrt((nx * nx) + (ny * ny));
        var normal = (at.Frame.U * (nx / length)) + (at.Frame.V * (ny / length));
        return AddGeneral(
            new()
            {
                Frame = frame,
                Ax = ax,
                Ay = ay,
                Bx = bx,
                By = by,
                Along = frame < 3 ? 1 << frame : 0,
            },
            normal,
            ToWorld(frame, new(ax, ay, 0)),
            out sign
        );
    }

    /// <summary>The plane at a height of a tilted frame; outside is upwards.</summary>
    public int AddCap(int frame, double height, out int sign) =>
        AddGeneral(
            new()
            {
                Frame = frame,
                Ax = height,
                IsCap = true,
            },
            frames[frame].Frame.W,
            ToWorld(frame, new(0, 0, height)),
            out sign
        );

    public ExactPlane Exactly(int index)
    {
        if (exact.Length < planes.Count)
        {
            Array.Resize(ref exact, planes.Count * 2);
        }

        return exact[index] ??= Define(in planes[index]);
    }

    private int AddGeneral(Plane plane, Vec3 normal, Vec3 through, out int sign)
    {
        ref var at = ref frames[plane.Frame];
        if (at.IsPlaced)
        {
            normal = (at.Place.U * normal.X) + (at.Place.V * normal.Y) + (at.Place.W * normal.Z);
        }

        plane.Axis = -1;
        (plane.Nx, plane.Ny, plane.Nz) = (normal.X, normal.Y, normal.Z);
        plane.D = Vec3.Dot(normal, through);

        // The normal is a sum of products of given doubles, right to some 16 roundings; offsets add as many of the scale.
        plane.Error = 128 * UnitRoundOff * Scale;
        var candidate = planes.Add(plane);
        if (AsAxisPlane(candidate, out sign) is var same and >= 0)
        {
            return same;
        }

        for (var i = 0; i < candidate; i++)
        {
            if (planes[i].Axis < 0 && Coincide(i, candidate, through, out sign))
            {
                TakeBack(candidate);
                return i;
            }
        }

        sign = 1;
        return candidate;
    }

    private void TakeBack(int candidate)
    {
        planes.CutBack(candidate);
        if (exact.Length > candidate)
        {
            exact[candidate] = null;
        }
    }

    // A turned frame may still have walls exactly across an axis; they are axis planes where their place is a double.
    private int AsAxisPlane(int candidate, out int sign)
    {
        ref var plane = ref planes[candidate];
        sign = 1;
        var axis =
            Math.Abs(plane.Nx) > 1 - 1e-12 ? 0
            : Math.Abs(plane.Ny) > 1 - 1e-12 ? 1
            : Math.Abs(plane.Nz) > 1 - 1e-12 ? 2
            : -1;
        if (axis < 0)
        {
            return -1;
        }

        var e = Exactly(candidate);
        var (along, across, upwards) = axis switch
        {
            0 => (e.A, e.B, e.C),
            1 => (e.B, e.C, e.A),
            _ => (e.C, e.A, e.B),
        };
        var value = Dyadic.Divide(e.D, along);
        if (across.Sign != 0 || upwards.Sign != 0 || ((along * value) - e.D).Sign != 0)
        {
            return -1;
        }

        sign = along.Sign;
        TakeBack(candidate);
        return AddAxis(axis, value);
    }

    private bool Coincide(int known, int candidate, Vec3 through, out int sign)
    {
        ref var a = ref planes[known];
        ref var b = ref planes[candidate];
        var dot = (a.Nx * b.Nx) + (a.Ny * b.Ny) + (a.Nz * b.Nz);
        sign = dot > 0 ? 1 : -1;
        if (Math.Abs(dot) < 1 - 1e-9 || Math.Abs(a.Evaluate(through.X, through.Y, through.Z)) > 4 * (a.Error + b.Error))
        {
            return false;
        }

        if (
            a.Frame == b.Frame
            && a.IsCap == b.IsCap
            && (
                (a.Ax == b.Ax && a.Ay == b.Ay && a.Bx == b.Bx && a.By == b.By)
                || (a.Ax == b.Bx && a.Ay == b.By && a.Bx == b.Ax && a.By == b.Ay)
            )
        )
        {
            return true;
        }

        var p = Exactly(known);
        var q = Exactly(candidate);
        return ((p.A * q.B) - (p.B * q.A)).Sign == 0
            && ((p.A * q.C) - (p.C * q.A)).Sign == 0
            && ((p.B * q.C) - (p.C * q.B)).Sign == 0
            && ((p.A * q.D) - (p.D * q.A)).Sign == 0
            && ((p.B * q.D) - (p.D * q.B)).Sign == 0
            && ((p.C * q.D) - (p.D * q.C)).Sign == 0;
    }

    private ExactPlane Define(in Plane plane)
    {
        if (plane.Axis >= 0)
        {
            return new(plane.Nx, plane.Ny, plane.Nz, plane.D);
        }

        ref var at = ref frames[plane.Frame];
        var (o, u, v, w) = (at.Frame.Origin, at.Frame.U, at.Frame.V, at.Frame.W);
        ExactPlane inner;
        if (plane.IsCap)
        {
            inner = new(w.X, w.Y, w.Z, Dot(w, o.X, o.Y, o.Z) + plane.Ax);
        }
        else
        {
            var nx = (Dyadic)plane.By - plane.Ay;
            var ny = (Dyadic)plane.Ax - plane.Bx;
            var a = (nx * u.X) + (ny * v.X);
            var b = (nx * u.Y) + (ny * v.Y);
            var c = (nx * u.Z) + (ny * v.Z);
            inner = new(a, b, c, (a * o.X) + (b * o.Y) + (c * o.Z) + (nx * plane.Ax) + (ny * plane.Ay));
        }

        return at.IsPlaced ? Carry(inner, at.Place) : inner;
    }

    // The plane n·p = d of a board, in the world where p = R^T (x - o): (R n)·x = d + (R n)·o.
    private static ExactPlane Carry(ExactPlane plane, in Frame place)
    {
        var (o, u, v, w) = (place.Origin, place.U, place.V, place.W);
        var a = (plane.A * u.X) + (plane.B * v.X) + (plane.C * w.X);
        var b = (plane.A * u.Y) + (plane.B * v.Y) + (plane.C * w.Y);
        var c = (plane.A * u.Z) + (plane.B * v.Z) + (plane.C * w.Z);
        return new(a, b, c, plane.D + (a * o.X) + (b * o.Y) + (c * o.Z));
    }

    private static Dyadic Dot(Vec3 a, Dyadic x, Dyadic y, Dyadic z) => (a.X * x) + (a.Y * y) + (a.Z * z);

    private readonly record struct FrameAt(Frame Frame, Frame Place, bool IsPlaced);
}
