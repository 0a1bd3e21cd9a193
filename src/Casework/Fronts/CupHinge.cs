using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The holes of a cup hinge: the cup with its two screw holes in the back of the door, the plate's two holes in the side.
/// Cup 35 x 13 mm, screw holes 8 mm at 45 mm spacing 9.5 mm behind its middle: hinge maker's quick reference (hardware
/// literature). Plate holes 5 mm at 32 mm spacing, 37 mm from the front edge, for an inset door the door's thickness more:
/// published notes on 32 mm practice.
/// </summary>
internal static class CupHinge
{
    /// <summary>How it is asked for.</summary>
    public static string Name(PieceBuilder piece, Leaf leaf) =>
        $"cup hinge {LengthFormat.Millimetres.WriteWithUnit(piece.Shop.Length(HingeRules.CupDiameter).Length)}, "
        + (leaf.Plan.Fit.Hang == Hang.Inset ? "inset" : "overlaid");

    /// <summary>Bores the door; returns the middle of the cup's mouth.</summary>
    /// <param name="height">Above the lower end of the door.</param>
    public static Point BoreDoor(PieceBuilder piece, Leaf leaf, DoorUnit unit, Length height, string fitting)
    {
        var shop = piece.Shop;
        var depth = shop.Length(HingeRules.CupDepth).Length;
        if (depth >= leaf.Plan.Material.Thickness.Length)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} is {NoRoom.Show(leaf.Plan.Material.Thickness.Length)} thick: a hinge cup bored {NoRoom.Show(depth)} deep would come through.",
                leaf.Source,
                "a thicker door"
            );
        var door = unit.HingeMember;
        var inward = leaf.Hinged.Opposite();
        var cup = new Point(unit.Extent.Side(leaf.Hinged), door.Extent.Max.Y, unit.Extent.Min.Z + height).Moved(
            inward,
            shop.Length(HingeRules.CupSetback).Length
        );
        door.Bore(CutKind.HingeCup, cup, Direction.Front, shop.Length(HingeRules.CupDiameter).Length, depth, fitting);
        var screws = cup.Moved(inward, shop.Length(HingeRules.CupScrewOffset).Length);
        var half = shop.Length(HingeRules.CupScrewSpacing).Length / 2;
        foreach (var way in (ReadOnlySpan<Direction>)[Direction.Down, Direction.Up])
            door.Bore(
                CutKind.Bore,
                screws.Moved(way, half),
                Direction.Front,
                shop.Length(HingeRules.CupScrew).Length,
                shop.Length(HingeRules.CupScrewDepth).Length,
                fitting
            );
        return cup;
    }

    /// <summary>Bores the side for the hinge plate.</summary>
    /// <param name="z">The middle of the hinge.</param>
    public static void BoreSide(PieceBuilder piece, FrontSite site, Leaf leaf, PartDraft side, Length z, string fitting)
    {
        var shop = piece.Shop;
        var row = site.FaceY + shop.Length(HingeRules.HingePlateRow).Length;
        if (leaf.Plan.Fit.Hang == Hang.Inset)
            row += leaf.Plan.Material.Thickness.Length;
        var half = shop.Length(HingeRules.PlateSpacing).Length / 2;
        var middle = new Point(side.Extent.Side(leaf.Hinged.Opposite()), row, z);
        foreach (var way in (ReadOnlySpan<Direction>)[Direction.Down, Direction.Up])
            side.Bore(
                CutKind.Bore,
                middle.Moved(way, half),
                leaf.Hinged,
                shop.Length(HingeRules.PlateHole).Length,
                shop.Length(HingeRules.PlateDepth).Length,
                fitting
            );
    }
}
