using Dryfit.Solids.Measuring;

namespace Dryfit.Solids;

/// <summary>Cuts solids with a plane to look at.</summary>
public static class Section
{
    /// <summary>
    /// The outlines of a placed solid in the plane of a frame's U and V, in the frame's own coordinates: counter-clockwise
    /// around material, clockwise around holes. Where a face lies in the plane the side of W counts. A round that is cut square
    /// to its axis comes out as true arcs, but for facets that another cut has shortened; a slanted one as its facets.
    /// Corners are right to a few roundings of the largest coordinate.
    /// </summary>
    public static IReadOnlyList<Profile> At(Placed placed, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(placed);
        return new SectionWalk(placed, frame).Outlines();
    }

    /// <summary>The area within outlines with their arcs as chords, as the faceted solid has it, holes taken off; square grid
    /// units.</summary>
    public static double Area(IReadOnlyList<Profile> outlines)
    {
        ArgumentNullException.ThrowIfNull(outlines);
        var twice = 0.0;
        foreach (var outline in outlines)
        {
            for (var i = 0; i < outline.Count; i++)
            {
                var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
                twice += (a.X * b.Y) - (a.Y * b.X);
            }
        }

        return twice / 2;
    }

    /// <summary>The area within outlines with their arcs true, holes taken off; square grid units.</summary>
    public static double RoundArea(IReadOnlyList<Profile> outlines)
    {
        ArgumentNullException.ThrowIfNull(outlines);
        return outlines.Sum(outline => outline.Area);
    }
}
