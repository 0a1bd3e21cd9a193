using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Facings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Sides;

/// <summary>Makes a side that is a frame with panels where a board would stand.</summary>
internal static class SideMaker
{
    /// <param name="end">Which side, and where its front looks.</param>
    /// <param name="outside">Where the board would stand.</param>
    /// <param name="height">Its height.</param>
    /// <param name="width">Its width, from front to back.</param>
    /// <param name="under">How far it goes down below the place of the bottom; null for not at all.</param>
    public static FramedSide Make(
        PieceBuilder piece,
        CarcasePlan plan,
        SidesPlan sides,
        Direction end,
        Extent outside,
        Figure height,
        Figure width,
        Figure? under
    )
    {
        var name = $"{Spoken.Of(end)} side";
        var isLeft = end == Direction.Left;
        // Seen from outside, the front of the carcase is at the right end of its left side.
        var stance = new FrameStance(
            plan.Group,
            isLeft ? Direction.Front : Direction.Back,
            end,
            name + " ",
            isLeft ? "rear stile" : "front stile",
            isLeft ? "front stile" : "rear stile",
            Role.SideStile,
            Role.SideRail,
            Role.SidePanel
        );
        var material = sides.Frame.Material;
        var wanted = sides.Reaching(under) with
        {
            // Between a dado and the groove of a panel some wood must stay.
            Behind = plan.IsLetIn
                ? piece.Shop.Length(JointRules.DadoDepth).Length + Length.FromMillimetres(new Rational(3, 2))
                : null,
        };
        var frame = new PanelFrameMaker(piece, wanted, stance, outside).Make(width, height);
        return new FramedSide
        {
            Id = $"{plan.Group.Id}/{Slug.Of(name)}",
            Name = plan.Group.Full(name),
            Role = Role.Side,
            Group = plan.Group,
            Material = material,
            Length = height,
            Width = width,
            Thickness = material.Thickness,
            Place = frame.Left.Place,
            Reckoned = outside,
            Extent = outside,
            Source = sides.Frame.Place,
            Members = frame.Members,
            Fields = frame.Fields,
            Behind = frame.Behind,
        };
    }
}
