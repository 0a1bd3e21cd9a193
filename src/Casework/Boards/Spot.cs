using Dryfit.Casework.Building;
using Dryfit.Casework.Words;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Boards;

/// <summary>
/// A plane of the piece as a maker would reckon it: so far from something. Two planes told from the same thing have a
/// distance with a sum.
/// </summary>
/// <param name="Anchor">What it is told from: a carcase's low side, a part's low side, the corner of the piece.</param>
/// <param name="Offset">How far from that; null: not at all.</param>
internal sealed record Line(object Anchor, Figure? Offset)
{
    /// <summary>The corner of the piece and the floor.</summary>
    public static object Corner { get; } = new();

    /// <summary>Farther on, the positive way where <paramref name="sign"/> is.</summary>
    public Line Moved(Figure? by, int sign) =>
        by is null ? this
        : Offset is null ? this with { Offset = sign > 0 ? by : by * -1 }
        : this with { Offset = sign > 0 ? Offset + by : Offset - by };
}

/// <summary>Where one side of a board is, and what it was told from.</summary>
/// <param name="At">The coordinate of the board's side.</param>
/// <param name="Line">The same as a sum.</param>
/// <param name="From">What it is called that it was told from.</param>
internal sealed record Spot(Length At, Line Line, string From)
{
    /// <summary>The board from one of its sides to the other, as the sum of what lies between.</summary>
    public static Figure Between(Spot low, Spot high)
    {
        var size = high.At - low.At;
        if (
            Equals(low.Line.Anchor, high.Line.Anchor)
            && high.Line.Offset is { } far
            && (low.Line.Offset is { } near ? Less(far, near) : far) is var sum
            && sum.Length == size
        )
            return sum;
        return Figure.Given($"from {low.From} to {high.From}", size, new TradeOrigin("as they stand in the piece"));
    }

    /// <summary>What stands before its anchor counts in full: nobody takes away less than nothing.</summary>
    private static Figure Less(Figure far, Figure near) =>
        near.Reason is TimesReason { A: var before, Factor: var factor } && factor == -Rational.One
            ? far + before
            : far - near;
}

/// <summary>The planes of loose boards and of what they are told from.</summary>
internal sealed class Lines
{
    private readonly Dictionary<(PartDraft Board, Direction Side), Line> _boards = [];

    public void Know(PartDraft board, Direction side, Line line) => _boards[(board, side)] = line;

    /// <summary>One side of what a name means.</summary>
    public Line Of(Found found, Direction side)
    {
        if (found.Parts is [var part])
        {
            if (_boards.TryGetValue((part, side), out var known))
                return known;
            foreach (var body in found.Within)
            {
                if (OfCarcase(body, part, side) is { } line)
                    return line;
            }
            return End(part, side, part.SizeAlong(side.Axis()).As($"{part.Name} {SizeWord(part, side.Axis())}"));
        }
        return found.Within is [var whole] ? End(whole, side, SizeOf(whole, side.Axis())) : new Line(Line.Corner, null);
    }

    private static Line End(object anchor, Direction side, Figure size) => new(anchor, side.Sign() > 0 ? size : null);

    /// <summary>The side of a part that lies at the outside of its carcase, told from the carcase.</summary>
    private static Line? OfCarcase(Body body, PartDraft part, Direction side)
    {
        var axis = side.Axis();
        var whole = SizeOf(body, axis);
        var at = part.Reckoned.Side(side);
        if (at == body.Envelope.Min[axis])
            return new Line(body, null);
        if (at == body.Envelope.Max[axis])
            return new Line(body, whole);
        if (side.Sign() > 0 && part.Reckoned.Min[axis] == body.Envelope.Min[axis])
            return new Line(body, part.SizeAlong(axis));
        return side.Sign() < 0 && part.Reckoned.Max[axis] == body.Envelope.Max[axis]
            ? new Line(body, whole - part.SizeAlong(axis))
            : null;
    }

    private static string SizeWord(PartDraft part, Axis axis) =>
        axis == part.Place.Lie.Along.Axis() ? "length"
        : axis == part.Place.Lie.Across.Axis() ? "width"
        : "thickness";

    private static Figure SizeOf(Body body, Axis axis) =>
        axis switch
        {
            Axis.X => body.Width,
            Axis.Y => body.Depth,
            _ => body.Height,
        };
}
