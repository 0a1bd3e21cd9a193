using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>Cuts that are not square, as a maker sets them out: from which side, how much, how far, at what angle.</summary>
internal sealed class OutlineWords(Part part, Func<Length, string> say)
{
    private readonly Extent _blank = new(default, new(part.Length.Length, part.Width.Length, part.Thickness.Length));

    public string Of(OutlineCut cut) => cut.IsFurther ? $"{Name(cut)}: the rest of the same shape" : Told(cut);

    private string Told(OutlineCut cut) =>
        cut.Kind switch
        {
            CutKind.Mitre when Wedge(cut) is { } wedge => Mitre(wedge),
            CutKind.Taper when Wedge(cut) is { } wedge => Taper(wedge, Run(cut)),
            CutKind.Chamfer
            or CutKind.RoundedEdge
            or CutKind.Cove
            or CutKind.Moulding when OpenSides(cut) is [var one, var other] =>
                $"{Name(cut)} {Where(one, other)}, {Run(cut)}",
            CutKind.Turning => $"turned {Name(cut)}, {Run(cut)}",
            CutKind.CutOut => Hole(cut),
            CutKind.Arch when Arch(cut) is { } arch => arch,
            CutKind.Scribe when Scribe(cut) is { } scribe => scribe,
            CutKind.SawnShape or CutKind.Groove when cut.Called is { } shape => $"{shape}, {Run(cut)}",
            _ => Corners(cut),
        };

    /// <summary>A hole through the board: its size, how round its corners are, how far it lies from the nearer sides.</summary>
    private string Hole(OutlineCut cut)
    {
        var (a, b) = CutOutlines.AxesOf(cut.Along);
        var (min, max) = (
            (A: cut.Outline.Min(c => c.A), B: cut.Outline.Min(c => c.B)),
            (A: cut.Outline.Max(c => c.A), B: cut.Outline.Max(c => c.B))
        );
        var (sizeA, sizeB) = (max.A - min.A, max.B - min.B);
        var rounds = cut.Outline.FirstOrDefault(c => c.Arc is not null) is { Arc: { } arc }
            ? $", corners {say(Length.Min(arc.A - min.A, max.A - arc.A))} round"
            : "";
        return $"{Name(cut)} {say(sizeA)} x {say(sizeB)}{rounds}; {From(a, min.A, max.A)}; {From(b, min.B, max.B)}";

        string From(Axis axis, Length low, Length high)
        {
            var fromHigh = _blank.Max[axis] - high;
            return low <= fromHigh
                ? $"{say(low)} from the {Side(Directions.Along(axis, -1))}"
                : $"{say(fromHigh)} from the {Side(Directions.Along(axis, 1))}";
        }
    }

    /// <summary>An arch along a side of the board: how wide, how high, and from where.</summary>
    private string? Arch(OutlineCut cut)
    {
        if (cut.Outline is not [var one, var other] || (one.Arc ?? other.Arc) is not { } arc)
            return null;
        var (a, b) = CutOutlines.AxesOf(cut.Along);
        var runsOnA = one.B == other.B;
        if (!runsOnA && one.A != other.A)
            return null;
        var (run, into) = runsOnA ? (a, b) : (b, a);
        var (from, to) = runsOnA ? (one.A, other.A) : (one.B, other.B);
        var chord = runsOnA ? one.B : one.A;
        var span = Length.Abs(to - from).ToMillimetres();
        var off = Length.Abs((runsOnA ? arc.B : arc.A) - chord).ToMillimetres();
        var steps = Math.Round((Math.Sqrt((span * span / 4) + (off * off)) - off) * StepsPerMm);
        var rise = Length.FromMillimetres(new Rational((long)steps, StepsPerMm));
        var edge = Directions.Along(into, chord <= Length.Zero ? -1 : 1);
        var start = Directions.Along(run, -1);
        return $"arch in the {Side(edge)}, {say(Length.Abs(to - from))} wide, rising {say(rise)}, "
            + $"{say(Length.Min(from, to))} from the {Side(start)}; {Run(cut)}";
    }

    /// <summary>An edge sawn to a wall: how much comes off at each place along it, from end to end of the board.</summary>
    private string? Scribe(OutlineCut cut)
    {
        var (a, b) = CutOutlines.AxesOf(cut.Along);
        foreach (var (into, run) in (ReadOnlySpan<(Axis, Axis)>)[(b, a), (a, b)])
        {
            foreach (var sign in (ReadOnlySpan<int>)[-1, 1])
            {
                // How far each corner lies in from that side; what is outside of it is below zero.
                var corners = cut.Outline.Select(c => (A: Along(c, run), In: In(c, into, sign))).ToList();
                var first = corners.FindIndex(c => c.In < Length.Zero && c.In == corners.Min(other => other.In));
                if (first < 0)
                    continue;
                var after = Enumerable
                    .Range(1, corners.Count - 1)
                    .Select(n => corners[(first + n) % corners.Count])
                    .ToList();
                // The two corners outside lie side by side; what is left is the line of the wall.
                var line =
                    after[0].In == corners[first].In ? after[1..]
                    : after[^1].In == corners[first].In ? after[..^1]
                    : [];
                if (line.Count < 2)
                    continue;
                if (line[0].A > line[^1].A)
                    line.Reverse();
                var (from, to) = (Length.Zero, _blank.Max[run]);
                if (line[0].A > from || line[^1].A < to || line.Zip(line.Skip(1)).Any(p => p.First.A >= p.Second.A))
                    continue;
                var places = line.Select(c => c.A).Where(at => at > from && at < to).Prepend(from).Append(to);
                var told = places.Select(at => $"{say(Length.Max(Off(line, at), Length.Zero))} at {say(at)}");
                return $"{Name(cut)} on the {Side(Directions.Along(into, sign))}, {Run(cut)}: from the {Side(Directions.Along(run, -1))} take off {string.Join(", ", told)}";
            }
        }
        return null;

        Length Along(OutlineCorner corner, Axis axis) => axis == a ? corner.A : corner.B;

        Length In(OutlineCorner corner, Axis axis, int sign) =>
            sign < 0 ? Along(corner, axis) : _blank.Max[axis] - Along(corner, axis);
    }

