using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Something solid that moves or is in the way: a part, a pull or knob as a box, a thing of the room.</summary>
/// <param name="Name">As a maker says it: "left door top rail", "knob of the left door".</param>
/// <param name="Placed">Its solid in the frame that looks at it.</param>
/// <param name="Box">The box around it there.</param>
/// <param name="Part">Id of the part, or of the one that a handle is screwed to; null for things of the room.</param>
/// <param name="Group">Id of the group that it moves with; null for things of the room.</param>
/// <param name="Handle">The size of the handle; null for all else.</param>
internal sealed record Body(
    string Name,
    Placed Placed,
    Box Box,
    string? Part,
    string? Group,
    SourcePlace Source,
    HandleSize? Handle = null
)
{
    /// <summary>The body so far along a motion.</summary>
    public Body After(Motion motion, double share) => Moved(Placed with { Frame = motion.At(Placed.Frame, share) });

    /// <summary>The body moved by so much.</summary>
    public Body Moved(Vec3 by) =>
        this with
        {
            Placed = Placed with { Frame = Placed.Frame with { Origin = Placed.Frame.Origin + by } },
            Box = new(Box.Min + by, Box.Max + by),
        };

    /// <summary>The same in another place.</summary>
    public Body Moved(Placed placed) => this with { Placed = placed, Box = Around(placed) };

    public static Box Around(Placed placed) => Boxes.Of([.. placed.Solid.Vertices.Select(placed.Frame.ToWorld)]);
}

/// <summary>Gathers bodies of a piece.</summary>
internal static class Bodies
{
    /// <summary>No pull stands off further: within it handles of parts beside a place are looked for.</summary>
    private static readonly Length Reach = Length.FromMillimetres(100);

    /// <summary>All that moves with a group: its parts and their handles.</summary>
    public static IReadOnlyList<Body> Of(InspectedPiece piece, string group) =>
        [.. piece.Members(group).SelectMany(shape => HandlesOf(piece, shape).Prepend(Of(shape)))];

    /// <summary>All that reaches into a box, of groups that are not left out, and of the room.</summary>
    public static IEnumerable<Body> Near(InspectedPiece piece, Box box, Func<string, bool> isLeftOut)
    {
        foreach (var shape in piece.Near(box.Grown(piece.ToUnits(Reach))))
        {
            if (isLeftOut(shape.Part.Group))
                continue;
            if (shape.Box.Overlaps(box))
                yield return Of(shape);
            foreach (var handle in HandlesOf(piece, shape).Where(handle => handle.Box.Overlaps(box)))
                yield return handle;
        }
        foreach (var thing in piece.Piece.Room)
        {
            var placed = piece.Seen(thing.Known, null);
            var around = Body.Around(placed);
            if (around.Overlaps(box))
                yield return new(thing.Name, placed, around, null, null, thing.Source);
        }
    }

    /// <summary>
    /// Whether a body bounds the opening of an inset front that was made to an opening as measured: it is drawn where it was
    /// reckoned, and what counts between the two is told by the gaps.
    /// </summary>
    public static bool IsDrawnElsewhere(InspectedPiece piece, Front? front, Body body)
    {
        if (front is not { Hang: Hang.Inset } || body.Part is not { } part)
            return false;
        var opening = piece.Opening(front.Opening);
        var (left, right, bottom, top) = (
            opening.Bounds.Left,
            opening.Bounds.Right,
            opening.Bounds.Bottom,
            opening.Bounds.Top
        );
        return opening.AsMeasured is not null
            && (
                left.Contains(part, StringComparer.Ordinal)
                || right.Contains(part, StringComparer.Ordinal)
                || bottom.Contains(part, StringComparer.Ordinal)
                || top.Contains(part, StringComparer.Ordinal)
            );
    }

    /// <summary>A handle as a box of its size on the face of its front.</summary>
    public static Body HandleOf(InspectedPiece piece, Shape shape, Hardware hardware, HandleSize size)
    {
        var at = piece.Grid.ToUnits(hardware.At);
        var (length, across) = (piece.ToUnits(size.Length), piece.ToUnits(size.Across));
        var deep = piece.ToUnits(size.StandsOff);
        var extent = size.Along == Axis.X ? new Vec3(length, deep, across) : new Vec3(across, deep, length);
        var own = new Placed(
            SolidBuilder.Build(extent, []),
            new(
                at - new Vec3(extent.X / 2, deep, extent.Z / 2),
                Direction.Right.Unit(),
                Direction.Back.Unit(),
                Direction.Up.Unit()
            )
        );
        var placed = piece.Seen(own, shape.Part.Turn);
        return new(
            $"{hardware.Kind} of the {piece.GroupName(shape.Part.Group)}",
            placed,
            Body.Around(placed),
            shape.Part.Id,
            shape.Part.Group,
            shape.Part.Source,
            size
        );
    }

    private static IEnumerable<Body> HandlesOf(InspectedPiece piece, Shape shape) =>
        piece.HandlesOf(shape.Part.Id).Select(handle => HandleOf(piece, shape, handle, handle.Handle!));

    private static Body Of(Shape shape) =>
        new(shape.Part.Name, shape.Placed, shape.Box, shape.Part.Id, shape.Part.Group, shape.Part.Source);
}
