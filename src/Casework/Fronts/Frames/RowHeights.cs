using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>The clear heights between the rails of a door.</summary>
internal static class RowHeights
{
    /// <returns>From the lowest: equal, or as the heights of the middle rails leave them.</returns>
    public static IReadOnlyList<Figure> Of(Leaf leaf, Figure inside)
    {
        var plan = leaf.Plan;
        if (plan.Division.Rails is not { } rails)
            return [inside];
        if (rails.At.Count == 0)
        {
            var each = ((inside - (rails.Width * rails.Count)) / (rails.Count + 1)).As("height between rails");
            if (each.Length <= Length.Zero)
                throw NoRoom.Of(
                    $"The {leaf.Group.Name} is {NoRoom.Show(leaf.Height.Length)} high: its rails leave nothing between them.",
                    rails.Place,
                    "fewer or narrower middle rails, or a higher opening"
                );
            return [.. Enumerable.Repeat(each, rails.Count + 1)];
        }
        var heights = new List<Figure>();
        var from = plan.BottomRail;
        foreach (var at in rails.At)
        {
            heights.Add((at - from).As("height between rails"));
            from = at + rails.Width;
        }
        heights.Add((leaf.Height - plan.TopRail - from).As("height between rails"));
        if (heights.Exists(height => height.Length <= Length.Zero))
            throw NoRoom.Of(
                $"The middle rails of the {leaf.Group.Name} do not lie one above the other between its top and its bottom rail.",
                rails.Place,
                $"heights that rise, above {NoRoom.Show(plan.BottomRail.Length)} and below {NoRoom.Show(leaf.Height.Length - plan.TopRail.Length - rails.Width.Length)}"
            );
        return heights;
    }
}
