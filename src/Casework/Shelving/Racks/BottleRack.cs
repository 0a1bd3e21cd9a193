using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary>
/// Bottles that lie level in pairs of rails with hollows: one under the necks in front, one under the bottles behind it.
/// </summary>
internal static class BottleRack
{
    /// <summary>A full bottle of 0.75 l in its glass.</summary>
    private const int GramsEach = 1400;

    public static void Make(RackSite site)
    {
        var pitch = site.Pitch(RackRules.BottlePitch);
        var bottle = site.Rule(RackRules.BottleDiameter, "bottle").Length;
        var neck = site.Rule(RackRules.NeckDiameter, "neck").Length;
        var height = site.Rule(RackRules.CradleHeight, "cradle height");
        var spacing = site.Rule(RackRules.CradleSpacing, "cradle spacing").Length;
        if (pitch.Length <= bottle)
            throw site.Refused(
                "The bottles would touch: their pitch is no more than their diameter.",
                "a larger pitch"
            );
        site.NeedsDepth(site.Setback.Length + spacing + site.Material.Thickness.Length, "bottle rack");
        var across = site.Across(pitch.Length, Length.Zero, "bottles");

        // A hollow takes a third of the diameter: deep enough to hold, shallow enough to leave the rail whole.
        var (neckRise, bottleRise) = (neck / 3, bottle / 3);
        // The axis of the lowest row, so that the deeper rail, that of the bottles, stands clear of the floor.
        var below = Length.Max(height.Length - bottleRise + (bottle / 2), bottle / 2) + Length.FromMillimetres(3);
        site.NeedsHeight(pitch.Length, below - (pitch.Length / 2), "bottles");

        var rails = new List<PartDraft>();
        for (var row = 0; row < site.Rack.Rows; row++)
        {
            var axis = site.Bay.Inside.Min.Z + below + (pitch.Length * row);
            var neckTop = axis - (neck / 2) + neckRise;
            var bottleTop = axis - (bottle / 2) + bottleRise;
            var front = site.Rail(
                $"bottle row {row + 1} neck rail",
                Direction.Front,
                height,
                site.FrontY,
                neckTop - height.Length
            );
            var rear = site.Rail(
                $"bottle row {row + 1} bottle rail",
                Direction.Front,
                height,
                site.FrontY + spacing,
                bottleTop - height.Length
            );
            var first = (site.Bay.InsideWidth.Length - (pitch.Length * (across - 1))) / 2;
            for (var n = 0; n < across; n++)
            {
                var x = site.Bay.Inside.Min.X + first + (pitch.Length * n);
                Hollow(front, x, neck, neckRise);
                Hollow(rear, x, bottle, bottleRise);
            }
            rails.Add(front);
            rails.Add(rear);
        }
        var top = site.Bay.Inside.Min.Z + below + (pitch.Length * (site.Rack.Rows - 1));
        site.Holds("bottle rack", "bottles", across * site.Rack.Rows, GramsEach, top, rails);
    }

    /// <summary>
    /// A hollow that fits the round of what lies in it. A circle cut a third of its diameter deep is 2 sqrt(2) / 3 of the
    /// diameter wide; 17/18 of it is a hair more, so that the round lies on the bottom of the hollow.
    /// </summary>
    private static void Hollow(PartDraft rail, Length x, Length diameter, Length rise)
    {
        var half = diameter * new Rational(17, 36);
        EdgeArch.Cut(rail, Direction.Up, Direction.Front, rise, x - half, x + half);
    }
}
