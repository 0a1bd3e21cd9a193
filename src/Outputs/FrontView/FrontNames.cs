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

    public void Draw(IEnumerable<SeenFront> fronts)
    {
        foreach (var (front, bounds, real) in fronts)
        {
            var area = view.ToPaper(bounds);
            var room = area.Width - (2 * Margin);
            var name = PlainText.Apart(_names.GetValueOrDefault(front.Group, ""));
            var size =
                $"{piece.Format.Write(piece.Grid.ToLength(real.Width))} × "
                + piece.Format.Write(piece.Grid.ToLength(real.Height));
            var lines = TextWidth.Wrapped(PlainText.Shortened(name, 200), NameSize, room, 2);
            string[] broken = [.. size.Split(" × ").Select((side, i) => i == 0 ? $"{side} ×" : side)];
            // The name and the size, or the name alone, or the size alone, or nothing.
            _ =
                TryDraw(area, lines, [size], room)
                || TryDraw(area, lines, broken, room)
                || TryDraw(area, lines, [], room)
                || TryDraw(area, [], [size], room);
        }
    }

    /// <summary>Letters old carcases as what they are.</summary>
    public void DrawKept(IReadOnlyDictionary<string, Span2> partBounds)
    {
        foreach (var group in piece.Groups.Where(group => group.Kind == GroupKind.KeptCarcase))
        {
            var bounds = piece
                .Parts.Where(part =>
                    string.Equals(part.Group, group.Id, StringComparison.Ordinal) && partBounds.ContainsKey(part.Id)
                )
                .Select(part => partBounds[part.Id])
                .ToList();
            if (bounds.Count == 0)
                continue;
            var area = view.ToPaper(bounds.Aggregate(Span2.Around));
            // A pair of old doors has its gap in the middle: the words go to the left of it.
            if (piece.Groups.Any(door => door.Kind == GroupKind.Door && door.Parent == group.Id))
                area = area with { Right = area.Centre.X };
            var room = area.Width - (2 * Margin);
            var name = PlainText.Apart(PlainText.Shortened(group.Name, 200));
            TryDraw(area, TextWidth.Wrapped($"{name}, kept as found", NameSize, room, 2), [], room);
        }
    }

    private bool TryDraw(Area front, List<string> name, IReadOnlyList<string> size, double room)
    {
        string[] lines = [.. name, .. size];
        if (lines.Length == 0)
            return false;
        var width = lines.Max(line => TextWidth.Of(line, NameSize));
        var height = lines.Length * LineHeight;
        if (width > room || height > front.Height - Margin)
            return false;
        double[] heights = [0.5, 0.42, 0.58, 0.34, 0.66];
        var places = heights.Select(share =>
            Area.At(new(front.Centre.X, front.Top + (front.Height * share)), width, height)
        );
        if (!field.TryTake(places, place => place, out var chosen))
            return false;
        svg.Rect(chosen.Grown(0.3), ("fill", Ink.White));
        for (var i = 0; i < lines.Length; i++)
        {
            var at = new PaperPoint(chosen.Centre.X, chosen.Top + ((i + 0.78) * LineHeight));
            var isSize = i >= name.Count;
            svg.Text(
                lines[i],
                at,
                new(isSize ? FigureSize : NameSize, Anchor.Middle, Colour: isSize ? Ink.Black : Ink.Grey)
            );
        }
        return true;
    }
}
