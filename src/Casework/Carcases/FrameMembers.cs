using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>The members of a face frame: stiles full height, everything else between and jointed into what bounds it.</summary>
internal sealed class FrameMembers(PieceBuilder piece, CarcasePlan plan, FacePlan face, GroupDraft group)
{
    private Length FrontY => plan.Envelope.Min.Y;

    public Figure Thickness => face.Material.Thickness;

    public PartDraft Stile(string name, Length x, Length z, Figure height) =>
        piece.Board(
            group,
            name,
            Role.FrameStile,
            face.Material,
            Lie.Of(Direction.Up, Direction.Front),
            height.As("frame height"),
            face.Stile,
            new(x, FrontY, z)
        );

    /// <summary>A rail between two uprights of the frame, jointed into both.</summary>
    public PartDraft Rail(string name, PartDraft left, PartDraft right, Figure length, Length z)
    {
        var rail = piece.Board(
            group,
            name,
            Role.FrameRail,
            face.Material,
            Lie.Of(Direction.Right, Direction.Front),
            length.As("frame rail length"),
            face.Rail,
            new(left.Reckoned.Max.X, FrontY, z)
        );
        Tie(left, rail, Direction.Left, Axis.Z);
        Tie(right, rail, Direction.Right, Axis.Z);
        return rail;
    }

    /// <summary>A mullion between two rails of the frame, jointed into both.</summary>
    public PartDraft Mullion(string name, PartDraft lower, PartDraft upper, Figure length, Length x)
    {
        var mullion = piece.Board(
            group,
            name,
            Role.FrameMullion,
            face.Material,
            Lie.Of(Direction.Up, Direction.Front),
            length.As("mullion length"),
            face.Mullion,
            new(x, FrontY, lower.Reckoned.Max.Z)
        );
        Tie(lower, mullion, Direction.Down, Axis.X);
        Tie(upper, mullion, Direction.Up, Axis.X);
        return mullion;
    }

    private void Tie(PartDraft receives, PartDraft enters, Direction into, Axis spread)
    {
        if (face.Dowelled)
            Dowels.Between(piece, receives, enters, into, spread, 2);
        else
            PocketScrews.Between(piece, receives, enters, into, Direction.Back, spread, 2);
    }
}
