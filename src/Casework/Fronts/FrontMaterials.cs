using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>Finds the materials of a front: the one that is said, else the one whose name says what it is for.</summary>
/// <param name="said">The keys of the word; null where only the short form or nothing stands.</param>
/// <param name="place">Where the word stands.</param>
internal sealed class FrontMaterials(PieceBuilder piece, Fields? said, SourcePlace place)
{
    /// <summary>The material said under a key, else the first of the habitual names the recipe has; else null.</summary>
    public Material? Named(string key, params ReadOnlySpan<string> habits)
    {
        if (said?.Text(key) is { } name)
            return piece.Materials.Get(name, said.PlaceOf(key));
        foreach (var habit in habits)
        {
            if (piece.Materials.Has(habit))
                return piece.Materials.Get(habit, place);
        }
        return null;
    }

    /// <summary>The bands of a front: as said; else sheet goods get the material called <c>edging</c>, where there is one.</summary>
    public Material? Edging(Material of) =>
        said?.Text("edging") switch
        {
            "none" => null,
            null when of.Kind != MaterialKind.Sheet => null,
            _ => Named("edging", "edging"),
        };
}
