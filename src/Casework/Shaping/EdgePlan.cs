using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>The shape asked for along some edges of a part.</summary>
/// <param name="Edges">Which edges, as directions of the piece.</param>
/// <param name="Above">Whether it is run from the upper (or show) face.</param>
/// <param name="Below">Whether it is run from the opposite face.</param>
internal sealed record EdgePlan(EdgeShape Shape, IReadOnlyList<Direction> Edges, bool Above, bool Below)
{
    /// <summary>Whether two edges look the same, whichever edges they are.</summary>
    public bool LooksLike(EdgePlan other) =>
        Above == other.Above
        && Below == other.Below
        && Shape.Outlines.Count == other.Shape.Outlines.Count
        && Shape.Outlines.Zip(other.Shape.Outlines).All(pair => pair.First.SequenceEqual(pair.Second));

    /// <summary>Runs the shape along the edges of a part that it has there.</summary>
    /// <param name="face">The face that counts as above.</param>
    /// <param name="stretch">From where to where along the edge; null: all of it.</param>
    public void Cut(PartDraft part, Direction face, (Length From, Length To)? stretch = null)
    {
        foreach (var edge in Edges.Where(edge => edge.Axis() != face.Axis()))
            Cut(part, edge, face, stretch);
    }

    /// <summary>The same for a panel with bands: where an edge has a band, the shape is run along that.</summary>
    public void Cut(BandedPanel panel, Direction face, (Length From, Length To)? stretch = null)
    {
        foreach (var edge in Edges.Where(edge => edge.Axis() != face.Axis()))
        {
            var band = panel.Bands.FirstOrDefault(band => band.Place.Lie.Shows == edge);
            if (band is not null && Shape.In > band.Thickness.Length)
                throw new CannotBuildException(
                    new InputError(
                        $"The {Shape.Called} on the {panel.Panel.Name} goes through its edging.",
                        panel.Panel.Source,
                        "a lipping thicker than the shape reaches in, or a smaller shape"
                    )
                );
            // At a corner a band on the one edge ends in the other: the cutter goes right through.
            var outside = (band ?? panel.Panel).Extent.Side(edge);
            foreach (var part in panel.Parts.Where(part => part.Extent.Side(edge) == outside))
                Cut(part, edge, face, stretch);
        }
    }

    private void Cut(PartDraft part, Direction edge, Direction face, (Length From, Length To)? stretch)
    {
        if (Above)
            ShapedEdge.Cut(part, edge, face, Shape, stretch);
        if (Below)
            ShapedEdge.Cut(part, edge, face.Opposite(), Shape, stretch);
    }
}