    private static Length Off(List<(Length A, Length In)> line, Length at)
    {
        for (var n = 1; n < line.Count; n++)
        {
            var (before, after) = (line[n - 1], line[n]);
            if (at <= after.A)
                return before.In + ((after.In - before.In) * ((at - before.A) / (after.A - before.A)));
        }
        return line[^1].In;
    }

    /// <summary>What is told of an arch is rounded to 1/640 mm: the step of all lengths in halves of 1/64 in and in 0.1 mm.</summary>
    private const int StepsPerMm = 640;

    /// <summary>A wedge off a corner of the board; its end is the side that lies further along the board.</summary>
    private Taken? Wedge(OutlineCut cut)
    {
        if (cut.Outline.Count != 3)
            return null;
        var (a, b) = CutOutlines.AxesOf(cut.Along);
        foreach (var corner in cut.Outline)
        {
            var onA = cut.Outline.Where(other => other.B == corner.B && other != corner).ToList();
            var onB = cut.Outline.Where(other => other.A == corner.A && other != corner).ToList();
            if (onA is not [var alongA] || onB is not [var alongB])
                continue;
            if (SideAt(a, corner.A) is not { } sideA || SideAt(b, corner.B) is not { } sideB)
                return null;
            var (runA, runB) = (Length.Abs(alongA.A - corner.A), Length.Abs(alongB.B - corner.B));
            return a == Axis.X || (b != Axis.X && a == Axis.Y)
                ? new(sideA, sideB, runA, runB)
                : new(sideB, sideA, runB, runA);
        }
        return null;
    }

    private Direction? SideAt(Axis axis, Length at) =>
        at <= Length.Zero ? Directions.Along(axis, -1)
        : at >= _blank.Max[axis] ? Directions.Along(axis, 1)
        : null;

    private string Mitre(Taken wedge)
    {
        var degrees = Math.Atan2(wedge.Run.ToMillimetres(), wedge.Off.ToMillimetres()) * 180 / Math.PI;
        // A short mitre leaves the rest of the end as it is.
        var share = wedge.Off < _blank.Size(wedge.Side.Axis()) ? $" over {say(wedge.Off)} of it" : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"mitre on the {Side(wedge.End)}{share}, {degrees:0.#} degrees; the {Side(wedge.Side)} comes out {say(wedge.Run)} shorter"
        );
    }

    private string Taper(Taken wedge, string run) =>
        $"taper on the {Side(wedge.Side)}, {say(wedge.Off)} off at the {Side(wedge.End)}, over {say(wedge.Run)}; {run}";

    /// <summary>An edge is told from the face it is run along: "on the front edge of the show face".</summary>
    private string Where(Direction one, Direction other) =>
        one.Axis() == Axis.Z ? $"on the {Side(other)} of the {Side(one)}"
        : other.Axis() == Axis.Z ? $"on the {Side(one)} of the {Side(other)}"
        : $"where the {Side(one)} and the {Side(other)} meet";

    private static string Name(OutlineCut cut) => cut.Called ?? Words.Of(cut.Kind);

    private string Run(OutlineCut cut) =>
        cut.From <= Length.Zero && cut.To >= _blank.Max[cut.Along]
            ? BoardWords.Whole(cut.Along)
            : $"{say(cut.From)} to {say(cut.To)} from the {Side(Directions.Along(cut.Along, -1))}";

    private string Corners(OutlineCut cut)
    {
        var corners = cut.Outline.Select(c => $"({say(c.A)}; {say(c.B)})" + Round(c));
        return $"{Name(cut)}, {Run(cut)}, outline {string.Join(' ', corners)}";
    }

    /// <summary>How the side that goes on from a corner bends; nothing where it is straight.</summary>
    private string Round(OutlineCorner corner)
    {
        if (corner.Arc is not { } arc)
            return "";
        var (a, b) = ((corner.A - arc.A).ToMillimetres(), (corner.B - arc.B).ToMillimetres());
        var steps = Math.Round(Math.Sqrt((a * a) + (b * b)) * StepsPerMm);
        return $" round by a radius of {say(Length.FromMillimetres(new Rational((long)steps, StepsPerMm)))} to";
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

    private string Side(Direction board) => BoardWords.Side(part.Place, board);

    /// <summary>A wedge: from its end it runs so far along the board, and takes so much off a side there.</summary>
    private sealed record Taken(Direction End, Direction Side, Length Run, Length Off);
}
