using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>Places where two parts meet.</summary>
internal static class Meeting
{
    /// <summary>The middle of one side of a box.</summary>
    public static Point Centre(Extent box, Direction side)
    {
        var middle = new Point((box.Min.X + box.Max.X) / 2, (box.Min.Y + box.Max.Y) / 2, (box.Min.Z + box.Max.Z) / 2);
        return middle.With(side.Axis(), box.Side(side));
    }

    /// <summary>
    /// From where to where two boxes lie beside each other along an axis: fastenings of an end that reaches past what
    /// takes it, such as a partition under a stretcher, share this stretch and no more.
    /// </summary>
    /// <returns>The whole of the second where they lie nowhere beside each other.</returns>
    public static (Length From, Length To) Shared(PartDraft receives, PartDraft enters, Axis along) =>
        Shared(receives.Open, enters.Reckoned, along);

    /// <summary>The same of two boxes.</summary>
    public static (Length From, Length To) Shared(Extent receives, Extent enters, Axis along)
    {
        var from = Length.Max(receives.Min[along], enters.Min[along]);
        var to = Length.Min(receives.Max[along], enters.Max[along]);
        return from < to ? (from, to) : (enters.Min[along], enters.Max[along]);
    }

    /// <summary>
    /// Ties two ends that by the maker's own numbers stand apart: there is nothing to cut, and whoever measures them finds
    /// that they do not meet.
    /// </summary>
    public static Joint Missed(
        PieceBuilder piece,
        JointKind kind,
        PartDraft receives,
        PartDraft enters,
        Direction into
    ) => piece.Join(kind, receives, enters, into, enters.SizeAlong(into.Axis()).Length);

    /// <summary>
    /// The corner that two boards share: as reckoned, but for their width, since tails and fingers are marked out on the
    /// boards as they are.
    /// </summary>
    /// <param name="spread">The axis of their width.</param>
    /// <returns>Null where by the maker's own numbers they stand apart.</returns>
    public static Extent? Corner(PartDraft a, PartDraft b, Axis spread) =>
        Extent.Shared(a.Reckoned, b.Reckoned) is { } room && Extent.Shared(a.Extent, b.Extent) is { } wood
            ? new(room.Min.With(spread, wood.Min[spread]), room.Max.With(spread, wood.Max[spread]))
            : null;

    /// <summary>A top that overhangs by more is a table.</summary>
    private static readonly Length MostOverhang = Length.FromMillimetres(50);

    /// <summary>
    /// How the edges of two parts that meet should lie to each other, by the sizes they should have: those that end in one
    /// plane, and the overhang of a top.
    /// </summary>
    /// <param name="into">The way the entering part goes; that way only what is flush counts, since the rest is depth.</param>
    public static IReadOnlyList<EdgeLine> Lines(PartDraft receives, PartDraft enters, Direction into)
    {
        if (receives.Group.Turn != enters.Group.Turn)
            return [];
        var lines = new List<EdgeLine>();
        var isTop = enters.Role is Role.Top or Role.Worktop;
        foreach (var way in Enum.GetValues<Direction>())
        {
            var past = (enters.Reckoned.Side(way) - receives.Reckoned.Side(way)) * way.Sign();
            var overhangs = isTop && way.Axis() != into.Axis() && past.Sign > 0 && past <= MostOverhang;
            if (past.Sign == 0 || overhangs)
                lines.Add(new(way, past));
        }
        return lines;
    }
}
