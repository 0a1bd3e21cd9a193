using System.Globalization;
using System.Text;
using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Outputs.Alike;

/// <summary>
/// The shape of a board, laid down by a turn, in a form that two boards share exactly when their cuts leave the same:
/// what square cuts leave is written cell by cell, so that two cuts side by side equal the one that they make together;
/// round and outlined cuts are compared one by one, in any order. All on the piece's exact lengths.
/// </summary>
internal sealed class BoardShape : IEquatable<BoardShape>
{
    private readonly string _written;

    private BoardShape(string written) => _written = written;

    public static BoardShape Of(Part part, Turn turn)
    {
        var board = new TurnedBoard(turn, part.Length.Length, part.Width.Length);
        var blank = board.Of(new Extent(default, new(board.Length, board.Width, part.Thickness.Length)));
        var squares = new List<Extent>();
        var others = new List<string>();
        foreach (var cut in part.Cuts)
        {
            switch (cut)
            {
                case SquareCut square when Extent.Shared(board.Of(square.Extent), blank) is { } shared:
                    squares.Add(shared);
                    break;
                case RoundCut round:
                    others.Add(Written(round, board, blank));
                    break;
                case OutlineCut outline:
                    others.Add(Written(outline, board, blank));
                    break;
            }
        }

        others.Sort(StringComparer.Ordinal);
        return new(string.Join('\n', others.Prepend(BoardCells.Of(blank, squares).Written)));
    }

    public bool Equals(BoardShape? other) => string.Equals(_written, other?._written, StringComparison.Ordinal);

    public override bool Equals(object? obj) => Equals(obj as BoardShape);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(_written);

    private static string Written(RoundCut cut, TurnedBoard board, Extent blank)
    {
        var from = board.Of(cut.From);
        var into = board.Of(cut.Into);
        var depth = cut.Depth;
        if (cut.TiltDegrees == 0)
        {
            // A straight hole that goes through is the same from either side, however far the bit came out.
            var room = Length.Abs(blank.Side(into) - from[into.Axis()]);
            var startsOutside = (from[into.Axis()] - blank.Side(into.Opposite())) * into.Sign() <= Length.Zero;
            if (depth >= room && startsOutside)
            {
                (from, into, depth) = (
                    from.With(into.Axis(), Length.Zero),
                    Directions.Along(into.Axis(), 1),
                    blank.Size(into.Axis())
                );
            }

            return Line("round", from, into, cut.Diameter, depth);
        }

        return Line("leaning", from, into, cut.Diameter, depth, cut.TiltDegrees, board.Of(cut.Leaning));
    }

    private static string Written(OutlineCut cut, TurnedBoard board, Extent blank)
    {
        var (first, second) = CutOutlines.AxesOf(cut.Along);
        var ends = board.Of(
            new Extent(default(Point).With(cut.Along, cut.From), default(Point).With(cut.Along, cut.To))
        );
        var along = board.Of(Directions.Along(cut.Along, 1)).Axis();
        var (turnedFirst, turnedSecond) = CutOutlines.AxesOf(along);
        var outline = CutOutlines.CounterClockwise(
            CutOutlines.Carried(
                cut.Outline,
                (a, b) =>
                {
                    var at = board.Of(default(Point).With(first, a).With(second, b));
                    return (at[turnedFirst], at[turnedSecond]);
                }
            )
        );
        var least = outline.MinBy(corner => (corner.A, corner.B));
        var start = outline.TakeWhile(corner => corner != least).Count();
        return Line(
            "outline",
            along,
            Length.Max(ends.Min[along], Length.Zero),
            Length.Min(ends.Max[along], blank.Max[along]),
            string.Join(' ', outline.Skip(start).Concat(outline.Take(start)))
        );
    }

    private static string Line(params object[] words)
    {
        var line = new StringBuilder();
        foreach (var word in words)
            line.Append(CultureInfo.InvariantCulture, $"{word}; ");
        return line.ToString();
    }
}
