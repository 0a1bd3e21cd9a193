namespace Dryfit.Outputs.FrontView;

/// <summary>Dimension lines with slim filled arrowheads (ISO 129-1).</summary>
internal static class Arrow
{
    private const double Length = 1.8;
    private const double HalfWidth = 0.3;
    private const double SmallLength = 1.1;
    private const double SmallHalfWidth = 0.24;

    /// <summary>An arrowhead whose tip stands at a point and that comes from another.</summary>
    public static void Head(SvgWriter svg, PaperPoint tip, PaperPoint from, string ink, bool small = false)
    {
        var distance = tip.DistanceTo(from);
        if (distance <= 0)
            return;
        var (dx, dy) = ((from.X - tip.X) / distance, (from.Y - tip.Y) / distance);
        var (length, half) = small ? (SmallLength, SmallHalfWidth) : (Length, HalfWidth);
        var foot = tip.Moved(dx * length, dy * length);
        svg.Path(
            $"M{tip}L{foot.Moved(-dy * half, dx * half)}L{foot.Moved(dy * half, -dx * half)}Z",
            "",
            ("fill", ink),
            ("stroke", "none")
        );
    }

    /// <summary>A dimension line between two points: arrows inside where there is room, from outside where not.</summary>
    public static void Between(SvgWriter svg, PaperPoint a, PaperPoint b, string ink)
    {
        var distance = a.DistanceTo(b);
        if (distance <= 0)
            return;
        if (distance >= 3 * Length)
        {
            svg.Line(a, b, ("stroke", ink));
            Head(svg, a, b, ink);
            Head(svg, b, a, ink);
            return;
        }
        var (dx, dy) = ((b.X - a.X) / distance, (b.Y - a.Y) / distance);
        var (before, after) = (a.Moved(-dx * 2 * Length, -dy * 2 * Length), b.Moved(dx * 2 * Length, dy * 2 * Length));
        svg.Line(before, after, ("stroke", ink));
        Head(svg, a, before, ink);
        Head(svg, b, after, ink);
    }
}
