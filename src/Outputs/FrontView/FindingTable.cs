using System.Globalization;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.Findings;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.FrontView;

/// <summary>The table under the drawing that says what each sign means, with measured and wanted in the maker's unit.</summary>
internal sealed class FindingTable
{
    private const double HeadHeight = 5;
    private const double LineHeight = 3.3;
    private const double RowAir = 2.2;
    private const double TextSize = 2.3;
    private const double HeadSize = 1.9;
    private const double SignColumn = 8;
    private const int MostLines = 3;

    private readonly List<Row> _rows = [];
    private readonly int _left;
    private readonly double _width;

    private FindingTable(double width, int left)
    {
        _width = width;
        _left = left;
    }

    /// <summary>The table of as many findings as fit into a height; the rest is counted in a last line.</summary>
    public static FindingTable Of(IReadOnlyList<Finding> findings, LengthFormat format, double width, double mostHeight)
    {
        var room = mostHeight - HeadHeight - LineHeight - RowAir;
        var rows = new List<Row>();
        foreach (var finding in findings)
        {
            var row = Row.Of(finding, rows.Count + 1, format, width);
            if (row.Height > room)
                break;
            room -= row.Height;
            rows.Add(row);
        }
        var table = new FindingTable(width, findings.Count - rows.Count);
        table._rows.AddRange(rows);
        return table;
    }

    public double Height =>
        _rows.Count + _left == 0
            ? 0
            : HeadHeight + _rows.Sum(row => row.Height) + (_left > 0 ? LineHeight + RowAir : 0);

    public void Draw(SvgWriter svg, PaperPoint at)
    {
        if (Height <= 0)
            return;
        svg.Begin("g", ("stroke", Ink.Black), ("stroke-width", SvgWriter.Number(Pen.Thin)));
        var y = at.Y + HeadHeight;
        var columns = Columns.Of(_width);
        Head("Found on the model", columns.Words);
        Head("Measured", columns.Measured);
        Head("Wanted", columns.Wanted);
        Head("Off by", columns.Missed);
        Head("Recipe", columns.Place);
        svg.Line(new(at.X, y), new(at.X + _width, y));
        foreach (var row in _rows)
        {
            row.Draw(svg, new(at.X, y), columns);
            y += row.Height;
            svg.Line(new(at.X, y), new(at.X + _width, y), ("stroke", "#bbb"));
        }
        if (_left > 0)
        {
            var rest = string.Create(CultureInfo.InvariantCulture, $"and {_left} more, in findings.json");
            svg.Text(rest, new(at.X + columns.Words, y + LineHeight), new(TextSize, Colour: Ink.Grey));
        }
        svg.End();

        void Head(string text, double x) =>
            svg.Text(text, new(at.X + x, at.Y + HeadHeight - 1.5), new(HeadSize, Colour: Ink.Grey));
    }

    /// <summary>Where the columns start, from the left of the table.</summary>
    private readonly record struct Columns(
        double Words,
        double Measured,
        double Wanted,
        double Missed,
        double Place,
        double End
    )
    {
        public static Columns Of(double width)
        {
            var rest = width - SignColumn;
            double At(double share) => SignColumn + (rest * share);
            return new(SignColumn, At(0.46), At(0.59), At(0.72), At(0.85), width);
        }
    }

    /// <summary>One finding, its texts broken to the columns.</summary>
    private sealed record Row(
        int Number,
        Finding Finding,
        List<string> Title,
        List<string> Message,
        List<string> Measured,
        List<string> Wanted,
        List<string> Missed,
        List<string> Place
    )
    {
        public double Height =>
            (
                Math.Max(Title.Count + Message.Count, Math.Max(Measured.Count, Math.Max(Wanted.Count, Place.Count)))
                * LineHeight
            ) + RowAir;

        /// <summary>The file of an own word; the recipe's is not told.</summary>
        private static string FileOf(SourcePlace place) =>
            place.UsedAt is null
                ? ""
                : $" of {PlainText.Clean(place.File[(place.File.LastIndexOfAny(['/', '\\']) + 1)..])}";

        public static Row Of(Finding finding, int number, LengthFormat format, double width)
        {
            var columns = Columns.Of(width);
            var message = PlainText.Clean(finding.Message);
            if (finding.Remedy is { } remedy)
                message += (remedy.Sure ? " To mend: " : " Perhaps: ") + PlainText.Clean(remedy.Text);
            if (finding.AcceptedBecause is { } reason)
                message += " Accepted: " + PlainText.Clean(reason);
            var place = finding.Place is { } at
                ? string.Join(
                    ", used on ",
                    at.Uses.Prepend(at)
                        .Select(p =>
                            string.Create(CultureInfo.InvariantCulture, $"line {p.Line}, column {p.Column}{FileOf(p)}")
                        )
                )
                : "";
            return new(
                number,
                finding,
                Fit(finding.Kind.Title, columns.Words, columns.Measured, 1, bold: true),
                Fit(message, columns.Words, columns.Measured, MostLines),
                Fit(MeasuredText(finding, format), columns.Measured, columns.Wanted, MostLines),
                Fit(
                    finding.Wanted is { } w ? FindingWords.Wanted(w, format) : "",
                    columns.Wanted,
                    columns.Missed,
                    MostLines
                ),
                Fit(FindingWords.Missed(finding, format), columns.Missed, columns.Place, MostLines),
                Fit(place, columns.Place, columns.End, MostLines)
            );
        }

        public void Draw(SvgWriter svg, PaperPoint at, Columns columns)
        {
            var first = at.Y + (RowAir / 2) + (LineHeight * 0.78);
            Sign.Draw(svg, new(at.X + (SignColumn * 0.42), at.Y + (RowAir / 2) + (LineHeight * 0.55)), Number, Finding);
            Lines(Title, columns.Words, first, bold: true);
            Lines(Message, columns.Words, first + (Title.Count * LineHeight));
            Lines(Measured, columns.Measured, first, bold: true);
            Lines(Wanted, columns.Wanted, first);
            Lines(Missed, columns.Missed, first);
            Lines(Place, columns.Place, first);

            void Lines(List<string> lines, double x, double y, bool bold = false)
            {
                for (var i = 0; i < lines.Count; i++)
                    svg.Text(lines[i], new(at.X + x, y + (i * LineHeight)), new(TextSize, Bold: bold));
            }
        }

        private static string MeasuredText(Finding finding, LengthFormat format) =>
            finding.Measured is { } measured
                ? $"{PlainText.Clean(measured.Name)} {FindingWords.Measured(measured, format)}"
                : "";

        private static List<string> Fit(string text, double from, double to, int lines, bool bold = false) =>
            TextWidth.Wrapped(PlainText.Shortened(text, 600), TextSize, to - from - 2, lines, bold);
    }
}
