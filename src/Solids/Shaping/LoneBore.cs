namespace Dryfit.Solids.Shaping;

/// <summary>
/// A bore that meets nothing but the blank: in through one face (or through two), clear of all other cuts. Its walls and its
/// bottom are known without any search; only its mouths are left out of the blank's faces.
/// </summary>
internal struct LoneBore
{
    public int Cut;
    public BoreCut Bore;
    public RoundTable Round;

    /// <summary>The axis across the faces with its mouths.</summary>
    public int Axis;

    /// <summary>Whether its lower end (where its depth starts) and its upper end are mouths.</summary>
    public bool IsLowMouth;
    public bool IsHighMouth;

    /// <summary>The coordinate of the blank's faces where its ends are mouths.</summary>
    public double LowFace;
    public double HighFace;

    /// <summary>Index of the first corner at its lower end; those of its upper end follow.</summary>
    public int FirstVertex;

    public readonly int Segments => Bore.Segments;

    /// <summary>The depth along W at which the axis a u + b v + t w is in a face.</summary>
    public readonly double DepthAt(double face, Vec2 corner)
    {
        var frame = Bore.Frame;
        return (face - frame.Origin.At(Axis) - (frame.U.At(Axis) * corner.X) - (frame.V.At(Axis) * corner.Y))
            / frame.W.At(Axis);
    }

    /// <summary>Writes the corners of both ends.</summary>
    public readonly void WriteCorners(Span<Vec3> vertices)
    {
        var frame = Bore.Frame;
        var corners = Round.Corners;
        for (var i = 0; i < corners.Length; i++)
        {
            var corner = new Vec2(Bore.Radius * corners[i].X, Bore.Radius * corners[i].Y);
            var foot = frame.ToWorld(new(corner.X, corner.Y, 0));
            vertices[FirstVertex + i] = IsLowMouth ? OnFace(foot, corner, LowFace) : foot;
            vertices[FirstVertex + corners.Length + i] = IsHighMouth
                ? OnFace(foot, corner, HighFace)
                : foot + (frame.W * Bore.Depth);
        }
    }

    private readonly Vec3 OnFace(Vec3 foot, Vec2 corner, double face)
    {
        var p = foot + (Bore.Frame.W * DepthAt(face, corner));
        return Axis switch
        {
            0 => p with { X = face },
            1 => p with { Y = face },
            _ => p with { Z = face },
        };
    }
}

internal static class Coordinates
{
    /// <summary>The coordinate along axis 0, 1 or 2.</summary>
    public static double At(this Vec3 p, int axis) =>
        axis switch
        {
            0 => p.X,
            1 => p.Y,
            _ => p.Z,
        };
}
