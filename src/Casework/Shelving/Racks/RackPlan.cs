using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary>A rack in a bay as the recipe wants it.</summary>
/// <param name="Material">What its rails, hangers or shelves are made of; null: the carcase's own.</param>
/// <param name="Rows">How many rows; one for hangers.</param>
/// <param name="Pitch">From one thing held to the next; null: by the house.</param>
internal sealed record RackPlan(RackKind Kind, Material? Material, int Rows, Figure? Pitch, SourcePlace Place)
{
    /// <summary>Whether it takes the whole height of the bay, so that no shelves stand there.</summary>
    public bool FillsTheBay => Kind != RackKind.Stemware;
}

/// <summary>What a rack is for.</summary>
internal enum RackKind
{
    Bottles,
    Stemware,
    Plates,
    Jars,
}
