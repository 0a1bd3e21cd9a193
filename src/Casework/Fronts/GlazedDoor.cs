using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// A door with panes. Held by beads they go in from behind: between the rails the back wall of the groove is taken away, and
/// four beads hold each pane, so that it can be replaced. Captive ones lie in the groove like a panel, for good.
/// </summary>
internal static class GlazedDoor
{
    public static DoorUnit Build(PieceBuilder piece, Leaf leaf)
    {
        var isCaptive = leaf.Plan.IsCaptive;
        var groove = GrooveFor(piece, leaf);
        var beadThickness = isCaptive ? null : BeadThickness(leaf, groove);
        var frame = FrameMaker.Make(piece, leaf, groove);
        var fields = frame.Rows;
        if (leaf.Plan.Division.Bars is { } bars)
        {
            var divider = new FieldDivider(piece, frame);
            fields = [.. fields.SelectMany(row => divider.Bars(row, bars))];
        }
        foreach (var field in fields)
        {
            if (!isCaptive)
                OpenAtBack(frame, field);
            var pane = AddPane(piece, frame, field);
            if (beadThickness is not null)
                new Beads(piece, frame, field, pane, beadThickness).Add();
        }
        return frame.Unit;
    }

    /// <summary>The groove of the house; wider where a captive pane is thicker than that.</summary>
    private static FrameGroove GrooveFor(PieceBuilder piece, Leaf leaf)
    {
        var width = piece.Shop.Length(DoorRules.DoorGrooveWidth, "groove width");
        var pane = leaf.Plan.Infill.Thickness;
        return new FrameGroove(
            piece.Shop.Length(DoorRules.DoorGrooveDepth, "rabbet"),
            piece.Shop.Length(DoorRules.DoorLip, "lip"),
            leaf.Plan.IsCaptive && pane.Length > width.Length ? pane.As("pane thickness") : width
        );
    }

    /// <summary>Takes the back wall of the grooves away around one pane; bars are open already.</summary>
    private static void OpenAtBack(DoorFrame frame, FrameField field)
    {
        var lip = frame.Groove.Lip.Length;
        var inside = field.Inside;
        foreach (var (member, into) in field.Around)
        {
            if (member.IsBar)
                continue;
            var along =
                into.Axis() == Axis.X
                    ? (Axis.Z, inside.Min.Z - field.Below.Depth.Length, inside.Max.Z + field.Above.Depth.Length)
                    : (Axis.X, inside.Min.X - Over(field.Left, member), inside.Max.X + Over(field.Right, member));
            // Behind the lip of an arch the rabbet is square.
            var depth = member.Depth.Length + (member.Rise?.Length ?? Length.Zero);
            EdgeGroove.Cut(member.Part, into.Opposite(), depth, lip, null, along);
        }

        // A rail ends at the stile, but runs on behind a bar, on which the pane lies, and into a mitre.
        Length Over(FrameMember member, FrameMember rail) =>
            member.IsBar || (frame.Leaf.Plan.IsMitred && (rail.Part == frame.Top || rail.Part == frame.Bottom))
                ? member.Depth.Length
                : Length.Zero;
    }

    private static PartDraft AddPane(PieceBuilder piece, DoorFrame frame, FrameField field)
    {
        var leaf = frame.Leaf;
        var material = leaf.Plan.Infill;
        var seatHeight = field.Height + field.Below.Depth + field.Above.Depth;
        var seatWidth = field.Width + field.Left.Depth + field.Right.Depth;
        var (up, across) = (PanePlay.For(piece, material, seatHeight), PanePlay.For(piece, material, seatWidth));
        foreach (var (member, into) in field.Around)
            PanePlay.Refuse(leaf, member, into.Axis() == Axis.Z ? up : across);
        var length = (seatHeight - up - up).As("pane height");
        var width = (seatWidth - across - across).As("pane width");
        var name = field.NameOf("pane");
        var own = piece.SizesAsCut(leaf.Group, name, Role.Glass, length, width, material.Thickness);
        var pane = piece.Board(
            leaf.Group,
            name,
            Role.Glass,
            material,
            Lie.Of(Direction.Up, Direction.Front),
            length,
            width,
            field.Centred(own.Width.Length, own.Length.Length, frame.FaceY + frame.Groove.Lip.Length),
            leaf.Source
        );
        foreach (var (member, into) in field.Around)
        {
            var play = (into.Axis() == Axis.Z ? up : across).Length;
            piece.Join(JointKind.Loose, member.Part, pane, into, member.Depth.Length - play, play, glued: false);
        }
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
