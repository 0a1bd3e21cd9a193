using Dryfit.Casework;

namespace Dryfit.Inspection;

/// <summary>
/// A door as it came out of the clamps: where its diagonals differ it is no rectangle, and since its hinges hold one edge
/// plumb, the other stands higher or lower than drawn.
/// </summary>
internal static class FoundDoor
{
    public const string Assumption = "The door's hinge side is taken as plumb, and its two diagonals as measured.";

    /// <summary>A side of a front with the gap that its measured diagonals leave there.</summary>
    public static FrontSide AsItIs(InspectedPiece piece, FrontSide side)
    {
        if (
            side.Gap is not { } gap
            || side.Side.Axis() == Axis.X
            || side.Front.AsFound?.Diagonals is not { } diagonals
            || side.Front.Motion is not (FrontMotion.TurnsOnLeftEdge or FrontMotion.TurnsOnRightEdge)
        )
            return side;
        var height = FrontSides.Around(FrontSides.Own(piece, side.Front)).Size(Axis.Z);
        var (rising, falling) = (piece.ToUnits(diagonals.Rising), piece.ToUnits(diagonals.Falling));
        // With one edge plumb the other is up by r: rising^2 = w^2 + (h + r)^2, falling^2 = w^2 + (h - r)^2.
        var up = ((rising * rising) - (falling * falling)) / (4 * height);
        var isHungLeft = side.Front.Motion == FrontMotion.TurnsOnLeftEdge;
        // Seen from the hinges the free edge goes up by as much, or down where they are at the right.
        var outward = (isHungLeft ? up : -up) * side.Side.Sign();
        var (hinge, free) = isHungLeft ? (gap.From, gap.To) : (gap.To, gap.From);
        var (still, moved) = (At(gap, hinge, 0), At(gap, free, outward));
        return side with
        {
            Gap =
                still.Gap <= moved.Gap
                    ? gap with
                    {
                        Smallest = still,
                        Largest = moved,
                    }
                    : gap with
                    {
                        Smallest = moved,
                        Largest = still,
                    },
        };
    }

    /// <summary>The gap at one end of its course, taken to run straight, with the front's edge moved out.</summary>
    private static GapAt At(SideGap gap, double course, double outward)
    {
        var (a, b) = (gap.Smallest, gap.Largest);
        var along = a.Course == b.Course ? 0 : (course - a.Course) / (b.Course - a.Course);
        var own = a.Own + ((b.Own - a.Own) * along) + outward;
        var other = a.Other + ((b.Other - a.Other) * along);
        return new(other - own, course, own, other);
    }
}
