using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>A hollow arch sawn out of an edge: part of one circle, told by its span and its rise.</summary>
internal static class EdgeArch
{
    /// <param name="edge">The edge that is hollowed, as a direction of the piece.</param>
    /// <param name="rise">How far the middle of the arch stands off the edge.</param>
    /// <param name="from">Where the arch starts along the edge, in the piece.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="face">A face that looks along neither the edge nor the arch: the arch is sawn square to it.</param>
    public static void Cut(PartDraft part, Direction edge, Direction face, Length rise, Length from, Length to)
    {
        var span = to - from;
        var left = part.Extent.Size(edge.Axis()) - rise;
        if (span <= Length.Zero || rise <= Length.Zero || rise * 2 > span)
            throw Refuse(part, "is no part of a circle", "a rise of no more than half of the span");
        if (left <= Length.Zero)
            throw Refuse(part, "leaves nothing of it", "an arch that rises less, or a wider board");
        var along = Directions.Cross(edge, face).Axis();
        var start = Swept.Corner(part.Extent, edge, face).With(along, from);
        // By the theorem of intersecting chords: half span x half span = rise x (2 radius - rise).
        var radius = ((span * (span / rise) / 4) + rise) / 2;
        Swept.Cut(
            part,
            CutKind.Arch,
            start,
            Directions.Along(along, 1),
            edge.Opposite(),
            [(Length.Zero, Length.Zero), new(span, Length.Zero, new(span / 2, rise - radius, Clockwise: false))]
        );
    }

    private static CannotBuildException Refuse(PartDraft part, string why, string wanted) =>
        new(new InputError($"The arch in the {part.Name} {why}.", part.Source, wanted));
}
