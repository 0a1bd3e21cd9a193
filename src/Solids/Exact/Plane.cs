namespace Dryfit.Solids.Exact;

/// <summary>
/// A plane of the construction, named by its index in the <see cref="PlaneTable"/>. The doubles are an approximation with a
/// bound; what the plane exactly is follows from its definition.
/// </summary>
internal struct Plane
{
    /// <summary>0, 1, 2 for a plane x, y, z = D (exactly); -1 for any other.</summary>
    public int Axis;

    /// <summary>Unit normal and offset: N·p = D. Exact for an axis plane.</summary>
    public double Nx;
    public double Ny;
    public double Nz;
    public double D;

    /// <summary>Bound of the error of N·p - D for points within the scale of the table.</summary>
    public double Error;

    /// <summary>Bit k set where the plane is known to be parallel to axis k.</summary>
    public int Along;

    /// <summary>The frame it is defined in; 0, 1, 2 are the upright frames along x, y, z.</summary>
    public int Frame;

    /// <summary>A wall through two corners of the frame, or a cap at height Ax.</summary>
    public bool IsCap;
    public double Ax;
    public double Ay;
    public double Bx;
    public double By;

    public readonly double Evaluate(double x, double y, double z) => (Nx * x) + (Ny * y) + (Nz * z) - D;

    /// <summary>Whether two walls of one frame share a corner (ends of their lines), and which.</summary>
    public static bool ShareCorner(in Plane a, in Plane b, out double x, out double y)
    {
        (x, y) = (a.Ax, a.Ay);
        if ((b.Ax == x && b.Ay == y) || (b.Bx == x && b.By == y))
        {
            return true;
        }

        (x, y) = (a.Bx, a.By);
        return (b.Ax == x && b.Ay == y) || (b.Bx == x && b.By == y);
    }

    public readonly bool HasCorner(double x, double y) => (Ax == x && Ay == y) || (Bx == x && By == y);
}

/// <summary>A·x + B·y + C·z = D without rounding.</summary>
internal sealed record ExactPlane(Dyadic A, Dyadic B, Dyadic C, Dyadic D);
