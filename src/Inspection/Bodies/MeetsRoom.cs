using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// Whether the piece stands clear of the room it is made for, and whether its carcases get there: slid in from the mouth of
/// the space, without the strips that are put on afterwards.
/// </summary>
internal sealed class MeetsRoom : ICheck
{
    public static FindingKind InTheWall { get; } =
        new(
            "part-in-the-room",
            Severity.Stop,
            "Part where the room is",
            "A wall, the floor, a skirting or something on the wall is in its place: it will not go there."
        );

    public static FindingKind BlockedOnTheWay { get; } =
        new(
            "blocked-on-the-way-in",
            Severity.Stop,
            "Cannot be slid into its place",
            "It would fit where it stands, but something on a wall is in its way when the carcase is pushed in from the front."
        );

    public string Name => "room for the piece between its walls";

    public string Of => "parts near walls, floor and what is on them";

    public string How =>
        "Walls and floor are drawn through the readings, straight from each to the next, and each part near them is measured "
        + "against them. Carcases are slid in from before the mouth; strips sawn to walls and floor are put on when they stand.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [InTheWall, BlockedOnTheWay];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var thing in piece.Piece.Room)
        {
            var box = Boxes.Of([.. thing.Placed.Solid.Vertices.Select(thing.Placed.Frame.ToWorld)]);
            foreach (var shape in piece.Shapes.Where(shape => !shape.Part.IsKept))
            {
                if (shape.Box.Overlaps(box))
                {
                    covered++;
                    if (Standing(piece, shape, thing) is { } finding)
                    {
                        findings.Add(finding);
                        continue;
                    }
                }
                if (!thing.IsUnderfoot && GoesInWithTheCarcase(shape.Part) && PassesBy(shape.Box, box))
                {
                    covered++;
                    if (OnTheWay(piece, shape, thing, box) is { } finding)
                        findings.Add(finding);
                }
            }
        }
        return new(covered, findings);
    }

    private static bool GoesInWithTheCarcase(Part part) => part.Role != Role.Filler;

    /// <summary>Whether a box, pulled out to the front, would come past another.</summary>
    private static bool PassesBy(Box moving, Box standing) =>
        moving.Max.X > standing.Min.X
        && moving.Min.X < standing.Max.X
        && moving.Max.Z > standing.Min.Z
        && moving.Min.Z < standing.Max.Z
        && moving.Max.Y > standing.Min.Y;

    private static Finding? Standing(InspectedPiece piece, Shape shape, RoomThing thing)
    {
        if (Pair.Overlap(shape.Placed, thing.Placed) is not { } shared)
            return null;
        var depth = piece.ToLength(shared.Depth);
        if (depth <= Tolerance.Rounding)
            return null;
        return new()
        {
            Kind = InTheWall,
            Message = $"The {shape.Part.Name} stands where the {thing.Name} is.",
            Parts = [shape.Part.Id],
            Place = shape.Part.Source,
            Related = [thing.Source],
            Where = piece.ToSpace(shared.Bounds.Min, shared.Bounds.Max),
            Measured = new MeasuredVolume("overlap", piece.Grid.ToCubicMm(shared.Volume), depth),
            Wanted = Wanted.Exactly(Length.Zero),
            Remedy = new($"Make it {piece.Say(depth)} smaller there, move it, or notch it.", Sure: false),
        };
    }

    /// <summary>
    /// A carcase slid in from the front meets a block on a wall where, as it stands, it meets the block drawn out to the back:
    /// each of its points has come through all places before it. Walls run straight to the back and are met standing or never.
    /// </summary>
    private static Finding? OnTheWay(InspectedPiece piece, Shape shape, RoomThing thing, Box box)
    {
        if (thing.Placed.Solid.Cuts.Count > 0)
            return null;
        var size = new Vec3(box.Max.X - box.Min.X, shape.Box.Max.Y - box.Min.Y, box.Max.Z - box.Min.Z);
        var drawnOut = new Placed(
            SolidBuilder.Build(size, []),
            new Frame(box.Min, Direction.Right.Unit(), Direction.Back.Unit(), Direction.Up.Unit())
        );
        if (
            Pair.Overlap(shape.Placed, drawnOut) is not { } shared
            || piece.ToLength(shared.Depth) <= Tolerance.Rounding
        )
            return null;
        return new()
        {
            Kind = BlockedOnTheWay,
            Message = $"The {shape.Part.Name} meets the {thing.Name} when it is slid in.",
            Parts = [shape.Part.Id],
            Place = shape.Part.Source,
            Related = [thing.Source],
            Where = piece.ToSpace(shared.Bounds.Min, shared.Bounds.Max),
            Measured = new MeasuredLength("in its way by", piece.ToLength(shared.Depth)),
            Wanted = Wanted.Exactly(Length.Zero),
            Remedy = new("Take off what is in the way first, make the carcase narrower, or in sections.", Sure: false),
        };
    }
}
