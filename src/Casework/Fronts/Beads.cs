using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The four beads behind a pane. They fill the rabbet, flush with the back of the door; the upper and lower run the
/// whole width, the others stand between them. Pinned, never glued.
/// </summary>
internal sealed class Beads(PieceBuilder piece, DoorFrame frame, FrameField field, PartDraft pane, Figure thickness)
{
    /// <summary>One pin for about every 150 mm, common practice.</summary>
    private static readonly Length PinSpacing = Length.FromMillimetres(150);

    public void Add()
    {
        var inside = field.Inside;
        var y = pane.Extent.Max.Y;
        var level = (field.Width + field.Left.Depth + field.Right.Depth).As("bead length");
        var upright = field.Height.As("bead length");
        var levelX = field.Centred(level.Length, Length.Zero, y).X;
        var uprightZ = (inside.Min.Z + inside.Max.Z - upright.Length) / 2;

        var top = Bead("top bead", Direction.Right, level, field.Above, new(levelX, y, inside.Max.Z));
        var bottom = Bead(
            "bottom bead",
            Direction.Right,
            level,
            field.Below,
            new(levelX, y, inside.Min.Z - field.Below.Depth.Length)
        );
        var left = Bead(
            "left bead",
            Direction.Up,
            upright,
            field.Left,
            new(inside.Min.X - field.Left.Depth.Length, y, uprightZ)
        );
        var right = Bead("right bead", Direction.Up, upright, field.Right, new(inside.Max.X, y, uprightZ));

        Pin(field.Above, top, Direction.Up);
        Pin(field.Below, bottom, Direction.Down);
        Pin(field.Left, left, Direction.Left);
        Pin(field.Right, right, Direction.Right);
        foreach (
            var (bead, beside) in (ReadOnlySpan<(PartDraft, FrameMember)>)[(top, field.Above), (bottom, field.Below)]
        )
        {
            MeetEnd(field.Left, bead, beside, Direction.Left);
            MeetEnd(field.Right, bead, beside, Direction.Right);
        }
        foreach (var bead in (ReadOnlySpan<PartDraft>)[left, right])
        {
            Touch(top, bead, Direction.Up);
            Touch(bottom, bead, Direction.Down);
        }
        foreach (var bead in (ReadOnlySpan<PartDraft>)[top, bottom, left, right])
            piece.Join(JointKind.Loose, bead, pane, Direction.Back, glued: false);
    }

    private PartDraft Bead(string name, Direction along, Figure length, FrameMember member, Point at) =>
        piece.Board(
            frame.Leaf.Group,
            field.NameOf(name),
            Role.GlassBead,
            frame.Leaf.Plan.Material,
            Lie.Of(along, Direction.Back),
            length,
            member.Depth,
            at,
            frame.Leaf.Source,
            thickness
        );

    private void Pin(FrameMember member, PartDraft bead, Direction into)
    {
        var count = 1 + (int)(bead.Length.Length / PinSpacing).Ceiling();
        piece.Fit("bead pin", Meeting.Centre(bead.Extent, into), count, bead, member.Part);
        piece.Join(JointKind.Screwed, member.Part, bead, into, glued: false);
    }

    /// <summary>
    /// The end of a bead lies against what stands at the side of the pane. In a rail's rabbet a bar reaches only as far back
    /// as its tenon does, and behind that it is the rail's own wood that the bead ends at.
    /// </summary>
    private void MeetEnd(FrameMember member, PartDraft bead, FrameMember beside, Direction into)
    {
        var tenonEnds = frame.FaceY + frame.Groove.Lip.Length + frame.Groove.Width.Length;
        if (!member.IsBar || beside.IsBar || bead.Extent.Min.Y < tenonEnds)
            Touch(member.Part, bead, into);
    }

    private void Touch(PartDraft receives, PartDraft enters, Direction into) =>
        piece.Join(JointKind.Butt, receives, enters, into, glued: false);
}
