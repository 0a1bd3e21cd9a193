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
        var (before, after) = (Reach(left, Axis.X), Reach(right, Axis.X));
        var rail = piece.Board(
            group,
            name,
            Role.FrameRail,
            face.Material,
            Lie.Of(Direction.Right, Direction.Front),
            Plus(Plus(length, before), after).As("frame rail length"),
            face.Rail,
            new(left.Reckoned.Max.X - (before?.Length ?? Length.Zero), FrontY, z)
        );
        if (before is not null)
            rail.ShoulderLength = length.As("shoulder to shoulder");
        Tie(left, rail, Direction.Left, Axis.Z);
        Tie(right, rail, Direction.Right, Axis.Z);
        return rail;
    }

    /// <summary>A mullion between two rails of the frame, jointed into both.</summary>
    public PartDraft Mullion(string name, PartDraft lower, PartDraft upper, Figure length, Length x)
    {
        var (below, above) = (Reach(lower, Axis.Z), Reach(upper, Axis.Z));
        var mullion = piece.Board(
            group,
            name,
            Role.FrameMullion,
            face.Material,
            Lie.Of(Direction.Up, Direction.Front),
            Plus(Plus(length, below), above).As("mullion length"),
            face.Mullion,
            new(x, FrontY, lower.Reckoned.Max.Z - (below?.Length ?? Length.Zero))
        );
        if (below is not null)
            mullion.ShoulderLength = length.As("shoulder to shoulder");
        Tie(lower, mullion, Direction.Down, Axis.X);
        Tie(upper, mullion, Direction.Up, Axis.X);
        return mullion;
    }

    /// <summary>
    /// How far a member goes into another: a lap over the whole of a stile, a tenon two thirds of it; into what takes
    /// members from both sides less than half. Null where it ends at its face.
    /// </summary>
    private Figure? Reach(PartDraft into, Axis axis)
    {
        if (face.Joint is not (FrameJoint.MortiseAndTenon or FrameJoint.ThroughTenons or FrameJoint.HalfLaps))
            return null;
        var (whole, isStile) =
            axis == Axis.Z ? (face.Rail, false)
            : into.Role == Role.FrameStile ? (face.Stile, true)
            : (face.Mullion, false);
        var laps = face.Joint == FrameJoint.HalfLaps;
        if (isStile && face.Joint == FrameJoint.ThroughTenons)
            return whole.As("tenon length");
        if (isStile)
            return laps ? whole.As("lap") : MortiseTenon.LengthOf(piece, Thickness, whole);
        var step = MarkingOut.StepOf(piece);
        var half = (whole / 2).FloorTo(step).As(laps ? "lap" : "half of the other member");
        if (laps)
            return half;
        var room = piece.Shop.Length(JointRules.MortiseRoom, "room before the mortise from the other side");
        return Figure.Min(MortiseTenon.LengthOf(piece, Thickness, whole), half - room - room).As("tenon length");
    }

    private static Figure Plus(Figure figure, Figure? more) => more is null ? figure : figure + more;

    private void Tie(PartDraft receives, PartDraft enters, Direction into, Axis spread)
    {
        switch (face.Joint)
        {
            case FrameJoint.Dowels:
                Dowels.Between(piece, receives, enters, into, spread, 2);
                break;
            case FrameJoint.MortiseAndTenon:
            case FrameJoint.ThroughTenons:
                var reach = (enters.Reckoned.Side(into) - receives.Reckoned.Side(into.Opposite())) * into.Sign();
                MortiseTenon.Between(piece, [receives], receives, enters, into, spread, reach, EndOf(receives, enters));
                break;
            case FrameJoint.HalfLaps:
                HalfLap.Between(piece, receives, enters, into, Axis.Y);
                break;
            default:
                PocketScrews.Between(piece, receives, enters, into, Direction.Back, spread, 2);
                break;
        }
    }

    /// <summary>The edge of a member that lies flush with the end of the other: its tenon is haunched there.</summary>
    private static Direction? EndOf(PartDraft receives, PartDraft enters)
    {
        foreach (var way in (ReadOnlySpan<Direction>)[Direction.Down, Direction.Up])
        {
            if (receives.Role == Role.FrameStile && receives.Reckoned.Side(way) == enters.Reckoned.Side(way))
                return way;
        }
        return null;
    }
}
