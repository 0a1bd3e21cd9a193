using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>The clear heights between the rails of a frame.</summary>
internal static class RowHeights
{
    /// <returns>From the lowest: equal, or as the heights of the middle rails leave them.</returns>
    /// <param name="whose">What the frame is called.</param>
    /// <param name="height">Of the whole frame.</param>
    /// <param name="inside">Between the top and the bottom rail.</param>
    public static IReadOnlyList<Figure> Of(
        string whose,
        Figure height,
        Figure topRail,
        Figure bottomRail,
        MiddleRails? middle,
        Figure inside
    )
    {
        if (middle is not { } rails)
            return [inside];
        if (rails.At.Count == 0)
        {
            var each = ((inside - (rails.Width * rails.Count)) / (rails.Count + 1)).As("height between rails");
            if (each.Length <= Length.Zero)
                throw NoRoom.Of(
                    $"The {whose} is {NoRoom.Show(height.Length)} high: its rails leave nothing between them.",
                    rails.Place,
                    "fewer or narrower middle rails, or a higher opening"
                );
            return [.. Enumerable.Repeat(each, rails.Count + 1)];
        }
        var heights = new List<Figure>();
        var from = bottomRail;
        foreach (var at in rails.At)
        {
            heights.Add((at - from).As("height between rails"));
            from = at + rails.Width;
        }
        heights.Add((height - topRail - from).As("height between rails"));
        if (heights.Exists(clear => clear.Length <= Length.Zero))
            throw NoRoom.Of(
                $"The middle rails of the {whose} do not lie one above the other between its top and its bottom rail.",
                rails.Place,
                $"heights that rise, above {NoRoom.Show(bottomRail.Length)} and below {NoRoom.Show(height.Length - topRail.Length - rails.Width.Length)}"
            );
        return heights;
    }
}
