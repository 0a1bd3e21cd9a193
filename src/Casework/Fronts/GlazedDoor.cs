using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// A door with a pane that goes in from behind: between the rails the back wall of the groove is taken away, and four
/// beads hold the pane, so that it can be replaced.
/// </summary>
internal static class GlazedDoor
{
    public static DoorUnit Build(PieceBuilder piece, Leaf leaf)
    {
        var groove = new FrameGroove(
            piece.Shop.Length(DoorRules.DoorGrooveDepth, "rabbet"),
            piece.Shop.Length(DoorRules.DoorLip, "lip"),
            piece.Shop.Length(DoorRules.DoorGrooveWidth, "groove width")
        );
        var beadThickness = BeadThickness(leaf, groove);
        var frame = FrameMaker.Make(piece, leaf, groove);
        OpenAtBack(frame);
        var pane = AddPane(piece, frame);
        Beads.Add(piece, frame, pane, beadThickness);
        return frame.Unit;
    }

    private static void OpenAtBack(DoorFrame frame)
    {
        var (depth, lip) = (frame.Groove.Depth.Length, frame.Groove.Lip.Length);
        var inside = frame.Inside;
        var upright = (Axis.Z, inside.Min.Z - depth, inside.Max.Z + depth);
        EdgeGroove.Cut(frame.Left, Direction.Right, depth, lip, null, upright);
        EdgeGroove.Cut(frame.Right, Direction.Left, depth, lip, null, upright);
        EdgeGroove.Cut(frame.Top, Direction.Down, depth, lip, null, BetweenShoulders(frame.Top));
        EdgeGroove.Cut(frame.Bottom, Direction.Up, depth, lip, null, BetweenShoulders(frame.Bottom));

        (Axis, Length, Length) BetweenShoulders(PartDraft rail) =>
            (Axis.X, rail.Extent.Min.X + depth, rail.Extent.Max.X - depth);
    }

    private static PartDraft AddPane(PieceBuilder piece, DoorFrame frame)
    {
        var leaf = frame.Leaf;
        var material = leaf.Plan.Infill;
        var rabbet = frame.Groove.Depth;
        var play = piece.Shop.Length(DoorRules.GlassPlay, "play");
        if (play.Length >= rabbet.Length)
            throw NoRoom.Of(
                $"The pane of the {leaf.Group.Name} would fall out: its play of {NoRoom.Show(play.Length)} takes the whole rabbet.",
                leaf.Source,
                "a deeper groove or less play in the shop file's rules for doors"
            );
        var length = (frame.InsideHeight + rabbet + rabbet - play - play).As("pane height");
        var width = (frame.InsideWidth + rabbet + rabbet - play - play).As("pane width");
        var own = piece.SizesAsCut(leaf.Group, "pane", Role.Glass, length, width, material.Thickness);
        var pane = piece.Board(
            leaf.Group,
            "pane",
            Role.Glass,
            material,
            Lie.Of(Direction.Up, Direction.Front),
            length,
            width,
            frame.Centred(own.Width.Length, own.Length.Length, frame.FaceY + frame.Groove.Lip.Length),
            leaf.Source
        );
        foreach (var (member, into) in frame.Around)
            piece.Join(JointKind.Loose, member, pane, into, rabbet.Length - play.Length, play.Length, glued: false);
        return pane;
    }

    private static Figure BeadThickness(Leaf leaf, FrameGroove groove)
    {
        var plan = leaf.Plan;
        var rest = plan.Material.Thickness - groove.Lip - plan.Infill.Thickness.As("pane thickness");
        return rest.Length > Length.Zero
            ? rest.As("bead thickness")
            : throw NoRoom.Of(
                $"The {leaf.Group.Name} is {NoRoom.Show(plan.Material.Thickness.Length)} thick: lip and pane leave nothing for a bead.",
                leaf.Source,
                "a thicker material for stiles and rails, or thinner glass"
            );
    }
}
