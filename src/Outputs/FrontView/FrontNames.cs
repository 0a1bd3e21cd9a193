using Dryfit.Casework;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.FrontView;

/// <summary>Letters doors and drawers with their names and real sizes, where there is room for it.</summary>
internal sealed class FrontNames(SvgWriter svg, View view, Piece piece, LabelField field)
{
    private const double NameSize = 2.1;
    private const double FigureSize = 2.1;
    private const double LineHeight = 2.9;
    private const double Margin = 2;

    private readonly Dictionary<string, string> _names = piece.Groups.ToDictionary(
        group => group.Id,
        group => group.Name,
        StringComparer.Ordinal
    );

    public void Draw(IEnumerable<(Front Front, Span2 Bounds)> fronts)
    {
        foreach (var (front, bounds) in fronts)
        {
            var area = view.ToPaper(bounds);
            var room = area.Width - (2 * Margin);
            var name = PlainText.Apart(_names.GetValueOrDefault(front.Group, ""));
            var size =
                $"{piece.Format.Write(piece.Grid.ToLength(bounds.Width))} × "
                + piece.Format.Write(piece.Grid.ToLength(bounds.Height));
            var lines = TextWidth.Wrapped(PlainText.Shortened(name, 200), NameSize, room, 2);
            // The name and the size, or the size alone, or nothing.
            if (!TryDraw(area, [.. lines, size], room))
                TryDraw(area, [size], room);
        }
    }

    private bool TryDraw(Area front, IReadOnlyList<string> lines, double room)
    {
        var width = lines.Max(line => TextWidth.Of(line, NameSize));
        var height = lines.Count * LineHeight;
        if (width > room || height > front.Height - Margin)
            return false;
        double[] heights = [0.5, 0.42, 0.58, 0.34, 0.66];
        var places = heights.Select(share =>
            Area.At(new(front.Centre.X, front.Top + (front.Height * share)), width, height)
        );
        if (!field.TryTake(places, place => place, out var chosen))
            return false;
        svg.Rect(chosen.Grown(0.3), ("fill", Ink.White));
        for (var i = 0; i < lines.Count; i++)
        {
            var at = new PaperPoint(chosen.Centre.X, chosen.Top + ((i + 0.78) * LineHeight));
            var isSize = i == lines.Count - 1;
            svg.Text(
                lines[i],
                at,
                new(isSize ? FigureSize : NameSize, Anchor.Middle, Colour: isSize ? Ink.Black : Ink.Grey)
            );
        }
        return true;
    }
}
