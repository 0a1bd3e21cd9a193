using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>
/// Whether the edges of joined parts lie to each other as they should: flush where they should be flush, and tops as far
/// past what they lie on as they should overhang.
/// </summary>
internal sealed class EdgesInLine : ICheck
{
    public static FindingKind OutOfLine { get; } =
        new(
            "edge-out-of-line",
            Severity.Warn,
            "Edge out of line",
            "Two parts that are joined should end in one plane, or one so far past the other, and do not: one of them was cut to another number, or stands elsewhere.",
            "common practice: what should be flush is flush to the touch, 1/128 in"
        );

    public static FindingKind ALittleOut { get; } =
        new(
            "edge-a-little-out-of-line",
            Severity.Note,
            "Edge a little out of line",
            "A step that a hand feels and a plane takes off, less than 1 mm; where the part is too small there is nothing to plane.",
            "common practice"
        );

    public static IReadOnlyList<FindingKind> Both { get; } = [OutOfLine, ALittleOut];

    public string Name => "edges of joined parts in line";

    public string Of => "pairs of edges";

    public string How =>
        "Where two joined parts should end in one plane, or a top should stand past the other, the ends of "
        + "their solids are held against each other, within 1/128 in (0.2 mm). Sides that a cut takes wholly away are left "
        + "out. What one part explains is told once, of that part.";

    public IReadOnlyList<FindingKind> Kinds => Both;

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var steps = new List<Step>();
        foreach (var joint in piece.Piece.Joints.Where(joint => joint.Lines.Count > 0))
        {
            var seen = piece.From(joint);
            var (enters, receives) = (seen.Shape(joint.Enters), seen.Shape(joint.Receives));
            foreach (var line in joint.Lines)
            {
                if (!IsWhole(seen, enters, line.Way) || !IsWhole(seen, receives, line.Way))
                    continue;
                covered++;
                var past = seen.ToLength(enters.Box.Reach(line.Way) - receives.Box.Reach(line.Way));
                if (Length.Abs(past - line.Past) > Tolerance.Fitting)
                    steps.Add(new(seen, joint, line, enters, receives, past));
            }
        }
        return new(covered, [.. Tell(steps)]);
    }

    /// <summary>Whether the part still reaches as far as its blank did.</summary>
    private static bool IsWhole(InspectedPiece piece, Shape shape, Direction way) =>
        Math.Abs(shape.Box.Reach(way) - (piece.Grid.ToUnits(shape.Part.Extent.Side(way)) * way.Sign())) < 1;

    /// <summary>Each step once, by the parts that explain most of them: the maker's own cuts before all others.</summary>
    private static IEnumerable<Finding> Tell(List<Step> steps)
    {
        while (steps.Count > 0)
        {
            var most = steps
                .SelectMany(step => new[] { (step.Enters, step), (step.Receives, step) })
                .GroupBy(of => of.Item1.Part)
                .OrderByDescending(of => of.Key.IsAsCut)
                .ThenBy(of => of.Key.IsKept)
                .ThenByDescending(of => of.Count())
                .First();
            var explained = most.Select(of => of.step).ToList();
            steps.RemoveAll(explained.Contains);
            yield return Tell(most.Key, explained);
        }
    }

    private static Finding Tell(Part part, List<Step> steps)
    {
        var worst = steps.MaxBy(step => Length.Abs(step.Off))!;
        var piece = worst.Piece;
        var other = worst.Enters.Part == part ? worst.Receives : worst.Enters;
        // How far the doubted part stands out beyond its place.
        var beyond = worst.Enters.Part == part ? worst.Off : -worst.Off;
        var step = Length.Abs(worst.Off);
        var where = worst.Line.Way switch
        {
            Direction.Up => "at the top",
            Direction.Down => "at the bottom",
            Direction.Left => "at the left",
            Direction.Right => "at the right",
            Direction.Front => "in front",
            _ => "at the back",
        };
        var middle = worst.Enters.Box.Centre();
        var isFlush = worst.Line.Past.Sign == 0;
        return new()
        {
            Kind = step < Tolerance.WrongNumber ? ALittleOut : OutOfLine,
            Message =
                beyond.Sign > 0
                    ? $"The {part.Name} stands out too far past the {other.Part.Name} {where}."
                    : $"The {part.Name} stands back too far from the {other.Part.Name} {where}.",
            Parts = PartIds.Together(
                [part.Id, other.Part.Id],
                steps.SelectMany(s => new[] { s.Enters.Part.Id, s.Receives.Part.Id })
            ),
            Place = part.Source,
            Related = [other.Part.Source],
            Where = piece.ToSpace(
                middle.With(worst.Line.Way, worst.Receives.Box.Reach(worst.Line.Way)),
                middle.With(worst.Line.Way, worst.Enters.Box.Reach(worst.Line.Way))
            ),
            Measured = isFlush
                ? new MeasuredLength("step", step)
                : new MeasuredLength(worst.Past.Sign < 0 ? "stands back" : "stands past", Length.Abs(worst.Past)),
            Wanted = Wanted.Exactly(isFlush ? Length.Zero : Length.Abs(worst.Line.Past)),
            Remedy = new(
                $"Make the {part.Name} {piece.Say(step)} {Word(part, worst.Line.Way, beyond.Sign > 0)}, or move it.",
                Sure: false
            ),
        };
    }

    private static string Word(Part part, Direction way, bool isTooLarge)
    {
        var lie = part.Place.Lie;
        return (way.Axis() == lie.Along.Axis(), way.Axis() == lie.Across.Axis(), isTooLarge) switch
        {
            (true, _, true) => "shorter",
            (true, _, false) => "longer",
            (_, true, true) => "narrower",
            (_, true, false) => "wider",
            (_, _, true) => "thinner",
            _ => "thicker",
        };
    }

    /// <summary>Two edges that do not lie to each other as they should.</summary>
    /// <param name="Past">How far the entering part really stands past the other.</param>
    private sealed record Step(
        InspectedPiece Piece,
        Joint Joint,
        EdgeLine Line,
        Shape Enters,
        Shape Receives,
        Length Past
    )
    {
        public Length Off => Past - Line.Past;
    }
}
