using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>Marks how doors swing: a dashed V across the door whose point is at the hinges, as joiners draw it.</summary>
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
            if (front.Motion == FrontMotion.SlidesOut)
                continue;
            var door = view.ToPaper(bounds);
            var (hinges, latch) =
                front.Motion == FrontMotion.TurnsOnLeftEdge ? (door.Left, door.Right) : (door.Right, door.Left);
            var point = new PaperPoint(hinges, door.Centre.Y);
            // Both strokes start at the point, so that the dashes meet there.
            svg.Path($"M{point}L{new PaperPoint(latch, door.Top)}M{point}L{new PaperPoint(latch, door.Bottom)}", "");
        }
        svg.End();
    }
}
