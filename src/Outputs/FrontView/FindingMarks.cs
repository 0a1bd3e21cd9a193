using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Marks findings on the piece: hatches the hole they speak of, dimensions it, and sets their sign beside it.</summary>
internal sealed class FindingMarks(
    SvgWriter svg,
    View view,
    Piece piece,
    LabelField field,
    GapLabels labels,
    VisibleSpots spots
)
{
    private const int MostMarks = 60;
    private const double TextSize = 2.6;
    private const double NearEnoughMm = 2;

    /// <summary>Paper around a spot that its dot and arrows take, in millimetres.</summary>
    private const double RoomOfSpot = 2.5;

    /// <summary>How far signs may stand from the spot they mark, nearest first.</summary>
    private static readonly double[] SignDistances = [6, 9, 13, 18, 24, 32, 42];

    /// <summary>Hatch patterns, one a severity; to be written once, before anything is hatched.</summary>
    public static void DefineHatches(SvgWriter svg)
    {
        svg.Begin("defs");
        foreach (var severity in (Severity[])[Severity.Note, Severity.Warn, Severity.Stop])
        {
            svg.Begin(
                "pattern",
                ("id", HatchId(severity)),
                ("patternUnits", "userSpaceOnUse"),
                ("width", "1.1"),
                ("height", "1.1"),
                ("patternTransform", "rotate(45)")
            );
            svg.Shape("rect", ("width", "1.1"), ("height", "1.1"), ("fill", Ink.White));
            svg.Shape("rect", ("width", "0.42"), ("height", "1.1"), ("fill", Ink.Of(severity)));
            svg.End();
        }
        svg.End();
    }

    /// <summary>Draws all marks.</summary>
    /// <param name="findings">In the order of their numbers.</param>
    /// <param name="gaps">The gaps around fronts; those a finding speaks of are dimensioned with its sign.</param>
    /// <returns>The gaps that a finding has dimensioned.</returns>
    public HashSet<FrontGap> Draw(IReadOnlyList<Finding> findings, IReadOnlyList<FrontGap> gaps)
    {
        var dimensioned = new HashSet<FrontGap>();
        svg.Begin("g", ("fill", "none"), ("stroke-width", SvgWriter.Number(Pen.Edge)));
        var marks = findings
            .Take(MostMarks)
            .Select((finding, i) => (Number: i + 1, Finding: finding, Gap: GapOf(finding, gaps)))
            .ToList();
        // Holes are hatched before anything is lettered, and their figures find room before other signs do.
        foreach (var (_, finding, gap) in marks)
        {
            if (gap is not null)
                Hatch(finding, gap);
            else if (finding.Where is { } where && IsFinite(where))
                field.Take(Area.Around(Paper(where.From), Paper(where.To)).Grown(RoomOfSpot));
        }
        foreach (var (number, finding, gap) in marks)
        {
            if (gap is not null && dimensioned.Add(gap))
                Dimension(number, finding, gap);
        }
        foreach (var (number, finding, gap) in marks)
        {
            if (gap is not null && ReferenceEquals(marks.Find(mark => mark.Gap == gap).Finding, finding))
                continue;
            if (finding.Where is { } where && IsFinite(where))
                MarkPlace(number, finding, Paper(where.From), Paper(where.To));
            else if (PlaceOfParts(finding) is { } spot)
                MarkPlace(number, finding, spot, spot);
        }
        svg.End();
        return dimensioned;
    }

    /// <summary>The gap a finding speaks of: on the edge its measurement crosses, of a front it names.</summary>
    private FrontGap? GapOf(Finding finding, IReadOnlyList<FrontGap> gaps)
    {
        if (finding.Where is not { } where || finding.Measured is MeasuredVolume or MeasuredAngle || !IsFinite(where))
            return null;
        var (x, z) = (where.To.XMm - where.From.XMm, where.To.ZMm - where.From.ZMm);
        var axis = Math.Abs(x) >= Math.Abs(z) ? Axis.X : Axis.Z;
        if (Math.Max(Math.Abs(x), Math.Abs(z)) <= 0)
            return null;
        var middle = new Vec2((where.From.XMm + where.To.XMm) / 2, (where.From.ZMm + where.To.ZMm) / 2);
        foreach (var gap in gaps)
        {
            if (gap.Side.Axis() == axis && Names(finding, gap.Front) && gap.Courses.Any(course => IsIn(course, middle)))
                return gap;
        }
        return null;
    }

    private static bool Names(Finding finding, Front front) =>
        finding.Parts.Any(id =>
            string.Equals(id, front.Group, StringComparison.Ordinal) || front.Face.Contains(id, StringComparer.Ordinal)
        );

    private bool IsIn(GapCourse course, Vec2 middleMm)
    {
        var box = Span2.Around([course.FrontStart, course.FrontEnd, course.OtherStart, course.OtherEnd]);
        return middleMm.X >= piece.Grid.ToMm(box.MinX) - NearEnoughMm
            && middleMm.X <= piece.Grid.ToMm(box.MaxX) + NearEnoughMm
            && middleMm.Y >= piece.Grid.ToMm(box.MinZ) - NearEnoughMm
            && middleMm.Y <= piece.Grid.ToMm(box.MaxZ) + NearEnoughMm;
    }

    private void Hatch(Finding finding, FrontGap gap)
    {
        foreach (var stretch in Stretches(gap.Courses))
        {
            var corners = stretch
                .SelectMany(course => (Vec2[])[course.FrontStart, course.FrontEnd])
                .Concat(
                    stretch.AsEnumerable().Reverse().SelectMany(course => (Vec2[])[course.OtherEnd, course.OtherStart])
                )
                .Select(view.ToPaper);
            svg.Path(
                $"M{string.Join('L', corners)}Z",
                "",
                ("fill", $"url(#{HatchId(finding.Kind.Severity)})"),
                ("stroke", Ink.Of(finding.Kind.Severity))
            );
        }
    }

    /// <summary>Courses that go on without a step, together.</summary>
    private static List<List<GapCourse>> Stretches(IReadOnlyList<GapCourse> courses)
    {
        var stretches = new List<List<GapCourse>>();
        foreach (var course in courses)
        {
            if (stretches.Count > 0 && stretches[^1][^1].GoesOnIn(course))
                stretches[^1].Add(course);
            else
                stretches.Add([course]);
        }
        return stretches;
    }

    private void Dimension(int number, Finding finding, FrontGap gap)
    {
        var ink = Ink.Of(finding.Kind.Severity);
        var text = GapLabels.Text(gap, piece.Format);
        var width = Sign.Size + 0.8 + TextWidth.Of(text, TextSize, bold: true);
        if (!field.TryTake(labels.Tags(gap, width, Sign.Size, mayLeaveFront: true), tag => tag.Box, out var chosen))
            chosen = labels.TagWithoutRoom(gap, width, Sign.Size); // a finding is shown, come what may
        foreach (var course in gap.Courses)
            field.Take(Area.Around(view.ToPaper(course.FrontStart), view.ToPaper(course.OtherEnd)));
        chosen.Draw(
            svg,
            ink,
            () =>
            {
                var tag = chosen.Tag;
                Sign.Draw(svg, new(tag.Left + (Sign.Size / 2), tag.Centre.Y), number, finding);
                svg.Text(
                    text,
                    new(tag.Right, tag.Centre.Y + (TextSize * Lettering.HalfFigure)),
                    new(TextSize, Anchor.End, Bold: true, ink)
                );
            }
        );
    }

    private void MarkPlace(int number, Finding finding, PaperPoint from, PaperPoint to)
    {
        var ink = Ink.Of(finding.Kind.Severity);
        if (finding.Parts.Count > 0)
            OutlinePart(finding.Parts[0], ink);
        var area = Area.Around(from, to);
        if (area.Width > 0.3 && area.Height > 0.3)
        {
            svg.Rect(area, ("fill", $"url(#{HatchId(finding.Kind.Severity)})"), ("stroke", ink));
        }
        else if (from.DistanceTo(to) > 0.05)
        {
            Arrow.Between(svg, from, to, ink);
        }
        var spot = area.Centre;
        var text = finding.Measured is MeasuredLength or MeasuredRange ? Figure(finding.Measured) : "";
        var width = Sign.Size + (text.Length > 0 ? 0.8 + TextWidth.Of(text, TextSize, bold: true) : 0);
        if (!field.TryTake(Around(spot), centre => Area.At(centre, width, Sign.Size), out var chosen))
            chosen = spot.Moved(SignDistances[0], -SignDistances[0]);
        svg.Line(spot, chosen, ("stroke", ink), ("stroke-width", SvgWriter.Number(Pen.Fine)));
        svg.Shape(
            "circle",
            ("cx", SvgWriter.Number(spot.X)),
            ("cy", SvgWriter.Number(spot.Y)),
            ("r", "0.55"),
            ("fill", ink),
            ("stroke", "none")
        );
        var tag = Area.At(chosen, width, Sign.Size);
        if (text.Length > 0)
        {
            svg.Rect(tag.Grown(0.2), ("fill", Ink.White), ("stroke", "none"));
            svg.Text(
                text,
                new(tag.Right, tag.Centre.Y + (TextSize * Lettering.HalfFigure)),
                new(TextSize, Anchor.End, Bold: true, ink)
            );
        }
        Sign.Draw(svg, new(tag.Left + (Sign.Size / 2), tag.Centre.Y), number, finding);
    }

    /// <summary>The part to change, drawn round in the ink of the finding; dashed where it is hidden.</summary>
    private void OutlinePart(string id, string ink)
    {
        if (spots.BoundsOf(id) is not { } bounds)
            return;
        var dashes = spots.IsSeen(id) ? "none" : "1.6 0.8";
        svg.Rect(
            view.ToPaper(bounds),
            ("stroke", ink),
            ("stroke-width", SvgWriter.Number(Pen.Contour)),
            ("stroke-dasharray", dashes)
        );
    }

    private string Figure(Measured measured) =>
        measured switch
        {
            MeasuredLength length => piece.Format.Write(length.Value),
            MeasuredRange range => Range(range.Smallest, range.Largest),
            _ => "",
        };

    private string Range(Length smallest, Length largest) =>
        smallest == largest
            ? piece.Format.Write(largest)
            : $"{piece.Format.Write(smallest)} to {piece.Format.Write(largest)}";

    private static IEnumerable<PaperPoint> Around(PaperPoint spot)
    {
        foreach (var distance in SignDistances)
        {
            foreach (
                var (x, y) in ((double, double)[])[(1, -1), (-1, -1), (1, 1), (-1, 1), (1, 0), (-1, 0), (0, -1), (0, 1)]
            )
                yield return spot.Moved(x * distance, y * distance * 0.8);
        }
    }

    private PaperPoint? PlaceOfParts(Finding finding)
    {
        PaperPoint? first = null;
        foreach (var spot in finding.Parts.SelectMany(spots.Of))
        {
            var point = view.ToPaper(spot);
            if (field.IsFree(Area.At(point, 1, 1)))
                return point;
            first ??= point;
        }
        return first;
    }

    private PaperPoint Paper(SpacePoint point) =>
        view.ToPaper(point.XMm * piece.Grid.UnitsPerMm, point.ZMm * piece.Grid.UnitsPerMm);

    private static bool IsFinite(SpacePlace where) =>
        double.IsFinite(where.From.XMm + where.From.ZMm + where.To.XMm + where.To.ZMm);

    private static string HatchId(Severity severity) =>
        severity switch
        {
            Severity.Stop => "dryfit-hatch-stop",
            Severity.Warn => "dryfit-hatch-warn",
            _ => "dryfit-hatch-note",
        };
}
