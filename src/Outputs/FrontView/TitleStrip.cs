using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.Findings;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.FrontView;

/// <summary>The strip along the foot of the sheet: what it shows, to what scale, in which unit, and how it stands.</summary>
internal static class TitleStrip
{
    public const double Height = 15;

    private const double Inset = 2.2;
    private const double LabelSize = 1.8;
    private const double TextSize = 2.8;
    private const double TitleSize = 4.2;
    private const double SmallSize = 2.1;

    public static void Draw(
        SvgWriter svg,
        Area strip,
        Piece piece,
        string overall,
        Report report,
        Sheet sheet,
        DrawingScale scale
    )
    {
        var isWide = strip.Width > 230;
        var cells = Cells(strip, isWide ? [0.40, 0.58, 0.76, 0.84, 0.90] : [0.34, 0.56, 0.80, 0.90, 0.90]);
        svg.Begin("g", ("fill", "none"), ("stroke", Ink.Black), ("stroke-width", SvgWriter.Number(Pen.Fine)));
        svg.Line(new(strip.Left, strip.Top), new(strip.Right, strip.Top), ("stroke-width", "0.35"));
        foreach (var cell in cells.Skip(1).Where(cell => cell.Width > 0))
            svg.Line(new(cell.Left, strip.Top), new(cell.Left, strip.Bottom));
        svg.End();

        var title = cells[0];
        var name = PlainText.Apart(PlainText.Shortened(piece.Name, 300));
        Label(svg, title, "Front view");
        svg.Text(
            TextWidth.Fitted(name, TitleSize, title.Width - (2 * Inset), bold: true),
            new(title.Left + Inset, title.Top + 8.6),
            new(TitleSize, Bold: true)
        );
        var line = piece.Note is { } note
            ? $"{overall}  ·  {PlainText.Shortened(PlainText.Clean(note), 400)}"
            : overall;
        svg.Text(
            TextWidth.Fitted(line, SmallSize, title.Width - (2 * Inset)),
            new(title.Left + Inset, title.Top + 12.6),
            new(SmallSize, Colour: Ink.Grey)
        );
        Cell(svg, cells[1], "Stands", [.. Standing(report)]);
        Cell(svg, cells[2], "Scale", scale.Name);
        Cell(svg, cells[3], "All sizes in", piece.Format.Unit == LengthUnit.Inch ? "inches" : "millimetres");
        if (cells[4].Width > 0)
            Cell(svg, cells[4], "Sheet", sheet.Name);
        Cell(svg, cells[5], "Measured on", "the model");
    }

    private static IEnumerable<string> Standing(Report report)
    {
        var counts = new List<string>();
        foreach (var severity in (Severity[])[Severity.Stop, Severity.Warn, Severity.Note])
        {
            if (report.Count(severity) is > 0 and var count)
                counts.Add(string.Create(CultureInfo.InvariantCulture, $"{count} {FindingWords.Severity(severity)}"));
        }
        var ran = report.Checks.Count(check => check.Ran);
        yield return report.StopsTheSaw ? "Do not cut yet"
        : ran == 0 ? "Not checked"
        : "Nothing stops the saw";
        yield return counts.Count > 0
            ? string.Join(", ", counts)
            : string.Create(CultureInfo.InvariantCulture, $"{ran} of {report.Checks.Count} checks run");
    }

    private static void Cell(SvgWriter svg, Area cell, string label, params ReadOnlySpan<string> lines)
    {
        Label(svg, cell, label);
        for (var i = 0; i < lines.Length; i++)
        {
            var size = i == 0 ? TextSize : 2.2;
            svg.Text(
                TextWidth.Fitted(lines[i], size, cell.Width - Inset),
                new(cell.Left + Inset, cell.Top + 8.4 + (i * 3.8)),
                new(size, Bold: i == 0)
            );
        }
    }

    private static void Label(SvgWriter svg, Area cell, string label) =>
        svg.Text(label, new(cell.Left + Inset, cell.Top + 3.6), new(LabelSize, Colour: Ink.Grey));

    private static List<Area> Cells(Area strip, double[] ends)
    {
        var cells = new List<Area>();
        var left = strip.Left;
        foreach (var end in ends.Append(1.0))
        {
            var right = strip.Left + (strip.Width * end);
            cells.Add(strip with { Left = left, Right = right });
            left = right;
        }
        return cells;
    }
}
