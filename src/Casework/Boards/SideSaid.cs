using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>How a board is tied to what it meets.</summary>
internal enum Tie
{
    Against,
    Resting,
    Glued,
    Screwed,
    PocketScrewed,
    Dowelled,
    Biscuits,
    Plugged,
    Dado,
    Groove,
    Rabbet,
    Tenon,
    Loose,
}

/// <summary>What the recipe says of one side of a board: what it meets there, or how far it stands from something.</summary>
/// <param name="Face">What it is measured from or meets; null for <c>at</c>, which counts from the piece's own corner.</param>
internal abstract record SideSaid(FaceSaid? Face, SourcePlace Place);

/// <summary>It meets something there and is tied to it.</summary>
/// <param name="Depth">How deep it goes in; null: by the shop's habit, or not at all.</param>
/// <param name="Glue">Whether the recipe says so; null: as the joint has it.</param>
internal sealed record MeetsSaid(Tie Tie, Figure? Depth, bool? Glue, FaceSaid Met, SourcePlace Place)
    : SideSaid(Met, Place)
{
    /// <summary>Whether the board goes into the other, which is cut for it.</summary>
    public bool IsLetIn => Tie is Tie.Dado or Tie.Groove or Tie.Rabbet or Tie.Tenon or Tie.Loose;
}

/// <summary>It stands off something by a distance, or flush with it.</summary>
/// <param name="Way">Which way the distance goes.</param>
/// <param name="By">The distance; null: none.</param>
internal sealed record OffSaid(FaceSaid From, Direction Way, Figure? By, SourcePlace Place) : SideSaid(From, Place);

/// <summary>It stands at a distance from the left front lower corner of the piece.</summary>
internal sealed record AtSaid(Figure At, SourcePlace Place) : SideSaid(null, Place);

/// <summary>A face by name: <c>front of cupboard left side</c>.</summary>
/// <param name="Side">Which side of it; null: the one that is meant by what is said before it.</param>
/// <param name="Name">The part, board or carcase.</param>
/// <param name="Said">The value of the recipe it stands in.</param>
internal sealed record FaceSaid(Direction? Side, string Name, Scalar Said, SourcePlace Place);
