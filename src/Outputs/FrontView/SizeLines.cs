using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>Overall sizes of the piece, and the chains that add up to them, drawn beside and under it.</summary>
internal sealed class SizeLines(SvgWriter svg, View view, Piece piece, Span2 bounds)
{
    private const double TextSize = 2.5;
    private const double FirstLine = 9;
    private const double NextLine = 7;
    private const double OffTheEdge = 1.2;
    private const double PastTheLine = 1.2;
    private const double TextOverLine = 0.8;
    private const int MostSteps = 12;

    /// <summary>How much room the lines on one side of the piece need, in millimetres.</summary>
    /// <param name="steps">The ends of the steps of its chain, as given to <see cref="Draw"/>.</param>
    public static double Room(IReadOnlyList<double> steps) => FirstLine + 4 + (IsChain(steps) ? NextLine : 0);

    /// <param name="levels">Z of every level of the piece from the lowest to the highest.</param>
    /// <param name="bays">X of the edges of what stands side by side, from left to right.</param>
    public void Draw(IReadOnlyList<double> levels, IReadOnlyList<double> bays)
    {
        svg.Begin("g", ("fill", "none"), ("stroke", Ink.Black), ("stroke-width", SvgWriter.Number(Pen.Thin)));
        var offset = FirstLine;
        if (IsChain(levels))
        {
            Chain(levels, offset, Upright);
            offset += NextLine;
        }
        Chain([bounds.MinZ, bounds.MaxZ], offset, Upright);
        offset = FirstLine;
        if (IsChain(bays))
        {
            Chain(bays, offset, Level);
            offset += NextLine;
        }
        Chain([bounds.MinX, bounds.MaxX], offset, Level);
        svg.End();
    }

    /// <summary>
    /// Dimensions one step after the other on one line. A step too short for arrows of its own is pointed at by those of
    /// its neighbours; where a neighbour is short too, or there is none, an arrow comes from outside.
    /// </summary>
    private void Chain(IReadOnlyList<double> ends, double offset, Action<double, double, double, ArrowEnds> draw)
    {
        for (var i = 1; i < ends.Count; i++)
        {
            var isLong = IsLong(i);
            draw(
                ends[i - 1],
                ends[i],
                offset,
                new(
                    Inside: isLong,
                    OutsideBefore: !isLong && (i == 1 || !IsLong(i - 1)),
                    OutsideAfter: !isLong && (i == ends.Count - 1 || !IsLong(i + 1)),
                    ExtendsBefore: i == 1
                )
            );
        }

        bool IsLong(int step) => (ends[step] - ends[step - 1]) * view.MmPerUnit >= Arrow.RoomForTwo;
    }

    private static bool IsChain(IReadOnlyList<double> steps) => steps.Count is > 2 and <= MostSteps;

    /// <summary>A width, under the piece.</summary>
    private void Level(double from, double to, double offset, ArrowEnds arrows)
    {
        var bottom = view.ToPaper(bounds).Bottom;
        var (a, b) = (view.ToPaper(from, bounds.MinZ).X, view.ToPaper(to, bounds.MinZ).X);
        var y = bottom + offset;
        if (arrows.ExtendsBefore)
            svg.Line(new(a, bottom + OffTheEdge), new(a, y + PastTheLine));
        svg.Line(new(b, bottom + OffTheEdge), new(b, y + PastTheLine));
        Arrow.Between(svg, new(a, y), new(b, y), Ink.Black, arrows);
        Write(from, to, new((a + b) / 2, y - TextOverLine), b - a, isUpright: false);
    }

    /// <summary>A height, left of the piece, read from the right.</summary>
    private void Upright(double from, double to, double offset, ArrowEnds arrows)
    {
        var left = view.ToPaper(bounds).Left;
        var (a, b) = (view.ToPaper(bounds.MinX, from).Y, view.ToPaper(bounds.MinX, to).Y);
        var x = left - offset;
        if (arrows.ExtendsBefore)
            svg.Line(new(left - OffTheEdge, a), new(x - PastTheLine, a));
        svg.Line(new(left - OffTheEdge, b), new(x - PastTheLine, b));
        Arrow.Between(svg, new(x, a), new(x, b), Ink.Black, arrows);
        Write(from, to, new(x - TextOverLine, (a + b) / 2), a - b, isUpright: true);
    }

    private void Write(double from, double to, PaperPoint at, double room, bool isUpright)
    {
        var text = Sight.Told(piece, to - from);
        var width = TextWidth.Of(text, TextSize);
        if (width <= room - 1)
            Text(text, at, isUpright);
        // A figure wider than its own step stands beside the step: left of its line, or past its end.
        else if (isUpright)
            Text(text, at.Moved(-0.9, TextSize * Lettering.HalfFigure), isUpright: false, Anchor.End);
        else
            Text(text, at.Moved((room / 2) + PastTheLine, 0), isUpright: false, Anchor.Start);
    }

    private void Text(string text, PaperPoint at, bool isUpright, Anchor anchor = Anchor.Middle) =>
        svg.Text(text, at, new(TextSize, anchor, ReadsUpwards: isUpright));
}
