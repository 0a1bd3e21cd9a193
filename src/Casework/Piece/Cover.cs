using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>A strip that hides a gap, or a seam, on purpose.</summary>
/// <param name="Strip">Id of the part that covers.</param>
/// <param name="One">Ids of the parts on the one side of the gap that the strip lies on.</param>
/// <param name="Other">Ids of the parts on the other side.</param>
/// <param name="Towards">The way from the one to the other, across the gap.</param>
/// <param name="Lap">How far the strip should lap over each side.</param>
/// <param name="Source">The line of the recipe that asks for it.</param>
public sealed record Cover(
    string Strip,
    IReadOnlyList<string> One,
    IReadOnlyList<string> Other,
    Direction Towards,
    Length Lap,
    SourcePlace Source
)
{
    /// <summary>From where to where along the strip there is something to lap over; null: all along it.</summary>
    public (Length From, Length To)? Course { get; init; }

    /// <summary>Name of the thing of the room that the strip should lie against, with nothing on the other side; null where parts are there.</summary>
    public string? Wall { get; init; }
}
