using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>What would set the gaps or overlays of a front right, from how far its two opposite sides are off.</summary>
internal static class FrontRemedy
{
    /// <summary>How far a gap is off: above zero where it is too wide; zero within the tolerance.</summary>
    public static Length Off(InspectedPiece piece, FrontSide side)
    {
        if (side.Gap is not { } gap)
            return Length.Zero;
        // An overlap wanted is a gap below zero.
        var wanted = side is { Front.Hang: Hang.Overlay, Neighbour: null } ? -side.Wanted : side.Wanted;
        var narrowest = piece.ToLength(gap.Smallest.Gap) - wanted;
        var widest = piece.ToLength(gap.Largest.Gap) - wanted;
        if (narrowest < -Tolerance.Fitting)
            return narrowest;
        return widest > Tolerance.Fitting ? widest : Length.Zero;
    }

    /// <param name="side">The side that is off.</param>
    /// <param name="opposite">The side across from it; null where nothing is known of it.</param>
    public static Remedy For(InspectedPiece piece, FrontSide side, FrontSide? opposite)
    {
        var name = piece.GroupName(side.Front.Group);
        var off = Off(piece, side);
        var even = side.Gap?.IsEven(piece.ToUnits(Tolerance.Fitting)) ?? false;
        if (!even && side is { Front.Hang: Hang.Overlay, Neighbour: null })
            return new("Square the carcase up before the front is made, or let the lap run out.", Sure: false);
        if (!even)
            return new($"Plane or recut the edge of the {name} to follow what it meets.", Sure: false);

        var across = opposite is null ? Length.Zero : Off(piece, opposite);
        if (side.Neighbour is { } neighbour && across == Length.Zero)
        {
            var doubted = new[] { side.Front, piece.Front(neighbour)! }.Where(front =>
                Doubted(piece, front, side.Side.Axis()).Any()
            );
            if (doubted.ToList() is [var one])
                return new(Resize(piece, one, side.Side.Axis(), off), Sure: true);
            return new(
                $"Make the {name} or the {piece.GroupName(neighbour)} {piece.Say(Length.Abs(off))} {Comparative(side.Side.Axis(), off)}, or share it between them.",
                Sure: false
            );
        }
        if (across == Length.Zero)
            return new(Resize(piece, side.Front, side.Side.Axis(), off), Sure: opposite?.Gap is not null);
        if (Length.Abs(off + across) <= Tolerance.Fitting)
        {
            var way = off.Sign > 0 ? side.Side : side.Side.Opposite();
            return new($"Move the {name} {piece.Say(Length.Abs(off))} {Word(way)}.", Sure: true);
        }
        return new(
            $"{Resize(piece, side.Front, side.Side.Axis(), off + across).TrimEnd('.')}, and place it so that both sides are as wanted.",
            Sure: true
        );
    }

    /// <summary>The parts of a front by the maker's own numbers, for themselves or for the whole front, which are the first
    /// to doubt; those that run along the axis in question before others.</summary>
    public static IEnumerable<Part> Doubted(InspectedPiece piece, Front front, Axis axis) =>
        FrontSides
            .Own(piece, front)
            .Select(shape => shape.Part)
            .Where(part => part.IsAsCut || part.Source != piece.Group(part.Group)?.Source)
            .OrderBy(part => part.Place.Lie.Along.Axis() == axis ? 0 : 1);

    private static string Resize(InspectedPiece piece, Front front, Axis axis, Length off)
    {
        var by = piece.Say(Length.Abs(off));
        var text = $"Make the {piece.GroupName(front.Group)} {by} {Comparative(axis, off)}";
        var own = Doubted(piece, front, axis).Where(part => part.IsAsCut).ToList();
        var along = own.FindAll(part => part.Place.Lie.Along.Axis() == axis);
        if (along.Count > 0)
            return $"{text}: {Names(along)} {by} {(off.Sign > 0 ? "longer" : "shorter")}.";
        if (own.FindAll(part => part.Place.Lie.Across.Axis() == axis) is [var across])
            return $"{text}: {Names([across])} {by} {(off.Sign > 0 ? "wider" : "narrower")}.";
        return text + ".";

        static string Names(IEnumerable<Part> parts) => string.Join(" and ", parts.Select(part => $"the {part.Name}"));
    }

    private static string Comparative(Axis axis, Length off) =>
        (axis, off.Sign > 0) switch
        {
            (Axis.X, true) => "wider",
            (Axis.X, false) => "narrower",
            (_, true) => "taller",
            _ => "shorter",
        };

    private static string Word(Direction way) =>
        way switch
        {
            Direction.Left => "to the left",
            Direction.Right => "to the right",
            Direction.Up => "up",
            _ => "down",
        };
}
