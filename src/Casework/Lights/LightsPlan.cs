using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Lights;

/// <summary>Lights of a bay as the recipe wants them.</summary>
/// <param name="Strips">Under what a strip lies.</param>
/// <param name="Pucks">How many pucks in the panel above.</param>
/// <param name="FromFront">From the front of the inside; null: by the house.</param>
/// <param name="CableSide">Left or right: the end at which the cables go back.</param>
internal sealed record LightsPlan(
    StripPlace Strips,
    int Pucks,
    Figure? FromFront,
    Direction CableSide,
    DriverPlace Driver,
    SourcePlace Place
);

/// <summary>Under what strips lie.</summary>
internal enum StripPlace
{
    Nothing,
    Above,
    Shelves,
    AboveAndShelves,
}

/// <summary>Where the driver is.</summary>
internal enum DriverPlace
{
    /// <summary>Somewhere else: only the way of the cable is made.</summary>
    Apart,

    /// <summary>On the panel above, reached and aired from there.</summary>
    OnTop,

    /// <summary>On the floor of the bay, reached from the front, aired through the back.</summary>
    InTheBay,
}
