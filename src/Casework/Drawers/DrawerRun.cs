using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// What a drawer runs on asks for: the room on each side of the box and around it, and the lengths there are. Slides by
/// their maker's sheet, wood by the house rules.
/// </summary>
internal sealed record DrawerRun
{
    public required DrawerRunning Running { get; init; }

    public required HardwareFamily Slide { get; init; }

    /// <summary>How much narrower the box is than its opening.</summary>
    public required Figure Taken { get; init; }

    /// <summary>Room each side of the box.</summary>
    public required Figure Clearance { get; init; }

    /// <summary>How much more than that still does.</summary>
    public required Figure ClearanceOver { get; init; }

    public required Figure Above { get; init; }

    public required Figure Below { get; init; }

    public required Figure Behind { get; init; }

    /// <summary>From the lower edge of the sides to the underside of a bottom in a groove.</summary>
    public required Figure BottomUp { get; init; }

    /// <summary>What lengths are rounded down to.</summary>
    public required Length Step { get; init; }

    public bool IsUnder => Running == DrawerRunning.Slides && Slide.Kind == HardwareKinds.UnderSlide;

    /// <param name="side">Thickness of the sides of the box.</param>
    public static DrawerRun Of(PieceBuilder piece, FrontSite site, DrawerPlan plan, Figure side) =>
        plan.Running switch
        {
            DrawerRunning.Slides when plan.Slide.Kind == HardwareKinds.UnderSlide => Under(plan.Slide, plan, side),
            DrawerRunning.Slides => Beside(plan.Slide, piece.Shop.Length(DrawerRules.DrawerBottomUp, "bottom up")),
            _ => OnWood(piece, site, plan),
        };

    private static DrawerRun Beside(HardwareFamily slide, Figure bottomUp)
    {
        var clearance = slide.Length(DrawerRules.SlideClearance, "slide clearance");
        return new DrawerRun
        {
            Running = DrawerRunning.Slides,
            Slide = slide,
            Taken = clearance + clearance,
            Clearance = clearance,
            ClearanceOver = slide.Length(DrawerRules.SlideClearanceOver),
            Above = slide.Length(DrawerRules.DrawerAbove, "room over the box"),
            Below = slide.Length(DrawerRules.DrawerBelow, "room under the box"),
            Behind = slide.Length(DrawerRules.SlideBehind, "room behind the drawer"),
            BottomUp = bottomUp,
            Step = slide.Length(DrawerRules.SlideStep).Length,
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
        if (plan.BottomSet == BottomSet.Planted)
            throw NoRoom.Of(
                $"The {slide.Called} lies under a bottom that is let in between the sides; a planted bottom is in its way.",
                plan.Place,
                "`bottom set: grooved`, or `slides: side`"
            );
        return new DrawerRun
        {
            Running = DrawerRunning.Slides,
            Slide = slide,
            Taken = taken,
            Clearance = (taken / 2).As("room beside the box"),
            ClearanceOver = slide.Length(UnderSlideRules.ClearanceOver),
            Above = slide.Length(UnderSlideRules.Above, "room over the box"),
            Below = slide.Length(UnderSlideRules.Below, "room under the box"),
            Behind = slide.Length(UnderSlideRules.Behind, "room behind the drawer"),
            BottomUp = slide.Length(UnderSlideRules.BottomUp, "bottom up"),
            Step = slide.Length(UnderSlideRules.Step).Length,
        };
    }

    private static DrawerRun OnWood(PieceBuilder piece, FrontSite site, DrawerPlan plan)
    {
        var shop = piece.Shop;
        var play = shop.Length(RunnerRules.Play, "play");
        var above = shop.Length(RunnerRules.Above, "room over the box");
        // Behind a rail or on a floor the drawer stands just above the lower edge; where only a gap divides, on a whole runner.
        var below =
            plan.Running == DrawerRunning.SideHung ? above
            : site.Below is null ? shop.Length(RunnerRules.Thickness, "runner thickness")
            : shop.Length(RunnerRules.Proud, "runner above the edge");
        return new DrawerRun
        {
            Running = plan.Running,
            Slide = plan.Slide,
            Taken = play + play,
            Clearance = play,
            ClearanceOver = shop.Length(RunnerRules.PlayOver),
            Above = above,
            Below = below,
            Behind = shop.Length(DrawerRules.SlideBehind, "room behind the drawer"),
            BottomUp = shop.Length(DrawerRules.DrawerBottomUp, "bottom up"),
            Step = shop.Length(RunnerRules.Step).Length,
        };
    }

    /// <summary>How far a drawer comes out: slides by their sheet; on wood until a quarter of it is left in, lest it tip.</summary>
    /// <param name="length">Of the slides, or of a box on wood.</param>
    public Length Travel(Length length) =>
        Running == DrawerRunning.Slides
        && Slide.Choice(IsUnder ? UnderSlideRules.Extension : DrawerRules.Extension) == "full"
            ? length
            : length * new Rational(3, 4);

    /// <summary>The longest that goes into some room; null where even the shortest does not.</summary>
    public Figure? LongestIn(Figure room)
    {
        if (Running == DrawerRunning.Slides && Slide.Lengths is { Count: > 0 } sold)
            return sold.LastOrDefault(length => length.Length <= room.Length) is { } longest
                ? new Figure(longest.Quantity, new ChosenReason("the longest sold that goes into", [room]))
                : null;
        var slide = room.FloorTo(Step);
        return slide.Length > Length.Zero ? slide : null;
    }

    /// <summary>The shortest there is.</summary>
    public Length Shortest => Running == DrawerRunning.Slides && Slide.Lengths is [var first, ..] ? first.Length : Step;
}
