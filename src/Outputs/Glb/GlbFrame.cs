using System.Numerics;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Outputs.Glb;

/// <summary>
/// From the piece's grid to the numbers of a glTF file. glTF is in metres with Y up and the front towards +Z, so that a
/// point (x, y, z) of the piece stands at (x, z, -y), measured from the middle of its base.
/// <para>
/// A float holds neither 1/64 in nor 0.1 mm of metres exactly. So all numbers under the root node are in a unit that is a
/// power of two of grid units, between half a metre and one metre, and the root node alone is scaled to metres by
/// <see cref="RootScale"/>. Corners then are exactly the solids' corners up to 13 m, what touches touches, gaps are what
/// they are, and the lowest point is exactly 0; only the size of the whole is rounded, to 1 part in 30 million.
/// </para>
/// </summary>
internal sealed class GlbFrame
{
    private readonly double _gridUnits;
    private readonly Vec3 _baseCentre;

    private GlbFrame(double gridUnits, float rootScale, Vec3 baseCentre) =>
        (_gridUnits, RootScale, _baseCentre) = (gridUnits, rootScale, baseCentre);

    /// <summary>Metres a unit; above a half and not above 1.</summary>
    public float RootScale { get; }

    /// <summary>The frame in which the box around the parts stands on 0 with the middle of its base at the origin.</summary>
    public static GlbFrame Of(Grid grid, IEnumerable<Part> parts)
    {
        const double MmPerMetre = 1000;
        var unitsPerMetre = grid.UnitsPerMm * MmPerMetre;
        var gridUnits = Math.Pow(2, Math.Floor(Math.Log2(unitsPerMetre)));
        var min = new Vec3(double.MaxValue, double.MaxValue, double.MaxValue);
        var max = min * -1;
        foreach (var part in parts)
        {
            foreach (var vertex in part.Solid.Vertices)
            {
                var p = part.Placed.Frame.ToWorld(vertex);
                min = new(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y), Math.Min(min.Z, p.Z));
                max = new(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y), Math.Max(max.Z, p.Z));
            }
        }

        // Half units are whole numbers of the file; the ends of what is turned lie anywhere.
        var (twiceX, twiceY) = (Math.Round(min.X + max.X), Math.Round(min.Y + max.Y));
        return new(gridUnits, (float)(gridUnits / unitsPerMetre), new(twiceX / 2, twiceY / 2, min.Z));
    }

    /// <summary>A turn in plan, counter-clockwise from above: about +Y.</summary>
    public static Quaternion Turned(Rational degrees)
    {
        var (sin, cos) = Math.SinCos(degrees.ToDouble() * Math.PI / 360);
        return new(0, (float)sin, 0, (float)cos);
    }

    /// <summary>A point of the piece.</summary>
    public Vector3 Point(Vec3 gridPoint) => Length(gridPoint - _baseCentre);

    /// <summary>A way from one point of the piece to another.</summary>
    public Vector3 Length(Vec3 gridUnits) => Direction(gridUnits * (1 / _gridUnits));

    /// <summary>A direction of the piece.</summary>
    public static Vector3 Direction(Vec3 d) => new((float)d.X, (float)d.Z, (float)(0 - d.Y));

    /// <summary>A point of a board, in board coordinates: these keep their axes.</summary>
    public Vector3 BoardPoint(Vec3 gridPoint)
    {
        var p = gridPoint * (1 / _gridUnits);
        return new((float)p.X, (float)p.Y, (float)p.Z);
    }
}
