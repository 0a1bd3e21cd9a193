using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>The four members of a framed door, joined, with all that its panel or pane must know of them.</summary>
internal sealed record DoorFrame
{
    public required Leaf Leaf { get; init; }

    public required PartDraft Left { get; init; }

    public required PartDraft Right { get; init; }

    public required PartDraft Top { get; init; }

    public required PartDraft Bottom { get; init; }

    /// <summary>Between the stiles, as reckoned.</summary>
    public required Figure InsideWidth { get; init; }

    /// <summary>Between the rails, as reckoned.</summary>
    public required Figure InsideHeight { get; init; }

    public required FrameGroove Groove { get; init; }

    /// <summary>The members with the way something inside goes to meet each.</summary>
    public IEnumerable<(PartDraft Member, Direction Into)> Around =>
        [(Left, Direction.Left), (Right, Direction.Right), (Bottom, Direction.Down), (Top, Direction.Up)];

    /// <summary>The clear space between the members as it left the clamps: X and Z bound it.</summary>
    public Extent Inside =>
        new(
            new(Left.Extent.Max.X, Left.Extent.Min.Y, Bottom.Extent.Max.Z),
            new(Right.Extent.Min.X, Left.Extent.Max.Y, Top.Extent.Min.Z)
        );

    /// <summary>The corner of something that stands in the middle of the inside.</summary>
    public Point Centred(Length width, Length height, Length y)
    {
        var inside = Inside;
        return new((inside.Min.X + inside.Max.X - width) / 2, y, (inside.Min.Z + inside.Max.Z - height) / 2);
    }

    /// <summary>The Y of the front face of the hinge stile.</summary>
    public Length FaceY => (Leaf.Hinged == Direction.Left ? Left : Right).Extent.Min.Y;

    public DoorUnit Unit =>
        new(
            new Extent(
                new(Left.Extent.Min.X, FaceY, Leaf.BottomZ),
                new(Right.Extent.Max.X, Left.Extent.Max.Y, Length.Max(Left.Extent.Max.Z, Right.Extent.Max.Z))
            ),
            Leaf.Hinged == Direction.Left ? Left : Right,
            [Left, Right, Bottom, Top]
        );
}

/// <summary>The groove along the inner edges of a door's members.</summary>
/// <param name="Depth">From the inner edge.</param>
/// <param name="Lip">From the front face to the groove.</param>
/// <param name="Width">Between its walls.</param>
internal sealed record FrameGroove(Figure Depth, Figure Lip, Figure Width);
