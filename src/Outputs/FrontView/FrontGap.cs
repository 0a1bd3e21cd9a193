using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>The gap along one edge of a front, as measured on the outlines of the solids.</summary>
/// <param name="Front">The door or drawer.</param>
/// <param name="Side">Which of its edges.</param>
/// <param name="Smallest">The narrowest place; zero where the two touch or overlap.</param>
/// <param name="Largest">The widest place.</param>
/// <param name="Courses">The gap itself, cut into straight stretches along the edge.</param>
internal sealed record FrontGap(
    Front Front,
    Direction Side,
    Length Smallest,
    Length Largest,
    IReadOnlyList<GapCourse> Courses
);

/// <summary>A straight stretch of a gap: its two ends on the front and the two ends opposite, in grid units.</summary>
internal readonly record struct GapCourse(Vec2 FrontStart, Vec2 FrontEnd, Vec2 OtherStart, Vec2 OtherEnd)
{
    public bool GoesOnIn(GapCourse next) => FrontEnd == next.FrontStart && OtherEnd == next.OtherStart;
}
