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
        if (!even)
            return new($"Plane or recut the edge of the {name} to follow what it meets.", Sure: false);

        var across = opposite is null ? Length.Zero : Off(piece, opposite);
        if (side.Neighbour is { } neighbour && across == Length.Zero)
        {
            return new(
                $"Make the {name} or the {piece.GroupName(neighbour)} {piece.Say(Length.Abs(off))} {Comparative(side.Side, off)}, or share it between them.",
                Sure: false
            );
        }
        if (across == Length.Zero)
            return new(Resize(piece, side, off), Sure: opposite?.Gap is not null);
        if (Length.Abs(off + across) <= Tolerance.Fitting)
        {
            var way = off.Sign > 0 ? side.Side : side.Side.Opposite();
            return new($"Move the {name} {piece.Say(Length.Abs(off))} {Word(way)}.", Sure: true);
        }
        return new(
            $"{Resize(piece, side, off + across).TrimEnd('.')}, and place it so that both sides are as wanted.",
            Sure: true
        );
    }

    /// <summary>The parts of a front cut by the maker's own numbers, which are the first to doubt; those that run along the
    /// axis in question before others.</summary>
    public static IEnumerable<Part> Doubted(InspectedPiece piece, Front front, Axis axis) =>
        FrontSides
            .Own(piece, front)
            .Select(shape => shape.Part)
            .Where(part => part.IsAsCut)
            .OrderBy(part => part.Place.Lie.Along.Axis() == axis ? 0 : 1);

    private static string Resize(InspectedPiece piece, FrontSide side, Length off)
    {
        var axis = side.Side.Axis();
        var by = piece.Say(Length.Abs(off));
        var text = $"Make the {piece.GroupName(side.Front.Group)} {by} {Comparative(side.Side, off)}";
        var cut = Doubted(piece, side.Front, axis)
            .Where(part => part.Place.Lie.Along.Axis() == axis)
            .Select(part => $"the {part.Name}")
            .ToList();
        if (cut.Count == 0)
            return text + ".";
        var longer = off.Sign > 0 ? "longer" : "shorter";
        return $"{text}: {string.Join(" and ", cut)} {by} {longer}.";
    }

    private static string Comparative(Direction side, Length off) =>
        (side.Axis(), off.Sign > 0) switch
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
