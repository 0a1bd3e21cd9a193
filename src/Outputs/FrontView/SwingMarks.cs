using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// Marks how doors open: a dashed V across the door whose point is at the hinges, as joiners draw it; an arrow on a leaf that
/// slides sideways.
/// </summary>
internal static class SwingMarks
{
    public static void Draw(SvgWriter svg, View view, IEnumerable<SeenFront> fronts)
    {
        svg.Begin(
            "g",
            ("fill", "none"),
            ("stroke", Ink.Grey),
            ("stroke-width", SvgWriter.Number(Pen.Thin)),
            ("stroke-dasharray", "2.4 1.2")
        );
        foreach (var (front, bounds, _) in fronts)
        {
            var door = view.ToPaper(bounds);
            if (front.Motion.TurnsOn() is { } edge)
                Swing(svg, door, edge);
            else if (front.Motion.IsSideways())
                Slide(svg, door, front.Motion == FrontMotion.SlidesLeft ? -1 : 1);
        }
        svg.End();
    }

    private static void Swing(SvgWriter svg, Area door, Direction hinges)
    {
        var (left, right, top, bottom) = (door.Left, door.Right, door.Top, door.Bottom);
        var (point, one, other) = hinges switch
        {
            Direction.Left => (new(left, door.Centre.Y), new(right, top), new(right, bottom)),
            Direction.Right => (new(right, door.Centre.Y), new(left, top), new(left, bottom)),
            Direction.Up => (new(door.Centre.X, top), new(left, bottom), new(right, bottom)),
            _ => (new PaperPoint(door.Centre.X, bottom), new PaperPoint(left, top), new PaperPoint(right, top)),
        };
        // Both strokes start at the point, so that the dashes meet there.
        svg.Path($"M{point}L{one}M{point}L{other}", "");
    }

    /// <summary>An arrow below the middle, where no name stands.</summary>
    private static void Slide(SvgWriter svg, Area door, int sign)
    {
        var y = door.Top + ((door.Bottom - door.Top) * 0.75);
        var half = Math.Min(door.Width * 0.25, 12) * sign;
        var (from, to) = (new PaperPoint(door.Centre.X - half, y), new PaperPoint(door.Centre.X + half, y));
        var head = 1.6;
        svg.Path(
            $"M{from}L{to}M{to}L{new PaperPoint(to.X - (head * sign), y - (head * 0.6))}M{to}L{new PaperPoint(to.X - (head * sign), y + (head * 0.6))}",
            ""
        );
    }
}
