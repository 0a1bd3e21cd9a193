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
        // With a face frame the strip stands beside the stile, without one beside the side.
        var beside = isLeft ? box.Left : box.Right;
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
        var holds = plan.Face is null
            ? beside
            : piece.Parts.First(p =>
                p.Role == Role.FrameStile
                && p.Group.Parent == plan.Group
                && p.Reckoned.Side(filler.Side) == envelope.Side(filler.Side)
            );
        Screws.Between(piece, holds, strip, filler.Side.Opposite(), 4);
        return strip;
    }
}
