using Dryfit.Solids.Shaping;

namespace Dryfit.Solids;

/// <summary>What a bored part measures with its holes truly round.</summary>
public static class Round
{
    /// <summary>
    /// Volume with every wall of a bore bulged out from its polygon to the circle: each facet gives the segment between chord
    /// and arc times its mean length. Exact for walls that end square or on a slant that is flat across the hole; where other
    /// cuts meet a wall the error is at most the volume of the segments there.
    /// </summary>
    public static double Volume(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        var volume = solid.Volume;
        foreach (var face in solid.Faces)
        {
            if (face.Surface is CylinderSurface round && solid.Cuts[face.Cut] is BoreCut bore)
            {
                var angle = 2 * Math.PI / bore.Segments;
                var segment = (angle - Math.Sin(angle)) / 2 * round.Radius * round.Radius;
                var length = Area(solid, face) / (RoundTable.Of(bore.Segments).Side * round.Radius);
                volume -= segment * length;
            }
        }

        return volume;
    }

    private static double Area(Solid solid, Face face)
    {
        var area = 0.0;
        for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i += 3)
        {
            var a = solid.Vertices[solid.Triangles[i]];
            var cross = Vec3.Cross(
                solid.Vertices[solid.Triangles[i + 1]] - a,
                solid.Vertices[solid.Triangles[i + 2]] - a
            );
            area += Math.Sqrt(Vec3.Dot(cross, cross)) / 2;
        }

        return area;
    }
}
