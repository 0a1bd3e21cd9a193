using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>One dimension across a small gap: an arrow with the tag at its tail, and a short one opposite.</summary>
/// <param name="Near">The edge of the gap that the tagged arrow points at.</param>
/// <param name="Far">The other edge.</param>
/// <param name="Tail">Which way the tail goes from the near edge, in the piece: up is up on the paper.</param>
/// <param name="Width">Width of what stands at the tail.</param>
/// <param name="Height">Height of what stands at the tail.</param>
internal readonly record struct GapTag(PaperPoint Near, PaperPoint Far, Direction Tail, double Width, double Height)
{
    public const double TextSize = 1.9;

    private const double TailLength = 2.4;
    private const double ShortTail = 2;
    private const double Air = 0.5;

    private (double X, double Y) Way =>
        Tail switch
        {
            Direction.Left => (-1, 0),
            Direction.Right => (1, 0),
            Direction.Up => (0, -1),
            _ => (0, 1),
        };

    private bool IsUpright => Tail is Direction.Up or Direction.Down;

    /// <summary>Beside an upright tail the tag needs no more height than its own, which small fronts do not have.</summary>
    private PaperPoint TailEnd
    {
        get
        {
            var length = IsUpright ? Math.Max(TailLength, Height + Air) : TailLength;
            return Near.Moved(Way.X * length, Way.Y * length);
        }
    }

    /// <summary>The box of the tag itself: at the end of a level tail, beside an upright one.</summary>
    public Area Tag =>
        IsUpright
            ? Area.At(new(Near.X + Air + (Width / 2), TailEnd.Y - (Way.Y * Height / 2)), Width, Height)
            : Area.At(TailEnd.Moved(Way.X * (Air + (Width / 2)), 0), Width, Height);

    /// <summary>The box of all of it, tail included.</summary>
    public Area Box
    {
        get
        {
            var (tag, tail) = (Tag, Area.Around(Near, TailEnd));
            return new(
                Math.Min(tag.Left, tail.Left),
                Math.Min(tag.Top, tail.Top),
                Math.Max(tag.Right, tail.Right),
                Math.Max(tag.Bottom, tail.Bottom)
            );
        }
    }

    /// <summary>Draws the arrows and a clear ground, then what stands on it.</summary>
    public void Draw(SvgWriter svg, string ink, Action tag)
    {
        var (way, tail) = (Way, TailEnd);
        var opposite = Far.Moved(-way.X * ShortTail, -way.Y * ShortTail);
        svg.Rect(Tag.Grown(0.2), ("fill", Ink.White), ("stroke", "none"));
        svg.Path($"M{tail}L{Near}M{opposite}L{Far}", "", ("stroke", ink));
        Arrow.Head(svg, Near, tail, ink, small: true);
        Arrow.Head(svg, Far, opposite, ink, small: true);
        tag();
    }

    /// <summary>Sets a line of text in the middle of the tag.</summary>
    public void Write(SvgWriter svg, string text, Lettering lettering) =>
        svg.Text(
            text,
            new(Tag.Centre.X, Tag.Centre.Y + (lettering.Size * Lettering.HalfFigure)),
            lettering with
            {
                Anchor = Anchor.Middle,
            }
        );
}
