using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Hanging;

/// <summary>
/// Hangs a carcase on the wall. Rails and cleats lie between the sides, behind the back where it is slid in far enough from
/// the wall, else before it; they are screwed to sides and back, and to the wall.
/// </summary>
internal sealed class HangMaker(PieceBuilder piece, CarcasePlan plan, HangPlan hang, Box box)
{
    private readonly Length _thickness = hang.Material.Thickness.Length;

    public void Make()
    {
        var behind = plan.Envelope.Max.Y - (box.Back?.Reckoned.Max.Y ?? box.Inside.Max.Y);
        var isBehind = box.Back is null || behind >= _thickness;
        if (hang.IsCleat)
            Cleats(isBehind);
        else
            Rails(isBehind ? plan.Envelope.Max.Y - _thickness : box.Inside.Max.Y - _thickness);
    }

    private void Rails(Length y)
    {
        var top = box.Closing[^1].Reckoned.Min.Z;
        var bottom = box.Bottom.Reckoned.Max.Z;
        if (bottom + (hang.Width.Length * 2) >= top)
            throw Refused("Two hanging rails take all of the height.", "narrower rails");
        var upper = Between("hanging rail", y, top - hang.Width.Length);
        Screws.Between(piece, box.Closing[^1], upper, Direction.Up, 3);
        ToWall(upper);
        var lower = Between("lower hanging rail", y, bottom);
        Screws.Between(piece, box.Bottom, lower, Direction.Down, 3);
        ToWall(lower);
    }

    /// <summary>
    /// The carcase's own cleat is longest at the wall, the wall's is highest before it: the one drops behind the other, and
    /// the weight draws the carcase to the wall.
    /// </summary>
    private void Cleats(bool isBehind)
    {
        if (!isBehind || plan.Back is { Set: BackSet.Planted })
            throw Refused(
                "There is no room for a cleat between the back and the wall.",
                "back: grooved, which leaves room, or hangs on: { rails: 80 mm }"
            );
        var y = plan.Envelope.Max.Y - _thickness;
        var top = box.Closing[^1].Reckoned.Min.Z;
        var low = top - hang.Width.Length;
        var reach = low - hang.Width.Length + _thickness;
        if (reach <= box.Bottom.Reckoned.Max.Z)
            throw Refused("The two cleats take all of the height.", "narrower cleats");
        var own = Between("cleat", y, low);
        Screws.Between(piece, box.Closing[^1], own, Direction.Up, 3);
        Bevel(own, Direction.Down, Direction.Back);
        var play = piece.Shop.Length(HangRules.CleatPlay, "play");
        var wall = piece.Board(
            plan.Group,
            "wall cleat",
            Role.HangingRail,
            hang.Material,
            Lie.Of(Direction.Right, Direction.Front),
            (box.InsideWidth - play - play).As("wall cleat length"),
            hang.Width,
            new(box.Inside.Min.X + play.Length, y, reach)
        );
        Bevel(wall, Direction.Up, Direction.Front);
        piece.Join(JointKind.Resting, wall, own, Direction.Down, glued: false);
        ToWall(wall);
        var spacer = Between("spacer", y, box.Bottom.Reckoned.Max.Z, _thickness < reach - box.Bottom.Reckoned.Max.Z);
        Screws.Between(piece, box.Bottom, spacer, Direction.Down, 3);
    }

    /// <summary>Saws an edge at 45 degrees; the side named keeps its width.</summary>
    private static void Bevel(PartDraft cleat, Direction edge, Direction longSide) =>
        EndMitre.Cut(cleat, edge, longSide, cleat.Extent.Size(Axis.Y));

    private PartDraft Between(string name, Length y, Length z, bool hasRoom = true)
    {
        if (!hasRoom)
            throw Refused("Cleats and spacer take all of the height.", "narrower cleats");
        var width = name == "spacer" ? hang.Material.Thickness.As("spacer width") : hang.Width;
        var rail = piece.Board(
            plan.Group,
            name,
            Role.HangingRail,
            hang.Material,
            Lie.Of(Direction.Right, Direction.Front),
            box.InsideWidth.As($"{name} length"),
            width,
            new(box.Inside.Min.X, y, z)
        );
        Screws.Between(piece, box.Left, rail, Direction.Left, 2, glued: true);
        Screws.Between(piece, box.Right, rail, Direction.Right, 2, glued: true);
        return rail;
    }

    /// <summary>Screws into the wall, two at least, spread by the house's spacing.</summary>
    private void ToWall(PartDraft rail)
    {
        var spacing = piece.Shop.Length(HangRules.Spacing).Length;
        var count = 1 + Math.Max(1, (int)(rail.Length.Length / spacing).Floor());
        piece.FitToWall("wall fixing, by the wall", Meeting.Centre(rail.Reckoned, Direction.Back), count, rail);
    }

    private CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, plan.Group.Source, wanted));
}
