using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// Panels of a carcase: sheet goods get the carcase's edging on their front edge where it is seen, the rest is as it comes.
/// </summary>
internal static class Panels
{
    /// <param name="width">Finished width from front to back, edging included.</param>
    /// <param name="shortEdging">Ends at which the edging stops, and how far from them; null for none.</param>
    /// <param name="letIn">How far both ends go into what they meet; the edging lies between. Null for not at all.</param>
    /// <param name="isFree">Whether no member of a face frame covers its front edge.</param>
    public static BandedPanel Make(
        PieceBuilder piece,
        CarcasePlan plan,
        string name,
        Role role,
        Material material,
        Lie lie,
        Figure length,
        Figure width,
        Point at,
        IReadOnlyList<(Direction End, Figure By)>? shortEdging = null,
        Figure? letIn = null,
        bool isFree = false
    )
    {
        var stops = new List<(Direction, Figure)>(shortEdging ?? []);
        if (letIn is not null)
            stops.AddRange([(lie.Along, letIn), (lie.Along.Opposite(), letIn)]);
        var bands =
            plan.Edging is not null && material.Kind == MaterialKind.Sheet && (isFree || plan.Face is null)
                ? new Bands(plan.Edging, Direction.Front) { Short = stops }
                : null;
        return Edging.Panel(piece, plan.Group, name, role, material, lie, length, width, at, bands);
    }
}
