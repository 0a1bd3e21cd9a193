using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>
/// The shape run along an edge: what a cutter takes away there. Points are told as in from the edge and down from the face;
/// the edge itself, where face and edge meet, is (0, 0).
/// </summary>
/// <param name="Kind">What the cut is called.</param>
/// <param name="Called">Its name with its size, as it is asked for: "ogee 1/2".</param>
/// <param name="Outline">What is taken away; the first corner is the edge itself, the last one lies on the edge side.</param>
internal sealed record EdgeShape(CutKind Kind, string Called, IReadOnlyList<OutlineCorner> Outline)
{
    /// <summary>How far it reaches over the face, in from the edge.</summary>
    public Length In => Outline.Aggregate(Length.Zero, (most, corner) => Length.Max(most, corner.A));

    /// <summary>How far it reaches down the edge from the face.</summary>
    public Length Down => Outline.Aggregate(Length.Zero, (most, corner) => Length.Max(most, corner.B));

    /// <summary>A corner taken off straight.</summary>
    public static EdgeShape Chamfer(Length across, Length down, string called) =>
        new(CutKind.Chamfer, called, [(Length.Zero, Length.Zero), (across, Length.Zero), (Length.Zero, down)]);
}
