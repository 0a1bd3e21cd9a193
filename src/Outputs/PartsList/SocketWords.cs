using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>The sockets of one dovetail or box joint on one end of a board, told together as they are marked out.</summary>
internal sealed class SocketWords(Part part, Func<Length, string> say)
{
    private readonly Extent _blank = new(default, new(part.Length.Length, part.Width.Length, part.Thickness.Length));

    public static bool IsSocket(PartCut cut) => cut.Kind is CutKind.DovetailSocket or CutKind.FingerSocket;

    /// <summary>"5 dovetail sockets 1 in 8 in the front end, 14 deep; at their widest 0 to 7.8, ... from the bottom edge".</summary>
    /// <param name="sockets">All that one joint cuts in the board.</param>
    public string Of(IReadOnlyList<PartCut> sockets)
    {
        var boxes = sockets.Select(Around).ToList();
        var first = boxes[0];
        var end = Directions.Along(Axis.X, first.Min.X <= Length.Zero ? -1 : 1);
        var name = Words.Of(sockets[0].Kind) + (sockets.Count == 1 ? "" : "s");
        var slope = (sockets[0] as OutlineCut)?.Called is { } called ? $" {called}" : "";
        var deep = boxes.Max(box => box.Width);
        var stops = first.Height < _blank.Height ? $", {say(first.Height)} into the thickness" : "";
        var widest = sockets[0] is OutlineCut ? "at their widest " : "";
        var runs = boxes.OrderBy(box => box.Min.Y).Select(box => $"{say(box.Min.Y)} to {say(box.Max.Y)}");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{sockets.Count} {name}{slope} in the {Side(end)}, {say(deep)} deep{stops}; {widest}{string.Join(", ", runs)} from the {Side(Direction.Front)}"
        );
    }

    private Extent Around(PartCut cut)
    {
        var box = cut switch
        {
            SquareCut square => square.Extent,
            OutlineCut outline => Around(outline),
            _ => _blank,
        };
        return Extent.Shared(box, _blank) ?? box;
    }

    private static Extent Around(OutlineCut cut)
    {
        var (a, b) = CutOutlines.AxesOf(cut.Along);
        var (min, max) = (default(Point).With(cut.Along, cut.From), default(Point).With(cut.Along, cut.To));
        min = min.With(a, cut.Outline.Min(c => c.A)).With(b, cut.Outline.Min(c => c.B));
        max = max.With(a, cut.Outline.Max(c => c.A)).With(b, cut.Outline.Max(c => c.B));
        return new(min, max);
    }

    private string Side(Direction board) => BoardWords.Side(part.Place, board);
}
