using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary>
/// Hangers for stemmed glasses: boards from front to back under the ceiling of the bay, rabbeted on both upper edges, so
/// that the foot of a glass slides in between two webs and hangs on the flanges.
/// </summary>
internal static class StemRack
{
    private const int GramsEach = 200;

    /// <summary>Room for the foot of a glass above the flanges: common practice.</summary>
    private static readonly Length FootHeight = Length.FromMillimetres(8);

    /// <summary>Less than this between two feet holds no screw: common practice.</summary>
    private static readonly Length LeastWeb = Length.FromMillimetres(12);

    public static void Make(RackSite site)
    {
        var pitch = site.Pitch(RackRules.StemPitch);
        var slot = site.Rule(RackRules.StemSlot, "slot");
        var foot = site.Rule(RackRules.StemFoot, "foot").Length;
        var flange = site.Rule(RackRules.StemFlange, "flange").Length;
        var width = (pitch - slot).As("hanger width");
        var web = pitch.Length - foot;
        Refuse(site, width.Length, web, flange);
        var slots = site.Across(pitch.Length, width.Length, "slots");

        var ceiling = site.Bay.Ceiling[0];
        var play = site.Rule(ShelfRules.ShelfPlay, "play");
        var length = (site.InsideDepth - site.Setback - play).As("hanger length");
        if (length.Length <= Length.Zero)
            throw site.Refused("Nothing is left of the hangers in this bay.", "a deeper carcase");
        var hangers = new List<PartDraft>();
        var x = site.Bay.Inside.Min.X + ((site.Bay.InsideWidth.Length - width.Length - (pitch.Length * slots)) / 2);
        for (var n = 0; n <= slots; n++)
        {
            var hanger = site.Piece.Board(
                site.Plan.Group,
                $"{site.Prefix}stem hanger {n + 1}",
                Role.RackRail,
                site.Material,
                Lie.Of(Direction.Back, Direction.Down),
                length,
                width,
                new(x + (pitch.Length * n), site.FrontY, site.Bay.Inside.Max.Z - site.Material.Thickness.Length),
                site.Rack.Place
            );
            foreach (var side in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right])
            {
                var middle = hanger.Reckoned.Min.X + (width.Length / 2) + (web / 2 * side.Sign());
                hanger.CutAway(
                    CutKind.Rabbet,
                    hanger.Extent.With(side.Opposite(), middle).With(Direction.Down, hanger.Reckoned.Min.Z + flange)
                );
            }
            Screws.Between(site.Piece, ceiling, hanger, Direction.Up, 2);
            hangers.Add(hanger);
        }
        var each = (int)(length.Length / foot).Floor();
        site.Holds("stem rack", "glasses", slots * each, GramsEach, site.Bay.Inside.Max.Z - (foot * 2), hangers);
    }

    private static void Refuse(RackSite site, Length width, Length web, Length flange)
    {
        if (site.Bay.Ceiling.Count > 1)
            throw site.Refused("Hangers for glasses want a panel above, and there are stretchers.", "closed by: panel");
        if (web < LeastWeb || width <= web)
            throw site.Refused(
                "The hangers would be too weak: foot and slot leave too little of them.",
                "a larger pitch, or a smaller foot in the shop's rules for racks"
            );
        if (site.Material.Thickness.Length < flange + FootHeight)
            throw site.Refused(
                "The hangers are too thin for a foot to slide in above their flanges.",
                "a thicker material for the rack"
            );
    }
}
