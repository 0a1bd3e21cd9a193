using Dryfit.Casework;
using Dryfit.Findings;

namespace Dryfit.Outputs.FrontView;

/// <summary>The front of one piece ready to be drawn at any scale: outlines, gaps, levels.</summary>
internal sealed class FrontDrawing
{
    private const double RoomAbove = 7;
    private const double RoomAtRight = 10;

    private readonly Piece _piece;
    private readonly Report _report;
    private readonly List<FrontFace> _backToFront;
    private readonly List<FrontGap> _gaps;
    private readonly Dictionary<string, Span2> _partBounds = new(StringComparer.Ordinal);
    private readonly List<SeenFront> _fronts = [];
    private readonly List<double> _heights;
    private readonly List<double> _widths;

    private FrontDrawing(Piece piece, Report report)
    {
        _piece = piece;
        _report = report;
        var faces = FrontFaces.Of(piece.Parts);
        _backToFront = Visible.BackToFront(EdgedFaces.Merged(faces, piece), piece.Parts);
        _gaps = FrontGaps.Measure(piece, faces);
        foreach (var face in faces)
        {
            var id = piece.Parts[face.Part].Id;
            _partBounds[id] = _partBounds.TryGetValue(id, out var known)
                ? Span2.Around(known, face.Bounds)
                : face.Bounds;
        }
        foreach (var front in piece.Fronts)
        {
            var bounds = front.Face.Where(_partBounds.ContainsKey).Select(id => _partBounds[id]).ToList();
            if (bounds.Count > 0 && Sight.IsSeen(piece, front))
                _fronts.Add(new(front, bounds.Aggregate(Span2.Around), Sight.SizeOf(piece, front)));
        }
        Bounds = _partBounds.Count > 0 ? _partBounds.Values.Aggregate(Span2.Around) : default;
        OverallSize = IsEmpty ? "" : Overall();
        var levels = new Levels(piece, _partBounds, Bounds);
        (_heights, _widths) = (levels.Heights(), levels.Widths());
        _margins = new(SizeLines.Room(_heights), RoomAbove, RoomAtRight, SizeLines.Room(_widths));
    }

    /// <summary>Paper that size lines and signs need around the piece, in millimetres.</summary>
    private readonly Area _margins;

    /// <summary>The box around all that is seen, in grid units.</summary>
    public Span2 Bounds { get; }

    /// <summary>Width, height and depth over all, in words.</summary>
    public string OverallSize { get; }

    public bool IsEmpty => Bounds.Width <= 0 || Bounds.Height <= 0;

    /// <summary>The gaps that were measured around doors and drawers.</summary>
    public IReadOnlyList<FrontGap> Gaps => _gaps;

    public bool HasDoors => _fronts.Exists(front => front.Front.Motion.TurnsOn() is not null);

    public static FrontDrawing Of(Piece piece, Report report) => new(piece, report);

    /// <summary>Millimetres of paper that the piece takes at a scale, without its margins.</summary>
    public (double Width, double Height) SizeAt(DrawingScale scale) =>
        (_piece.Grid.ToMm(Bounds.Width) / scale.Divisor, _piece.Grid.ToMm(Bounds.Height) / scale.Divisor);

    /// <summary>Height of the drawing at a scale with its margins, in millimetres of paper.</summary>
    public double HeightAt(DrawingScale scale) => SizeAt(scale).Height + _margins.Top + _margins.Bottom;

    /// <summary>True where piece and margins fit into an area.</summary>
    public bool Fits(double width, double height, DrawingScale scale)
    {
        var (pieceWidth, pieceHeight) = SizeAt(scale);
        return pieceWidth + _margins.Left + _margins.Right <= width
            && pieceHeight + _margins.Top + _margins.Bottom <= height;
    }

    /// <summary>Draws the piece in the middle of an area that it fits into.</summary>
    /// <returns>The gaps that found no room for their figures.</returns>
    public IReadOnlyList<FrontGap> Draw(SvgWriter svg, Area area, DrawingScale scale)
    {
        var (width, height) = SizeAt(scale);
        var k = 1 / (scale.Divisor * _piece.Grid.UnitsPerMm);
        var left = area.Left + _margins.Left + ((area.Width - _margins.Left - _margins.Right - width) / 2);
        var bottom = area.Bottom - _margins.Bottom - ((area.Height - _margins.Top - _margins.Bottom - height) / 2);
        var view = new View(k, left - (Bounds.MinX * k), bottom + (Bounds.MinZ * k));
        var field = new LabelField(area);

        FindingMarks.DefineHatches(svg);
        DrawFloor(svg, view);
        PieceLines.Draw(svg, view, _piece, _backToFront);
        var spots = new VisibleSpots(_piece, _backToFront, _partBounds);
        BarMarks.Draw(svg, view, _piece, spots);
        SwingMarks.Draw(svg, view, _fronts);
        HandleMarks.Draw(svg, view, _piece, field);
        new SizeLines(svg, view, _piece, Bounds).Draw(_heights, _widths);
        var frontAreas = new AreaIndex();
        var boundsOfGroup = new Dictionary<string, Span2>(StringComparer.Ordinal);
        foreach (var (front, bounds, _) in _fronts)
        {
            frontAreas.Add(view.ToPaper(bounds));
            boundsOfGroup.TryAdd(front.Group, bounds);
        }
        var labels = new GapLabels(svg, view, _piece.Format, field, frontAreas, boundsOfGroup);
        var dimensioned = new FindingMarks(svg, view, _piece, field, labels, spots).Draw(_report.Findings, _gaps);
        var names = new FrontNames(svg, view, _piece, field);
        names.Draw(_fronts);
        names.DrawKept(_partBounds);
        return labels.Draw(_gaps.Where(gap => !dimensioned.Contains(gap)));
    }

    /// <summary>The floor, where the piece stands on it.</summary>
    private void DrawFloor(SvgWriter svg, View view)
    {
        if (Bounds.MinZ != 0 || IsHung())
            return;
        var piece = view.ToPaper(Bounds);
        svg.Line(
            new(piece.Left - 5, piece.Bottom),
            new(piece.Right + 5, piece.Bottom),
            ("stroke", Ink.Black),
            ("stroke-width", SvgWriter.Number(Pen.Contour))
        );
    }

    /// <summary>Whether what is lowest hangs on the wall.</summary>
    private bool IsHung()
    {
        var lowest = _piece.Parts.MinBy(part => part.Extent.Min.Z)!;
        var hung = _piece
            .Hardware.Where(item => item.IsInWall)
            .SelectMany(item => item.Ties)
            .ToHashSet(StringComparer.Ordinal);
        return _piece.Parts.Any(part =>
            string.Equals(part.Group, lowest.Group, StringComparison.Ordinal) && hung.Contains(part.Id)
        );
    }

    private string Overall()
    {
        var depths = _piece.Parts.SelectMany(part =>
            part.Placed.Solid.Vertices.Select(v => part.Placed.Frame.ToWorld(v).Y)
        );
        var (near, far) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var depth in depths)
            (near, far) = (Math.Min(near, depth), Math.Max(far, depth));
        return $"{Size(Bounds.Width)} wide × {Size(Bounds.Height)} high × {Size(far - near)} deep";

        string Size(double units) => Sight.Told(_piece, units);
    }
}
