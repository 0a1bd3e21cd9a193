using System.Text;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// The front elevation of a piece as a drawing on a sheet of paper: hidden lines hidden, to a standard scale, real sizes
/// and gaps on it, findings marked where they are. All of it is measured on the solids.
/// </summary>
public static class FrontSvg
{
    private const double Border = 8;
    private const double TablePart = 0.34;
    private const double NoteSize = 2;
    private const double NoteHeight = 5;

    /// <summary>The drawing on a sheet of its own: <c>front.svg</c>.</summary>
    public static OutputFile Write(Piece piece, Report report)
    {
        var text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        text.Append(DrawSheet(piece, report));
        return new("front.svg", Encoding.UTF8.GetBytes(text.ToString()));
    }

    /// <summary>The drawing alone, as an <c>svg</c> element for a page; findings keep their numbers.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="report">What the checks found.</param>
    /// <param name="mostWidthMm">Room on the page, in millimetres.</param>
    /// <param name="mostHeightMm">Room on the page, in millimetres.</param>
    /// <param name="scale">The scale it came out at, in words.</param>
    /// <param name="overall">Width, height and depth over all, in words.</param>
    public static string Figure(
        Piece piece,
        Report report,
        double mostWidthMm,
        double mostHeightMm,
        out string scale,
        out string overall
    )
    {
        var drawing = FrontDrawing.Of(piece, report);
        var chosen = DrawingScale.ForFigure(piece.Format.Unit).First(s => drawing.Fits(mostWidthMm, mostHeightMm, s));
        (scale, overall) = (chosen.Name, drawing.OverallSize);
        var height = Math.Min(mostHeightMm, drawing.HeightAt(chosen));
        using var svg = new SvgWriter(mostWidthMm, height, Title(piece), Description(chosen));
        // Paper of its own: a reader of pages may have a dark one.
        svg.Rect(new(0, 0, mostWidthMm, height), ("fill", Ink.White));
        if (!drawing.IsEmpty)
            drawing.Draw(svg, new(0, 0, mostWidthMm, height), chosen);
        return svg.Finish();
    }

    private static string DrawSheet(Piece piece, Report report)
    {
        var drawing = FrontDrawing.Of(piece, report);
        var (sheet, scale, table) = Choose(drawing, piece, report);
        using var svg = new SvgWriter(sheet.WidthMm, sheet.HeightMm, Title(piece), Description(scale));
        svg.Rect(new(0, 0, sheet.WidthMm, sheet.HeightMm), ("fill", Ink.White));
        var frame = new Area(Border, Border, sheet.WidthMm - Border, sheet.HeightMm - Border);
        svg.Rect(frame, ("fill", "none"), ("stroke", Ink.Black), ("stroke-width", SvgWriter.Number(Pen.Contour)));
        TitleStrip.Draw(
            svg,
            frame with
            {
                Top = frame.Bottom - TitleStrip.Height,
            },
            piece,
            drawing.OverallSize,
            report,
            sheet,
            scale
        );
        var tableTop = frame.Bottom - TitleStrip.Height - table.Height;
        table.Draw(svg, new(frame.Left, tableTop));
        var unlettered = drawing.IsEmpty
            ? []
            : drawing.Draw(svg, new(frame.Left, frame.Top, frame.Right, tableTop - NoteHeight), scale);
        var note = TextWidth.Fitted(Note(drawing, piece, unlettered), NoteSize, frame.Width - 6);
        svg.Text(note, new(frame.Left + 3, tableTop - 2), new(NoteSize, Colour: Ink.Grey));
        return svg.Finish();
    }

    /// <summary>The handiest sheet that reaches a handy scale, or else the one with the largest picture.</summary>
    private static (Sheet Sheet, DrawingScale Scale, FindingTable Table) Choose(
        FrontDrawing drawing,
        Piece piece,
        Report report
    )
    {
        var unit = piece.Format.Unit;
        (Sheet Sheet, DrawingScale Scale, FindingTable Table)? best = null;
        foreach (var sheet in Sheet.For(unit))
        {
            var (width, height) = (sheet.WidthMm - (2 * Border), sheet.HeightMm - (2 * Border));
            var table = FindingTable.Of(report.Findings, piece.Format, width, height * TablePart);
            var room = height - TitleStrip.Height - table.Height - NoteHeight;
            var scale = DrawingScale.For(unit).First(s => drawing.Fits(width, room, s));
            if (best is null || scale.Divisor < best.Value.Scale.Divisor)
                best = (sheet, scale, table);
            if (best.Value.Scale.Divisor <= DrawingScale.Handy(unit))
                break;
        }
        return best!.Value;
    }

    private static string Note(FrontDrawing drawing, Piece piece, IReadOnlyList<FrontGap> unlettered)
    {
        if (drawing.IsEmpty)
            return "There is nothing to draw: the piece has no part that is seen from the front.";
        var note = new StringBuilder();
        if (drawing.Gaps.Count > 0)
            note.Append("Small figures between arrows: gaps as measured, narrowest to widest. ");
        if (drawing.HasDoors)
            note.Append("Dashed V: its point is at the hinges. ");
        if (piece.Openings.Any(opening => opening.AsMeasured is not null))
            note.Append("Openings that were measured are drawn as reckoned; their gaps are told by the findings. ");
        if (unlettered.Count > 0)
        {
            var told = unlettered
                .GroupBy(gap => GapLabels.Text(gap, piece.Format), StringComparer.Ordinal)
                .Select(equal =>
                    $"{equal.Key} ({string.Join(", ", equal.Select(gap => $"{Name(piece, gap.Front.Group)} {Side(gap.Side)}"))})"
                );
            note.Append("Gaps without room for a figure: ").AppendJoin("; ", told).Append('.');
        }
        return note.ToString();
    }

    private static string Name(Piece piece, string group) =>
        PlainText.Apart(
            piece.Groups.FirstOrDefault(g => string.Equals(g.Id, group, StringComparison.Ordinal))?.Name ?? group
        );

    private static string Side(Direction side) =>
        side switch
        {
            Direction.Left => "left",
            Direction.Right => "right",
            Direction.Up => "top",
            _ => "bottom",
        };

    private static string Title(Piece piece) =>
        $"Front view of {PlainText.Shortened(PlainText.Apart(piece.Name), 300)}";

    private static string Description(DrawingScale scale) =>
        $"Front elevation, scale {scale.Name}, measured on the model.";
}
