using Dryfit.Casework.Building;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The rabbeted lip of a door or drawer front that sits half in its opening: its back is cut away along each edge that laps over, so that
/// the rest goes in with the gap of an inset door.
/// </summary>
internal static class Lip
{
    /// <summary>Cuts the lips of a door; the edge at which a pair meets has none.</summary>
    public static void Cut(Leaf leaf, DoorUnit unit) =>
        Cut(leaf.Plan.Fit, unit.Face, unit.Extent, leaf.Plan.IsPair ? leaf.Hinged.Opposite() : null);

    /// <summary>Cuts the lips of a front.</summary>
    /// <param name="except">An edge that has none; null: all have one.</param>
    public static void Cut(FrontFit fit, IReadOnlyList<PartDraft> parts, Extent front, Direction? except = null)
    {
        foreach (var edge in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right, Direction.Down, Direction.Up])
        {
            if (edge == except)
                continue;
            var wide = fit.LipWidth(edge);
            EdgeStrip.Cut(
                parts,
                front
                    .With(edge.Opposite(), front.Side(edge) - (wide * edge.Sign()))
                    .With(Direction.Front, front.Max.Y - fit.LipDepth(front.Depth))
            );
        }
    }
}
