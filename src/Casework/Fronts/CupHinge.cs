using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
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
    public static string Name(Leaf leaf) =>
        leaf.Plan.Hinge.Called
        + $" {LengthFormat.Millimetres.WriteWithUnit(leaf.Plan.Hinge.Length(HingeRules.CupDiameter).Length)}, "
        + (leaf.Plan.Fit.Hang == Hang.Inset ? "inset" : "overlaid");

    /// <summary>Bores the door; returns the middle of the cup's mouth.</summary>
    /// <param name="along">The middle of the hinge along the edge, in the piece.</param>
    public static Point BoreDoor(Leaf leaf, DoorUnit unit, Length along, string fitting)
    {
        var hinge = leaf.Plan.Hinge;
        var depth = hinge.Length(HingeRules.CupDepth).Length;
        if (depth >= leaf.Plan.Material.Thickness.Length)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} is {NoRoom.Show(leaf.Plan.Material.Thickness.Length)} thick: a hinge cup bored {NoRoom.Show(depth)} deep would come through.",
                leaf.Source,
                "a thicker door"
            );
        var door = unit.HingeMember;
        var reach = hinge.Length(HingeRules.CupSetback).Length + (hinge.Length(HingeRules.CupDiameter).Length / 2);
        if (reach > door.Extent.Size(leaf.Hinged.Axis()))
            throw NoRoom.Of(
                $"The {door.Name} is {NoRoom.Show(door.Extent.Size(leaf.Hinged.Axis()))} wide: a hinge cup reaches {NoRoom.Show(reach)} in, and would come out at its inner edge.",
                leaf.Source,
                "wider stiles and rails, or another hinge"
            );
        var inward = leaf.Hinged.Opposite();
        var edge = unit.Extent.Side(leaf.Hinged);
        var cup = At(leaf, edge, door.Extent.Max.Y, along).Moved(inward, hinge.Length(HingeRules.CupSetback).Length);
        door.Bore(CutKind.HingeCup, cup, Direction.Front, hinge.Length(HingeRules.CupDiameter).Length, depth, fitting);
        var screws = cup.Moved(inward, hinge.Length(HingeRules.CupScrewOffset).Length);
        var half = hinge.Length(HingeRules.CupScrewSpacing).Length / 2;
        foreach (var way in Ways(leaf))
            door.Bore(
                CutKind.Bore,
                screws.Moved(way, half),
                Direction.Front,
                hinge.Length(HingeRules.CupScrew).Length,
                hinge.Length(HingeRules.CupScrewDepth).Length,
                fitting
            );
        return cup;
    }

    /// <summary>Bores the side for the hinge plate.</summary>
    /// <param name="along">The middle of the hinge along the edge, in the piece.</param>
    public static void BoreSide(FrontSite site, Leaf leaf, PartDraft side, Length along, string fitting)
    {
        var hinge = leaf.Plan.Hinge;
        foreach (var at in PlateHoles(site, leaf, side, along))
            side.Bore(
                CutKind.Bore,
                at,
                leaf.Hinged,
                hinge.Length(HingeRules.PlateHole).Length,
                PlateDepth(leaf, side),
                fitting
            );
    }

    /// <summary>Whether a hinge there keeps clear of what is bored into the side, and of what stands behind the door.</summary>
    public static bool IsFree(PieceBuilder piece, FrontSite site, Leaf leaf, PartDraft side, Length along)
    {
        var hinge = leaf.Plan.Hinge;
        var (hole, depth) = (hinge.Length(HingeRules.PlateHole).Length, PlateDepth(leaf, side));
        var room = Room(site, leaf, side, along);
        return PlateHoles(site, leaf, side, along)
                .All(at => Stagger.IsFree(side.At(at), Dowels.HoleBox(at, leaf.Hinged, hole, depth)))
            && !piece.Parts.Any(part =>
                part != side
                && part.Group != leaf.Group
                && part.Group.Turn == side.Group.Turn
                && Extent.Shared(part.Reckoned, room) is not null
            );
    }

    /// <summary>The room that its sheet says it wants.</summary>
    public static HingeArm Arm(HardwareFamily hinge) =>
        new(
            hinge.Length(HingeRules.ArmHeight).Length,
            hinge.Length(HingeRules.ArmReach).Length,
            hinge.Length(HingeRules.ArmAside).Length
        );

    /// <summary>The room of hinge and plate inside the carcase when the door is shut.</summary>
    private static Extent Room(FrontSite site, Leaf leaf, PartDraft side, Length along)
    {
        var arm = Arm(leaf.Plan.Hinge);
        var half = arm.Height / 2;
        var corner = At(leaf, side.Extent.Side(leaf.Hinged.Opposite()), Behind(site, leaf), along);
        return Ways(leaf)
            .Aggregate(new Extent(corner, corner), (room, way) => room.Grown(way, half))
            .Grown(Direction.Back, arm.Reach)
            .Grown(leaf.Hinged.Opposite(), arm.Aside);
    }

    /// <summary>The Y at which the door ends and the inside begins.</summary>
    private static Length Behind(FrontSite site, Leaf leaf) =>
        leaf.Plan.Fit.Hang == Hang.Inset ? site.FaceY + leaf.Plan.Material.Thickness.Length : site.FaceY;

    private static Point[] PlateHoles(FrontSite site, Leaf leaf, PartDraft side, Length along)
    {
        var hinge = leaf.Plan.Hinge;
        var row = Behind(site, leaf) + hinge.Length(HingeRules.HingePlateRow).Length;
        var half = hinge.Length(HingeRules.PlateSpacing).Length / 2;
        var middle = At(leaf, side.Extent.Side(leaf.Hinged.Opposite()), row, along);
        return [.. Ways(leaf).Select(way => middle.Moved(way, half))];
    }

    /// <summary>Holes from both sides of a partition keep 3 mm apart at their bottoms.</summary>
    private static Length PlateDepth(Leaf leaf, PartDraft side)
    {
        var depth = leaf.Plan.Hinge.Length(HingeRules.PlateDepth).Length;
        return side.Role == Role.Partition
            ? Length.Min(depth, Length.Max((side.Thickness.Length - Length.FromMillimetres(3)) / 2, depth / 2))
            : depth;
    }

    private static Point At(Leaf leaf, Length edge, Length y, Length along) =>
        leaf.Hinged.Axis() == Axis.X ? new(edge, y, along) : new(along, y, edge);

    /// <summary>The two ways along the hinge edge.</summary>
    private static Direction[] Ways(Leaf leaf) =>
        leaf.Hinged.Axis() == Axis.X ? [Direction.Down, Direction.Up] : [Direction.Left, Direction.Right];
}
