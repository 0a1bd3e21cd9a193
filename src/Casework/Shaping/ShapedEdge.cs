using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>Runs a shape along an edge of a part.</summary>
internal static class ShapedEdge
{
    /// <param name="edge">The side of the part that is shaped, as a direction of the piece.</param>
    /// <param name="face">The face beside it from which the shape is told: the top of a shelf, the front of a door.</param>
    /// <param name="stretch">From where to where along the edge, in the piece; null: all of it.</param>
    public static void Cut(
        PartDraft part,
        Direction edge,
        Direction face,
        EdgeShape shape,
        (Length From, Length To)? stretch = null,
        string? joint = null
    )
    {
        if (shape.Down > part.Extent.Size(face.Axis()))
            throw Refuse(part, shape, "is deeper than the part is thick");
        if (shape.In > part.Extent.Size(edge.Axis()))
            throw Refuse(part, shape, "reaches right across the part");
        foreach (var outline in shape.Outlines)
        {
            Swept.Cut(
                part,
                shape.Kind,
                Swept.Corner(part.Extent, edge, face),
                edge.Opposite(),
                face.Opposite(),
                outline,
                stretch,
                joint,
                shape.Called,
                isFurther: outline != shape.Outlines[0]
            );
        }
    }

    private static CannotBuildException Refuse(PartDraft part, EdgeShape shape, string why) =>
        new(
            new InputError(
                $"The {shape.Called} on the {part.Name} {why}.",
                part.Source,
                "a smaller shape, or thicker stuff"
            )
        );
}
