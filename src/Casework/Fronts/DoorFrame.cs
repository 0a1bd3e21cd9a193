using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>The members of a framed door, joined, with all that its panels or panes must know of them.</summary>
internal sealed record DoorFrame
{
    public required Leaf Leaf { get; init; }

    public required PartDraft Left { get; init; }

    public required PartDraft Right { get; init; }

    public required PartDraft Top { get; init; }

    public required PartDraft Bottom { get; init; }

    /// <summary>The fields between the rails, from the top.</summary>
    public required IReadOnlyList<FrameField> Rows { get; init; }

    public required FrameGroove Groove { get; init; }

    /// <summary>The Y of the front face of the hinge stile.</summary>
    public Length FaceY => (Leaf.BuiltFrom == Direction.Left ? Left : Right).Extent.Min.Y;

    public DoorUnit Unit =>
        new(
            new Extent(
                new(Left.Extent.Min.X, FaceY, Leaf.BottomZ),
                new(Right.Extent.Max.X, Left.Extent.Max.Y, Length.Max(Left.Extent.Max.Z, Right.Extent.Max.Z))
            ),
            Leaf.Hinged switch
            {
                Direction.Up => Top,
                Direction.Down => Bottom,
                Direction.Right => Right,
                _ => Left,
            },
            [Left, Right, Bottom, Top]
        );
}

/// <summary>The groove along the inner edges of a door's members.</summary>
/// <param name="Depth">From the inner edge.</param>
/// <param name="Lip">From the front face to the groove.</param>
/// <param name="Width">Between its walls.</param>
internal sealed record FrameGroove(Figure Depth, Figure Lip, Figure Width);
