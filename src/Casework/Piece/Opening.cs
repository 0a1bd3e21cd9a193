using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>An opening of a carcase's front, in the plane of the front: what bounds it and what fills it.</summary>
/// <param name="Id">Unique in the piece.</param>
/// <param name="Name">As a maker says it: "upper left opening".</param>
/// <param name="Clear">The clear space, in the frame of the group that closes it: X and Z bound it, Y runs from the face of the frame (or the front edge of the
/// carcase) to the inside of the back.</param>
/// <param name="Bounds">Ids of the parts around it: left, right, bottom, top (several a side where parts change).</param>
/// <param name="AsMeasured">What was measured on the bench, where the recipe says so; fronts are judged against it.</param>
public sealed record Opening(
    string Id,
    string Name,
    Extent Clear,
    OpeningBounds Bounds,
    MeasuredOpening? AsMeasured,
    SourcePlace Source
)
{
    /// <summary>Its clear width, height and depth with their sums; none where they are as found.</summary>
    public IReadOnlyList<NamedSize> Sizes { get; init; } = [];
}

/// <summary>Ids of the parts whose edges make the opening, by side.</summary>
public sealed record OpeningBounds(
    IReadOnlyList<string> Left,
    IReadOnlyList<string> Right,
    IReadOnlyList<string> Bottom,
    IReadOnlyList<string> Top
);

/// <summary>An opening as found: its four sides as a tape reads them.</summary>
public sealed record MeasuredOpening(
    Length WidthAtBottom,
    Length WidthAtTop,
    Length HeightAtLeft,
    Length HeightAtRight
);
