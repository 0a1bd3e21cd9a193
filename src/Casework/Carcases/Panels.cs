using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Panels of a carcase: sheet goods get the carcase's edging on their front edge, the rest is as it comes.</summary>
internal static class Panels
{
    /// <param name="width">Finished width from front to back, edging included.</param>
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
        (Direction End, Figure By)? shortEdging = null
    )
    {
        var bands =
            plan.Edging is not null && material.Kind == MaterialKind.Sheet
                ? new Bands(plan.Edging, Direction.Front) { Short = shortEdging }
                : null;
        return Edging.Panel(piece, plan.Group, name, role, material, lie, length, width, at, bands);
    }
}
