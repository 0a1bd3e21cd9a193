using Dryfit.Solids.Shaping;

namespace Dryfit.Solids.Measuring;

/// <summary>
/// A quick and exact way to see that two boards along the axes share nothing: the box that both blanks fill is parted by the
/// square cuts in it, and no cell is left. Other cuts only take more away.
/// </summary>
internal static class SquareTest
{
    private const int MostBoxes = 24;

    public static bool ShareNothing(Placed a, Placed b)
    {
        if (!BodyTable.IsAxial(a.Frame) || !BodyTable.IsAxial(b.Frame))
        {
            return false;
        }

        var (blankA, blankB) = (
            new Box(default, a.Solid.Size).Carried(a.Frame),
            new Box(default, b.Solid.Size).Carried(b.Frame)
        );
        var room = new Box(Vec3Order.Most(blankA.Min, blankB.Min), Vec3Order.Least(blankA.Max, blankB.Max));
        if (room.Min.X >= room.Max.X || room.Min.Y >= room.Max.Y || room.Min.Z >= room.Max.Z)
        {
            return true;
        }

        Span<Box> boxes = stackalloc Box[MostBoxes];
        var count = 0;
        return Gather(a, room, boxes, ref count) && Gather(b, room, boxes, ref count) && IsFilled(room, boxes[..count]);
    }

    private static bool Gather(Placed placed, Box room, Span<Box> boxes, ref int count)
    {
        var cuts = placed.Solid.Cuts;
        for (var i = 0; i < cuts.Count; i++)
        {
            if (cuts[i] is not BoxCut cut)
            {
                continue;
            }

            var box = new Box(cut.Min, cut.Max).Carried(placed.Frame);
            var part = new Box(Vec3Order.Most(box.Min, room.Min), Vec3Order.Least(box.Max, room.Max));
            if (part.Min.X < part.Max.X && part.Min.Y < part.Max.Y && part.Min.Z < part.Max.Z)
            {
                if (count == boxes.Length)
                {
                    return false;
                }

                boxes[count++] = part;
            }
        }

        return true;
    }

    // Whether the boxes leave nothing of the room: the room is parted by one face of a box at a time.
    private static bool IsFilled(Box room, ReadOnlySpan<Box> boxes)
    {
        if (boxes.IsEmpty)
        {
            return false;
        }

        // What the first box leaves of the room lies in up to six slabs around it.
        var box = boxes[0];
        var rest = boxes[1..];
        var (min, max) = (Vec3Order.Most(box.Min, room.Min), Vec3Order.Least(box.Max, room.Max));
        if (!(min.X < max.X && min.Y < max.Y && min.Z < max.Z))
        {
            return IsFilled(room, rest);
        }

        var (low, high) = (room.Min, room.Max);
        return Slab(low, high with { X = min.X }, rest)
            && Slab(low with { X = max.X }, high, rest)
            && Slab(low with { X = min.X }, high with { X = max.X, Y = min.Y }, rest)
            && Slab(low with { X = min.X, Y = max.Y }, high with { X = max.X }, rest)
            && Slab(low with { X = min.X, Y = min.Y }, new(max.X, max.Y, min.Z), rest)
            && Slab(new(min.X, min.Y, max.Z), new(max.X, max.Y, high.Z), rest);
    }

    private static bool Slab(Vec3 min, Vec3 max, ReadOnlySpan<Box> rest) =>
        min.X >= max.X || min.Y >= max.Y || min.Z >= max.Z || IsFilled(new(min, max), rest);
}
