using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// One flat of a part that looks to the front, as it is seen from there: X to the right, Z up (as Y of the points), in
/// units of the piece's grid.
/// </summary>
/// <param name="Part">Index of its part in the piece.</param>
/// <param name="Loops">Its outline: outer loops one way round, holes the other, no three points in a line.</param>
/// <param name="NearestY">Depth of its nearest point; smaller is nearer.</param>
/// <param name="FarthestY">Depth of its farthest point; the same on a flat square to the view.</param>
/// <param name="Bounds">The box around its outline.</param>
/// <param name="Lean">How its depth grows to the right and up; none on a flat square to the view, nor told of a bore.</param>
/// <param name="Behind">Depth of its nearest point where its part is seen squarely, however it is turned in plan.</param>
/// <param name="IsRound">True for the wall of a bore or another round.</param>
internal sealed record FrontFace(
    int Part,
    IReadOnlyList<IReadOnlyList<Vec2>> Loops,
    double NearestY,
    double FarthestY,
    Span2 Bounds,
    Lean Lean,
    double Behind,
    bool IsRound = false
)
{
    /// <summary>Its depth at a point of the view, on the flat that it is part of.</summary>
    public double DepthAt(double x, double z) => Lean.At + (Lean.ToTheRight * x) + (Lean.Up * z);

    /// <summary>True where the outline is its own box, so that it covers all of it.</summary>
    public bool IsBox =>
        Loops.Count == 1
        && Loops[0].Count == 4
        && Loops[0]
            .All(point =>
                (point.X == Bounds.MinX || point.X == Bounds.MaxX) && (point.Y == Bounds.MinZ || point.Y == Bounds.MaxZ)
            );
}

/// <summary>The flat of a face: its depth is <c>At + x ToTheRight + z Up</c>.</summary>
internal readonly record struct Lean(double At, double ToTheRight, double Up)
{
    public static Lean Square(double depth) => new(depth, 0, 0);
}

/// <summary>A box of the front view in grid units.</summary>
internal readonly record struct Span2(double MinX, double MinZ, double MaxX, double MaxZ)
{
    public double Width => MaxX - MinX;

    public double Height => MaxZ - MinZ;

    public bool Covers(Span2 other) =>
        MinX <= other.MinX && MinZ <= other.MinZ && MaxX >= other.MaxX && MaxZ >= other.MaxZ;

    public static Span2 Around(IEnumerable<Vec2> points)
    {
        var (minX, minZ, maxX, maxZ) = (
            double.PositiveInfinity,
            double.PositiveInfinity,
            double.NegativeInfinity,
            double.NegativeInfinity
        );
        foreach (var point in points)
        {
            minX = Math.Min(minX, point.X);
            minZ = Math.Min(minZ, point.Y);
            maxX = Math.Max(maxX, point.X);
            maxZ = Math.Max(maxZ, point.Y);
        }
        return new(minX, minZ, maxX, maxZ);
    }

    public static Span2 Around(Span2 a, Span2 b) =>
        new(Math.Min(a.MinX, b.MinX), Math.Min(a.MinZ, b.MinZ), Math.Max(a.MaxX, b.MaxX), Math.Max(a.MaxZ, b.MaxZ));
}
