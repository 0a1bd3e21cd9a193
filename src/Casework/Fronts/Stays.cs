using System.Globalization;
using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The stays of a flap. Their makers' tables choose them by the weight of the flap and its height, so both are said where
/// they are asked for. A narrow and light flap that lifts gets one, a wide or heavy one two; a drop front, on which things
/// are set down, always two (common practice).
/// </summary>
internal static class Stays
{
    private static readonly Length Wide = Length.FromMillimetres(600);
    private const double HeavyKg = 3;

    public static void Fit(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var kilograms = HingeCount.MassKg(piece, leaf);
        var drops = leaf.Hinged == Direction.Down;
        var both = drops || unit.Extent.Width > Wide || kilograms > HeavyKg;
        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"{(drops ? "drop-front stay" : "flap stay")} for {kilograms:0.0} kg, {LengthFormat.For(piece.Scope.Unit).WriteWithUnit(unit.Extent.Height)} high"
        );
        var (y, z) = (unit.Extent.Max.Y, (unit.Extent.Min.Z + unit.Extent.Max.Z) / 2);
        piece.Fit(name, new(unit.Extent.Min.X, y, z), 1, unit.HingeMember, site.InsideLeft);
        if (both)
            piece.Fit(name, new(unit.Extent.Max.X, y, z), 1, unit.HingeMember, site.InsideRight);
    }
}
