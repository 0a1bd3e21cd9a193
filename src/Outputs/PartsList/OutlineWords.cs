using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>Cuts that are not square, as a maker sets them out: from which side, how much, how far, at what angle.</summary>
internal sealed class OutlineWords(Part part, Func<Length, string> say)
{
    private readonly Extent _blank = new(default, new(part.Length.Length, part.Width.Length, part.Thickness.Length));

    public string Of(OutlineCut cut) =>
        cut.Kind switch
        {
            CutKind.Mitre when Wedge(cut) is { } wedge => Mitre(wedge),
            CutKind.Taper when Wedge(cut) is { } wedge => Taper(wedge, Run(cut)),
            CutKind.Chamfer
            or CutKind.RoundedEdge
            or CutKind.Cove
            or CutKind.Moulding when OpenSides(cut) is [var one, var other] =>
                $"{Name(cut)} where {Side(one)} and {Side(other)} meet, " + Run(cut),
            _ => Corners(cut),
        };

    /// <summary>A wedge off a corner of the board: the axis that it runs along furthest in the order of the board's own.</summary>
    private Taken? Wedge(OutlineCut cut)
    {
        if (cut.Outline.Count != 3 || OpenSides(cut) is not [var one, var other])
            return null;
        var (a, b) = CutOutlines.AxesOf(cut.Along);
        var onA = Spread(cut.Outline.Select(corner => corner.A));
        var onB = Spread(cut.Outline.Select(corner => corner.B));
        var lengthwise = one.Axis() == Axis.X || (other.Axis() != Axis.X && one.Axis() == Axis.Y) ? one : other;
        var side = lengthwise == one ? other : one;
        return new(lengthwise, side, lengthwise.Axis() == a ? onA : onB, side.Axis() == b ? onB : onA);
    }

    private string Mitre(Taken wedge)
    {
        var degrees = Math.Atan2(wedge.Run.ToMillimetres(), wedge.Off.ToMillimetres()) * 180 / Math.PI;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"mitre on the {Side(wedge.End)}, {degrees:0.#} degrees; the {Side(wedge.Side)} comes out {say(wedge.Run)} shorter"
        );
    }

    private string Taper(Taken wedge, string run) =>
        $"taper on the {Side(wedge.Side)}, {say(wedge.Off)} off at the {Side(wedge.End)}, over {say(wedge.Run)}; {run}";

    private static string Name(OutlineCut cut) => cut.Called ?? Words.Of(cut.Kind);

    private string Run(OutlineCut cut) =>
        cut.From <= Length.Zero && cut.To >= _blank.Max[cut.Along]
            ? BoardWords.Whole(cut.Along)
            : $"{say(cut.From)} to {say(cut.To)} from the {Side(Directions.Along(cut.Along, -1))}";

    private string Corners(OutlineCut cut)
    {
        var corners = cut.Outline.Select(c => $"({say(c.A)}; {say(c.B)})");
        return $"{Name(cut)}, {Run(cut)}, outline {string.Join(' ', corners)}";
    }

    /// <summary>The sides of the board that the outline opens on, the first of the outline's axes first.</summary>
    private List<Direction> OpenSides(OutlineCut cut)
    {
        var (a, b) = CutOutlines.AxesOf(cut.Along);
        var sides = new List<Direction>();
        foreach (var (axis, at) in (ReadOnlySpan<(Axis, Func<OutlineCorner, Length>)>)[(a, c => c.A), (b, c => c.B)])
        {
            if (cut.Outline.Min(at) <= Length.Zero)
                sides.Add(Directions.Along(axis, -1));
            if (cut.Outline.Max(at) >= _blank.Max[axis])
                sides.Add(Directions.Along(axis, 1));
        }
        return sides.Count == 2 && sides[0].Axis() != sides[1].Axis() ? sides : [];
    }

    private static Length Spread(IEnumerable<Length> along)
    {
        var all = along.ToList();
        return all.Max() - all.Min();
    }

    private string Side(Direction board) => BoardWords.Side(part.Place, board);

    /// <summary>A wedge: from its end it runs so far along the board, and takes so much off a side there.</summary>
    private sealed record Taken(Direction End, Direction Side, Length Run, Length Off);
}
