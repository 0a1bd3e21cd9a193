using System.Globalization;
using System.Text;
using Dryfit.Findings;
using Dryfit.Outputs.Findings;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// The numbered sign of a finding. Its shape tells how grave it is (eight corners stop, three warn, a round note), its
/// number leads to the table; colour only repeats that. An accepted finding has a hollow sign.
/// </summary>
internal static class Sign
{
    /// <summary>Size across, in millimetres.</summary>
    public const double Size = 4.4;

    private const double NumberSize = 2.3;

    /// <summary>The sign alone, as an <c>svg</c> element for a page.</summary>
    public static string Figure(int number, Finding finding)
    {
        const double Room = Size + 0.8;
        var kind = finding.AcceptedBecause is null ? FindingWords.Severity(finding.Kind.Severity) : "accepted";
        using var svg = new SvgWriter(Room, Room, string.Create(CultureInfo.InvariantCulture, $"{kind} {number}"), "");
        Draw(svg, new(Room / 2, Room / 2), number, finding);
        return svg.Finish();
    }

    public static void Draw(SvgWriter svg, PaperPoint centre, int number, Finding finding)
    {
        var severity = finding.Kind.Severity;
        var ink = Ink.Of(severity);
        var isHollow = finding.AcceptedBecause is not null;
        svg.Begin(
            "g",
            ("fill", isHollow ? Ink.White : ink),
            ("stroke", isHollow ? ink : Ink.White),
            ("stroke-width", isHollow ? "0.3" : "0.25"),
            ("stroke-linejoin", "round")
        );
        if (severity == Severity.Note)
        {
            svg.Shape(
                "circle",
                ("cx", SvgWriter.Number(centre.X)),
                ("cy", SvgWriter.Number(centre.Y)),
                ("r", SvgWriter.Number(Size / 2))
            );
        }
        else if (severity == Severity.Warn)
        {
            svg.Path(Corners(centre.Moved(0, 0.5), 3, Size * 0.66, -90), "");
        }
        else
        {
            svg.Path(Corners(centre, 8, Size * 0.54, 22.5), "");
        }
        svg.End();
        var text = number.ToString(CultureInfo.InvariantCulture);
        var size = text.Length > 2 ? NumberSize * 0.75 : NumberSize;
        var down = severity == Severity.Warn ? 0.55 : 0;
        svg.Text(
            text,
            centre.Moved(0, (size * Lettering.HalfFigure) + down),
            new(size, Anchor.Middle, Bold: true, isHollow ? ink : Ink.White)
        );
    }

    private static string Corners(PaperPoint centre, int count, double radius, double firstDegrees)
    {
        var data = new StringBuilder();
        for (var i = 0; i < count; i++)
        {
            var angle = (firstDegrees + (360.0 * i / count)) * Math.PI / 180;
            data.Append(i == 0 ? 'M' : 'L').Append(centre.Moved(radius * Math.Cos(angle), radius * Math.Sin(angle)));
        }
        return data.Append('Z').ToString();
    }
}
