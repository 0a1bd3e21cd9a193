using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// What the slides of a drawer ask for, by their maker's sheet: the room on each side of the box and around it, and the
/// lengths there are.
/// </summary>
internal sealed record DrawerRun
{
    public required HardwareFamily Slide { get; init; }

    /// <summary>How much narrower the box is than its opening.</summary>
    public required Figure Taken { get; init; }

    /// <summary>Room of one slide, each side of the box.</summary>
    public required Figure Clearance { get; init; }

    /// <summary>How much more than that the slide takes up, each side.</summary>
    public required Figure ClearanceOver { get; init; }

    public required Figure Above { get; init; }

    public required Figure Below { get; init; }

    public required Figure Behind { get; init; }

    /// <summary>From the lower edge of the sides to the underside of the bottom.</summary>
    public required Figure BottomUp { get; init; }

    public bool IsUnder => Slide.Kind == HardwareKinds.UnderSlide;

    /// <param name="side">Thickness of the sides of the box.</param>
    public static DrawerRun Of(PieceBuilder piece, DrawerPlan plan, Figure side) =>
        plan.Slide.Kind == HardwareKinds.UnderSlide
            ? Under(plan.Slide, plan, side)
            : Beside(plan.Slide, piece.Shop.Length(DrawerRules.DrawerBottomUp, "bottom up"));

    private static DrawerRun Beside(HardwareFamily slide, Figure bottomUp)
    {
        var clearance = slide.Length(DrawerRules.SlideClearance, "slide clearance");
        return new DrawerRun
        {
            Slide = slide,
            Taken = clearance + clearance,
            Clearance = clearance,
            ClearanceOver = slide.Length(DrawerRules.SlideClearanceOver),
            Above = slide.Length(DrawerRules.DrawerAbove, "room over the box"),
            Below = slide.Length(DrawerRules.DrawerBelow, "room under the box"),
            Behind = slide.Length(DrawerRules.SlideBehind, "room behind the drawer"),
            BottomUp = bottomUp,
        };
    }

    private static DrawerRun Under(HardwareFamily slide, DrawerPlan plan, Figure side)
    {
        var thickest = slide.Length(UnderSlideRules.ThickestSide).Length;
        var inside = slide.Length(UnderSlideRules.Inside, "what the slides take of the inside");
        var taken = inside - side - side;
        if (side.Length > thickest || taken.Length <= Length.Zero)
            throw NoRoom.Of(
                $"The sides of the drawer are {NoRoom.Show(side.Length)} thick: the {slide.Called} takes no more than {NoRoom.Show(thickest)}.",
                plan.Place,
                "thinner stuff for the box, or `slides: side`"
            );
        return new DrawerRun
        {
            Slide = slide,
            Taken = taken,
            Clearance = (taken / 2).As("room beside the box"),
            ClearanceOver = slide.Length(UnderSlideRules.ClearanceOver),
            Above = slide.Length(UnderSlideRules.Above, "room over the box"),
            Below = slide.Length(UnderSlideRules.Below, "room under the box"),
            Behind = slide.Length(UnderSlideRules.Behind, "room behind the drawer"),
            BottomUp = slide.Length(UnderSlideRules.BottomUp, "bottom up"),
        };
    }

    /// <summary>The longest slide there is that goes into some room; null where even the shortest does not.</summary>
    public Figure? LongestIn(Figure room)
    {
        var step = Slide.Length(IsUnder ? UnderSlideRules.Step : DrawerRules.SlideStep).Length;
        if (Slide.Lengths is { Count: > 0 } sold)
            return sold.LastOrDefault(length => length.Length <= room.Length) is { } longest
                ? new Figure(longest.Quantity, new ChosenReason("the longest sold that goes into", [room]))
                : null;
        var slide = room.FloorTo(step);
        return slide.Length > Length.Zero ? slide : null;
    }

    /// <summary>The shortest slide there is.</summary>
    public Length Shortest =>
        Slide.Lengths is [var first, ..]
            ? first.Length
            : Slide.Length(IsUnder ? UnderSlideRules.Step : DrawerRules.SlideStep).Length;
}
