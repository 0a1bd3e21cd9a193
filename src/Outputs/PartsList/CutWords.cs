using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>
/// The cuts of a board as a maker reads them: what it is called, where, how deep, how wide, how far from which edge.
/// Sides are named as the board stands in the piece.
/// </summary>
internal sealed class CutWords(Part part, LengthFormat format)
{
    private readonly Extent _blank = new(default, new(part.Length.Length, part.Width.Length, part.Thickness.Length));

    /// <summary>All cuts; equal holes are told together.</summary>
    public IReadOnlyList<string> All()
    {
        var told = new List<string>();
        var holes = new HashSet<string>(StringComparer.Ordinal);
        foreach (var cut in Shapes(part))
        {
            if (cut is not RoundCut round)
            {
                if (Sawn(cut) is { } sawn)
                    told.Add(sawn);
            }
            else if (holes.Add(HoleKind(round)))
            {
                var equal = part.Cuts.OfType<RoundCut>().Where(other => HoleKind(other) == HoleKind(round)).ToList();
                told.Add(equal.Count == 1 ? One(round) : Holes(equal));
            }
        }

        return told;
    }

    /// <summary>
    /// A cut as it is told among the others: the sockets of a joint all together, with the first of them; null for the
    /// others.
    /// </summary>
    public string? Sawn(PartCut cut)
    {
        if (!SocketWords.IsSocket(cut))
            return One(cut);
        var sockets = part
            .Cuts.Where(other =>
                other.Kind == cut.Kind && string.Equals(other.Joint, cut.Joint, StringComparison.Ordinal)
            )
            .ToList();
        return ReferenceEquals(sockets[0], cut) ? new SocketWords(part, Say).Of(sockets) : null;
    }

    /// <summary>The cuts of a part, each shape once.</summary>
    public static IEnumerable<PartCut> Shapes(Part part) =>
        part.Cuts.Where(cut => cut is not OutlineCut { IsFurther: true });

    public string One(PartCut cut) =>
        cut switch
        {
            SquareCut square => Square(square),
            RoundCut round => $"{HoleKind(round)}; {Centre(round)}",
            OutlineCut outline => new OutlineWords(part, Say).Of(outline),
            _ => Words.Of(cut.Kind),
        };

    private string Square(SquareCut cut)
    {
        var name = Words.Of(cut.Kind);
        if (Extent.Shared(cut.Extent, _blank) is not { } box)
            return $"{name} outside the board";
        // It is cut into the face it opens on, else into an edge, else into an end; else it goes right through.
        Axis[] axes = [Axis.Z, Axis.Y, Axis.X];
        Axis? into = axes.Where(axis => OpenSides(box, axis).Length == 1).Cast<Axis?>().FirstOrDefault();
        var text = name;
        if (into is { } depth)
            text += $" in the {Side(OpenSides(box, depth)[0])}, {Say(box.Size(depth))} deep";
        Axis[] rest = [.. axes.Where(axis => axis != into).Reverse()];
        return $"{text}; {string.Join("; ", rest.Select(axis => Run(box, axis, SizeWord(cut.Kind, box, rest, axis))))}";
    }

    /// <summary>How far a cut runs along an axis of the board and where.</summary>
    private string Run(Extent box, Axis axis, string sizeWord)
    {
        var open = OpenSides(box, axis);
        if (open.Length == 2)
            return BoardWords.Whole(axis);
        var size = $"{Say(box.Size(axis))} {sizeWord}";
        if (open.Length == 1)
            return $"{size} at the {Side(open[0])}";
        var fromLow = box.Min[axis];
        var fromHigh = _blank.Max[axis] - box.Max[axis];
        return fromLow <= fromHigh
            ? $"{size}, {Say(fromLow)} from the {Side(Directions.Along(axis, -1))}"
            : $"{size}, {Say(fromHigh)} from the {Side(Directions.Along(axis, 1))}";
    }

    /// <summary>The shorter side of a cut is how wide it is, whichever way it runs; but a tongue is so and so long.</summary>
    private string SizeWord(CutKind kind, Extent box, Axis[] sides, Axis axis)
    {
        if (kind == CutKind.Shoulder)
            return BoardWords.Measure(axis);
        var runs = sides.Where(side => OpenSides(box, side).Length < 2).OrderByDescending(box.Size).ToList();
        return runs.Count > 1 && runs[0] == axis ? "long" : "wide";
    }

    private Direction[] OpenSides(Extent box, Axis axis) =>
        [
            .. ((Direction[])[Directions.Along(axis, -1), Directions.Along(axis, 1)]).Where(side =>
                box.Side(side) == _blank.Side(side)
            ),
        ];

    private string HoleKind(RoundCut cut)
    {
        var goesThrough = cut.TiltDegrees == 0 && cut.Depth >= _blank.Size(cut.Into.Axis());
        var depth = goesThrough ? "through" : $"{Say(cut.Depth)} deep";
        var lean =
            cut.TiltDegrees == 0
                ? ""
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $", leaning {cut.TiltDegrees} degrees to the {Side(cut.Leaning)}"
                );
        return $"{Words.Of(cut.Kind)} in the {Side(cut.Into.Opposite())}, {Say(cut.Diameter)} across, {depth}{lean}";
    }

    private string Centre(RoundCut cut) =>
        string.Join(", ", CentreAxes(cut).Select(axis => From([cut.From[axis]], axis)));

    private string Holes(List<RoundCut> equal)
    {
        var axes = CentreAxes(equal[0]);
        var rows = axes.Select(axis => equal.Select(hole => hole.From[axis]).Distinct().Order().ToList()).ToList();
        var isGrid = rows.Aggregate(1, (count, row) => count * row.Count) == equal.Count;
        var centres = isGrid
            ? string.Join(" by ", axes.Zip(rows, (axis, row) => From(row, axis)))
            : string.Join(" / ", equal.Select(Centre));
        return string.Create(CultureInfo.InvariantCulture, $"{equal.Count} x {HoleKind(equal[0])}; {centres}");
    }

    private static Axis[] CentreAxes(RoundCut cut) =>
        [.. ((Axis[])[Axis.X, Axis.Y, Axis.Z]).Where(axis => axis != cut.Into.Axis())];

    /// <summary>Measured from the nearer side: a hinge cup from the edge that it is bored by.</summary>
    private string From(List<Length> at, Axis axis)
    {
        var size = _blank.Max[axis];
        var isFar = at.Min() > size / 2;
        var from = isFar ? at.Select(a => size - a).Order() : at.AsEnumerable();
        return $"{string.Join(", ", from.Select(Say))} from the {Side(Directions.Along(axis, isFar ? 1 : -1))}";
    }

    private string Side(Direction board) => BoardWords.Side(part.Place, board);

    /// <summary>
    /// As the maker writes it; but what is no fraction of an inch and is a tenth of a millimetre came in millimetres (a
    /// bit of 9.5 mm, rows 32 mm apart), and is told so.
    /// </summary>
    private string Say(Length length)
    {
        var isMetric = format.Unit == LengthUnit.Inch && format.Hides(length) && (length.Millimetres * 10).IsWhole;
        return isMetric ? LengthFormat.Millimetres.WriteWithUnit(length) : format.Write(length);
    }
}
