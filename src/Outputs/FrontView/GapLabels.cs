using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// Dimensions the gaps around doors and drawers where they are: two small arrows point at the gap from both sides, and
/// the figure stands at the tail of one of them.
/// </summary>
internal sealed class GapLabels(
    SvgWriter svg,
    View view,
    LengthFormat format,
    LabelField field,
    AreaIndex fronts,
    IReadOnlyDictionary<string, Span2> bounds
)
{
    /// <summary>Places along an edge, the best first: the middle of a hinge edge belongs to the point of the swing mark.</summary>
    private static readonly double[] Spots = [0.5, 0.3, 0.7, 0.4, 0.6, 0.2, 0.8, 0.12, 0.88];
    private static readonly double[] SpotsOffMiddle = [0.28, 0.72, 0.2, 0.8, 0.38, 0.62, 0.12, 0.88];

    /// <summary>Draws what finds room and gives back the gaps that did not.</summary>
    public List<FrontGap> Draw(IEnumerable<FrontGap> gaps)
    {
        var left = new List<FrontGap>();
        svg.Begin("g", ("fill", "none"), ("stroke-width", SvgWriter.Number(Pen.Thin)));
        foreach (var gap in gaps)
        {
            var text = Text(gap, format);
            var tags = Tags(gap, TextWidth.Of(text, GapTag.TextSize), GapTag.TextSize);
            if (field.TryTake(tags, tag => tag.Box, out var chosen))
                chosen.Draw(svg, Ink.Black, () => chosen.Write(svg, text, new(GapTag.TextSize)));
            else
                left.Add(gap);
        }
        svg.End();
        return left;
    }

    /// <summary>The gap as it is lettered: one figure, or the narrowest and the widest.</summary>
    public static string Text(FrontGap gap, LengthFormat format)
    {
        var (smallest, largest) = (format.Write(format.ByTape(gap.Smallest)), format.Write(format.ByTape(gap.Largest)));
        return string.Equals(smallest, largest, StringComparison.Ordinal) ? smallest : $"{smallest} to {largest}";
    }

    /// <summary>Places where a tag of some width and height may stand at a gap, the best first.</summary>
    /// <param name="mayLeaveFront">True for tags that nobody takes for another gap's: a finding's, with its sign.</param>
    public IEnumerable<GapTag> Tags(FrontGap gap, double width, double height, bool mayLeaveFront = false)
    {
        var front = view.ToPaper(bounds[gap.Front.Group]);
        var isHingeEdge = gap.Front.Motion.TurnsOn() == gap.Side;
        foreach (var inside in (bool[])[true, false])
        {
            foreach (var spot in isHingeEdge ? SpotsOffMiddle : Spots)
            {
                var (onFront, onOther) = At(gap, spot);
                GapTag tag = inside
                    ? new(onFront, onOther, gap.Side.Opposite(), width, height)
                    : new(onOther, onFront, gap.Side, width, height);
                // A figure across an edge, or on another front, would be read as another gap's.
                if (inside ? mayLeaveFront || front.Holds(tag.Tag) : !fronts.Touches(tag.Tag))
                    yield return tag;
            }
        }
    }

    /// <summary>The tag in the middle of a gap, whatever it lies on.</summary>
    public GapTag TagWithoutRoom(FrontGap gap, double width, double height)
    {
        var (onFront, onOther) = At(gap, Spots[0]);
        return new(onFront, onOther, gap.Side.Opposite(), width, height);
    }

    /// <summary>The two points across a gap at a share of its length.</summary>
    private (PaperPoint OnFront, PaperPoint OnOther) At(FrontGap gap, double share)
    {
        var whole = gap.Courses.Sum(Run);
        var sought = whole * share;
        foreach (var course in gap.Courses)
        {
            var run = Run(course);
            if (sought <= run || course == gap.Courses[^1])
            {
                var t = run > 0 ? Math.Min(1, sought / run) : 0;
                return (
                    PaperPoint.Between(view.ToPaper(course.FrontStart), view.ToPaper(course.FrontEnd), t),
                    PaperPoint.Between(view.ToPaper(course.OtherStart), view.ToPaper(course.OtherEnd), t)
                );
            }
            sought -= run;
        }
        return (view.ToPaper(gap.Courses[0].FrontStart), view.ToPaper(gap.Courses[0].OtherStart));

        double Run(GapCourse course) =>
            gap.Side.Axis() == Axis.X
                ? course.FrontEnd.Y - course.FrontStart.Y
                : course.FrontEnd.X - course.FrontStart.X;
    }
}
