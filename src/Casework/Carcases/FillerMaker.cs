using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;

namespace Dryfit.Casework.Carcases;

/// <summary>A strip beside a carcase that closes the gap to its neighbour: flush with its front, screwed through its side.</summary>
internal static class FillerMaker
{
    public static PartDraft Make(PieceBuilder piece, CarcasePlan plan, FillerPlan filler, Box box)
    {
        var isLeft = filler.Side == Direction.Left;
        var envelope = plan.Envelope;
        var y = plan.Face is null ? box.Inside.Min.Y : envelope.Min.Y;
        var strip = piece.Board(
            plan.Group,
            $"{(isLeft ? "left" : "right")} filler",
            Role.Filler,
            filler.Material,
            Lie.Of(Direction.Up, Direction.Front),
            box.FrontHeight.As("filler height"),
            filler.Width,
            new(isLeft ? envelope.Min.X - filler.Width.Length : envelope.Max.X, y, box.BaseZ)
        );
        Screws.Between(piece, HeldBy(piece, plan, box, filler.Side), strip, filler.Side.Opposite(), 4);
        return strip;
    }

    /// <summary>What a strip beside a carcase is screwed to: with a face frame the stile, without one the side.</summary>
    public static PartDraft HeldBy(PieceBuilder piece, CarcasePlan plan, Box box, Direction side)
    {
        if (plan.Face is null)
            return side == Direction.Left ? box.Left : box.Right;
        return piece.Parts.First(p =>
            p.Role == Role.FrameStile
            && p.Group.Parent == plan.Group
            && p.Reckoned.Side(side) == plan.Envelope.Side(side)
        );
    }
}
