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

    /// <summary>The shortest line that has room for an arrow at either end, in millimetres.</summary>
    public const double RoomForTwo = 3 * Length;

    /// <summary>A dimension line between two points: arrows inside where there is room, from outside where not.</summary>
    public static void Between(SvgWriter svg, PaperPoint a, PaperPoint b, string ink)
    {
        var hasRoom = a.DistanceTo(b) >= RoomForTwo;
        Between(svg, a, b, ink, new(hasRoom, !hasRoom, !hasRoom, ExtendsBefore: false));
    }

    /// <summary>A dimension line between two points with the arrows asked for.</summary>
    public static void Between(SvgWriter svg, PaperPoint a, PaperPoint b, string ink, ArrowEnds ends)
    {
        var distance = a.DistanceTo(b);
        if (distance <= 0)
            return;
        svg.Line(a, b, ("stroke", ink));
        if (ends.Inside)
        {
            Head(svg, a, b, ink);
            Head(svg, b, a, ink);
        }
        var (dx, dy) = ((b.X - a.X) / distance * 2 * Length, (b.Y - a.Y) / distance * 2 * Length);
        if (ends.OutsideBefore)
            FromOutside(svg, a, a.Moved(-dx, -dy), ink);
        if (ends.OutsideAfter)
            FromOutside(svg, b, b.Moved(dx, dy), ink);
    }

    private static void FromOutside(SvgWriter svg, PaperPoint tip, PaperPoint tail, string ink)
    {
        svg.Line(tail, tip, ("stroke", ink));
        Head(svg, tip, tail, ink);
    }
}

/// <summary>Which arrows a dimension line has, and whether its first extension line is its own.</summary>
internal readonly record struct ArrowEnds(bool Inside, bool OutsideBefore, bool OutsideAfter, bool ExtendsBefore);
