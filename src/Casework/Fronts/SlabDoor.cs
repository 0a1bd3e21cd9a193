using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;

namespace Dryfit.Casework.Fronts;

/// <summary>A door of one board or panel, with bands where its plan has them.</summary>
internal static class SlabDoor
{
    public static DoorUnit Build(PieceBuilder piece, Leaf leaf)
    {
        var plan = leaf.Plan;
        var thickness = plan.Material.Thickness;
        var at = new Point(leaf.LeftOf(leaf.Width.Length), leaf.BackY - thickness.Length, leaf.BottomZ);
        var slab = Edging.Panel(
            piece,
            leaf.Group,
            "slab",
            Role.DoorSlab,
            plan.Material,
            Lie.Of(Direction.Up, Direction.Front),
            leaf.Height,
            leaf.Width,
            at,
            plan.Edging is null
                ? null
                : new Bands(plan.Edging, Direction.Left, Direction.Right, Direction.Down, Direction.Up),
            leaf.Source,
            leaf.BuiltFrom,
            Direction.Down,
            plan.Fit.Hang == Hang.Inset ? Direction.Front : Direction.Back
        );
        return new DoorUnit(slab.Extent, slab.Panel, [.. slab.Parts]);
    }
}
