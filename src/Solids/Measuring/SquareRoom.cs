using Dryfit.Solids.Shaping;

namespace Dryfit.Solids.Measuring;

/// <summary>
/// A quick and exact way to what two boards along the axes share: the box that both blanks fill is parted by the square cuts in
/// it. Where no other cut reaches what is left, the cells are all there is to know.
/// </summary>
internal static class SquareRoom
{
    private const int MostBoxes = 24;

    /// <summary>Finds the cells that both fill: boxes in the world, none in another; none where they share nothing.</summary>
    /// <returns>False where this way does not tell: boards at an angle, or other cuts that reach in.</returns>
    public static bool TryPart(Placed a, Placed b, ref CellList cells)
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
        if (!room.HasVolume())
        {
            return true;
        }

        Span<Box> boxes = stackalloc Box[MostBoxes];
        var count = 0;
        return Gather(a, room, boxes, ref count)
            && Gather(b, room, boxes, ref count)
            && Part(room, boxes[..count], a, b, ref cells);
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
            if (cut.HasVolume() && part.HasVolume())
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

    // What the first box leaves of the room lies in up to six slabs around it; the others part them further.
    private static bool Part(Box room, ReadOnlySpan<Box> boxes, Placed a, Placed b, ref CellList cells)
    {
        if (boxes.IsEmpty)
        {
            return !IsReached(room, a) && !IsReached(room, b) && cells.TryAdd(room);
        }

        var box = boxes[0];
        var rest = boxes[1..];
        var (min, max) = (Vec3Order.Most(box.Min, room.Min), Vec3Order.Least(box.Max, room.Max));
        if (!new Box(min, max).HasVolume())
        {
            return Part(room, rest, a, b, ref cells);
        }

        var (low, high) = (room.Min, room.Max);
        ReadOnlySpan<Box> slabs =
        [
            new(low, high with { X = min.X }),
            new(low with { X = max.X }, high),
            new(low with { X = min.X }, high with { X = max.X, Y = min.Y }),
            new(low with { X = min.X, Y = max.Y }, high with { X = max.X }),
            new(low with { X = min.X, Y = min.Y }, new(max.X, max.Y, min.Z)),
            new(new(min.X, min.Y, max.Z), new(max.X, max.Y, high.Z)),
        ];
        foreach (var slab in slabs)
        {
            if (slab.HasVolume() && !Part(slab, rest, a, b, ref cells))
            {
                return false;
            }
        }

        return true;
    }

    // Whether a cut that is not square comes near.
    private static bool IsReached(Box cell, Placed placed)
    {
        var home = cell.CarriedBack(placed.Frame);
        var room = home.ToBounds().Grown(1e-9 * Reach.Of(placed));
        var cuts = placed.Solid.Cuts;
        for (var i = 0; i < cuts.Count; i++)
        {
            if (cuts[i] is not BoxCut && cuts[i].Around().Touches(in room))
            {
                return true;
            }
        }

        return false;
    }

    private static bool HasVolume(this BoxCut cut) => new Box(cut.Min, cut.Max).HasVolume();

    private static bool HasVolume(this Box box) =>
        box.Min.X < box.Max.X && box.Min.Y < box.Max.Y && box.Min.Z < box.Max.Z;
}
