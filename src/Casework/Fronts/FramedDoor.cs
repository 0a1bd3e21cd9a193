using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>A door with panels that lie loose in the grooves of its frame.</summary>
internal static class FramedDoor
{
    public static DoorUnit Build(PieceBuilder piece, Leaf leaf)
    {
        var groove = GrooveFor(piece, leaf.Plan.Infill);
        var frame = FrameMaker.Make(piece, leaf, groove);
        var divider = new FieldDivider(piece, frame);
        foreach (var row in frame.Rows)
        {
            foreach (var field in leaf.Plan.Division.Muntins is { } muntins ? divider.Muntins(row, muntins) : [row])
                AddPanel(piece, frame, field);
        }
        return frame.Unit;
    }

    /// <summary>The groove of the house; narrower where a panel of sheet goods is thinner than that, so that it fits.</summary>
    private static FrameGroove GrooveFor(PieceBuilder piece, Material panel)
    {
        var width = piece.Shop.Length(DoorRules.DoorGrooveWidth, "groove width");
        return new FrameGroove(
            piece.Shop.Length(DoorRules.DoorGrooveDepth, "groove depth"),
            piece.Shop.Length(DoorRules.DoorLip, "lip"),
            panel.Kind == MaterialKind.Sheet && panel.Thickness.Length < width.Length
                ? panel.Thickness.As("panel thickness")
                : width
        );
    }

    private static void AddPanel(PieceBuilder piece, DoorFrame frame, FrameField field)
    {
        var leaf = frame.Leaf;
        var material = leaf.Plan.Infill;
        var depth = frame.Groove.Depth;
        var isSheet = material.Kind == MaterialKind.Sheet;
        var along = piece.Shop.Length(isSheet ? DoorRules.PanelPlaySheet : DoorRules.PanelPlayEnd, "play");
        var across = piece.Shop.Length(isSheet ? DoorRules.PanelPlaySheet : DoorRules.PanelPlaySide, "play");
        RefuseLoose(frame, Length.Max(along.Length, across.Length));
        var shoulders = Shoulders(frame);
        var length = (field.Height + depth + depth - along - along).As("panel length");
        var width = (field.Width + depth + depth - across - across).As("panel width");
        leaf.Plan.Raised?.Refuse(
            leaf.Group.Name,
            material,
            leaf.Source,
            length.Length,
            width.Length,
            depth.Length,
            shoulders.Front
        );
        var name = field.NameOf("panel");
        var own = piece.SizesAsCut(leaf.Group, name, Role.DoorPanel, length, width, material.Thickness);
        var y = frame.FaceY + frame.Groove.Lip.Length - shoulders.Front;
        var panel = piece.Board(
            leaf.Group,
            name,
            Role.DoorPanel,
            material,
            Lie.Of(Direction.Up, Direction.Front),
            length,
            width,
            field.Centred(own.Width.Length, own.Length.Length, y),
            leaf.Source
        );
        var arch = field.Above.Rise is null ? null : leaf.Plan.Arch;
        CutTongue(panel, leaf.Plan.Raised, depth, shoulders, arch is null ? [Direction.Up] : []);
        arch?.RoundPanel(panel, (field.Inside.Width / 2), depth.Length - along.Length, depth.Length, shoulders);
        foreach (var (member, into) in field.Around)
        {
            var play = into.Axis() == Axis.Z ? along.Length : across.Length;
            piece.Join(JointKind.Loose, member.Part, panel, into, depth.Length - play, play, glued: false);
        }
    }

    /// <summary>
    /// What a panel thicker than the groove loses in front of and behind its tongue: at the back as far as the door has
    /// room there, at the front for the rest. A raised panel stands to the front instead, up to the face of the frame.
    /// </summary>
    private static (Length Front, Length Back) Shoulders(DoorFrame frame)
    {
        var leaf = frame.Leaf;
        var groove = frame.Groove;
        var over = leaf.Plan.Infill.Thickness.Length - groove.Width.Length;
        if (over <= Length.Zero)
            return (Length.Zero, Length.Zero);
        var behind = leaf.Plan.Material.Thickness.Length - groove.Lip.Length - groove.Width.Length;
        var back = Length.Min(over, behind);
        if (leaf.Plan.Raised is not null)
            back = Length.Max(over - groove.Lip.Length, Length.Zero);
        var front = over - back;
        if (front > groove.Lip.Length || back > behind)
            throw NoRoom.Of(
                $"The panel of the {leaf.Group.Name} is {NoRoom.Show(leaf.Plan.Infill.Thickness.Length)} thick and would stand out of its frame of {NoRoom.Show(leaf.Plan.Material.Thickness.Length)}.",
                leaf.Source,
                "a panel no thicker than the stiles and rails: `panel:` with a thinner material"
            );
        return (front, back);
    }

    private static void CutTongue(
        PartDraft panel,
        RaisedPanel? raised,
        Figure depth,
        (Length Front, Length Back) shoulders,
        Direction[] above
    )
    {
        if (shoulders.Front + shoulders.Back <= Length.Zero)
            return;
        raised?.Cut(panel, depth.Length, shoulders.Front);
        foreach (var edge in (Direction[])[Direction.Left, Direction.Right, Direction.Down, .. above])
        {
            var rim = panel.Extent.With(edge.Opposite(), panel.Extent.Side(edge) - (depth.Length * edge.Sign()));
            if (shoulders.Front > Length.Zero && raised is null)
                panel.CutAway(CutKind.Shoulder, rim.With(Direction.Back, rim.Min.Y + shoulders.Front));
            if (shoulders.Back > Length.Zero)
                panel.CutAway(CutKind.Shoulder, rim.With(Direction.Front, rim.Max.Y - shoulders.Back));
        }
        panel.ShoulderLength = (panel.Length - depth - depth).As("shoulder to shoulder");
        panel.ShoulderWidth = (panel.Width - depth - depth).As("shoulder to shoulder");
    }

    private static void RefuseLoose(DoorFrame frame, Length play)
    {
        if (play >= frame.Groove.Depth.Length)
            throw NoRoom.Of(
                $"The panel of the {frame.Leaf.Group.Name} would fall out: its play of {NoRoom.Show(play)} takes the whole depth of the groove.",
                frame.Leaf.Source,
                "a deeper groove or less play in the shop file's rules for doors"
            );
    }
}
