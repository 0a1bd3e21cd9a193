using Dryfit.Casework.Facings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Sides;

/// <summary>Sides of a carcase that are frames with panels.</summary>
/// <param name="AtLeft">Whether the left one is.</param>
/// <param name="AtRight">Whether the right one is.</param>
/// <param name="Frame">What they are like; its bottom rail is as wide as said, or as the other rails.</param>
/// <param name="HasBottomRail">Whether the width of the bottom rail is said.</param>
internal sealed record SidesPlan(bool AtLeft, bool AtRight, PanelFramePlan Frame, bool HasBottomRail)
{
    public bool IsFramed(Direction end) => end == Direction.Left ? AtLeft : AtRight;

    /// <summary>The frame of a side that goes down below the carcase's floor: its bottom rail goes down as well.</summary>
    /// <param name="under">From the end of the side up to where the floor's own height begins; null for nothing.</param>
    public PanelFramePlan Reaching(Figure? under) =>
        under is null || HasBottomRail
            ? Frame
            : Frame with
            {
                BottomRail = (Frame.BottomRail + under).As("bottom rail"),
            };
}
