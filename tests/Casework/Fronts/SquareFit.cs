using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>
/// How drafts with square cuts really meet, told by cutting space at all of their faces into cells and asking of each
/// cell whether a part fills it. It knows no joint and no formula; bores are left out.
/// </summary>
internal static class SquareFit
{
    /// <summary>The volume two parts share, in cubic millimetres.</summary>
    public static Rational Overlap(PartDraft a, PartDraft b)
    {
        var volume = Rational.Zero;
        foreach (var cell in Cells(a, b))
        {
            if (Fills(a, cell) && Fills(b, cell))
                volume += cell.Width.Millimetres * cell.Depth.Millimetres * cell.Height.Millimetres;
        }
        return volume;
    }

    /// <summary>Whether two parts have a stretch of face in common.</summary>
    public static bool Touch(PartDraft a, PartDraft b) =>
        Enum.GetValues<Direction>().Any(into => Gap(a, b, into) == Length.Zero);

    /// <summary>
    /// How far <paramref name="enters"/> can go on in a direction before it meets the other: zero where they touch; null
    /// where nothing of the other is in its way.
    /// </summary>
    public static Length? Gap(PartDraft receives, PartDraft enters, Direction into)
    {
        Length? least = null;
        var cells = Cells(receives, enters).ToList();
        var axis = into.Axis();
        foreach (var own in cells.Where(c => Fills(enters, c)))
        {
            foreach (var other in cells.Where(c => InLine(c, own, axis) && Fills(receives, c)))
            {
                var gap = (other.Side(into.Opposite()) - own.Side(into)) * into.Sign();
                if (gap >= Length.Zero && (least is null || gap < least))
                    least = gap;
            }
        }
        return least;
    }

    /// <summary>Pairs of parts that share volume.</summary>
    public static IReadOnlyList<(PartDraft A, PartDraft B)> Overlaps(IReadOnlyList<PartDraft> parts) =>
        [.. Pairs(parts).Where(p => Overlap(p.A, p.B).Sign > 0)];

    /// <summary>Pairs of parts that touch without a joint between them.</summary>
    public static IReadOnlyList<(PartDraft A, PartDraft B)> Strangers(
        IReadOnlyList<PartDraft> parts,
        IReadOnlyList<Joint> joints
    ) =>
        [
            .. Pairs(parts)
                .Where(p =>
                    !joints.Any(j =>
                        (j.Receives == p.A.Id && j.Enters == p.B.Id) || (j.Receives == p.B.Id && j.Enters == p.A.Id)
                    ) && Touch(p.A, p.B)
                ),
        ];

    private static IEnumerable<(PartDraft A, PartDraft B)> Pairs(IReadOnlyList<PartDraft> parts)
    {
        for (var a = 0; a < parts.Count; a++)
        {
            for (var b = a + 1; b < parts.Count; b++)
                yield return (parts[a], parts[b]);
        }
    }

    private static bool InLine(Extent a, Extent b, Axis axis) =>
        (axis == Axis.X || a.Min.X == b.Min.X)
        && (axis == Axis.Y || a.Min.Y == b.Min.Y)
        && (axis == Axis.Z || a.Min.Z == b.Min.Z);

    private static IEnumerable<Extent> Cells(PartDraft a, PartDraft b)
    {
        var boxes = Boxes(a).Concat(Boxes(b)).ToList();
        var (xs, ys, zs) = (Planes(boxes, Axis.X), Planes(boxes, Axis.Y), Planes(boxes, Axis.Z));
        foreach (var (x0, x1) in xs.Zip(xs.Skip(1)))
        {
            foreach (var (y0, y1) in ys.Zip(ys.Skip(1)))
            {
                foreach (var (z0, z1) in zs.Zip(zs.Skip(1)))
                    yield return new Extent(new(x0, y0, z0), new(x1, y1, z1));
            }
        }
    }

    private static List<Length> Planes(List<Extent> boxes, Axis axis) =>
        [.. boxes.SelectMany(b => new[] { b.Min[axis], b.Max[axis] }).Distinct().Order()];

    private static IEnumerable<Extent> Boxes(PartDraft part) => Cuts(part).Prepend(part.Extent);

    private static IEnumerable<Extent> Cuts(PartDraft part) =>
        part.Cuts.OfType<SquareCut>().Select(c => part.Place.ToPiece(c.Extent));

    private static bool Fills(PartDraft part, Extent cell) =>
        Within(cell, part.Extent) && !Cuts(part).Any(cut => Within(cell, cut));

    private static bool Within(Extent cell, Extent box) =>
        cell.Min.X >= box.Min.X
        && cell.Max.X <= box.Max.X
        && cell.Min.Y >= box.Min.Y
        && cell.Max.Y <= box.Max.Y
        && cell.Min.Z >= box.Min.Z
        && cell.Max.Z <= box.Max.Z;
}
