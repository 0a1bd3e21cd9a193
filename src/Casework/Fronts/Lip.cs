using Dryfit.Casework.Building;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The rabbeted lip of a door that sits half in its opening: its back is cut away along each edge that laps over, so that
/// the rest goes in with the gap of an inset door.
/// </summary>
internal static class Lip
{
    /// <summary>Cuts the lips of a door; the edge at which a pair meets has none.</summary>
    public static void Cut(Leaf leaf, DoorUnit unit)
    {
        var fit = leaf.Plan.Fit;
        foreach (var edge in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right, Direction.Down, Direction.Up])
        {
            if (leaf.Plan.IsPair && edge == leaf.Hinged.Opposite())
                continue;
            var wide = fit.LipWidth(edge);
            EdgeStrip.Cut(
                unit.Face,
                unit.Extent.With(edge.Opposite(), unit.Extent.Side(edge) - (wide * edge.Sign()))
                    .With(Direction.Front, unit.Extent.Max.Y - fit.LipDepth(leaf.Plan.Material.Thickness.Length))
            );
        }
    }
}
