using System.Text;
using Dryfit.Casework;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.FrontView;

/// <summary>Draws the boards themselves: what is seen from the front, nearer parts over farther ones.</summary>
internal static class PieceLines
{
    /// <summary>Glass lets this much of what is behind it through.</summary>
    private const string GlassCover = "0.55";

    public static void Draw(SvgWriter svg, View view, Piece piece, IReadOnlyList<FrontFace> backToFront)
    {
        DrawContour(svg, view, backToFront);
        var shade = new Shade(piece, backToFront);
        svg.Begin(
            "g",
            ("stroke", Ink.Black),
            ("stroke-width", SvgWriter.Number(Pen.Edge)),
            ("stroke-linejoin", "round"),
            ("fill", Ink.White),
            ("fill-rule", "evenodd")
        );
        foreach (var face in backToFront)
            DrawFace(svg, view, piece.Parts[face.Part], face, shade.Of(face));
        svg.End();
    }

    private static void DrawFace(SvgWriter svg, View view, Part part, FrontFace face, string fill)
    {
        var data = Data(view, face);
        var name = PlainText.Shortened(PlainText.Apart(part.Name), 120);
        if (Visible.IsClear(part))
        {
            svg.Path(data, name, ("fill-opacity", GlassCover), ("stroke-width", SvgWriter.Number(Pen.Fine)));
            GlassStrokes(svg, view.ToPaper(face.Bounds));
        }
        else if (part.IsKept)
        {
            svg.Path(data, name, ("fill", fill), ("stroke", Ink.Grey), ("stroke-width", SvgWriter.Number(Pen.Fine)));
        }
        else if (string.Equals(fill, Ink.White, StringComparison.Ordinal))
        {
            svg.Path(data, name);
        }
        else
        {
            svg.Path(data, name, ("fill", fill));
        }
    }

    /// <summary>One heavy line around all that is seen: painted first, its inner half is covered by what it goes around.</summary>
    private static void DrawContour(SvgWriter svg, View view, IReadOnlyList<FrontFace> faces)
    {
        var data = new StringBuilder();
        foreach (var face in faces)
            data.Append(Data(view, face));
        svg.Path(
            data.ToString(),
            "",
            ("fill", Ink.White),
            ("stroke", Ink.Black),
            ("stroke-width", SvgWriter.Number(Pen.Contour * 2)),
            ("stroke-linejoin", "miter"),
            ("paint-order", "stroke")
        );
    }

    /// <summary>Three short strokes in opposite corners, as glass is drawn in elevations.</summary>
    private static void GlassStrokes(SvgWriter svg, Area pane)
    {
        var size = Math.Min(pane.Width, pane.Height) * 0.22;
        if (size < 1)
            return;
        var data = new StringBuilder();
        foreach (
            var (x, y) in (PaperPoint[])
                [
                    new(pane.Left + (pane.Width * 0.3), pane.Top + (pane.Height * 0.22)),
                    new(pane.Left + (pane.Width * 0.7), pane.Top + (pane.Height * 0.78)),
                ]
        )
        {
            for (var i = -1; i <= 1; i++)
            {
                var half = size * (i == 0 ? 0.5 : 0.3);
                var middle = new PaperPoint(x + (i * size * 0.22), y + (i * size * 0.22));
                data.Append('M').Append(middle.Moved(-half, half)).Append('L').Append(middle.Moved(half, -half));
            }
        }
        svg.Path(
            data.ToString(),
            "",
            ("fill", "none"),
            ("stroke", Ink.Grey),
            ("stroke-width", SvgWriter.Number(Pen.Thin))
        );
    }

    private static string Data(View view, FrontFace face)
    {
        var data = new StringBuilder();
        foreach (var loop in face.Loops)
        {
            for (var i = 0; i < loop.Count; i++)
                data.Append(i == 0 ? 'M' : 'L').Append(view.ToPaper(loop[i]));
            data.Append('Z');
        }
        return data.ToString();
    }
}
