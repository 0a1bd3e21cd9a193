using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether strips that should hide a gap do: how far each laps over what is on both sides, all along.</summary>
internal sealed class GapsCovered : ICheck
{
    public static FindingKind Open { get; } =
        new(
            "trim-leaves-gap-open",
            Severity.Warn,
            "Cover strip leaves its gap open",
            "One looks past the strip into the gap that it should hide.",
            "common practice"
        );

    public static FindingKind Little { get; } =
        new(
            "trim-laps-too-little",
            Severity.Note,
            "Cover strip laps less than wanted",
            "What a strip covers moves with the seasons and is never quite straight; with little lap the gap shows one day.",
            "common practice"
        );

    public static FindingKind OffTheWall { get; } =
        new(
            "trim-stands-off-the-wall",
            Severity.Warn,
            "Cover strip stands off the wall",
            "A strip that is sawn to a wall or a ceiling hides the gap only where it lies against it.",
            "common practice"
        );

    /// <summary>How deep behind the strip the edges are looked for that it lies on.</summary>
    private static readonly Length Skin = Length.FromMillimetres(1);

    public string Name => "gaps that trim should cover";

    public string Of => "sides of gaps";

    public string How =>
        "The edge of what lies behind a cover strip is followed along the strip on both sides of the gap; how far the strip "
        + "reaches past it at the worst place is its lap there. Where nothing lies behind it the gap counts as open. A strip against "
        + "a wall or a ceiling is followed along that, as the room was measured.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Open, Little, OffTheWall];

    public Outcome Run(InspectedPiece piece)
    {
        var findings = new List<Finding>();
        foreach (var cover in piece.Piece.Covers)
        {
            if (Judge(piece, cover, cover.One, cover.Towards) is { } one)
                findings.Add(one);
            var other = cover.Wall is null
                ? Judge(piece, cover, cover.Other, cover.Towards.Opposite())
                : StripAtWall.Judge(piece, cover, cover.Wall);
            if (other is not null)
                findings.Add(other);
        }
        return new(2 * piece.Piece.Covers.Count, findings);
    }

    /// <param name="side">What lies on one side of the gap.</param>
    /// <param name="towards">The way from there to the gap.</param>
    private static Finding? Judge(InspectedPiece piece, Cover cover, IReadOnlyList<string> side, Direction towards)
    {
        var strip = piece.Shape(cover.Strip);
        var run = towards.Axis() == Axis.X ? Axis.Z : Axis.X;
        var along = run.Measured();
        var (from, to) = cover.Course is { } course
            ? (piece.ToUnits(course.From), piece.ToUnits(course.To))
            : (strip.Box.Min.On(along), strip.Box.Max.On(along));
        var back = strip.Box.Max.Y;
        var edge = Outline.Facing(piece.ShapesOf(side), towards, run, (back, back + piece.ToUnits(Skin)));
        var reach = strip.Points.Where(p => p.Y >= back - 1).Max(p => p.Along(towards.Opposite()));
        var (least, at) = (double.MaxValue, from);
        foreach (var (start, end) in Stretches(edge.Lines, from, to))
        {
            foreach (var place in (ReadOnlySpan<double>)[start, end])
            {
                var lap = reach + ReachOver(edge.Lines, start, end, place);
                if (lap < least)
                    (least, at) = (lap, place);
            }
        }
        var covered = piece.ToLength(Math.Max(least, -piece.ToUnits(Length.FromMillimetres(1000))));
        var kind =
            covered <= Tolerance.Rounding ? Open
            : covered < cover.Lap - Tolerance.Fitting ? Little
            : null;
        return kind is null ? null : Tell(piece, cover, kind, strip.Part, side, towards, covered, at);
    }

    /// <summary>The course of a strip in stretches on which no line begins or ends.</summary>
    private static IEnumerable<(double From, double To)> Stretches(
        IReadOnlyList<OutlineLine> lines,
        double from,
        double to
    )
    {
        var stations = new SortedSet<double> { from, to };
        foreach (var station in lines.SelectMany(line => new[] { line.From, line.To }))
        {
            if (station > from && station < to)
                stations.Add(station);
        }
        return stations.Zip(stations.Skip(1));
    }

    /// <summary>How far what lies behind reaches towards the gap at a place of a stretch; nowhere where there is nothing.</summary>
    private static double ReachOver(IReadOnlyList<OutlineLine> lines, double start, double end, double at)
    {
        var reach = double.NegativeInfinity;
        foreach (var line in lines)
        {
            if (line.From <= start && line.To >= end)
                reach = Math.Max(reach, line.ReachAt(at));
        }
        return reach;
    }

    private static Finding Tell(
        InspectedPiece piece,
        Cover cover,
        FindingKind kind,
        Part strip,
        IReadOnlyList<string> side,
        Direction towards,
        Length covered,
        double at
    )
    {
        var box = piece.Shape(cover.Strip).Box;
        var edge = box.Centre() + (towards.Opposite().Unit() * (box.Size(towards.Axis()) / 2));
        var place = towards.Axis() == Axis.X ? new Vec3(edge.X, box.Min.Y, at) : new Vec3(at, box.Min.Y, edge.Z);
        var behind = piece.Shape(side[0]).Part;
        return new()
        {
            Kind = kind,
            Message =
                kind == Open
                    ? $"The {strip.Name} does not reach over the {behind.Name}."
                    : $"The {strip.Name} laps little over the {behind.Name}.",
            Parts = [strip.Id, behind.Id],
            Place = strip.Source,
            Related = [cover.Source, behind.Source],
            Where = piece.ToSpace(
                place,
                place + (towards.Unit() * Math.Max(piece.ToUnits(covered), piece.ToUnits(Skin)))
            ),
            Measured = new MeasuredLength("lap", covered),
            Wanted = new(cover.Lap, null),
            Remedy = new(
                $"Make the strip {piece.Say(cover.Lap - covered)} wider on that side, or move it there.",
                Sure: false
            ),
        };
    }
}
