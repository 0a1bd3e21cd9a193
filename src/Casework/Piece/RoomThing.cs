using Dryfit.Findings;
using Dryfit.Solids;

namespace Dryfit.Casework;

/// <summary>Something of the room that stays where it is: a wall, the floor, skirting, a socket.</summary>
/// <param name="Name">As a maker says it: "alcove left wall".</param>
/// <param name="Placed">Its solid in the piece, in units of the piece's grid.</param>
/// <param name="IsUnderfoot">Whether things slide over it on their way in.</param>
/// <param name="Source">The line of the recipe that tells of it.</param>
public sealed record RoomThing(string Name, Placed Placed, bool IsUnderfoot, SourcePlace Source)
{
    /// <summary>Its solid as far as it is known to reach, for what moves past it: walls are drawn on before the mouth of their
    /// space, for parts that stand proud of it.</summary>
    public Placed Known
    {
        get => field ?? Placed;
        init;
    }
}
