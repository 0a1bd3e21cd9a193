using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework;

/// <summary>A bank of bays: a front, or a part of one, divided side by side or one above the other.</summary>
/// <param name="Axis">Along X where they are columns, along Z where they are rows.</param>
/// <param name="Bays">In order, as far as parts stand at both of their ends.</param>
/// <param name="Source">The line of the recipe that divides it.</param>
public sealed record Bank(Axis Axis, IReadOnlyList<Bay> Bays, SourcePlace Source);

/// <summary>One bay of a bank.</summary>
/// <param name="Name">As a maker says it: "upper left bay".</param>
/// <param name="From">Id of the part at its left, or under it.</param>
/// <param name="To">Id of the part at its right, or over it.</param>
/// <param name="Opening">Id of the opening that it is; null where it is divided again.</param>
/// <param name="Size">Its clear size as reckoned: what it rests on tells whether a difference can be meant.</param>
/// <param name="Alike">Bays of a bank with the same number are asked to be of one size.</param>
/// <param name="Source">The line of the recipe that tells of it.</param>
public sealed record Bay(
    string Name,
    string From,
    string To,
    string? Opening,
    Figure Size,
    int Alike,
    SourcePlace Source
)
{
    /// <summary>Whether it is one of a bank that is graduated, where each differs from the next on purpose.</summary>
    public bool IsGraduated { get; init; }
}
