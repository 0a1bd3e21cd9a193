namespace Dryfit.Solids.Exact;

/// <summary>Says where the point of three planes lies, as near as doubles can: exactly in every coordinate for which an axis plane or
/// the corner of an outline stands, else by Cramer's rule with a bound on its error.</summary>
internal static class PointPlacer
{
    /// <summary>Fills in the coordinates, how far they may be off, and which of them are exact.</summary>
    /// <param name="point">A point with its three planes.</param>
    /// <param name="planes">All planes.</param>
    /// <param name="det">The determinant of its planes' normals, as rounded.</param>
    public static void Place(ref Point point, PlaneTable planes, double det)
    {
        ref var a = ref planes[point.P];
        ref var b = ref planes[point.Q];
        ref var c = ref planes[point.R];
        var error = a.Error + b.Error + c.Error;
        if (error == 0)
        {
            Fix(ref point, in a);
            Fix(ref point, in b);
            Fix(ref point, in c);
            return;
        }

        if (Math.Abs(det) < 1e-5)
        {
            var e = new ExactPoint(planes.Exactly(point.P), planes.Exactly(point.Q), planes.Exactly(point.R));
            (point.X, point.Y, point.Z) = e.Round();
            point.Error = 8 * PlaneTable.UnitRoundOff * planes.Scale;
        }
        else
        {
            // Cramer: p = (d_a (b x c) + d_b (c x a) + d_c (a x b)) / det.
            point.X =
                (
                    (a.D * ((b.Ny * c.Nz) - (b.Nz * c.Ny)))
                    + (b.D * ((c.Ny * a.Nz) - (c.Nz * a.Ny)))
                    + (c.D * ((a.Ny * b.Nz) - (a.Nz * b.Ny)))
                ) / det;
            point.Y =
                (
                    (a.D * ((b.Nz * c.Nx) - (b.Nx * c.Nz)))
                    + (b.D * ((c.Nz * a.Nx) - (c.Nx * a.Nz)))
                    + (c.D * ((a.Nz * b.Nx) - (a.Nx * b.Nz)))
                ) / det;
            point.Z =
                (
                    (a.D * ((b.Nx * c.Ny) - (b.Ny * c.Nx)))
                    + (b.D * ((c.Nx * a.Ny) - (c.Ny * a.Nx)))
                    + (c.D * ((a.Nx * b.Ny) - (a.Ny * b.Nx)))
                ) / det;
            point.Error = (2 * error / Math.Abs(det)) + (16 * PlaneTable.UnitRoundOff * planes.Scale / Math.Abs(det));
        }

        Fix(ref point, in a);
        Fix(ref point, in b);
        Fix(ref point, in c);
        FixCorner(ref point, in a, in b);
        FixCorner(ref point, in b, in c);
        FixCorner(ref point, in c, in a);
        if (point.ExactMask == 7)
        {
            point.Error = 0;
        }
    }

    private static void Fix(ref Point point, in Plane plane)
    {
        if (plane.Axis >= 0)
        {
            point[plane.Axis] = plane.D;
            point.ExactMask |= 1 << plane.Axis;
        }
    }

    // Two walls along one axis that meet in a corner of an outline meet exactly there.
    private static void FixCorner(ref Point point, in Plane a, in Plane b)
    {
        var wallA = a.Frame is >= 0 and < 3;
        var wallB = b.Frame is >= 0 and < 3;
        double x;
        double y;
        int frame;
        if (wallA && wallB)
        {
            if (a.Frame != b.Frame || !Plane.ShareCorner(in a, in b, out x, out y))
            {
                return;
            }

            frame = a.Frame;
        }
        else if (wallA ? !CornerAcross(in a, in b, out x, out y) : !wallB || !CornerAcross(in b, in a, out x, out y))
        {
            return;
        }
        else
        {
            frame = wallA ? a.Frame : b.Frame;
        }

        point[(frame + 1) % 3] = x;
        point[(frame + 2) % 3] = y;
        point.ExactMask |= 7 & ~(1 << frame);
    }

    // The corner of a wall that lies on an axis plane parallel to the wall's axis.
    private static bool CornerAcross(in Plane wall, in Plane axis, out double x, out double y)
    {
        (x, y) = (wall.Ax, wall.Ay);
        if (axis.Axis < 0 || axis.Axis == wall.Frame)
        {
            return false;
        }

        var first = axis.Axis == (wall.Frame + 1) % 3;
        if ((first ? x : y) == axis.D)
        {
            return true;
        }

        (x, y) = (wall.Bx, wall.By);
        return (first ? x : y) == axis.D;
    }
}
