using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Joinery;

/// <summary>The bands of a panel: what they are of, and which of its edges get one.</summary>
/// <param name="Material">Its thickness is what a band adds to the panel.</param>
/// <param name="Edges">Edges as directions of the piece: <c>Front</c> for the front edge of a side.</param>
internal sealed record Bands(Material Material, params IReadOnlyList<Direction> Edges)
{
    /// <summary>Where the bands on the long edges stop short of an end: over a toe space, where the panel is let into another.</summary>
    public IReadOnlyList<(Direction End, Figure By)> Short { get; init; } = [];
}

/// <summary>
/// A panel with bands glued to its edges: the size asked for is the finished one, the panel is cut smaller by its bands.
/// By habit bands on the ends go on first and are trimmed flush; those on the long edges cover their ends (common practice:
/// the seams then lie in the ends, where they are seen least). The shop file may turn that round.
/// </summary>
internal static class Edging
{
    /// <summary>Adds a panel and its bands; without bands just the panel.</summary>
    /// <param name="length">Finished size along the grain.</param>
    /// <param name="width">Finished size across the grain.</param>
    /// <param name="at">The left, front, bottom corner of the finished panel, bands included.</param>
    /// <param name="bands">Null for none.</param>
    /// <param name="holds">The sides to which a panel cut to the maker's own number keeps.</param>
    public static BandedPanel Panel(
        PieceBuilder piece,
        GroupDraft group,
        string name,
        Role role,
        Material material,
        Lie lie,
        Figure length,
        Figure width,
        Point at,
        Bands? bands,
        SourcePlace? source = null,
        params ReadOnlySpan<Direction> holds
    )
    {
        if (bands is null || bands.Edges.Count == 0)
        {
            var plain = piece.Board(group, name, role, material, lie, length, width, at, source, holds: holds);
            return new BandedPanel(plain, []);
        }
        var band = bands.Material.Thickness.As("edging");
        var ends = bands.Edges.Where(e => e.Axis() == lie.Along.Axis()).Distinct().Order().ToList();
        var sides = bands.Edges.Where(e => e.Axis() == lie.Across.Axis()).Distinct().Order().ToList();
        foreach (var edge in ends.Concat(sides).Where(e => e.Sign() < 0))
            at = at.Moved(edge.Opposite(), band.Length);
        var panel = piece.Board(
            group,
            name,
            role,
            material,
            lie,
            CutSize(length, band, ends.Count, "cut length"),
            CutSize(width, band, sides.Count, "cut width"),
            at,
            source,
            holds: holds
        );
        if (ends.Count > 0)
            panel.FinishedLength = Finished(panel, length, panel.Length, band, ends.Count).As("finished length");
        if (sides.Count > 0)
            panel.FinishedWidth = Finished(panel, width, panel.Width, band, sides.Count).As("finished width");
        var endsFirst = piece.Shop.Choice(EdgingRules.First) == "ends";
        var alongEnds = endsFirst ? panel.Width : panel.FinishedWidth ?? panel.Width;
        var overEnds = endsFirst
            ? panel.Extent
            : sides.Aggregate(panel.Extent, (all, side) => all.Grown(side, band.Length));
        var onEnds = ends.ConvertAll(end => Band(piece, panel, name, bands.Material, end, alongEnds, overEnds));
        var covered = endsFirst
            ? ends.Aggregate(panel.Extent, (all, end) => all.Grown(end, band.Length))
            : panel.Extent;
        var run = endsFirst ? panel.FinishedLength ?? panel.Length : panel.Length;
        foreach (var (end, by) in bands.Short)
        {
            covered = covered.Grown(end, -by.Length);
            run -= by;
        }
        if (bands.Short.Count > 0)
            run = run.As("edging length");
        var onSides = sides.ConvertAll(side => Band(piece, panel, name, bands.Material, side, run, covered));
        foreach (var side in onSides)
        {
            foreach (var end in onEnds)
            {
                if (endsFirst)
                    piece.Join(JointKind.Butt, end, side, side.Place.Lie.Shows.Opposite());
                else
                    piece.Join(JointKind.Butt, side, end, end.Place.Lie.Shows.Opposite());
            }
        }
        return new BandedPanel(panel, [.. onEnds, .. onSides]);
    }

    private static string EdgeName(Direction edge) =>
        edge switch
        {
            Direction.Up => "top",
            Direction.Down => "bottom",
            _ => Spoken.Of(edge),
        };

    private static Figure CutSize(Figure finished, Figure band, int count, string name)
    {
        var size = finished;
        for (var n = 0; n < count; n++)
            size -= band;
        return count == 0 ? finished : size.As(name);
    }

    /// <summary>The size that was asked for; where the maker cut the panel to other numbers, what comes of those.</summary>
    private static Figure Finished(PartDraft panel, Figure asked, Figure cut, Figure band, int count)
    {
        if (!panel.IsAsCut)
            return asked;
        for (var n = 0; n < count; n++)
            cut += band;
        return cut;
    }

    private static PartDraft Band(
        PieceBuilder piece,
        PartDraft panel,
        string name,
        Material material,
        Direction edge,
        Figure length,
        Extent covers
    )
    {
        var along = edge.Axis() == panel.Place.Lie.Along.Axis() ? panel.Place.Lie.Across : panel.Place.Lie.Along;
        var lie = Lie.Of(Directions.Along(along.Axis(), 1), edge);
        var at = covers.Min.With(edge.Axis(), panel.Extent.Side(edge));
        if (edge.Sign() < 0)
            at = at.Moved(edge, material.Thickness.Length);
        var band = piece.Board(
            panel.Group,
            $"{name} {EdgeName(edge)} edging",
            Role.Edging,
            material,
            lie,
            length,
            panel.Thickness,
            at,
            panel.Source
        );
        piece.Join(JointKind.Edged, panel, band, edge.Opposite());
        return band;
    }
}

/// <summary>A panel with the bands on its edges.</summary>
internal sealed record BandedPanel(PartDraft Panel, IReadOnlyList<PartDraft> Bands)
{
    /// <summary>The whole, bands included, as it really is.</summary>
    public Extent Extent =>
        Bands.Aggregate(
            Panel.Extent,
            (all, band) =>
                all.Side(band.Place.Lie.Shows) == band.Extent.Side(band.Place.Lie.Shows.Opposite())
                    ? all.With(band.Place.Lie.Shows, band.Extent.Side(band.Place.Lie.Shows))
                    : all
        );

    /// <summary>The panel and its bands.</summary>
    public IEnumerable<PartDraft> Parts => Bands.Prepend(Panel);
}
