using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The four beads behind a pane. They fill the rabbet, flush with the back of the door; the upper and lower run the
/// whole width, the others stand between them. Pinned, never glued.
/// </summary>
internal static class Beads
{
    /// <summary>One pin for about every 150 mm, common practice.</summary>
    private static readonly Length PinSpacing = Length.FromMillimetres(150);

    public static void Add(PieceBuilder piece, DoorFrame frame, PartDraft pane, Figure thickness)
    {
        var rabbet = frame.Groove.Depth;
        var inside = frame.Inside;
        var y = pane.Extent.Max.Y;
        var level = (frame.InsideWidth + rabbet + rabbet).As("bead length");
        var upright = frame.InsideHeight.As("bead length");
        var levelX = frame.Centred(level.Length, Length.Zero, y).X;
        var uprightZ = frame.Centred(Length.Zero, upright.Length, y).Z;

        var top = Bead("top bead", Direction.Right, level, new(levelX, y, inside.Max.Z));
        var bottom = Bead("bottom bead", Direction.Right, level, new(levelX, y, inside.Min.Z - rabbet.Length));
        var left = Bead("left bead", Direction.Up, upright, new(inside.Min.X - rabbet.Length, y, uprightZ));
        var right = Bead("right bead", Direction.Up, upright, new(inside.Max.X, y, uprightZ));

        Pin(frame.Top, top, Direction.Up);
        Pin(frame.Bottom, bottom, Direction.Down);
        Pin(frame.Left, left, Direction.Left);
        Pin(frame.Right, right, Direction.Right);
        foreach (var bead in (ReadOnlySpan<PartDraft>)[top, bottom])
        {
            Touch(frame.Left, bead, Direction.Left);
            Touch(frame.Right, bead, Direction.Right);
        }
        foreach (var bead in (ReadOnlySpan<PartDraft>)[left, right])
        {
            Touch(top, bead, Direction.Up);
            Touch(bottom, bead, Direction.Down);
        }
        foreach (var bead in (ReadOnlySpan<PartDraft>)[top, bottom, left, right])
            piece.Join(JointKind.Loose, bead, pane, Direction.Back, glued: false);

        PartDraft Bead(string name, Direction along, Figure length, Point at) =>
            piece.Board(
                frame.Leaf.Group,
                name,
                Role.GlassBead,
                frame.Leaf.Plan.Material,
                Lie.Of(along, Direction.Back),
                length,
                rabbet,
                at,
                frame.Leaf.Source,
                thickness
            );

        void Pin(PartDraft member, PartDraft bead, Direction into)
        {
            var count = 1 + (int)(bead.Length.Length / PinSpacing).Ceiling();
            piece.Fit("bead pin", Meeting.Centre(bead.Extent, into), count, bead, member);
            piece.Join(JointKind.Screwed, member, bead, into, glued: false);
        }

        void Touch(PartDraft receives, PartDraft enters, Direction into) =>
            piece.Join(JointKind.Butt, receives, enters, into, glued: false);
    }
}
