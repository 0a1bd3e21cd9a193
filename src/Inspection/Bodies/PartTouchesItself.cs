using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether a part hangs together by an edge without width, or by a point.</summary>
internal sealed class PartTouchesItself : ICheck
{
    public static FindingKind KnifeEdge { get; } =
        new(
            "part-touches-itself",
            Severity.Warn,
            "Part touches itself in an edge or a point",
            "Where two cuts meet exactly in a line or a point, no wood is left between them: a knife edge holds nothing, and "
                + "breaks out under the tool."
        );

    public string Name => "parts that hang by a knife edge";

    public string Of => "parts";

    public string How =>
        "Decided exactly on the lengths of the recipe: two cuts that leave any wood between them, however little, do not count, "
        + "nor do cuts that run into each other. Parts in pieces are told as such.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [KnifeEdge];

    public Outcome Run(InspectedPiece piece) =>
        new(
            piece.Shapes.Count,
            [
                .. piece
                    .Shapes.Select(shape => shape.Part)
                    .Where(part => part.Solid is { TouchesItself: true, PieceCount: 1 })
                    .Select(part => Tell(piece, part)),
            ]
        );

    private static Finding Tell(InspectedPiece piece, Part part)
    {
        // The longest stretch is drawn; where there is none, the first point.
        var touches = Touches.Of(part.Solid);
        var touch = touches.MaxBy(touch => Vec3.Dot(touch.To - touch.From, touch.To - touch.From));
        if (touch is null)
            return new Finding
            {
                Kind = KnifeEdge,
                Message = $"The {part.Name} touches itself.",
                Parts = [part.Id],
                Place = part.Source,
            };
        var (from, to) = (part.Placed.Frame.ToWorld(touch.From), part.Placed.Frame.ToWorld(touch.To));
        var length = piece.ToLength(Math.Sqrt(Vec3.Dot(to - from, to - from)));
        var cuts = touch.Cuts.Count > 0 ? $", where {CutPlaces.Named(part, touch.Cuts)} meet" : "";
        return new()
        {
            Kind = KnifeEdge,
            Message = touch.IsPoint
                ? $"The {part.Name} touches itself in a point{cuts}."
                : $"The {part.Name} touches itself along an edge{cuts}.",
            Parts = [part.Id],
            Place = part.Source,
            Where = piece.ToSpace(from, to),
            Measured = touch.IsPoint ? null : new MeasuredLength("knife edge", length),
            Wanted = touch.IsPoint ? null : Wanted.Exactly(Length.Zero),
            Remedy = new("Leave some wood between the cuts, or let one run into the other.", Sure: false),
        };
    }
}
