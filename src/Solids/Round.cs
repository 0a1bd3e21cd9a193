namespace Dryfit.Solids;

/// <summary>What a part measures with its rounds truly round.</summary>
public static class Round
{
    /// <summary>
    /// Volume with every facet of a bore or an arc bulged out from its chord to the circle: each gives or takes the segment
    /// between chord and arc times its mean length. Cubic grid units; <see cref="Solid.Volume"/> is the faceted one. Exact for
    /// walls that end square or on a slant that is flat across the facet; where other cuts meet a wall the error is at most the
    /// volume of the segments there. A curve that is no arc counts as its points have it.
    /// </summary>
    public static double Volume(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        var volume = solid.Volume;
        foreach (var face in solid.Faces)
        {
            if (face.Surface is CylinderSurface round && StepOf(solid.Cuts[face.Cut], face.Side) is { } step)
            {
                var segment = (step - Math.Sin(step)) / 2 * round.Radius * round.Radius;
                var width = 2 * round.Radius * Math.Sin(step / 2);
                var corner = solid.Vertices[solid.Triangles[3 * face.FirstTriangle]];
                var isHollow = Vec3.Dot(face.Normal, corner - round.AxisPoint) < 0;
                volume += (isHollow ? -segment : segment) * Area(solid, face) / width;
            }
        }

        return volume;
    }

    // The angle of one facet about its axis, radians.
    private static double? StepOf(Cut cut, int side) =>
        cut switch
        {
            BoreCut bore => 2 * Math.PI / bore.Segments,
            PrismCut prism when side >= 0 && prism.Outline.Sides[side] is ArcSide arc => arc.Angle / arc.Chords,
            _ => null,
        };

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
