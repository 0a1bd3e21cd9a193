namespace Dryfit.Solids.Shaping;

/// <summary>A convex prism that is kept (a blank) or taken away (a cut, or one convex piece of a cut).</summary>
internal struct Body
{
    /// <summary>Index of the cut it belongs to; -1 for a blank.</summary>
    public int Cut;
    public bool IsKept;
    public int FirstFace;
    public int FaceCount;
    public int FirstCorner;
    public int CornerCount;
    public Bounds Bounds;

    /// <summary>Whether two of its faces, f before g, share an edge: walls go around in order, the two ends come last.</summary>
    public readonly bool AreNeighbours(int f, int g)
    {
        var bottom = FirstFace + FaceCount - 2;
        return g >= bottom ? f < bottom : g == f + 1 || (f == FirstFace && g == bottom - 1);
    }
}

/// <summary>One side of a body.</summary>
internal struct BodyFace
{
    public int Body;
    public int Plane;

    /// <summary>1 where the plane's normal points out of the body, -1 where it points in.</summary>
    public int Outward;

    /// <summary>True between two pieces of one cut: it parts them but is no face of the cut.</summary>
    public bool IsSeam;
    public Bounds Bounds;
}

/// <summary>A box that may be a hair too large, never too small.</summary>
internal struct Bounds
{
    public double MinX;
    public double MinY;
    public double MinZ;
    public double MaxX;
    public double MaxY;
    public double MaxZ;

    public static Bounds Empty { get; } =
        new()
        {
            MinX = double.PositiveInfinity,
            MinY = double.PositiveInfinity,
            MinZ = double.PositiveInfinity,
            MaxX = double.NegativeInfinity,
            MaxY = double.NegativeInfinity,
            MaxZ = double.NegativeInfinity,
        };

    public static Box Around(ReadOnlySpan<Vec3> points)
    {
        if (points.Length == 0)
        {
            return default;
        }

        var bounds = Empty;
        foreach (var point in points)
        {
            bounds.Include(point);
        }

        return bounds.ToBox();
    }

    public readonly Box ToBox() => new(new(MinX, MinY, MinZ), new(MaxX, MaxY, MaxZ));

    public readonly bool IsEmpty => MinX > MaxX || MinY > MaxY || MinZ > MaxZ;

    public void Include(Vec3 p)
    {
        MinX = Math.Min(MinX, p.X);
        MinY = Math.Min(MinY, p.Y);
        MinZ = Math.Min(MinZ, p.Z);
        MaxX = Math.Max(MaxX, p.X);
        MaxY = Math.Max(MaxY, p.Y);
        MaxZ = Math.Max(MaxZ, p.Z);
    }

    public readonly bool Touches(in Bounds o) =>
        MinX <= o.MaxX && o.MinX <= MaxX && MinY <= o.MaxY && o.MinY <= MaxY && MinZ <= o.MaxZ && o.MinZ <= MaxZ;

    public readonly bool Holds(double x, double y, double z) =>
        MinX <= x && x <= MaxX && MinY <= y && y <= MaxY && MinZ <= z && z <= MaxZ;

    public readonly Bounds Grown(double by) =>
        new()
        {
            MinX = MinX - by,
            MinY = MinY - by,
            MinZ = MinZ - by,
            MaxX = MaxX + by,
            MaxY = MaxY + by,
            MaxZ = MaxZ + by,
        };

    public readonly Bounds Common(in Bounds o) =>
        new()
        {
            MinX = Math.Max(MinX, o.MinX),
            MinY = Math.Max(MinY, o.MinY),
            MinZ = Math.Max(MinZ, o.MinZ),
            MaxX = Math.Min(MaxX, o.MaxX),
            MaxY = Math.Min(MaxY, o.MaxY),
            MaxZ = Math.Min(MaxZ, o.MaxZ),
        };

    public readonly Bounds Union(in Bounds o) =>
        new()
        {
            MinX = Math.Min(MinX, o.MinX),
            MinY = Math.Min(MinY, o.MinY),
            MinZ = Math.Min(MinZ, o.MinZ),
            MaxX = Math.Max(MaxX, o.MaxX),
            MaxY = Math.Max(MaxY, o.MaxY),
            MaxZ = Math.Max(MaxZ, o.MaxZ),
        };
}
