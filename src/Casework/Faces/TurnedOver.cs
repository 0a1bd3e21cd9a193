using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Faces;

/// <summary>
/// Lays a part the other face up, where it is: board and piece keep their shapes, and what was told from the one face is
/// told from the other. It turns about its length, so that x stays, and y and z count from the opposite sides.
/// </summary>
internal static class TurnedOver
{
    public static void Turn(PartDraft part)
    {
        var (width, thickness) = (part.Width.Length, part.Thickness.Length);
        var origin = part.Place.ToPiece(new Point(Length.Zero, width, thickness));
        part.Relay(
            new Placement(origin, Lie.Of(part.Place.Lie.Along, part.Place.Lie.Shows.Opposite())),
            cut => Cut(cut, width, thickness)
        );
    }

    private static PartCut Cut(PartCut cut, Length width, Length thickness)
    {
        return cut switch
        {
            SquareCut square => square with { Extent = Box(square.Extent) },
            RoundCut round => round with
            {
                From = At(round.From),
                Into = Way(round.Into),
                Leaning = Way(round.Leaning),
            },
            OutlineCut outline => Swept(outline),
            _ => throw new InvalidOperationException($"No cut is turned over that is a {cut.GetType().Name}."),
        };

        Point At(Point point) => new(point.X, width - point.Y, thickness - point.Z);

        Extent Box(Extent box)
        {
            var (a, b) = (At(box.Min), At(box.Max));
            return new(new(a.X, b.Y, b.Z), new(b.X, a.Y, a.Z));
        }

        OutlineCut Swept(OutlineCut outline)
        {
            var (first, second) = CutOutlines.AxesOf(outline.Along);
            var carried = CutOutlines.Carried(outline.Outline, (a, b) => (On(first, a), On(second, b)));
            var (from, to) = (On(outline.Along, outline.From), On(outline.Along, outline.To));
            return outline with
            {
                Outline = CutOutlines.CounterClockwise(carried),
                From = Length.Min(from, to),
                To = Length.Max(from, to),
            };
        }

        Length On(Axis axis, Length at) =>
            axis switch
            {
                Axis.X => at,
                Axis.Y => width - at,
                _ => thickness - at,
            };
    }

    private static Direction Way(Direction board) => board.Axis() == Axis.X ? board : board.Opposite();
}
